import { plainConditions } from '../fit/conditions.ts';
import { judgePair, judgePairEntry } from '../fit/judge-pair.ts';
import { type Opening, prepareOpening } from '../fit/prepare-opening.ts';
import { boxOf, type Point, translatePoints } from '../geom/point.ts';
import { type Region, regionOf } from '../geom/region.ts';
import { regionArea } from '../geom/region-area.ts';
import { asTrustedRing, type Ring } from '../geom/ring.ts';
import { measureWeb } from '../profile/measure-web.ts';
import { alignRegions } from './align-regions.ts';
import { grooveCauses } from './groove-causes.ts';
import { measureLoss } from './measure-loss.ts';
import { moveRegion, sharedBy } from './overlap-regions.ts';
import type { Loss, NoBlank, Passage, PassageBlank, PassageEntry, PassageOpening } from './passage.ts';
import { spreadProgress } from './spread-progress.ts';
import { bladeOf, CRUMB, roomFor } from './widest-blank.ts';

/** What a passage is made of. */
export interface PassageInput {
  /** Every keyway of the family. */
  readonly openings: readonly PassageOpening[];
  /** Ids of those that the blank has to pass; ids that are not there are left out. */
  readonly chosen: readonly string[];
  /** Nanometres. */
  readonly runningClearance: number;
}

type Progress = { done: number; total: number };
type Steps<Value> = Generator<Progress, Value, void>;

/**
 * What some keyways have in common and the widest blank that passes all of them.
 *
 * A blank is pushed into each keyway by itself, so each keyway may be moved. The room of a keyway is its outline eroded by
 * the running clearance; since an intersection is eroded by eroding its parts, a blank passes all keyways exactly where
 * all rooms, moved, share it. The keyways are moved to where the largest part of the shared room is greatest (see
 * alignRegions); that part is the widest blank, the keyways themselves share the common region there. It is then tried in every keyway of the
 * family by the judge of fits.
 *
 * @returns values for every family, odd ones too: {@link Passage.none} says why there is no blank.
 * @accuracy the blank keeps the running clearance in every chosen keyway and is short of the widest at this alignment by
 *   less than 0.6 um all round.
 * @check tests/outside/passage.test.ts, tests/laws/passage.test.ts
 */
export function* commonPassage(input: PassageInput): Steps<Passage> {
  const wanted = new Set(input.chosen);
  const chosen = input.openings
    .filter(({ id }) => wanted.has(id))
    .map(({ id, ring }) => ({ id, opening: prepareOpening(ring) }))
    .sort((a, b) => (a.id < b.id ? -1 : 1));
  if (chosen.length === 0) return nothing(input, { why: 'none-chosen' });
  let passage: Passage | null = null;
  for (const [n, more] of MORE.entries()) {
    passage = yield* spreadProgress(passageWith(input, chosen, more), 1 - 0.1 ** n, 1 - 0.1 ** (n + 1));
    if (passage.blank === null || passage.blank.entersAll) break;
  }
  return passage as Passage;
}

/** What is taken off more where the blank was found to be tight after all: very many corners are simplified, nanometres. */
const MORE = [0, 2_000, 5_000];

interface Chosen {
  readonly id: string;
  readonly opening: Opening;
}

function nothing({ runningClearance }: PassageInput, none: NoBlank): Passage {
  return { members: [], common: [], area: 0, sure: null, blank: null, none, entries: [], clearance: runningClearance };
}

function* passageWith(input: PassageInput, chosen: readonly Chosen[], more: number): Steps<Passage> {
  const clearance = input.runningClearance + more;
  const whole = chosen.map(({ opening }) => opening.region);
  const rooms = chosen.map(({ opening }) => roomFor(opening.region, clearance + opening.within));
  const narrow = chosen.filter((_, i) => regionArea(rooms[i]) <= CRUMB).map(({ id }) => id);
  const aligned = yield* spreadProgress(alignRegions(narrow.length > 0 ? whole : rooms), 0, 0.7);
  const shared = sharedBy(whole, aligned.moves);
  const { blade, apart } = narrow.length > 0 ? NO_BLADE : bladeOf(sharedBy(rooms, aligned.moves));
  const shown = blade ?? shared.flatMap(({ outer }) => outer);
  const { minX, minY } = shown.length > 0 ? boxOf(shown) : { minX: 0, minY: 0 };
  const back = { x: -minX, y: -minY };
  const moves = aligned.moves.map(({ x, y }) => ({ x: x + back.x, y: y + back.y }));
  const common = moveRegion(shared, back);
  const rest = { common, area: regionArea(common), sure: aligned.sure, clearance: input.runningClearance };
  const members = (loss: (i: number) => Loss | null) =>
    chosen.map(({ id }, i) => ({ id, move: moves[i], loss: loss(i) }));
  if (!blade) {
    const none: NoBlank = narrow.length > 0 ? { why: 'too-narrow', ids: narrow } : { why: 'nothing-shared' };
    return { ...rest, members: members(() => null), blank: null, none, entries: [] };
  }
  const ring = asTrustedRing(translatePoints(blade, back));
  const entries = yield* spreadProgress(tryEverywhere(input, ring, new Set(chosen.map(({ id }) => id))), 0.7, 0.9);
  const entersAll = entries.every(({ chosen: its, fit }) => !its || fit.verdict === 'enters');
  const blank: PassageBlank = {
    ...sizesOf(ring),
    grooves: grooveCauses(ring, placedRings(input, chosen, moves)),
    apart: apart.map((region) => moveRegion(region, back)).map((region) => ({ region, area: regionArea(region) })),
    entersAll,
  };
  const placed = rooms.map((room, i) => moveRegion(room, moves[i]));
  const lost = yield* spreadProgress(lossesOf(placed, ring), 0.9, 1);
  return { ...rest, members: members((i) => lost[i]), blank, none: null, entries };
}

function* lossesOf(rooms: readonly Region[], blank: Ring): Steps<Loss[]> {
  const losses: Loss[] = [];
  for (const room of rooms) {
    losses.push(measureLoss(room, blank));
    yield { done: losses.length, total: rooms.length };
  }
  return losses;
}

const NO_BLADE = { blade: null, apart: [] };

/** How a blank goes into every keyway, chosen or not. */
export function* tryEverywhere(
  { openings, runningClearance }: PassageInput,
  blank: Ring,
  chosen: ReadonlySet<string>,
): Steps<PassageEntry[]> {
  const conditions = plainConditions(runningClearance);
  const entries: PassageEntry[] = [];
  for (const [i, { id, ring }] of openings.entries()) {
    const its = chosen.has(id);
    const judge = its ? judgePairEntry : judgePair;
    entries.push({ id, chosen: its, fit: judge(prepareOpening(ring), [blank], conditions) });
    yield { done: i + 1, total: openings.length };
  }
  return entries;
}

function placedRings({ openings }: PassageInput, chosen: readonly Chosen[], moves: readonly Point[]) {
  const rings = new Map(openings.map(({ id, ring }) => [id, ring]));
  return chosen.flatMap(({ id }, i) => {
    const ring = rings.get(id);
    return ring ? [{ id, ring, move: moves[i] }] : [];
  });
}

function sizesOf(ring: Ring) {
  const box = boxOf(ring);
  return {
    ring,
    width: box.maxX - box.minX,
    height: box.maxY - box.minY,
    area: regionArea(regionOf(ring)),
    web: measureWeb(ring),
  };
}
