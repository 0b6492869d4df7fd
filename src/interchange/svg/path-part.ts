/** One part of a path in user units, absolute, with SVG's letters. */
export type PathPart =
  | readonly ['M' | 'L', x: number, y: number]
  | readonly ['Q', x1: number, y1: number, x: number, y: number]
  | readonly ['C', x1: number, y1: number, x2: number, y2: number, x: number, y: number]
  | readonly ['A', rx: number, ry: number, angle: number, large: number, sweep: number, x: number, y: number]
  | readonly ['Z'];
