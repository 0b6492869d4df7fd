import type { Point } from '../../src/geom/point.ts';
import { rectangle } from './fit-case.ts';
import { type RandomNumbers, randomNumbers } from './random-numbers.ts';
import { growByMitre, type Notch, roundCorners, type Section, sectionOutline } from './section-outline.ts';

const UM = 1e3;
const THICKNESS = 2000 * UM;
const HEIGHT = 8400 * UM;
const FILLET = 60 * UM;

/** A generated family: outlines of openings and of what is tried in them, nanometres. */
export interface WardFamily {
  readonly openings: readonly Point[][];
  readonly entrants: readonly Point[][];
}

/**
 * A family as a planner would lay it out: 2.0 x 8.4 mm, ward sites by turns left and right, and a different half of the
 * sites with a ward in every opening, so that the base blanks keep each other out (Sperner 1928: of n sites that gives
 * n over n/2 openings). Of the entrants seven in ten are base blanks, most others group blanks with the grooves of a
 * run of openings, then strips, and one blank with a groove at every site, which enters everything.
 *
 * @param size openings, and as many entrants; at most 252.
 * @param vertices about that many a section.
 */
export function wardFamily(seed: number, size: number, vertices: number): WardFamily {
  const random = randomNumbers(seed);
  const sites = sitesFor(size, random);
  const chosen = random.shuffled(halvesOf(sites.length)).slice(0, size);
  const points = Math.max(1, Math.round(vertices / (4 + 2 * sites.length)));
  const gap = 45 * UM;
  const blank = (grooves: ReadonlySet<number>): Point[] =>
    roundCorners(sectionOutline(sectionWith(sites, grooves)), FILLET, points);
  const openings = chosen.map((wards) =>
    roundCorners(growByMitre(sectionOutline(sectionWith(sites, wards)), gap), FILLET, points),
  );
  const bases = chosen.slice(0, Math.ceil(0.7 * size)).map(blank);
  const strips = Array.from({ length: Math.max(1, Math.floor(0.06 * size)) }, () => strip(random));
  const groups = Array.from({ length: size - bases.length - strips.length - 1 }, () => blank(runOf(chosen, random)));
  return { openings, entrants: [...bases, ...groups, ...strips, blank(new Set(sites.keys()))] };
}

/** As few sites as give enough halves, evenly up the blade, each a little out of place. */
function sitesFor(size: number, random: RandomNumbers): Notch[] {
  const count = [4, 6, 8, 10].find((n) => halvesOf(n).length >= size);
  if (count === undefined) throw new RangeError(`no more than 252 openings, not ${size}`);
  const pitch = (HEIGHT - 1200 * UM) / count;
  const width = Math.min(900 * UM, 2 * pitch - 400 * UM);
  return Array.from({ length: count }, (_, i) => ({
    side: i % 2 === 0 ? 'left' : 'right',
    bottom: Math.round(500 * UM + i * pitch + random.between(0, 100 * UM)),
    width: Math.round(width),
    depth: random.whole(500, 650) * UM,
    lean: 0,
  }));
}

/** All ways to choose half of `count` sites. */
function halvesOf(count: number): Set<number>[] {
  const all = Array.from({ length: 2 ** count }, (_, bits) => bits);
  const sets = all.map((bits) => new Set(Array.from({ length: count }, (_, i) => i).filter((i) => (bits >> i) & 1)));
  return sets.filter((set) => set.size === count / 2);
}

function sectionWith(sites: readonly Notch[], used: ReadonlySet<number>): Section {
  return { thickness: THICKNESS, height: HEIGHT, notches: sites.filter((_, i) => used.has(i)) };
}

/** The sites of two to six openings in a row, taken together. */
function runOf(openings: readonly ReadonlySet<number>[], random: RandomNumbers): Set<number> {
  const length = Math.min(openings.length, random.whole(2, 6));
  const from = random.whole(0, openings.length - length);
  return new Set(openings.slice(from, from + length).flatMap((set) => [...set]));
}

function strip(random: RandomNumbers): Point[] {
  return rectangle(0, 0, random.whole(400, 900) * UM, random.whole(5000, 8000) * UM);
}
