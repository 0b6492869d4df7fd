/**
 * A falling curve in straight pieces, as {@link ThicknessCurve} keeps it, in lists of numbers. `marks[i]` says something of
 * the piece that ends at corner i: the tilt of its strips, or whose curve it is.
 */
export interface FallingLine {
  readonly heights: number[];
  readonly thicknesses: number[];
  readonly marks: number[];
}

/** A line without corners: 0 everywhere. */
export function emptyLine(): FallingLine {
  return { heights: [], thicknesses: [], marks: [] };
}

/** Corners that lie nearer to the line through their neighbours than this are none, nanometres. */
const IN_LINE = 1e-4;

/** Adds a corner; leaves out repeats, and corners in line with their neighbours on pieces of one mark. */
export function pushCorner(
  { heights, thicknesses, marks }: FallingLine,
  height: number,
  thickness: number,
  mark: number,
): void {
  let n = heights.length;
  if (n > 0 && heights[n - 1] === height && thicknesses[n - 1] === thickness) return;
  for (; n > 1 && marks[n - 1] === mark; n--) {
    const ux = height - heights[n - 2];
    const uy = thickness - thicknesses[n - 2];
    const off = ux * (thicknesses[n - 1] - thicknesses[n - 2]) - uy * (heights[n - 1] - heights[n - 2]);
    if (off * off > IN_LINE * IN_LINE * (ux * ux + uy * uy)) break;
    heights.pop();
    thicknesses.pop();
    marks.pop();
  }
  heights.push(height);
  thicknesses.push(thickness);
  marks.push(mark);
}

/** Rounds to a thousandth of a nanometre, so that a jump lies where the outline's whole nanometres put it. */
export function rounded(nm: number): number {
  return Math.round(nm * 1e3) / 1e3;
}

/** Reads a line in stretches of rising height, from 0 on. Below its first corner a line is level, above its last one 0. */
class LineWalk {
  private readonly line: FallingLine;
  private next = 0;
  /** Thickness just above the height reached. */
  above: number;

  constructor(line: FallingLine) {
    this.line = line;
    this.above = line.thicknesses[0] ?? 0;
    this.pass(0);
  }

  /** Height of the next corner; Infinity at the end. */
  get end(): number {
    return this.next < this.line.heights.length ? this.line.heights[this.next] : Infinity;
  }

  /** Mark of the piece up to the next corner. */
  get mark(): number {
    return this.line.marks[this.next] ?? 0;
  }

  /** Thickness at a height above the one reached and up to the next corner. */
  at(height: number): number {
    const { heights, thicknesses } = this.line;
    const k = this.next;
    if (k >= heights.length) return 0;
    if (k === 0 || height === heights[k]) return thicknesses[k];
    const share = (height - heights[k - 1]) / (heights[k] - heights[k - 1]);
    return rounded(thicknesses[k - 1] + (thicknesses[k] - thicknesses[k - 1]) * share);
  }

  /** Goes on to a height, at most the next corner's, whose thickness is `there`. */
  goTo(height: number, there: number): void {
    this.above = there;
    if (height === this.end) this.pass(height);
  }

  private pass(height: number): void {
    const { heights, thicknesses } = this.line;
    let passed = false;
    for (; this.next < heights.length && heights[this.next] <= height; this.next++) passed = true;
    if (passed) this.above = this.next < heights.length ? thicknesses[this.next - 1] : 0;
  }
}

/** The higher of two lines at each height; where both are equally high, the first. */
export function higherOf(a: FallingLine, b: FallingLine): FallingLine {
  return chosenOf(a, b, 1);
}

/** The lower of two lines at each height; where both are equally low, the first. */
export function lowerOf(a: FallingLine, b: FallingLine): FallingLine {
  return chosenOf(a, b, -1);
}

/** @param sign 1 for the higher line, -1 for the lower one. */
function chosenOf(a: FallingLine, b: FallingLine, sign: 1 | -1): FallingLine {
  const line = emptyLine();
  const [p, q] = [new LineWalk(a), new LineWalk(b)];
  for (let from = 0; ; ) {
    const to = Math.min(p.end, q.end);
    if (to === Infinity || (sign < 0 && (p.end === Infinity || q.end === Infinity))) return line;
    const [p1, q1] = [p.at(to), q.at(to)];
    const before = sign * (p.above - q.above);
    const after = sign * (p1 - q1);
    if (before >= 0 && after >= 0) pushPiece(line, from, p.above, to, p1, p.mark);
    else if (before <= 0 && after <= 0) pushPiece(line, from, q.above, to, q1, q.mark);
    else pushCrossing(line, p, q, sign, [from, to, p1, q1, before / (before - after)]);
    p.goTo(to, p1);
    q.goTo(to, q1);
    from = to;
  }
}

/** Two lines that cross over a stretch: the wanted one up to there, and the other one from there. */
function pushCrossing(
  line: FallingLine,
  p: LineWalk,
  q: LineWalk,
  sign: 1 | -1,
  [from, to, p1, q1, at]: readonly [from: number, to: number, p1: number, q1: number, at: number],
): void {
  const cross = Math.min(to, Math.max(from, rounded(from + (to - from) * at)));
  const share = (cross - from) / (to - from);
  const [x, y] = [p.above + (p1 - p.above) * share, q.above + (q1 - q.above) * share];
  const there = rounded(sign > 0 ? Math.max(x, y) : Math.min(x, y));
  const startsWithP = sign * (p.above - q.above) > 0;
  const [first, second] = startsWithP ? [p, q] : [q, p];
  if (cross > from) pushPiece(line, from, first.above, cross, there, first.mark);
  if (cross < to) pushPiece(line, cross, there, to, startsWithP ? q1 : p1, second.mark);
}

function pushPiece(line: FallingLine, from: number, start: number, to: number, end: number, mark: number): void {
  pushCorner(line, from, start, mark);
  pushCorner(line, to, end, mark);
}

/** The number of the first corner that is at least so tall; the number of corners where none is. */
function cornerFrom({ heights }: FallingLine, height: number): number {
  let [from, to] = [0, heights.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if (heights[middle] >= height) to = middle;
    else from = middle + 1;
  }
  return from;
}

/** Whether a strip lies under a line that is moved up by `slack` in thickness and in height. */
export function isUnder(line: FallingLine, slack: number, height: number, thickness: number): boolean {
  const { heights, thicknesses } = line;
  const [at, most] = [height - slack, thickness - slack];
  if (most <= 0) return true;
  const k = cornerFrom(line, at);
  if (k === heights.length) return false;
  if (k === 0 || thicknesses[k] >= most) return thicknesses[k] >= most;
  const share = (at - heights[k - 1]) / (heights[k] - heights[k - 1]);
  return thicknesses[k - 1] + (thicknesses[k] - thicknesses[k - 1]) * share >= most;
}

/** {@link isUnder} for all strips on the straight piece between two strips. */
export function isPieceUnder(
  line: FallingLine,
  slack: number,
  h0: number,
  w0: number,
  h1: number,
  w1: number,
): boolean {
  if (!isUnder(line, slack, h0, w0) || !isUnder(line, slack, h1, w1)) return false;
  const { heights, thicknesses } = line;
  const [low, high] = [Math.min(h0, h1) - slack, Math.max(h0, h1) - slack];
  // Between the line's corners both are straight: they are looked at just above each corner.
  for (let k = cornerFrom(line, low); k < heights.length && heights[k] < high; k++) {
    if (heights[k + 1] === heights[k]) continue;
    const there = w0 + ((w1 - w0) * (heights[k] + slack - h0)) / (h1 - h0);
    const room = k + 1 < heights.length ? thicknesses[k] : 0;
    if (there > room + slack) return false;
  }
  return true;
}
