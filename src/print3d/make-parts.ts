import type { CouponFrame, OpeningFrame, PartKind } from './display-set.ts';
import type { DisplaySetup } from './display-setup.ts';
import type { LabelTexts } from './label-parts.ts';
import { isClosed } from './measure-surface.ts';
import type { BlockTile } from './plan-block.ts';
import type { BoardPiece } from './plan-board.ts';
import { type CouponPlan, SLOT_DEPTH } from './plan-coupon.ts';
import { fitLetters, type LetterLine, type LetterSource, RAISED } from './raise-letters.ts';
import { roundedRectangle } from './rounded-rectangle.ts';
import { bladeLoops, holeLoop, printedBox } from './section-loops.ts';
import type { Loop, Solid, SolidWorkshop, Surface } from './solids.ts';

/** What parts are made with. */
export interface Bench {
  readonly workshop: SolidWorkshop;
  readonly setup: DisplaySetup;
  /** Null where the set has no letters. */
  readonly letters: LetterSource | null;
}

/** What stands raised on parts of one kind, and the size that their letters have in common, millimetres. */
export interface Labels {
  readonly texts: LabelTexts;
  readonly size: number;
}

/** A part before it has its place on the bed. */
export interface MadePart {
  readonly kind: PartKind;
  readonly subjects: readonly string[];
  readonly surface: Surface;
  /** Every line of letters on it, with what it is about. */
  readonly lines: readonly (LetterLine & { readonly subject: string | null })[];
}

/** Radius of the upright edges, millimetres. */
const ROUND = 2;

/** What is left under the slots of the board, millimetres. */
const BOARD_FLOOR = 3;

/** So many openings' letters are joined to a block at once: in about a tenth of a second. */
const JOINED_AT_ONCE = 8;

/** How often {@link makeBlock} pauses: at each line of letters, at each joining, and before the end. */
export function pausesInBlock({ letters }: Bench, { cells }: BlockTile): number {
  return (letters ? cells.length : 0) + Math.ceil(cells.length / JOINED_AT_ONCE) + 1;
}

/**
 * One part of the block: a rounded plate with openings right through, names raised on its front, which lies up.
 *
 * @yields where it may be stopped.
 * @returns the part, and where its openings are; their part number is 0.
 * @check tests/outside/print3d.test.ts
 */
export function* makeBlock(
  bench: Bench,
  tile: BlockTile,
  labels: Labels,
): Generator<void, [MadePart, OpeningFrame[]], void> {
  const { workshop, setup } = bench;
  const holes = tile.cells.map(({ opening, origin }) => holeLoop(opening.ring, setup.scale, origin));
  const plate = roundedRectangle(0, 0, tile.width, tile.depth, ROUND);
  const base = workshop.prism([plate, ...holes], 0, setup.blockDepth);
  const lines: MadePart['lines'][number][] = [];
  let solid = workshop.settled(base);
  for (let from = 0; from < tile.cells.length; from += JOINED_AT_ONCE) {
    const letters: Solid[][] = [];
    for (const cell of tile.cells.slice(from, from + JOINED_AT_ONCE)) {
      const line = openingLine(bench, cell, labels);
      if (!line) continue;
      yield;
      lines.push({ ...line, subject: cell.opening.id });
      letters.push(flatLetters(workshop, line.outlines, setup.blockDepth));
    }
    yield;
    solid = workshop.settled(withLetters(workshop, solid, letters));
  }
  yield;
  const frames = tile.cells.map(
    ({ opening, origin: [x, y] }): OpeningFrame => ({
      ...{ opening: opening.id, part: 0, at: [x, y, setup.blockDepth], depth: setup.blockDepth },
    }),
  );
  const subjects = tile.cells.map(({ opening }) => opening.id);
  return [{ kind: 'block', subjects, surface: workshop.surface(solid), lines }, frames];
}

function openingLine({ letters }: Bench, { opening, label }: BlockTile['cells'][number], { texts, size }: Labels) {
  const { x, y, width } = label;
  return letters && fitLetters(letters, texts.get(opening.id) ?? opening.name, { width, size }, [x, y]);
}

function flatLetters(workshop: SolidWorkshop, outlines: readonly Loop[], top: number): Solid[] {
  return outlines.length > 0 ? [workshop.letters(outlines, top - RAISED.in, top + RAISED.out)] : [];
}

function withLetters(workshop: SolidWorkshop, base: Solid, letters: readonly (readonly Solid[])[]): Solid {
  const all = letters.flat();
  return all.length > 0 ? workshop.joined([base, ...all]) : base;
}

/**
 * A coupon: a grip on the bed, the blade on it with its tip up, the fitting gap taken off, its name raised on the grip's
 * right side.
 *
 * @returns the part and its frame, part number 0; null where the gap leaves nothing of the blade.
 * @check tests/outside/print3d.test.ts
 */
export function makeCoupon(bench: Bench, plan: CouponPlan, labels: Labels): [MadePart, CouponFrame] | null {
  const { profile, gripLength, bladeLength, origin } = plan;
  const line = bench.letters && gripLine(bench.letters, plan, labels);
  const surface = couponSurface(bench, plan, line?.outlines ?? []);
  if (!surface) return null;
  const frame: CouponFrame = {
    ...{ profile: profile.id, part: 0, at: [origin[0], origin[1], gripLength], bladeLength, gripLength },
  };
  const lines = line ? [{ ...line, subject: profile.id }] : [];
  return [{ kind: 'coupon', subjects: [profile.id], surface, lines }, frame];
}

/**
 * What is taken off a blade and its tip besides, one after the other, where by chance it touches itself: the gap closes a
 * web to nothing, or a slant of the tip goes through a corner. Millimetres; far below what a printer makes.
 */
const NUDGES = [0, 0.0013, 0.0029];

function couponSurface(bench: Bench, plan: CouponPlan, outlines: readonly Loop[]): Surface | null {
  const { workshop, setup } = bench;
  const { grip, gripLength } = plan;
  const base = workshop.prism([roundedRectangle(0, 0, grip.width, grip.depth, ROUND)], 0, gripLength);
  const letters = flatLetters(workshop, outlines, 0).map((solid) =>
    workshop.moved(workshop.stood(solid), [grip.width, 0, 0]),
  );
  let surface: Surface | null = null;
  for (const nudge of NUDGES) {
    const blade = bladeOf(bench, plan, nudge);
    if (!blade) return surface;
    surface = workshop.surface(workshop.joined([base, tipped(workshop, blade, plan, setup.scale, nudge), ...letters]));
    if (isClosed(surface)) return surface;
  }
  return surface;
}

/** The blade of a coupon as a prism; null where nothing is left of it. */
function bladeOf({ workshop, setup }: Bench, { profile, origin, gripLength, bladeLength }: CouponPlan, nudge: number) {
  const loops = bladeLoops(profile.ring, setup.scale, setup.gap + nudge, origin);
  // The blade reaches into the grip: what only touches is not one solid.
  return loops.length > 0 ? workshop.prism(loops, gripLength / 2, gripLength + bladeLength) : null;
}

/** The name on a grip, above what stands in the board. */
function gripLine(letters: LetterSource, plan: CouponPlan, labels: Labels): LetterLine {
  const { grip, gripLength, profile } = plan;
  const room = { width: gripRoom(plan), size: labels.size };
  const text = labels.texts.get(profile.id) ?? profile.name;
  return fitLetters(letters, text, room, [grip.depth / 2, (SLOT_DEPTH + gripLength) / 2]);
}

/** How wide the letters on a grip may be, millimetres. */
export function gripRoom({ grip }: CouponPlan): number {
  return grip.depth - 2 * ROUND;
}

/** A blade whose tip slants at 45 degrees from its back and from its top. */
function tipped(workshop: SolidWorkshop, blade: Solid, plan: CouponPlan, scale: number, nudge: number): Solid {
  if (plan.tip.taken === 0) return blade;
  const taken = plan.tip.taken + 3 * nudge;
  const { minY, maxY } = printedBox(plan.profile.ring, scale);
  const [low, high] = [plan.origin[1] - maxY, plan.origin[1] - minY];
  const end = plan.gripLength + plan.bladeLength;
  // The slants go on past the blade, so that no face of it lies in one of this.
  const past = (high - low - 2 * taken) / 4;
  const side: Loop = [
    [low - 1, 0],
    [high + 1, 0],
    [high + 1, end - taken - 1],
    [high - taken - past, end + past],
    [low + taken + past, end + past],
    [low - 1, end - taken - 1],
  ];
  return workshop.within(blade, workshop.stood(workshop.prism([side], -1, plan.grip.width + 1)));
}

/**
 * A piece of the board: a rounded plate with slots from above, and a title raised on its front edge.
 *
 * @param subjects of each thing that stands on the board.
 * @check tests/outside/print3d.test.ts
 */
export function makeBoard(
  bench: Bench,
  piece: BoardPiece,
  subjects: readonly (readonly string[])[],
  title: string,
): MadePart {
  const { workshop, setup } = bench;
  const top = BOARD_FLOOR + SLOT_DEPTH;
  const plate = workshop.prism([roundedRectangle(0, 0, piece.width, piece.depth, ROUND)], 0, top);
  const slots = piece.slots.map(({ x, y, width, depth }) => {
    const loop = roundedRectangle(x, y, width, depth, ROUND - setup.gap);
    return workshop.prism([loop], BOARD_FLOOR, top + 1);
  });
  const room = { width: piece.width - 2 * ROUND, size: setup.letterSize };
  const middle = [piece.width / 2, (setup.wall + piece.strip) / 2] as const;
  const line = bench.letters && fitLetters(bench.letters, title, room, middle);
  const cut = workshop.without(plate, slots);
  const solid = withLetters(workshop, cut, line ? [flatLetters(workshop, line.outlines, top)] : []);
  return {
    kind: 'board',
    subjects: piece.slots.flatMap(({ holds }) => subjects[holds]),
    surface: workshop.surface(solid),
    lines: line ? [{ ...line, subject: null }] : [],
  };
}
