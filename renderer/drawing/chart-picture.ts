export interface Picture {
  /** SVG */
  text: string;
  width: number;
  height: number;
}

const MARGIN = 12;
const LINE = 20;

/** Looks that a style sheet gives on screen and a file on its own would lack. */
const looks = [
  ...['fill', 'fill-opacity', 'stroke', 'stroke-width', 'stroke-dasharray', 'stroke-opacity', 'stroke-linejoin', 'opacity', 'paint-order'],
  ...['font-family', 'font-size', 'font-weight', 'text-anchor', 'dominant-baseline', 'visibility'],
];

/** A chart on screen as a picture of its own: its title and legend above the plot, every look written out. */
export function pictureOf(frame: HTMLElement, title: string): Picture {
  const plot = [...frame.querySelectorAll('svg')].find((svg) => !svg.closest('li'));
  if (!plot) throw new Error('the chart is not drawn yet');
  const { width: plotWidth, height: plotHeight } = plot.getBoundingClientRect();
  const { color, fontFamily } = getComputedStyle(frame);
  const legend = [...frame.querySelectorAll('li')];
  const head = MARGIN + LINE * (1 + legend.length);
  const [width, height] = [Math.ceil(plotWidth + 2 * MARGIN), Math.ceil(head + plotHeight + MARGIN)];
  const words = (text: string, x: number, y: number, size: number) =>
    `<text x="${x}" y="${y}" font-size="${size}" fill="${color}">${escaped(text)}</text>`;
  const text = [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" font-family="${escaped(fontFamily)}">`,
    `<rect width="100%" height="100%" fill="${groundOf(frame)}"/>`,
    words(title, MARGIN, MARGIN + 14, 15),
    ...legend.map((line, i) => {
      const y = MARGIN + LINE * (i + 1);
      const swatch = line.querySelector('svg');
      return (swatch ? placed(swatch, MARGIN, y + 5, 26, 10) : '') + words(line.textContent, MARGIN + 32, y + 14, 12);
    }),
    placed(plot, MARGIN, head, plotWidth, plotHeight),
    '</svg>',
  ].join('\n');
  return { text, width, height };
}

/** The same in pixels, twice as fine as on screen. */
export async function pngOf({ text, width, height }: Picture): Promise<Uint8Array> {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(text)}`;
  await image.decode();
  const canvas = Object.assign(document.createElement('canvas'), { width: 2 * width, height: 2 * height });
  canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
  if (!blob) throw new Error('the browser made no picture of the chart');
  return new Uint8Array(await blob.arrayBuffer());
}

function placed(svg: SVGSVGElement, x: number, y: number, width: number, height: number): string {
  const copy = svg.cloneNode(true) as SVGSVGElement;
  const copied = [copy, ...copy.querySelectorAll('*')];
  [svg, ...svg.querySelectorAll('*')].forEach((element, i) => {
    const style = getComputedStyle(element);
    copied[i]?.removeAttribute('class');
    copied[i]?.setAttribute('style', looks.map((look) => `${look}:${style.getPropertyValue(look)}`).join(';'));
  });
  for (const [name, value] of Object.entries({ x, y, width, height })) copy.setAttribute(name, String(value));
  return new XMLSerializer().serializeToString(copy);
}

/** The first ground behind an element that is not see-through. */
function groundOf(element: Element | null): string {
  if (!element) return '#ffffff';
  const { backgroundColor } = getComputedStyle(element);
  return /^rgba\(.*, 0\)$|^transparent$/.test(backgroundColor) ? groundOf(element.parentElement) : backgroundColor;
}

const escaped = (text: string) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
