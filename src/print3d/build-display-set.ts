import { type Family, openingsOf } from '../family/family.ts';
import { firstFree } from '../family/first-free.ts';
import type { Profile } from '../profile/profile.ts';
import { checkCoupon, checkOpening } from './check-features.ts';
import { checkGap } from './check-gap.ts';
import { checkBed, checkLetters, checkSetup } from './check-prints.ts';
import type { CouponFrame, DisplaySet, OpeningFrame, PrintCheck } from './display-set.ts';
import type { DisplaySetup } from './display-setup.ts';
import { labelParts } from './label-parts.ts';
import { type Bench, gripRoom, type Labels, makeBlock, makeBoard, makeCoupon, pausesInBlock } from './make-parts.ts';
import { type NamedPart, placeParts } from './place-parts.ts';
import { type BlockTile, planBlock } from './plan-block.ts';
import { type BoardPiece, planBoard } from './plan-board.ts';
import { type CouponPlan, planCoupon } from './plan-coupon.ts';
import { commonSize } from './raise-letters.ts';

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
 * Builds a set: first its solids, then what is to be known before they are printed.
 *
 * @param setup without faults, see `display-setup`.
 * @yields within and after each part that is built, after each pair and each line of letters that is checked.
 * @check tests/unit/print3d/build-display-set.test.ts
 */
export function* buildSet(family: Family, bench: Bench): Generator<Done, DisplaySet, void> {
  const { setup } = bench;
  const plan = planDisplay(family, setup);
  const openings = plan.tiles.flatMap(({ cells }) => cells.map(({ opening }) => opening));
  const toBuild = plan.tiles.length + plan.coupons.length + plan.board.length;
  const toCheck = openings.length + plan.coupons.length * (1 + openings.length);
  const lines = bench.letters ? openings.length + plan.coupons.length + plan.board.length : 0;
  const building = toBuild + plan.tiles.reduce((sum, tile) => sum + pausesInBlock(bench, tile), 0);
  const total = building + toCheck + lines;
  const { parts: made, ...frames } = yield* countedOn(buildParts(plan, bench), 0, total);
  const { checks: unsound, ...placed } = placeParts(made, setup);
  const checking = checkSections(plan, openings, setup);
  const sections = yield* countedOn(checking, building, total);
  const letters = yield* countedOn(checkAllLetters(made, bench), building + toCheck, total);
  const checks = [...checkSetup(setup), ...unsound, ...checkBed(placed.parts, setup), ...sections, ...letters];
  return { ...placed, ...frames, checks: byWeight(checks), bed: setup.bed, scale: setup.scale };
}

/** Steps of a part of the work, told as steps of the whole. */
function* countedOn<Result>(
  steps: Generator<unknown, Result, void>,
  before: number,
  total: number,
): Generator<Done, Result, void> {
  for (let done = before + 1; ; done++) {
    const step = steps.next();
    if (step.done) return step.value;
    yield { done, total };
  }
}

/** Features that vanish, and what the gap does to the verdicts. */
function* checkSections({ coupons }: DisplayPlan, openings: readonly Profile[], setup: DisplaySetup) {
  const checks: PrintCheck[] = [];
  for (const opening of openings) {
    checks.push(...checkOpening(opening, setup));
    yield;
  }
  for (const { profile } of coupons) {
    checks.push(...checkCoupon(profile, setup));
    yield;
    checks.push(...(yield* checkGap(profile, openings, setup)));
  }
  return checks;
}

/** Names that come out too small, or with a box. */
function* checkAllLetters(parts: readonly NamedPart[], { letters, setup }: Bench) {
  const checks: PrintCheck[] = [];
  if (!letters) return checks;
  for (const part of parts)
    for (const line of part.lines) {
      checks.push(...checkLetters({ lines: [line] }, letters, setup));
      yield;
    }
  return checks;
}

const WEIGHTS: readonly PrintCheck['weight'][] = ['fault', 'caution', 'note'];

/** The gravest first. */
function byWeight(checks: readonly PrintCheck[]): PrintCheck[] {
  return WEIGHTS.flatMap((weight) => checks.filter((check) => check.weight === weight));
}

/**
 * Builds the solids of a set one after the other.
 *
 * @yields after each part, and several times while a block is made.
 * @returns the parts in the order block, coupons, board; a coupon of which nothing is left is missing.
 * @check tests/outside/print3d.test.ts
 */
export function* buildParts(plan: DisplayPlan, bench: Bench): Generator<Done, BuiltParts, void> {
  const built: BuiltParts = { parts: [], openingFrames: [], couponFrames: [] };
  const steps: PartStep[] = [
    blockSteps(plan, bench, built),
    couponSteps(plan, bench, built),
    boardSteps(plan, bench, built),
  ].flat();
  for (const [done, step] of steps.entries()) {
    const making = step();
    while (making && !making.next().done) yield { done, total: steps.length };
    bench.workshop.clear();
    yield { done: done + 1, total: steps.length };
  }
  return built;
}

/** Makes one part, at once or in pieces. */
type PartStep = () => Generator<void, void, void> | undefined;

function blockSteps({ tiles }: DisplayPlan, bench: Bench, { parts, openingFrames }: BuiltParts): PartStep[] {
  const cells = tiles.flatMap((tile) => tile.cells);
  const rooms = cells.map(({ opening, label }) => ({ profile: opening, width: label.width }));
  const labels = labelsOf(rooms, bench);
  return tiles.map(
    (tile, i) =>
      function* () {
        const [part, frames] = yield* makeBlock(bench, tile, labels);
        openingFrames.push(...frames.map((frame) => ({ ...frame, part: parts.length })));
        parts.push({ ...part, name: freeName(parts, numbered('Block', i, tiles.length)) });
      },
  );
}

function couponSteps({ coupons }: DisplayPlan, bench: Bench, { parts, couponFrames }: BuiltParts): PartStep[] {
  const rooms = coupons.map((plan) => ({ profile: plan.profile, width: gripRoom(plan) }));
  const labels = labelsOf(rooms, bench);
  return coupons.map((plan) => () => {
    const made = makeCoupon(bench, plan, labels);
    if (!made) return undefined;
    const [part, frame] = made;
    const { name, id } = plan.profile;
    couponFrames.push({ ...frame, part: parts.length });
    parts.push({ ...part, name: freeName(parts, name, id) });
    return undefined;
  });
}

/** The words of parts of one kind, and how large they are. */
function labelsOf(rooms: readonly { profile: Profile; width: number }[], { letters, setup }: Bench): Labels {
  const texts = labelParts(rooms.map(({ profile }) => profile));
  const lines = rooms.map(({ profile, width }) => ({ width, text: texts.get(profile.id) ?? profile.name }));
  return { texts, size: letters ? commonSize(letters, lines, setup.letterSize) : setup.letterSize };
}

function boardSteps({ board, onBoard, title }: DisplayPlan, bench: Bench, { parts }: BuiltParts): PartStep[] {
  return board.map((piece, i) => () => {
    parts.push({
      ...makeBoard(bench, piece, onBoard, title),
      name: freeName(parts, numbered('Board', i, board.length)),
    });
    return undefined;
  });
}

/** A name that no part has yet: with the id behind it where another part has it, then with a number. */
function freeName(parts: readonly { readonly name: string }[], name: string, id = ''): string {
  const names = id === '' ? [name] : [name, `${name} (${id})`];
  return firstFree(
    parts.map((part) => part.name),
    (n) => names[n - 1] ?? `${name} ${n}`,
  );
}

function numbered(name: string, index: number, of: number): string {
  return of === 1 ? name : `${name} ${index + 1} of ${of}`;
}
