import type { Family } from '../../src/family/family.ts';
import { readFamily } from '../../src/interchange/json/read.ts';
import { type RandomNumbers, randomNumbers } from './random-numbers.ts';

/** A generated family: the file, what it holds, and what must go into what. */
export interface LargeFamily {
  /** The family file, ready to be opened. */
  readonly text: string;
  readonly family: Family;
  /** `goesIn[blank][opening]` by the ward sites alone: every ward of the keyway has its groove on the blank. */
  readonly goesIn: readonly (readonly boolean[])[];
}

/** Ward sites as bits: what a keyway has wards at, or a blank grooves at. */
type Sites = number;

/** Sizes in millimetres; all invented. */
const BLADE = { thickness: 2, height: 9.6 };
const FIRST_SITE = 0.6;
const SITE_WIDTH = 0.7;
const GAP = 0.05;

const BIRDS =
  'Heron Smew Bittern Ruff Plover Knot Curlew Rail Avocet Dunlin Crake Snipe Teal Godwit Stint Grebe Egret Coot Whimbrel Redshank'.split(
    ' ',
  );
const KINDS = 'Great Little Grey Pied Marsh Dusky Pale Northern Tawny Crested'.split(' ');

/**
 * A sound milled family in tiers, every blade described by its grooves.
 *
 * Each keyway has wards at a different half of the ward sites, so that the base blanks keep each other out (Sperner
 * 1928); neighbours in the chart differ in as few sites as they can. About three fifths of the blanks are base blanks;
 * the others have the grooves of some keyways together, most often of a run in the chart, and the last one a groove at
 * every site: it enters all. No two blanks enter the same keyways, but for those asked for by `lengths`.
 *
 * @param openings 2 to 200.
 * @param blanks 3 or more, as many as there are different ones: 120 for 60 openings, 200 for 200.
 * @param lengths how many of the blanks repeat a base blank's outline for another number of chambers.
 * @throws RangeError where there are not so many different blanks.
 */
export function largeFamily(openings: number, blanks: number, { seed = 1, lengths = 0 } = {}): LargeFamily {
  const random = randomNumbers(seed);
  const count = siteCount(openings);
  const keyways = halvesInARow(count).slice(0, openings);
  const bases = keyways.slice(0, Math.max(1, Math.min(openings, Math.round(0.6 * (blanks - lengths)))));
  const groups = groupSites(keyways, count, blanks - lengths - bases.length - 1, random);
  const sites = [...bases, ...groups, 2 ** count - 1, ...bases.slice(0, lengths)];
  const text = JSON.stringify(fileOf(keyways, sites, { bases: bases.length, groups: groups.length, count }), null, 1);
  const read = readFamily(text);
  if (!read.ok) throw new RangeError(JSON.stringify(read.faults.slice(0, 3)));
  const goesIn = sites.map((grooves) => keyways.map((wards) => (wards & ~grooves) === 0));
  return { text, family: read.document.family, goesIn };
}

/** As few ward sites as have enough halves. */
function siteCount(openings: number): number {
  const found = [4, 6, 8, 10].find((count) => halvesInARow(count).length >= openings);
  if (found === undefined || openings < 2 || openings > BIRDS.length * KINDS.length)
    throw new RangeError(`2 to ${BIRDS.length * KINDS.length} openings, not ${openings}`);
  return found;
}

/** All halves of the sites, each next to one that differs in one site taken for another: the revolving door. */
function halvesInARow(count: number): Sites[] {
  const choose = (n: number, k: number): Sites[] => {
    if (k === 0) return [0];
    if (k === n) return [2 ** n - 1];
    return [
      ...choose(n - 1, k),
      ...choose(n - 1, k - 1)
        .reverse()
        .map((set) => set | (1 << (n - 1))),
    ];
  };
  return choose(count, count / 2);
}

/** So many sets of grooves that enter several keyways and not all, no two the same ones. */
function groupSites(keyways: readonly Sites[], count: number, wanted: number, random: RandomNumbers): Sites[] {
  const all = 2 ** count - 1;
  const entered = (grooves: Sites) => keyways.map((wards) => ((wards & ~grooves) === 0 ? 1 : 0)).join('');
  const known = new Set([entered(all), ...keyways.map(entered)]);
  const found: Sites[] = [];
  const take = (grooves: Sites) => {
    if (found.length >= wanted || known.has(entered(grooves))) return;
    known.add(entered(grooves));
    found.push(grooves);
  };
  for (let i = 0; i < 20 * wanted; i++) take(runOf(keyways, random));
  for (const grooves of random.shuffled(Array.from({ length: all }, (_, set) => set)))
    if (keyways.some((wards) => (wards & ~grooves) === 0)) take(grooves);
  if (found.length < Math.max(0, wanted)) throw new RangeError(`no more than ${found.length} different group blanks`);
  return found;
}

/** The sites of two to five keyways in a row, together. */
function runOf(keyways: readonly Sites[], random: RandomNumbers): Sites {
  const length = Math.min(keyways.length, random.whole(2, 5));
  const from = random.whole(0, keyways.length - length);
  return keyways.slice(from, from + length).reduce((sum, set) => sum | set, 0);
}

/** "Heron", "Smew" ..., then "Great Heron" and so on. */
function sectionName(i: number): string {
  const kind = Math.floor(i / BIRDS.length);
  return kind === 0 ? BIRDS[i] : `${KINDS[kind]} ${BIRDS[i % BIRDS.length]}`;
}

function idOf(name: string): string {
  return name.toLowerCase().replaceAll(' ', '-');
}

interface Counts {
  readonly bases: number;
  readonly groups: number;
  readonly count: number;
}

function fileOf(keyways: readonly Sites[], blanks: readonly Sites[], counts: Counts) {
  const openings = keyways.map((wards, i) => ({
    id: `${idOf(sectionName(i))}-keyway`,
    kind: 'opening',
    name: `${sectionName(i)} keyway`,
    section: sectionName(i),
    milled: bladeWith(wards, counts.count, GAP),
  }));
  const blades = blanks.map((grooves, i) => ({
    ...headOf(i, counts),
    kind: 'blank',
    milled: bladeWith(grooves, counts.count, 0),
  }));
  const head = { format: 'sectionary-family', version: 1, name: 'Large invented family', units: 'mm' };
  return { ...head, runningClearance: 0.04, tolerance: 0.01, profiles: [...openings, ...blades] };
}

function headOf(i: number, { bases, groups }: Counts) {
  if (i < bases)
    return {
      id: `${idOf(sectionName(i))}-blank`,
      name: `${sectionName(i)} blank`,
      section: sectionName(i),
      chambers: 5,
    };
  if (i < bases + groups) return { id: `group-${i - bases + 1}-blank`, name: `Group ${i - bases + 1} blank` };
  if (i === bases + groups) return { id: 'all-section-blank', name: 'All-section blank' };
  const section = sectionName(i - bases - groups - 1);
  return { id: `${idOf(section)}-blank-6`, name: `${section} blank, six chambers`, section, chambers: 6 };
}

/** A blade with grooves at some sites, by turns left and right; with a gap, the keyway that leaves it all round. */
function bladeWith(sites: Sites, count: number, gap: number) {
  const pitch = (BLADE.height - 3 * FIRST_SITE - SITE_WIDTH) / (count - 1);
  const used = Array.from({ length: count }, (_, i) => i).filter((i) => (sites >> i) & 1);
  const grooves = used.map((i) => ({
    side: i % 2 === 0 ? 'left' : 'right',
    bottom: inMicrometres(FIRST_SITE + pitch * i + 2 * gap),
    width: inMicrometres(SITE_WIDTH - 2 * gap),
    depth: inMicrometres(0.5 + 0.03 * (i % 4)),
  }));
  return { thickness: BLADE.thickness + 2 * gap, height: BLADE.height + 2 * gap, grooves };
}

function inMicrometres(mm: number): number {
  return Math.round(mm * 1000) / 1000;
}
