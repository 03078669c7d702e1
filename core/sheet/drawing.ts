/** Drawings are strokes in millimetres on named layers, y up; SVG, PDF and DXF writers show the same ones. */
export type Layer =
  | 'magnet-north'
  | 'magnet-south'
  | 'disc'
  | 'steel'
  | 'copper'
  | 'former'
  | 'outline'
  | 'construction'
  | 'dimension'
  | 'text'
  | `phase-${1 | 2 | 3 | 4 | 5 | 6}`;

export type Point = [x: number, y: number];

export type Stroke =
  | { kind: 'polyline'; layer: Layer; points: Point[]; closed: boolean; filled?: boolean; name?: string }
  | { kind: 'circle'; layer: Layer; centre: Point; radius: number; filled?: boolean; name?: string }
  /** From angle `start` through `sweep`, counter-clockwise positive. [rad] */
  | { kind: 'arc'; layer: Layer; centre: Point; radius: number; start: number; sweep: number; name?: string }
  /** `size` is the cap height in mm; `angle` in rad. */
  | {
      kind: 'text';
      layer: Layer;
      at: Point;
      text: string;
      size: number;
      anchor: 'start' | 'middle' | 'end';
      angle?: number;
      name?: string;
    };

export interface Drawing {
  title: string;
  bounds: { minX: number; minY: number; maxX: number; maxY: number };
  strokes: Stroke[];
  /** Room on paper for which the lettering was sized; without it the drawing is meant for natural size. [mm] */
  paper?: { width: number; height: number };
}
