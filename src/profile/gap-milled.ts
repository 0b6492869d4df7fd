import { NM_PER_UM } from '../geom/point.ts';
import { flankRun, reachesBack, reachesTop } from './mill-corners.ts';
import type { Groove, Milled } from './profile.ts';
import { arcChord, CHORD_ERROR } from './round-corners.ts';
import { widestBack } from './widest-back.ts';

/** A groove, a ward or the back that came out otherwise than it was, for a person: which one, and what became of it. */
export interface GrooveChange {
  /** Its place in the list it came from; null for the back. */
  readonly groove: number | null;
  readonly words: string;
}

/** A milled description with a gap all round another one, and what became of single grooves. */
export interface GappedMilled {
  readonly milled: Milled;
  readonly changes: readonly GrooveChange[];
}

/** A ward no wider than this at its mouth or tip, nanometres, is left out or made shallower. */
const LEAST_WARD = NM_PER_UM;

/**
 * The keyway that leaves a gap all round a milled blade.
 *
 * Thickness and height grow by two gaps. A ward stands two gaps higher than its groove and is narrower by the second at
 * a square flank; at one that leans by a, by gap / cos a - gap tan a, rounded up to a micrometre. Radii are those of the
 * true offset (back: larger by the gap, tip of a ward: smaller by it), less or more by what the chords that stand for
 * arcs need, so that the gap is nowhere smaller than asked. Sharp corners stay sharp.
 *
 * @check tests/unit/profile/opening-from-blank.test.ts, tests/laws/opening-from-blank.test.ts
 */
export function growMilled(blank: Milled, gap: number): GappedMilled {
  const height = blank.height + 2 * gap;
  const changes: GrooveChange[] = [];
  const grooves = blank.grooves.flatMap((groove, i) => {
    const { ward, words } = wardIn(groove, blank.height, height, gap);
    if (words !== '') changes.push({ groove: i, words });
    return ward ? [ward] : [];
  });
  const wanted = blank.backRadius > 0 ? backWithGap(blank.backRadius + gap) : 0;
  const milled = { thickness: blank.thickness + 2 * gap, height, backRadius: wanted, grooves };
  // A back that is less round leaves more room, so that it may give way.
  const backRadius = Math.floor(widestBack(milled) / NM_PER_UM) * NM_PER_UM;
  if (backRadius < wanted)
    changes.push({ groove: null, words: 'is less round than the gap asks for, for want of room' });
  return { milled: { ...milled, backRadius }, changes };
}

/** Less than the radius wanted, by a quarter of the chord of its own arc, so that no chord lies inside the wanted arc. */
function backWithGap(wanted: number): number {
  return Math.max(0, Math.floor((wanted - arcChord(wanted, Math.PI / 2) / 4) / NM_PER_UM) * NM_PER_UM);
}

/** How much higher a flank stands when it moves by a gap into its groove, and its face by a gap out of the blade. */
function flankShift(flank: number, gap: number): number {
  const exact = gap / Math.cos(flank) - gap * Math.tan(flank);
  return flank === 0 ? gap : Math.ceil(exact / NM_PER_UM - 1e-9) * NM_PER_UM;
}

function wardIn(
  groove: Groove,
  bladeHeight: number,
  height: number,
  gap: number,
): { ward: Groove | null; words: string } {
  const shift = flankShift(groove.flank, gap);
  const [atBack, atTop] = [reachesBack(groove), reachesTop(groove, bladeHeight)];
  const bottom = atBack ? 0 : groove.bottom + gap + shift;
  const top = atTop ? height : groove.bottom + groove.width + gap - shift;
  const width = top - bottom;
  if (width <= LEAST_WARD) return { ward: null, words: 'is too narrow for a ward: none is left' };
  const flanks = (atBack ? 0 : 1) + (atTop ? 0 : 1);
  const deepest = groove.flank > 0 ? (width - LEAST_WARD) / (flanks * Math.tan(groove.flank)) : Infinity;
  const depth = flanks > 0 && groove.depth > deepest ? Math.floor(deepest) : groove.depth;
  const tip = wardTip(groove, gap);
  const ward = { side: groove.side, bottom, width, depth, flank: groove.flank, rootRadius: tip };
  const fitting = { ...ward, rootRadius: Math.min(tip, widestRadius(ward, flanks)) };
  return { ward: fitting, words: depth < groove.depth ? 'gives a ward that ends in a point before its root' : '' };
}

/** The tip of a ward: the groove's root less the gap, and rounder by what the chords of the root may be too full. */
function wardTip({ rootRadius, flank }: Groove, gap: number): number {
  if (rootRadius === 0) return 0;
  const turn = Math.PI / 2 - flank;
  const more = arcChord(rootRadius, turn) / (4 * Math.tan(turn / 2));
  return Math.max(0, Math.ceil((rootRadius - gap + more) / NM_PER_UM) * NM_PER_UM);
}

/** The greatest radius that the two corners of a root have room for. */
function widestRadius(groove: Groove, flanks: number): number {
  const reach = Math.tan((Math.PI / 2 - groove.flank) / 2);
  const root = (groove.width - flanks * flankRun(groove)) / (Math.max(1, flanks) * reach);
  return Math.max(0, Math.floor(Math.min(groove.depth / Math.cos(groove.flank) / reach, root)) - 1);
}

/**
 * The blade that leaves a gap all round in a milled keyway: {@link growMilled} the other way. Grooves grow: one that
 * comes to an end of the blade becomes a step, and two that come together on a face become one, as deep as the deeper.
 * Where a round back has no room for the little more that its chords need, the whole gap is larger by what a chord may
 * stand off its arc, and the back has the radius of the true offset.
 *
 * @returns sizes may be 0 or less where the gap leaves nothing: checkMilled says so.
 * @check tests/unit/profile/opening-from-blank.test.ts, tests/laws/opening-from-blank.test.ts
 */
export function shrinkMilled(opening: Milled, gap: number): GappedMilled {
  const wanted = opening.backRadius - gap + arcChord(opening.backRadius, Math.PI / 2) / 4;
  const usual = shrunk(opening, gap, Math.ceil(wanted / NM_PER_UM) * NM_PER_UM);
  if (hasRoomyBack(usual.milled)) return usual;
  const wider = gap + CHORD_ERROR;
  const { milled, changes } = shrunk(opening, wider, opening.backRadius - wider);
  if (!hasRoomyBack(milled)) return usual;
  return {
    milled,
    changes: [...changes, { groove: null, words: 'is as round as can be: the gap is 0.001 mm larger' }],
  };
}

function hasRoomyBack(milled: Milled): boolean {
  return milled.thickness <= 0 || milled.height <= 0 || widestBack(milled) === milled.backRadius;
}

function shrunk(opening: Milled, gap: number, roundness: number): GappedMilled {
  const height = opening.height - 2 * gap;
  const thickness = opening.thickness - 2 * gap;
  const backRadius = opening.backRadius > 0 ? Math.max(0, roundness) : 0;
  const changes: GrooveChange[] = [];
  const grooves = opening.grooves.map((ward, i) => {
    const groove = grooveFor(ward, opening.height, height, gap);
    if (groove.bottom === 0 && !reachesBack(ward)) changes.push({ groove: i, words: 'becomes a step at the back' });
    if (reachesTop(groove, height) && !reachesTop(ward, opening.height))
      changes.push({ groove: i, words: 'becomes a step at the top' });
    return { groove, from: i };
  });
  const sides = (['left', 'right'] as const).map((side) => grooves.filter(({ groove }) => groove.side === side));
  const kept = sides.flatMap((numbered) => mergeTouching(numbered, changes)).sort((a, b) => a.from - b.from);
  return { milled: { thickness, height, backRadius, grooves: kept.map(({ groove }) => groove) }, changes };
}

function grooveFor(ward: Groove, openingHeight: number, height: number, gap: number): Groove {
  const shift = flankShift(ward.flank, gap);
  const low = reachesBack(ward) ? 0 : Math.max(0, ward.bottom - gap - shift);
  const top = ward.bottom + ward.width - gap + shift;
  const high = reachesTop(ward, openingHeight) ? height : Math.min(height, top);
  const turn = Math.PI / 2 - ward.flank;
  const full = ward.rootRadius + gap;
  const less = arcChord(full, turn) / (4 * Math.tan(turn / 2));
  const rootRadius = ward.rootRadius > 0 ? Math.max(0, Math.floor((full - less) / NM_PER_UM) * NM_PER_UM) : 0;
  return { ...ward, bottom: low, width: high - low, rootRadius };
}

interface NumberedGroove {
  readonly groove: Groove;
  readonly from: number;
}

/** Grooves of one face that touch, made one: of a blade more is taken than need be, never less. */
function mergeTouching(numbered: readonly NumberedGroove[], changes: GrooveChange[]): NumberedGroove[] {
  const kept: NumberedGroove[] = [];
  for (const next of [...numbered].sort((a, b) => a.groove.bottom - b.groove.bottom)) {
    const last = kept.at(-1);
    if (!last || last.groove.bottom + last.groove.width < next.groove.bottom) {
      kept.push(next);
      continue;
    }
    changes.push({ groove: next.from, words: 'comes together with its neighbour: they become one groove' });
    kept[kept.length - 1] = { from: last.from, groove: joined(last.groove, next.groove) };
  }
  return kept;
}

function joined(a: Groove, b: Groove): Groove {
  const top = Math.max(a.bottom + a.width, b.bottom + b.width);
  return {
    side: a.side,
    bottom: a.bottom,
    width: top - a.bottom,
    depth: Math.max(a.depth, b.depth),
    flank: Math.min(a.flank, b.flank),
    rootRadius: Math.min(a.rootRadius, b.rootRadius),
  };
}
