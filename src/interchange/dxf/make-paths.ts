import { MAX_BULGE, type Vertex, vertexAt } from '../../geom/vertex.ts';
import type { DrawnPath } from '../drawing.ts';
import { sayText } from '../json/file-fault.ts';
import { type Chain, endOf } from './chain.ts';
import { dropDuplicates, dropRepeats } from './drop-duplicates.ts';
import type { Notes } from './gather-notes.ts';
import { type Joined, joinEnds } from './join-ends.ts';
import { arcVertices, ellipseOfEdge } from './place-arc.ts';

/** Ends this near to each other are the same point, in nanometres, as exports with six decimals in mm write it. */
const SAME_POINT = 2;

/** Gaps up to this are closed without a word, in nanometres. */
const SILENT_GAP = 1_000;

/** Gaps up to this are closed and told, in nanometres; wider ones stay open. */
export const MOST_GAP = 10_000;

/** Farther out nothing is drawn, in nanometres: a thousand kilometres. */
const MOST_FAR = 1e15;

/** Most open lines, forks and gaps that are told one by one. */
const MOST_TOLD = 8;

/**
 * The lines of a drawing made ready: duplicates dropped, ends joined, arcs of more than 358 degrees parted.
 *
 * @returns closed paths first, each group in the order of the file; whatever was done about them is noted.
 * @check tests/unit/interchange/dxf-join.test.ts
 */
export function makePaths(chains: readonly Chain[], notes: Notes): DrawnPath[] {
  const sound = chains.filter((chain) => isSound(chain, notes));
  const single = withoutDuplicates(sound, notes);
  const joined = joinAll(single);
  tellJoints(joined, notes);
  const whole = withoutDuplicates(joined.chains.map(cleaned).filter(isLine), notes);
  tellOpen(
    whole.filter((chain) => !chain.closed),
    notes,
  );
  const inOrder = [...whole].sort((a, b) => Number(b.closed) - Number(a.closed) || a.line - b.line);
  return inOrder.map(({ vertices, closed, label }) => ({ vertices: partLongArcs(vertices, closed), closed, label }));
}

function isSound({ vertices, line }: Chain, notes: Notes): boolean {
  if (vertices.some(({ x, y }) => !(Math.abs(x) <= MOST_FAR && Math.abs(y) <= MOST_FAR))) {
    notes.add(line, 'reaches farther out than a thousand kilometres; left out', 'Check the units and the numbers.');
    return false;
  }
  if (!isTiny(vertices, 0.5)) return true;
  notes.add(line, 'has no length; left out', 'Delete it in the drawing.');
  return false;
}

/** Whether all vertices lie within a distance of the first, in nanometres, and no arc bows out farther. */
function isTiny(vertices: readonly Vertex[], distance: number): boolean {
  const [first] = vertices;
  return vertices.every(
    ({ x, y, bulge = 0 }) => Math.hypot(x - first.x, y - first.y) <= distance && Math.abs(bulge) <= 1,
  );
}

function withoutDuplicates(chains: readonly Chain[], notes: Notes): Chain[] {
  const { kept, dropped } = dropDuplicates(chains);
  for (const { line } of dropped)
    notes.add(line, 'lies exactly on another line; left out', 'Nothing, or delete it in the drawing.');
  return kept;
}

/** First within each layer, then what is still open across layers. */
function joinAll(chains: readonly Chain[]): Joined {
  const byLabel = new Map<string, Chain[]>();
  for (const chain of chains) {
    const group = byLabel.get(chain.label);
    if (group) group.push(chain);
    else byLabel.set(chain.label, [chain]);
  }
  let gaps: Joined['gaps'] = [];
  let now: Chain[] = [];
  for (const group of byLabel.values()) {
    const joined = joinWithin(group);
    gaps = gaps.concat(joined.gaps);
    now = now.concat(joined.chains);
  }
  const joined = joinWithin(now);
  return { ...joined, gaps: [...gaps, ...joined.gaps] };
}

/** Near ends before far ones, so that short pieces are parts of longer ones before the tolerance reaches their size. */
function joinWithin(chains: readonly Chain[]): Joined {
  let now = chains;
  let forks: Joined['forks'] = [];
  let gaps: Joined['gaps'] = [];
  for (const tolerance of [SAME_POINT, SILENT_GAP, MOST_GAP]) {
    for (let before = Infinity; now.length < before; ) {
      before = now.length;
      const isShort = (chain: Chain) => !chain.closed && isTiny(chain.vertices, tolerance);
      const long = now.filter((chain) => !isShort(chain));
      const joined = joinEnds(long, tolerance, SILENT_GAP);
      now = [...joined.chains, ...now.filter(isShort)];
      forks = joined.forks;
      gaps = gaps.concat(joined.gaps);
    }
  }
  return { chains: now, forks, gaps };
}

function cleaned(chain: Chain): Chain {
  return { ...chain, vertices: dropRepeats(chain) };
}

/** Whether a chain is a line at all: a closed one needs three vertices, or two and an arc. */
function isLine({ vertices, closed }: Chain): boolean {
  if (!closed) return vertices.length > 1 && !isTiny(vertices, SILENT_GAP);
  return vertices.length > 2 || (vertices.length === 2 && vertices.some(({ bulge = 0 }) => bulge !== 0));
}

function tellJoints({ gaps, forks }: Joined, notes: Notes): void {
  for (const { at, width } of gaps.slice(0, MOST_TOLD)) {
    const what = `a gap of ${(width / 1e3).toFixed(1)} um at ${sayPlace(at)} was closed`;
    notes.add(null, what, 'Check the outline there.');
  }
  if (gaps.length > MOST_TOLD)
    notes.add(null, `${gaps.length - MOST_TOLD} more gaps of up to 10 um were closed`, 'Check the outlines.');
  for (const at of forks.slice(0, MOST_TOLD))
    notes.add(null, `more than two lines meet at ${sayPlace(at)} and were not joined`, 'Delete those not meant.');
  if (forks.length > MOST_TOLD)
    notes.add(null, `at ${forks.length - MOST_TOLD} more places more than two lines meet`, 'Delete those not meant.');
}

function tellOpen(open: readonly Chain[], notes: Notes): void {
  for (const chain of open.slice(0, MOST_TOLD)) {
    const [start, end] = [endOf(chain, 0), endOf(chain, 1)];
    const apart = (Math.hypot(end.x - start.x, end.y - start.y) / 1e6).toFixed(4);
    const name = chain.label ? ` on ${sayText(chain.label)}` : '';
    const what = `the line${name} from ${sayPlace(start)} to ${sayPlace(end)} is open, its ends are ${apart} mm apart`;
    notes.add(chain.line, what, 'Close it in the drawing, or go on without it.');
  }
  const more = open.length - MOST_TOLD;
  if (more > 0) notes.add(null, `${more} more lines are open`, 'Close them in the drawing, or go on without them.');
}

function sayPlace({ x, y }: { x: number; y: number }): string {
  return `(${[x, y].map((v) => Number((v / 1e6).toFixed(4)) + 0).join(', ')}) mm`;
}

/** Arcs of more than 358 degrees, which no outline may have, as several. */
function partLongArcs(vertices: readonly Vertex[], closed: boolean): Vertex[] {
  if (vertices.every(({ bulge = 0 }) => Math.abs(bulge) <= MAX_BULGE)) return [...vertices];
  return vertices.flatMap((vertex, i) => {
    const next = i + 1 < vertices.length || closed ? vertices[(i + 1) % vertices.length] : null;
    const arc = next && Math.abs(vertex.bulge ?? 0) > MAX_BULGE ? ellipseOfEdge(vertex, next) : null;
    if (!arc) return [vertex];
    const [first, ...rest] = arcVertices({ ...arc, sweep: Math.min(arc.sweep, 2 * Math.PI - 1e-8) });
    return [vertexAt(vertex.x, vertex.y, first.bulge), ...rest.slice(0, -1)];
  });
}
