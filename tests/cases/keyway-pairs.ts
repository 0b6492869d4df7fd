import type { Point } from '../../src/geom/point.ts';
import { type FitCase, type KnownFit, plainOpening } from './fit-case.ts';
import { type RandomNumbers, randomNumbers } from './random-numbers.ts';
import { randomSection } from './random-section.ts';
import { growByMitre, type Notch, roundCorners, type Section, sectionOutline } from './section-outline.ts';
import { isSimpleOutline } from './simple-outline.ts';

const UM = 1e3;
/** Fillet radius of every corner, small enough that no edge cuts it short. */
const FILLET = 90 * UM;

/** Roughly how many vertices a generated outline should have. */
export type VertexCount = 20 | 60 | 120;

/** What was done to the opening after it was made to suit the blank. */
type Alteration = (section: Section, random: RandomNumbers) => Section;

/**
 * A blank and an opening as they meet on a bench: the opening is the blank's own section opened up by a gap
 * of 10-60 um with some wards left out; in half of the pairs one or two things are then
 * changed (a ward added, moved, deepened or widened, the whole keyway thinner or lower, another section
 * altogether), so that about half of all pairs go in. What comes out crossing itself is drawn again.
 */
export function keywayPair(seed: number, vertices: VertexCount): FitCase {
  const random = randomNumbers(seed * 3 + vertices);
  for (;;) {
    const pair = drawnPair(`keyway pair ${seed} at ${vertices}`, vertices, random);
    if (isSimpleOutline(pair.blank) && isSimpleOutline(pair.opening.outer)) return pair;
  }
}

function drawnPair(name: string, vertices: VertexCount, random: RandomNumbers): FitCase {
  const shape = notchShape(random, vertices);
  const blank = randomSection(random, shape.notches, 'any');
  const gap = random.whole(10, 60) * 1000 + random.whole(0, 999);
  const altered = random.chance(0.52);
  const section = altered ? alteredSection(blank, shape.notches, random) : withoutSomeWards(blank, random);
  const outline = sectionOutline(blank);
  return {
    name,
    blank: roundCorners(outline, FILLET, shape.pointsPerCorner),
    opening: plainOpening(
      moved(roundCorners(growByMitre(sectionOutline(section), gap), FILLET, shape.pointsPerCorner), random),
    ),
    known: altered ? {} : openedUp(gap, blank),
    why: altered
      ? 'altered after opening up: nothing is known'
      : `opened up by ${gap} nm all round; the height leaves no more than that`,
  };
}

/** Grooves and points per corner that give about `vertices` vertices. */
function notchShape(random: RandomNumbers, vertices: VertexCount): { notches: number; pointsPerCorner: number } {
  const notches = vertices === 20 ? random.whole(3, 5) : random.whole(3, 8);
  return { notches, pointsPerCorner: Math.max(1, Math.round(vertices / (4 + 4 * notches))) };
}

/** The clearance is the gap: never less by construction, and not more because the heights differ by twice the gap. */
function openedUp(gap: number, blank: Section): KnownFit {
  const square = blank.notches.every((n) => n.lean === 0);
  return square ? { outcome: 'fits', clearance: gap, within: 2 } : { outcome: 'fits' };
}

function moved(outline: readonly Point[], random: RandomNumbers): Point[] {
  const by = { x: random.whole(-5e6, 5e6), y: random.whole(-5e6, 5e6) };
  return outline.map((p) => ({ x: p.x + by.x, y: p.y + by.y }));
}

function withoutSomeWards(section: Section, random: RandomNumbers): Section {
  return { ...section, notches: section.notches.filter(() => random.chance(0.75)) };
}

function alteredSection(blank: Section, notches: number, random: RandomNumbers): Section {
  if (random.chance(0.08))
    return { ...randomSection(random, notches, 'any'), thickness: blank.thickness, height: blank.height };
  let section = withoutSomeWards(blank, random);
  for (let left = random.whole(1, 2); left > 0; left--) section = random.pick(ALTERATIONS)(section, random);
  return section;
}

const ALTERATIONS: readonly Alteration[] = [
  (section, random) => ({ ...section, thickness: section.thickness - random.whole(20, 250) * UM }),
  (section, random) => ({ ...section, height: section.height - random.whole(20, 250) * UM }),
  changedNotch((notch, random) => ({ ...notch, depth: notch.depth + random.whole(10, 350) * UM })),
  changedNotch((notch, random) => ({
    ...notch,
    bottom: notch.bottom + random.pick([-1, 1]) * random.whole(10, 250) * UM,
  })),
  changedNotch((notch, random) => ({ ...notch, width: notch.width + random.whole(10, 250) * UM })),
  addedWard,
];

function changedNotch(change: (notch: Notch, random: RandomNumbers) => Notch): Alteration {
  return (section, random) => {
    if (section.notches.length === 0) return section;
    const chosen = random.pick(section.notches);
    return { ...section, notches: section.notches.map((n) => (n === chosen ? change(n, random) : n)) };
  };
}

/** A ward at the top of a face, where no generated notch reaches. */
function addedWard(section: Section, random: RandomNumbers): Section {
  const ward: Notch = {
    side: random.pick(['left', 'right']),
    bottom: section.height - 450 * UM,
    width: 250 * UM,
    depth: random.whole(20, 600) * UM,
    lean: 0,
  };
  return { ...section, notches: [...section.notches, ward] };
}

/** What pinches in a near-contact pair. */
type Pinch = 'all round' | 'across' | 'upwards';

/** Margins that near-contact pairs go through before they turn random. */
const EXACT_MARGINS = [0, 1, -1, 2, -2, 50, -50];

/**
 * A pair whose true margin is known by construction and lies within 2 um of contact, exact contact and one
 * nanometre either side included. Three kinds: the opening is the blank opened up by the margin all round
 * (negative: closed in); or it is opened up by a comfortable gap g and one ward is then pushed g - margin twice
 * over towards the blank, across or upwards, so that the best placement leaves just the margin.
 */
export function nearContactPair(seed: number, vertices: VertexCount): FitCase {
  const random = randomNumbers(seed * 5 + vertices + 1);
  const shape = notchShape(random, vertices);
  const blank = randomSection(random, shape.notches, 'square');
  const margin = seed % 2 === 0 ? EXACT_MARGINS[(seed / 2) % EXACT_MARGINS.length] : random.whole(-2000, 2000);
  const pinched = random.chance(0.67) ? pinchedOpening(blank, margin, random) : null;
  const sharp = pinched?.outline ?? growByMitre(sectionOutline(blank), margin);
  const pinch = pinched?.pinch ?? 'all round';
  return {
    name: `near-contact pair ${seed} at ${vertices}`,
    blank: roundCorners(sectionOutline(blank), FILLET, shape.pointsPerCorner),
    opening: plainOpening(moved(roundCorners(sharp, FILLET, shape.pointsPerCorner), random)),
    known: knownMargin(margin, pinch, shape.pointsPerCorner > 1),
    why: `pinched ${pinch}, margin ${margin} nm by construction`,
  };
}

/**
 * Sharp outlines are exact. With fillets, rounding to whole nanometres moves either outline by less than 1 nm.
 * Closed in all round, a square corner stands out by the margin times the root of two, a filleted one by
 * something between that and the margin.
 */
function knownMargin(margin: number, pinch: Pinch, filleted: boolean): KnownFit {
  const rounding = filleted ? 2 : 0;
  const outcome = outcomeOfMargin(margin, rounding);
  if (margin >= 0) return { outcome, clearance: margin, within: rounding };
  if (pinch !== 'all round') return { outcome, interference: -margin, within: rounding };
  if (!filleted) return { outcome, interference: -margin * Math.SQRT2, within: 0 };
  const middle = (1 + Math.SQRT2) / 2;
  return { outcome, interference: -margin * middle, within: rounding - margin * (middle - 1) };
}

/** Undefined where rounding may turn it. */
function outcomeOfMargin(margin: number, rounding: number): KnownFit['outcome'] {
  if (Math.abs(margin) <= rounding) return rounding === 0 ? 'contact' : undefined;
  return margin > 0 ? 'fits' : 'blocked';
}

/** The blank opened up by 15-60 um with one ward pushed until `margin` is left, or null where none pinches cleanly. */
function pinchedOpening(
  blank: Section,
  margin: number,
  random: RandomNumbers,
): { outline: Point[]; pinch: Pinch } | null {
  const gap = random.whole(15, 60) * UM;
  const pinch = random.pick<Pinch>(['across', 'upwards']);
  const able = blank.notches.filter((n) => (pinch === 'across' ? standsAlone(n, blank) : isTopmost(n, blank)));
  if (able.length === 0) return null;
  const chosen = random.pick(able);
  const wards = blank.notches.map((n) => (n === chosen ? pushedNotch(n, pinch, 2 * (gap - margin)) : n));
  return { outline: growByMitre(sectionOutline({ ...blank, notches: wards }), gap), pinch };
}

function pushedNotch(notch: Notch, pinch: Pinch, push: number): Notch {
  return pinch === 'across' ? { ...notch, depth: notch.depth + push } : { ...notch, bottom: notch.bottom + push };
}

/** Nothing is milled opposite: the web there is the full thickness less the one groove. */
function standsAlone(notch: Notch, section: Section): boolean {
  const apart = 200 * UM;
  const facing = section.notches.filter((n) => n.side !== notch.side);
  return facing.every(
    (n) => n.bottom > notch.bottom + notch.width + apart || n.bottom + n.width + apart < notch.bottom,
  );
}

/** Between the groove and the top of the blade the face is plain. */
function isTopmost(notch: Notch, section: Section): boolean {
  return section.notches.every((n) => n.side !== notch.side || n.bottom <= notch.bottom);
}
