import type { Drawing, Layer, Point, Stroke } from '../sheet/drawing';
import { CAP_HEIGHT } from '../sheet/text-size';
import { layerStyles } from './layer-styles';

const escapes: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const escaped = (words: string) => words.replace(/[&<>"]/g, (char) => escapes[char]);
/** A micrometre is fine enough for any cutter. */
const n = (value: number) => String(Number(value.toFixed(3)) || 0);
/** SVG's y runs down. */
const xy = ([x, y]: Point) => `${n(x)} ${n(-y)}`;

/** A drawing as an SVG file, one millimetre to the millimetre. Each element carries its layer, so that a screen may restyle it. */
export function svgText({ title, bounds, strokes }: Drawing): string {
  const [width, height] = [bounds.maxX - bounds.minX, bounds.maxY - bounds.minY];
  // Line widths are those of a sheet of paper with the drawing across it.
  const scale = Math.max(width / 178, height / 240);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${n(width)}mm" height="${n(height)}mm" viewBox="${n(bounds.minX)} ${n(-bounds.maxY)} ${n(width)} ${n(height)}" font-family="'DejaVu Sans', sans-serif">`,
    `<title>${escaped(title)}</title>`,
    ...strokes.map((stroke) => element(stroke, scale)),
    '</svg>',
    '',
  ].join('\n');
}

function element(stroke: Stroke, scale: number): string {
  const layer = `data-layer="${stroke.layer}"`;
  switch (stroke.kind) {
    case 'polyline':
      return tag(
        'path',
        `${layer} d="M${stroke.points.map(xy).join(' L')}${stroke.closed ? ' Z' : ''}" ${ink(stroke.layer, scale, stroke.filled)}`,
        stroke.name,
      );
    case 'circle':
      return tag(
        'circle',
        `${layer} cx="${n(stroke.centre[0])}" cy="${n(-stroke.centre[1])}" r="${n(stroke.radius)}" ${ink(stroke.layer, scale, stroke.filled)}`,
        stroke.name,
      );
    case 'arc': {
      const { centre, radius, start, sweep } = stroke;
      const at = (angle: number): Point => [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
      const flags = `${Math.abs(sweep) > Math.PI ? 1 : 0} ${sweep > 0 ? 0 : 1}`;
      return tag(
        'path',
        `${layer} d="M${xy(at(start))} A${n(radius)} ${n(radius)} 0 ${flags} ${xy(at(start + sweep))}" ${ink(stroke.layer, scale)}`,
        stroke.name,
      );
    }
    case 'text': {
      const turn = stroke.angle ? ` transform="rotate(${n((-stroke.angle * 180) / Math.PI)} ${xy(stroke.at)})"` : '';
      return `<text ${layer} x="${n(stroke.at[0])}" y="${n(-stroke.at[1])}" font-size="${n(stroke.size / CAP_HEIGHT)}" text-anchor="${stroke.anchor}"${turn}>${escaped(stroke.text)}</text>`;
    }
  }
}

function ink(layer: Layer, scale: number, filled = false): string {
  const { stroke, fill, width, dash } = layerStyles[layer];
  const dashes = dash ? ` stroke-dasharray="${dash.map((d) => n(d * scale)).join(' ')}"` : '';
  return `fill="${filled ? fill : 'none'}" stroke="${stroke}" stroke-width="${n(width * scale)}"${dashes}`;
}

const tag = (name: string, attributes: string, title?: string) =>
  title ? `<${name} ${attributes}><title>${escaped(title)}</title></${name}>` : `<${name} ${attributes}/>`;
