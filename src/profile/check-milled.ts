import { NM_PER_MM } from '../geom/point.ts';
import { flankRun, type MillCorner, millCorners, reachesBack, reachesTop } from './mill-corners.ts';
import type { Groove, Milled, ProfileKind } from './profile.ts';
import { type CrampedEdge, crampedEdges } from './round-corners.ts';

/** What can be wrong with the description of a milled blade. */
export type MillFaultKind =
  | 'bad-size'
  | 'groove-off-blade'
  | 'groove-through-blade'
  | 'flanks-meet'
  | 'grooves-overlap'
  | 'web-gone'
  | 'root-radius-too-large'
  | 'back-radius-too-large';

/** One reason why a description cannot be milled, for a person and for a program. */
export interface MillFault {
  readonly kind: MillFaultKind;
  /** Places of the grooves concerned in the list, the one to change first; empty for the blade itself. */
  readonly grooves: readonly number[];
  /** The size of the blade or of the first groove concerned that is at fault. */
  readonly field: keyof Milled | keyof Groove;
  /** What is wrong, in words. */
  readonly message: string;
  /** What to do about it. */
  readonly cure: string;
}

/** Outlines are drawn in whole nanometres: what is no thicker than this may vanish. */
const GRAIN = 1;

/** How a length in nanometres is written for the reader. */
export type SayLength = (nm: number) => string;

/** Says a length in millimetres, with no more digits than it needs. */
export const sayMillimetres: SayLength = (nm) => `${Number((nm / NM_PER_MM).toFixed(4))} mm`;

/**
 * Every reason why a blade cannot be milled as described.
 *
 * Sizes are looked at first; where one is not usable, nothing else is said, since every later judgement would
 * rest on it. Then each groove by itself, then pairs of grooves, then the radii.
 *
 * @param milled lengths in nanometres, angles in radians.
 * @param say how lengths are written in the messages.
 * @param kind of an opening, faults speak of wards and the keyway, not of grooves and the blade.
 * @returns an empty list exactly when {@link millOutline} draws the blade.
 * @check tests/unit/profile/check-milled.test.ts
 */
export function checkMilled(milled: Milled, say: SayLength = sayMillimetres, kind: ProfileKind = 'blank'): MillFault[] {
  const faults = bladeFaults(milled, say);
  return kind === 'opening' ? faults.map(ofKeyway) : faults;
}

/** A fault in the words of a keyway: a groove of the blade is a ward there, and what is left between two is passage. */
function ofKeyway(fault: MillFault): MillFault {
  const said = (words: string) =>
    words.replaceAll('groove', 'ward').replaceAll('blade', 'keyway').replace('no web is left', 'no passage is left');
  return { ...fault, message: said(fault.message), cure: said(fault.cure) };
}

function bladeFaults(milled: Milled, say: SayLength): MillFault[] {
  const sizes = [...bladeSizeFaults(milled), ...milled.grooves.flatMap((g, i) => grooveSizeFaults(g, i))];
  if (sizes.length > 0) return sizes;
  const single = milled.grooves.flatMap((g, i) => placeFaults(milled, g, i, say));
  const pairs = pairFaults(milled, say);
  return single.length + pairs.length > 0 ? [...single, ...pairs] : radiusFaults(milled, say);
}

function bladeSizeFaults(milled: Milled): MillFault[] {
  const positive = (['thickness', 'height'] as const).filter(
    (field) => !(milled[field] > 0 && Number.isFinite(milled[field])),
  );
  const faults = positive.map((field) => sizeFault([], field, `the blade's ${field} is not greater than 0`));
  return isZeroOrMore(milled.backRadius)
    ? faults
    : [...faults, sizeFault([], 'backRadius', 'the back radius is less than 0')];
}

function grooveSizeFaults(groove: Groove, index: number): MillFault[] {
  const faults = (['width', 'depth'] as const)
    .filter((field) => !(groove[field] > 0 && Number.isFinite(groove[field])))
    .map((field) => sizeFault([index], field, `the groove's ${field} is not greater than 0`));
  if (!Number.isFinite(groove.bottom)) faults.push(sizeFault([index], 'bottom', "the groove's height is not a number"));
  if (!isZeroOrMore(groove.rootRadius)) faults.push(sizeFault([index], 'rootRadius', 'the root radius is less than 0'));
  if (!(groove.flank >= 0 && groove.flank < Math.PI / 2)) faults.push(flankFault(index, groove.flank));
  return faults;
}

function sizeFault(grooves: number[], field: MillFault['field'], message: string): MillFault {
  return { kind: 'bad-size', grooves, field, message, cure: 'Give a usable size.' };
}

/** A cutter leaves no under-cut, which an outline may have. */
function flankFault(index: number, flank: number): MillFault {
  const message = 'the flank angle is not from 0 to less than 90 degrees';
  const cure = 'Give 0 for square flanks, or an angle below 90 degrees';
  const fault = sizeFault([index], 'flank', message);
  return { ...fault, cure: flank < 0 ? `${cure}; draw an under-cut as an outline, by its vertices.` : `${cure}.` };
}

/** Faults of one groove on its blade. */
function placeFaults(milled: Milled, groove: Groove, index: number, say: SayLength): MillFault[] {
  return [offBlade, throughBlade, flanksMeet].flatMap((check) => check(milled, groove, index, say) ?? []);
}

function offBlade(milled: Milled, groove: Groove, index: number, say: SayLength): MillFault | null {
  const top = groove.bottom + groove.width;
  const whole = reachesBack(groove) && reachesTop(groove, milled.height);
  if (groove.bottom >= 0 && top <= milled.height && !whole) return null;
  return {
    kind: 'groove-off-blade',
    grooves: [index],
    field: groove.bottom < 0 ? 'bottom' : 'width',
    message: whole
      ? `the groove covers the whole face, 0 to ${say(top)}`
      : `the groove runs from ${say(groove.bottom)} to ${say(top)}, off the blade, which ends at 0 and ${say(milled.height)}`,
    cure: whole ? 'Give the blade less thickness instead.' : 'Move or narrow the groove so that it lies on the face.',
  };
}

function throughBlade(milled: Milled, groove: Groove, index: number, say: SayLength): MillFault | null {
  if (groove.depth < milled.thickness) return null;
  return {
    kind: 'groove-through-blade',
    grooves: [index],
    field: 'depth',
    message: `the groove goes through the blade: depth ${say(groove.depth)}, thickness ${say(milled.thickness)}`,
    cure: `Make the groove shallower than ${say(milled.thickness)}.`,
  };
}

function flanksMeet(milled: Milled, groove: Groove, index: number, say: SayLength): MillFault | null {
  if (rootWidth(milled, groove) > 0) return null;
  return {
    kind: 'flanks-meet',
    grooves: [index],
    field: 'flank',
    message: `the flanks meet before the root: a groove ${say(groove.width)} wide loses ${say(groove.width - rootWidth(milled, groove))} down to depth ${say(groove.depth)}`,
    cure: 'Make the groove wider or shallower, or its flanks steeper (a smaller angle).',
  };
}

/** Width left at the groove's root between its flanks; 0 or less where they meet. */
function rootWidth(milled: Milled, groove: Groove): number {
  const flanks = (reachesBack(groove) ? 0 : 1) + (reachesTop(groove, milled.height) ? 0 : 1);
  return groove.width - flanks * flankRun(groove);
}

/** Faults between two grooves: on one face they share height, on opposite faces they meet in the blade. */
function pairFaults(milled: Milled, say: SayLength): MillFault[] {
  return milled.grooves.flatMap((a, i) =>
    milled.grooves.slice(0, i).flatMap((b, j) => {
      const from = Math.max(a.bottom, b.bottom);
      const to = Math.min(a.bottom + a.width, b.bottom + b.width);
      if (from > to) return [];
      return (a.side === b.side ? overlapFault : webFault)(milled, [i, j], [from, to], say) ?? [];
    }),
  );
}

function overlapFault(
  milled: Milled,
  grooves: readonly [number, number],
  [from, to]: readonly [number, number],
  say: SayLength,
): MillFault {
  const how = from === to ? `touch at ${say(from)}` : `overlap from ${say(from)} to ${say(to)}`;
  return {
    kind: 'grooves-overlap',
    grooves,
    field: 'bottom',
    message: `two grooves on the ${milled.grooves[grooves[0]].side} face ${how}`,
    cure: 'Move them apart so that a land stays between them, or make one groove of the two.',
  };
}

function webFault(
  milled: Milled,
  grooves: readonly [number, number],
  [from, to]: readonly [number, number],
  say: SayLength,
): MillFault | null {
  const [a, b] = grooves.map((i) => milled.grooves[i]);
  const heights = [from, to, ...bends(a, milled.height), ...bends(b, milled.height)].filter(
    (y) => y >= from && y <= to,
  );
  const left = heights.map((y) => milled.thickness - depthAt(a, y, milled.height) - depthAt(b, y, milled.height));
  const least = Math.min(...left);
  if (least > GRAIN) return null;
  return {
    kind: 'web-gone',
    grooves,
    field: 'depth',
    message: `a groove on the left and a groove on the right meet at height ${say(heights[left.indexOf(least)])}: no web is left between them`,
    cure: 'Make one of them shallower, or move it to another height.',
  };
}

/** Heights at which the depth of a groove changes its slope. */
function bends(groove: Groove, height: number): number[] {
  const run = flankRun(groove);
  const lower = reachesBack(groove) ? 0 : run;
  const upper = reachesTop(groove, height) ? 0 : run;
  return [groove.bottom + lower, groove.bottom + groove.width - upper];
}

/** Depth of a groove at a height on it, before its root is rounded; at a square flank the full depth. */
function depthAt(groove: Groove, y: number, height: number): number {
  const run = flankRun(groove);
  if (run <= GRAIN) return groove.depth;
  const below = reachesBack(groove) ? 1 : (y - groove.bottom) / run;
  const above = reachesTop(groove, height) ? 1 : (groove.bottom + groove.width - y) / run;
  return groove.depth * Math.min(1, below, above);
}

/** Faults of the radii, once the sharp outline is known to be sound. */
function radiusFaults(milled: Milled, say: SayLength): MillFault[] {
  const corners = millCorners(milled);
  const faults = crampedEdges(corners).map((edge) => {
    const ends = [corners[edge.from], corners[(edge.from + 1) % corners.length]];
    const root = ends.find((c) => c.groove !== undefined && c.radius > 0);
    return root ? rootRadiusFault(root, edge, say) : backRadiusFault(edge, say);
  });
  return faults.filter((f, i) => faults.findIndex((g) => g.kind === f.kind && g.grooves[0] === f.grooves[0]) === i);
}

function rootRadiusFault(root: MillCorner, edge: CrampedEdge, say: SayLength): MillFault {
  return {
    kind: 'root-radius-too-large',
    grooves: [root.groove ?? 0],
    field: 'rootRadius',
    message: `the root radius ${say(root.radius)} is too large: its arcs need ${say(edge.needed)} of an edge that is ${say(edge.length)} long`,
    cure: 'Give a smaller root radius, or a wider or deeper groove.',
  };
}

function backRadiusFault(edge: CrampedEdge, say: SayLength): MillFault {
  return {
    kind: 'back-radius-too-large',
    grooves: [],
    field: 'backRadius',
    message: `the back radius is too large: its arcs need ${say(edge.needed)} of an edge that is ${say(edge.length)} long`,
    cure: 'Give a smaller back radius, or move the lowest groove up.',
  };
}

function isZeroOrMore(value: number): boolean {
  return value >= 0 && Number.isFinite(value);
}
