/** A file name from a title: what no file system dislikes, never empty. */
export function fileName(title: string, extension: string): string {
  const stem = title
    .replaceAll(/[/\\:*?"<>|\p{Cc}]/gu, ' ')
    .replaceAll(/\s+/g, ' ')
    .trim()
    .replace(/^\.+/, '')
    .slice(0, 80);
  return `${stem || 'design'}.${extension}`;
}
