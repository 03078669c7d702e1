const texts = import.meta.glob<string>('../../assets/*.gapwright', { query: '?raw', import: 'default' });

/** The demo designs that come with the program, by title from the file's name. */
export const demos = Object.entries(texts).map(([path, read]) => {
  const stem = path.split('/').at(-1)?.replace('.gapwright', '') ?? path;
  const words = stem.replaceAll('-', ' ');
  return { id: stem, title: words.charAt(0).toUpperCase() + words.slice(1), read };
});
