import { countWord } from '../../../family/count-word.ts';
import type { Family } from '../../../family/family.ts';
import { bandText, type Units } from '../../../family/length-text.ts';
import type { Fit } from '../../../fit/fit.ts';
import { isOverBed } from '../../../print3d/check-prints.ts';
import type { CheckWeight, DisplaySet, PrintCheck, SolidPart } from '../../../print3d/display-set.ts';
import { printedText } from './block-length.ts';
import type { BlockPair, InsertionRange, PrintedFit } from './block-pair.ts';

const KINDS: readonly SolidPart['kind'][] = ['block', 'coupon', 'board'];

/** "17 parts on 2 beds: 1 block, 15 coupons and 1 board." */
export function setWords({ parts, beds }: DisplaySet): string {
  const all = countsText(KINDS.map((kind) => [parts.filter((part) => part.kind === kind).length, kind]));
  return `${countWord(parts.length, 'part')} on ${countWord(beds, 'bed')}: ${all}.`;
}

/** "1 block, 15 coupons and 1 board": things with their numbers, without those of which there are none. */
function countsText(things: readonly (readonly [count: number, thing: string])[]): string {
  const told = things.filter(([count]) => count > 0).map(([count, thing]) => countWord(count, thing));
  return told.length > 1 ? `${told.slice(0, -1).join(', ')} and ${told.at(-1)}` : told.join('');
}

/** "81 × 42 × 20 mm" as printed. */
export function partSize({ size }: SolidPart, units: Units): string {
  const numbers = size.map((mm) => (units === 'in' ? (mm / 25.4).toFixed(2) : mm.toFixed(0)));
  return `${numbers.join(' × ')} ${units}`;
}

/** "12.4 cm³", what a part needs of plastic where it is filled. */
export function volumeText(cubicMm: number, units: Units): string {
  return units === 'in' ? `${(cubicMm / 25.4 ** 3).toFixed(2)} in³` : `${(cubicMm / 1000).toFixed(1)} cm³`;
}

/** "Board: 230.4 × 180 mm, on a bed of 180 × 180 mm.", for each part that does not go on the bed. */
export function overBedWords({ parts, bed }: Pick<DisplaySet, 'parts' | 'bed'>, units: Units): string[] {
  const over = parts.filter(({ size }) => isOverBed(size, bed));
  return over.map(({ name, size }) => `${name}: ${fieldText(size, units)}, on a bed of ${fieldText(bed, units)}.`);
}

function fieldText([wide, deep]: readonly number[], units: Units): string {
  const text = (mm: number) => String(Number(units === 'in' ? (mm / 25.4).toFixed(2) : mm.toFixed(1)));
  return `${text(wide)} × ${text(deep)} ${units}`;
}

/** What each weight is called. */
export const WEIGHT_WORDS: Readonly<Record<CheckWeight, string>> = {
  fault: 'Fault',
  caution: 'Caution',
  note: 'Note',
};

const ORDER: readonly CheckWeight[] = ['fault', 'caution', 'note'];

/** The checks, what matters most first, else in their order. */
function sortedChecks(checks: readonly PrintCheck[]): readonly PrintCheck[] {
  return ORDER.flatMap((weight) => checks.filter((check) => check.weight === weight));
}

/** "2 faults, 3 cautions and 1 note", or that nothing was found. */
export function checksHeadline(checks: readonly PrintCheck[]): string {
  const counts = ORDER.map((weight) => [checks.filter((check) => check.weight === weight).length, weight] as const);
  return countsText(counts) || 'A printer can make all of it';
}

/** Checks that say the same of several sections, told once. */
export interface ToldChecks {
  readonly weight: CheckWeight;
  /** A sentence. */
  readonly what: string;
  /** A sentence; empty where nothing needs to be done. */
  readonly cure: string;
  /** The sections, each with its place and size in words; those are empty where there are none. */
  readonly about: readonly { readonly subjects: string; readonly where: string }[];
}

/**
 * The checks in sentences, what matters most first; what is the same for several sections is said once.
 *
 * @check tests/unit/app/block-words.test.ts
 */
export function toldChecks(checks: readonly PrintCheck[], family: Family, units: Units): ToldChecks[] {
  const groups = new Map<string, PrintCheck[]>();
  for (const check of sortedChecks(checks)) {
    const key = `${check.weight} ${check.what} ${check.cure}`;
    groups.set(key, [...(groups.get(key) ?? []), check]);
  }
  return [...groups.values()].map((group) => {
    const [{ weight, what, cure }] = group;
    const about = group
      .map((check) => aboutOf(check, family, units))
      .filter(({ subjects, where }) => subjects || where);
    return { weight, what: sentence(what), cure: sentence(cure), about };
  });
}

function aboutOf({ subjects, where, size, limit }: PrintCheck, family: Family, units: Units) {
  const nameOf = (id: string) => family.profiles.find((profile) => profile.id === id)?.name ?? id;
  const place = where ? `${sideWords(where.side)} at ${bandText(where.from, where.to, units)}` : '';
  const against = limit === null ? '' : ` against ${printedText(limit, units, size ?? limit)}`;
  const sizes = size === null ? '' : `${printedText(size, units, limit ?? size)}${against} as printed`;
  return { subjects: subjects.map(nameOf).join(' in '), where: [place, sizes].filter(Boolean).join(', ') };
}

function sideWords(side: 'left' | 'right' | 'bottom' | 'top'): string {
  return side === 'left' || side === 'right' ? `${side} side` : side;
}

function sentence(words: string): string {
  return words === '' ? '' : `${words[0].toUpperCase()}${words.slice(1)}.`;
}

/** What a pair lacks in the set to be tried, and what to do; the empty text where it lacks nothing. */
export function lackWords({ entrant, opening, coupon, frame }: BlockPair): string {
  const lacks = [...(coupon ? [] : [entrant.name]), ...(frame ? [] : [opening.name])];
  if (lacks.length === 0) return '';
  const are = lacks.length === 1 ? 'is' : 'are';
  return `${lacks.join(' and ')} ${are} not in this set. Tick ${lacks.length === 1 ? 'it' : 'them'} in the settings, or pick another.`;
}

/** Where the coupon is, in one sentence. */
export function insertionWords(
  { entrant, opening }: Pick<BlockPair, 'entrant' | 'opening'>,
  range: InsertionRange,
  inserted: number,
  depth: number,
  units: Units,
): string {
  const length = (mm: number) => printedText(mm, units);
  if (inserted < 0) return `${entrant.name} stands before ${opening.name}.`;
  if (range.stops === 0) return `${entrant.name} stops at the face of the block: it does not go into ${opening.name}.`;
  if (inserted < range.whole) return `${entrant.name} is ${length(inserted)} of ${length(range.whole)} in.`;
  const out = range.whole - depth;
  const through = out > 0.005 ? ` ${length(out)} of its blade stand out at the back.` : '';
  return `${entrant.name} is in up to its shoulder, ${length(range.whole)}.${through}`;
}

/** How the scale and the fitting gap change what the sections say. */
export function gapWords(
  verdict: Fit['verdict'],
  { scaled, gap, printed }: PrintedFit,
  scale: number,
  letsIn: boolean,
  units: Units,
): string {
  const length = (mm: number) => printedText(Math.abs(mm), units);
  if (verdict !== 'blocked') {
    const hides =
      gap > scaled ? ' Most of that is the fitting gap: the printed pair feels looser than the real one.' : '';
    return `At ${scale}:1 its least gap becomes ${length(scaled)}; the fitting gap adds ${length(gap)}, so the printed pair keeps ${length(printed)}.${hides}`;
  }
  const start = `At ${scale}:1 the overlap becomes ${length(scaled)}; the fitting gap takes off ${length(gap)}`;
  if (letsIn)
    return `${start}, which is enough: the printed coupon goes in although the blank does not. Take a smaller gap or a larger scale.`;
  return `${start}, so the printed coupon is still stopped${printed < 0 ? `, by ${length(printed)}` : ''}.`;
}
