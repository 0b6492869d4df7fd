import { prepareOpening } from '../fit/prepare-opening.ts';
import { boxOf, translatePoints } from '../geom/point.ts';
import { asTrustedRing, type Ring } from '../geom/ring.ts';
import { measureWeb } from '../profile/measure-web.ts';
import { tryEverywhere } from './find-passage.ts';
import { grooveCauses } from './groove-causes.ts';
import type { Cutter } from './groove-cover.ts';
import { measureLoss } from './measure-loss.ts';
import { type BladeWithin, bladeWithin, type PlainBlade } from './mill-blank.ts';
import { moveRegion } from './overlap-regions.ts';
import type { Passage, PassageOpening } from './passage.ts';
import { roomFor } from './widest-blank.ts';

/** A passage whose blank is to be milled. */
export interface MillPassageInput {
  readonly passage: Passage;
  /** Every keyway of the family, as the passage was found for. */
  readonly openings: readonly PassageOpening[];
  readonly plain: PlainBlade;
  readonly cutter: Cutter;
}

type Steps<Value> = Generator<{ done: number; total: number }, Value, void>;

/** The outline is taken smaller by so much where the blank was found to be tight after all, nanometres. */
const LESS = [0, 3_000, 8_000];

/**
 * The same passage with a blank that straight cutters can mill: the largest found within the widest blank, tried in every
 * keyway by the judge of fits.
 *
 * @returns null where none is left that enters every chosen keyway.
 * @check tests/unit/passage/mill-passage.test.ts, tests/laws/mill-blank.test.ts
 */
export function* millPassage({ passage, openings, plain, cutter }: MillPassageInput): Steps<Passage | null> {
  const { blank, members, clearance } = passage;
  if (!blank) return null;
  const chosen = new Set(members.map(({ id }) => id));
  for (const less of LESS) {
    const made = yield* bladeWithin(blank.ring, plain, cutter, less);
    if (!made) return null;
    // The blank's own frame: its back on y = 0, its left face on x = 0.
    const ring = asTrustedRing(translatePoints(made.ring, { x: -made.at.x, y: -made.at.y }));
    const entries = yield* tryEverywhere({ openings, runningClearance: clearance, chosen: [...chosen] }, ring, chosen);
    if (entries.every(({ chosen: its, fit }) => !its || fit.verdict === 'enters'))
      return { ...inItsFrame(passage, openings, made, ring), entries };
  }
  return null;
}

function inItsFrame(
  passage: Passage,
  openings: readonly PassageOpening[],
  { at, milled, area }: BladeWithin,
  ring: Ring,
) {
  const back = { x: -at.x, y: -at.y };
  const rings = new Map(openings.map((opening) => [opening.id, opening.ring]));
  const placed = passage.members.map(({ id, move }) => ({ id, move: { x: move.x - at.x, y: move.y - at.y } }));
  const known = placed.flatMap(({ id, move }) => {
    const outline = rings.get(id);
    return outline ? [{ id, ring: outline, move }] : [];
  });
  const box = boxOf(ring);
  return {
    ...passage,
    common: moveRegion(passage.common, back),
    members: placed.map(({ id, move }) => {
      const outline = rings.get(id);
      const opening = outline && prepareOpening(outline);
      const room = opening && moveRegion(roomFor(opening.region, passage.clearance + opening.within), move);
      return { id, move, loss: room ? measureLoss(room, ring) : null };
    }),
    blank: {
      ring,
      width: box.maxX - box.minX,
      height: box.maxY - box.minY,
      area,
      web: measureWeb(ring),
      grooves: grooveCauses(ring, known),
      apart: [],
      entersAll: true,
      milled: { blade: milled, free: passage.blank?.area ?? area },
    },
  };
}
