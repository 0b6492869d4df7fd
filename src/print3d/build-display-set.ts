import { type Family, openingsOf } from '../family/family.ts';
import type { Profile } from '../profile/profile.ts';
import type { CouponFrame, OpeningFrame } from './display-set.ts';
import type { DisplaySetup } from './display-setup.ts';
import { labelParts } from './label-parts.ts';
import { type Bench, makeBlock, makeBoard, makeCoupon } from './make-parts.ts';
import type { NamedPart } from './place-parts.ts';
import { type BlockTile, planBlock } from './plan-block.ts';
import { type BoardPiece, planBoard } from './plan-board.ts';
import { type CouponPlan, planCoupon } from './plan-coupon.ts';

/** How far a piece of work is. */
export interface Done {
  readonly done: number;
  readonly total: number;
}

/** What a set will be made of, before any solid is made. */
export interface DisplayPlan {
  readonly tiles: readonly BlockTile[];
  readonly coupons: readonly CouponPlan[];
  readonly board: readonly BoardPiece[];
  /** What each thing on the board shows. */
  readonly onBoard: readonly (readonly string[])[];
  readonly title: string;
}

/** The solids of a set. */
export interface BuiltParts {
  readonly parts: NamedPart[];
  readonly openingFrames: OpeningFrame[];
  readonly couponFrames: CouponFrame[];
}

/**
 * Lays out the parts of a set.
 *
 * @param setup without faults.
 * @check tests/unit/print3d/build-display-set.test.ts
 */
export function planDisplay(family: Family, setup: DisplaySetup): DisplayPlan {
  const coupons = chosen(family.profiles, setup.blanks).map((profile) => planCoupon(profile, setup));
  const grips = coupons.map(({ grip }) => grip);
  const tiles = planBlock(chosen(openingsOf(family), setup.openings), grips, setup);
  const onBoard = [
    ...tiles.map(({ cells }) => cells.map(({ opening }) => opening.id)),
    ...coupons.map(({ profile }) => [profile.id]),
  ];
  const board = setup.board ? planBoard([...tiles, ...grips], setup) : [];
  return { tiles, coupons, board, onBoard, title: `${family.name}  ${setup.scale}:1` };
}

/** The profiles with these ids, in the order of the ids. */
function chosen(profiles: readonly Profile[], ids: readonly string[]): Profile[] {
  const byId = new Map(profiles.map((profile) => [profile.id, profile]));
  return [...new Set(ids)].flatMap((id) => byId.get(id) ?? []);
}

/**
 * Builds the solids of a set one after the other.
 *
 * @yields after each part.
 * @returns the parts in the order block, coupons, board; a coupon of which nothing is left is missing.
 * @check tests/outside/print3d.test.ts
 */
export function* buildParts(plan: DisplayPlan, bench: Bench): Generator<Done, BuiltParts, void> {
  const built: BuiltParts = { parts: [], openingFrames: [], couponFrames: [] };
  const steps = [
    blockSteps(plan, bench, built),
    couponSteps(plan, bench, built),
    boardSteps(plan, bench, built),
  ].flat();
  for (const [done, step] of steps.entries()) {
    step();
    bench.workshop.clear();
    yield { done: done + 1, total: steps.length };
  }
  return built;
}

function blockSteps({ tiles }: DisplayPlan, bench: Bench, { parts, openingFrames }: BuiltParts) {
  const labels = labelParts(tiles.flatMap(({ cells }) => cells.map(({ opening }) => opening)));
  return tiles.map((tile, i) => () => {
    const [part, frames] = makeBlock(bench, tile, labels);
    openingFrames.push(...frames.map((frame) => ({ ...frame, part: parts.length })));
    parts.push({ ...part, name: numbered('Block', i, tiles.length) });
  });
}

function couponSteps({ coupons }: DisplayPlan, bench: Bench, { parts, couponFrames }: BuiltParts) {
  const labels = labelParts(coupons.map(({ profile }) => profile));
  return coupons.map((plan) => () => {
    const made = makeCoupon(bench, plan, labels);
    if (!made) return;
    const [part, frame] = made;
    const { name, id } = plan.profile;
    couponFrames.push({ ...frame, part: parts.length });
    parts.push({ ...part, name: parts.some((other) => other.name === name) ? `${name} (${id})` : name });
  });
}

function boardSteps({ board, onBoard, title }: DisplayPlan, bench: Bench, { parts }: BuiltParts) {
  return board.map((piece, i) => () => {
    parts.push({ ...makeBoard(bench, piece, onBoard, title), name: numbered('Board', i, board.length) });
  });
}

function numbered(name: string, index: number, of: number): string {
  return of === 1 ? name : `${name} ${index + 1} of ${of}`;
}
