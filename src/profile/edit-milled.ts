import { reachesBack, reachesTop } from './mill-corners.ts';
import type { Groove, GrooveSide, Milled } from './profile.ts';

/** Sizes of the blade itself. */
export type BladeField = 'thickness' | 'height' | 'backRadius';

/** Sizes of a groove. */
export type GrooveField = 'bottom' | 'width' | 'depth' | 'flank' | 'rootRadius';

/** Which end of the blade a step runs out at. */
export type BladeEnd = 'back' | 'top';

// None of these edits refuses anything: checkMilled says what stands against the result.

/**
 * The blade with another size. When its height changes, a step at the top goes along: it keeps its width.
 *
 * @check tests/unit/profile/edit-milled.test.ts
 */
export function setBladeSize(milled: Milled, field: BladeField, nm: number): Milled {
  if (field !== 'height') return { ...milled, [field]: nm };
  const grooves = milled.grooves.map((groove) =>
    reachesTop(groove, milled.height) ? { ...groove, bottom: nm - groove.width } : groove,
  );
  return { ...milled, height: nm, grooves };
}

/** The blade with another value in one groove. A step at the top stays at the top: its bottom moves with its width. */
export function setGroove(milled: Milled, index: number, field: GrooveField, value: number): Milled {
  const groove = milled.grooves[index];
  const atTop = reachesTop(groove, milled.height) && !reachesBack(groove);
  if (atTop && field === 'width')
    return withGroove(milled, index, { ...groove, width: value, bottom: milled.height - value });
  if (atTop && field === 'bottom')
    return withGroove(milled, index, { ...groove, bottom: value, width: milled.height - value });
  return withGroove(milled, index, { ...groove, [field]: value });
}

/** The blade with another groove in place of one. */
export function withGroove(milled: Milled, index: number, groove: Groove): Milled {
  return { ...milled, grooves: milled.grooves.with(index, groove) };
}

/** The blade with one more groove, the last of the list. */
export function addGroove(milled: Milled, groove: Groove): Milled {
  return { ...milled, grooves: [...milled.grooves, groove] };
}

/** The blade without one of its grooves. */
export function removeGroove(milled: Milled, index: number): Milled {
  return { ...milled, grooves: milled.grooves.toSpliced(index, 1) };
}

/** The blade with one groove milled into the other face instead. */
export function moveToOtherFace(milled: Milled, index: number): Milled {
  const groove = milled.grooves[index];
  return withGroove(milled, index, { ...groove, side: otherSide(groove.side) });
}

/** The blade as in a mirror: what was on the left is on the right. Grooves keep their places in the list. */
export function mirrorMilled(milled: Milled): Milled {
  return { ...milled, grooves: milled.grooves.map((groove) => ({ ...groove, side: otherSide(groove.side) })) };
}

/** The other face of the blade. */
function otherSide(side: GrooveSide): GrooveSide {
  return side === 'left' ? 'right' : 'left';
}

/** A stretch of a face that nothing is milled into, heights above the back. */
export interface FreeStretch {
  readonly from: number;
  readonly to: number;
}

/** What is free of a face, from the back upwards; a rounded back is not. */
export function freeStretches({ grooves, height, backRadius }: Milled, side: GrooveSide): FreeStretch[] {
  const taken = grooves.filter((g) => g.side === side).sort((a, b) => a.bottom - b.bottom);
  const starts = [reachesBackOf(taken) ? 0 : backRadius, ...taken.map((g) => g.bottom + g.width)];
  const ends = [...taken.map((g) => g.bottom), height];
  return starts.map((from, i) => ({ from, to: ends[i] })).filter(({ from, to }) => to > from);
}

function reachesBackOf(sorted: readonly Groove[]): boolean {
  return sorted.length > 0 && reachesBack(sorted[0]);
}

/** Sizes of a groove that is added, nanometres; smaller where there is less room. */
export interface UsualGroove {
  readonly width: number;
  readonly depth: number;
  /** Whole steps that its place and size are rounded to. */
  readonly step: number;
}

/**
 * A new groove in the middle of the largest free stretch of a face, square, as wide and deep as usual or as there is
 * room for: half the stretch, three tenths of the thickness.
 *
 * @returns null where the face has no room for one.
 * @check tests/unit/profile/edit-milled.test.ts
 */
export function newGroove(milled: Milled, side: GrooveSide, usual: UsualGroove): Groove | null {
  const free = freeStretches(milled, side);
  if (free.length === 0) return null;
  const { from, to } = free.reduce((best, next) => (next.to - next.from > best.to - best.from ? next : best));
  const whole = (nm: number) => Math.floor(nm / usual.step) * usual.step;
  const width = whole(Math.min(usual.width, (to - from) / 2));
  const depth = whole(Math.min(usual.depth, milled.thickness * 0.3));
  const bottom = whole((from + to - width) / 2);
  if (width <= 0 || depth <= 0 || bottom <= from) return null;
  return { side, bottom, width, depth, flank: 0, rootRadius: 0 };
}

/** A new step at an end of a face; null where something is milled there already or there is no room. */
export function newStep(milled: Milled, side: GrooveSide, end: BladeEnd, usual: UsualGroove): Groove | null {
  const bare = { ...milled, backRadius: 0 };
  const stretch = freeStretches(bare, side).find(({ from, to }) =>
    end === 'back' ? from === 0 : to === milled.height,
  );
  if (!stretch || (end === 'back' && milled.grooves.some((g) => g.side === side && reachesBack(g)))) return null;
  const whole = (nm: number) => Math.floor(nm / usual.step) * usual.step;
  const least = end === 'back' ? milled.backRadius + usual.step : 0;
  const width = whole(Math.min(Math.max(usual.width, least), (stretch.to - stretch.from) / 2));
  const depth = whole(Math.min(usual.depth, milled.thickness * 0.3));
  if (width <= 0 || depth <= 0) return null;
  return { side, bottom: end === 'back' ? 0 : milled.height - width, width, depth, flank: 0, rootRadius: 0 };
}

/** A copy of a groove in the largest free stretch that has room for it, on its own face or else on the other; or null. */
export function copyOfGroove(milled: Milled, index: number, step: number): Groove | null {
  const groove = milled.grooves[index];
  for (const side of [groove.side, otherSide(groove.side)]) {
    const [free] = freeStretches(milled, side).sort((a, b) => b.to - b.from - (a.to - a.from));
    if (!free) continue;
    const bottom = Math.floor((free.from + free.to - groove.width) / 2 / step) * step;
    if (bottom > free.from && bottom + groove.width < free.to) return { ...groove, side, bottom };
  }
  return null;
}

/** What a groove is: a groove, or a step at one end of the blade. */
export function grooveKind(groove: Groove, height: number): 'groove' | 'step at the back' | 'step at the top' {
  if (reachesBack(groove)) return 'step at the back';
  return reachesTop(groove, height) ? 'step at the top' : 'groove';
}
