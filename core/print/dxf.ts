import { DxfWriter, type CommonEntityOptions, LWPolylineFlags, point2d, point3d, TextHorizontalAlignment, Units } from '@tarikjabiri/dxf';
import type { Drawing, Layer, Stroke } from '../sheet/drawing';

const degrees = (angle: number) => (((angle * 180) / Math.PI) % 360) + (angle < 0 ? 360 : 0);
const layerName = (layer: Layer) => layer.toUpperCase();
/** A nanometre is finer than any cutter; more digits only swell the file. */
const n = (value: number) => Number(value.toFixed(6)) || 0;
const oneLine = (words: string) => words.replace(/[\r\n]+/g, ' ');
const anchors = { start: TextHorizontalAlignment.Left, middle: TextHorizontalAlignment.Center, end: TextHorizontalAlignment.Right };

/** A drawing as a DXF file of release 2007: millimetres, natural size, the drawing's own layers, contours as closed polylines. */
export function dxfText({ bounds, strokes }: Drawing): string {
  const dxf = new DxfWriter();
  dxf.setUnits(Units.Millimeters);
  dxf.setVariable('$EXTMIN', { 10: n(bounds.minX), 20: n(bounds.minY), 30: 0 });
  dxf.setVariable('$EXTMAX', { 10: n(bounds.maxX), 20: n(bounds.maxY), 30: 0 });
  [...new Set(strokes.map((s) => s.layer))].forEach((layer, i) => dxf.addLayer(layerName(layer), (i % 7) + 1, 'Continuous'));
  for (const stroke of strokes) put(dxf, stroke);
  return dxf.stringify();
}

function put(dxf: DxfWriter, stroke: Stroke): void {
  const options: CommonEntityOptions = { layerName: layerName(stroke.layer) };
  switch (stroke.kind) {
    case 'polyline':
      dxf.addLWPolyline(
        stroke.points.map(([x, y]) => ({ point: point2d(n(x), n(y)) })),
        { ...options, flags: stroke.closed ? LWPolylineFlags.Closed : LWPolylineFlags.None },
      );
      return;
    case 'circle':
      dxf.addCircle(point3d(n(stroke.centre[0]), n(stroke.centre[1]), 0), n(stroke.radius), options);
      return;
    case 'arc': {
      // The format's arcs run counter-clockwise only.
      const [from, to] = stroke.sweep >= 0 ? [stroke.start, stroke.start + stroke.sweep] : [stroke.start + stroke.sweep, stroke.start];
      const centre = point3d(n(stroke.centre[0]), n(stroke.centre[1]), 0);
      dxf.addArc(centre, n(stroke.radius), n(degrees(from)), n(degrees(to)), options);
      return;
    }
    case 'text': {
      const at = point3d(n(stroke.at[0]), n(stroke.at[1]), 0);
      dxf.addText(at, n(stroke.size), oneLine(stroke.text), {
        ...options,
        rotation: n(degrees(stroke.angle ?? 0)),
        horizontalAlignment: anchors[stroke.anchor],
        secondAlignmentPoint: at,
      });
    }
  }
}
