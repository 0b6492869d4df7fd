import { readingText, type Units } from '../../../family/length-text.ts';
import { nameList } from '../../../family/name-list.ts';
import { capital } from '../../../gauge/gauge-sentence.ts';
import type { ThicknessCurve } from '../../../gauge/thickness-curve.ts';
import { thicknessAt } from '../../../gauge/thickness-curve.ts';
import { measureWords, rankTightness, type Tightness, withRanks } from '../../../gauge/tightness.ts';
import type { Profile } from '../../../profile/profile.ts';
import { type OutlineSight, sightOf } from '../../../profile/sight-line.ts';
import { spareText } from './gauge-lengths.ts';
import type { TightBy } from './gauge-state.ts';
import { keywayName } from './gauge-words.ts';

/** A keyway in the ranking; lengths in nanometres. */
export interface TightRow extends Tightness {
  readonly opening: Profile;
  /** The thickest strip of the height in hand. */
  readonly most: number;
  readonly sight: OutlineSight;
}

const sights = new WeakMap<Profile, OutlineSight>();

/** The line of sight of a keyway; found once for each. */
export function sightOfOpening(opening: Profile): OutlineSight {
  const known = sights.get(opening) ?? sightOf(opening.ring);
  sights.set(opening, known);
  return known;
}

/**
 * The keyways from tight to wide by a measure; equally tight ones share a rank and keep their order.
 *
 * @param openings those that have a curve, in the order of the curves.
 * @check tests/unit/app/gauge-tightness.test.ts
 */
export function tightRows(
  openings: readonly Profile[],
  curves: readonly ThicknessCurve[],
  by: TightBy,
  height: number,
): TightRow[] {
  const found = new Map(curves.map((curve) => [curve.openingId, curve]));
  const ranked = rankTightness(curves, by === 'height' ? { by, height } : { by: 'mean' });
  const rows = ranked.flatMap((tightness) => {
    const opening = openings.find(({ id }) => id === tightness.openingId);
    const curve = found.get(tightness.openingId);
    return opening && curve
      ? [{ ...tightness, opening, most: thicknessAt(curve, height), sight: sightOfOpening(opening) }]
      : [];
  });
  return by === 'sight' ? rankedBySight(rows) : rows;
}

function rankedBySight(rows: readonly TightRow[]): TightRow[] {
  const sorted = [...rows].sort((a, b) => a.sight.strip - b.sight.strip);
  return withRanks(sorted, (row) => row.sight.strip).map((row) => ({ ...row, measure: row.sight.strip }));
}

/** The place of a keyway from tight to wide: "2"; "=2" where others have it too. */
export function rankText({ rank }: TightRow, rows: readonly TightRow[]): string {
  return sharing(rank, rows).length > 1 ? `=${rank}` : String(rank);
}

/** The same for its reading: "2 of 10", "2 of 10, shared by 3". */
export function placeText({ rank }: TightRow, rows: readonly TightRow[]): string {
  const { length } = sharing(rank, rows);
  return `${rank} of ${rows.length}${length > 1 ? `, shared by ${length}` : ''}`;
}

function sharing(rank: number, rows: readonly TightRow[]): readonly TightRow[] {
  return rows.filter((row) => row.rank === rank);
}

/** What a measure means, for the reader. */
export function tightWords(by: TightBy, heightText: string): string {
  if (by === 'sight')
    return 'By the line of sight: how wide an upright gap one can look straight through, past wards, steps and leaning walls. Below 0 the wards of both sides pass each other by so much.';
  const measure = by === 'height' ? ({ by, height: 0 } as const) : ({ by: 'mean' } as const);
  return measureWords(measure, () => heightText);
}

/** The line of sight in figures: "0.550 mm wide", "none, wards pass by 0.120 mm", "none". */
export function sightText({ strip }: OutlineSight, units: Units): string {
  if (strip === 0) return 'none';
  return strip > 0 ? readingText(strip, units) : `none, wards pass by ${readingText(strip, units)}`;
}

/** How far the longest ward reaches past the centre line: "+0.210 mm from the left", "no, 0.110 mm short". */
export function reachText({ left, right, paracentric }: OutlineSight, units: Units): string {
  const most = Math.max(left, right);
  if (!paracentric) return `no, ${readingText(most, units)} short`;
  return `${spareText(most, units)} from the ${left >= right ? 'left' : 'right'}`;
}

/** The keyway in words, for its reading. */
export function sightWords({ name }: Profile, sight: OutlineSight, units: Units): string {
  const { left, right, strip, paracentric } = sight;
  const see = seeWords(name, strip, units);
  if (!paracentric) return `${see}. It is not paracentric: no ward reaches past the upright centre line.`;
  const sides = [
    left > 0 ? `from the left by ${readingText(left, units)}` : '',
    right > 0 ? `from the right by ${readingText(right, units)}` : '',
  ].filter(Boolean);
  return `${see}. It is paracentric: a ward reaches past the upright centre line ${sides.join(' and ')}.`;
}

function seeWords(name: string, strip: number, units: Units): string {
  if (strip > 0) return `One can look straight through ${name} along an upright gap ${readingText(strip, units)} wide`;
  if (strip === 0) return `One cannot look straight through ${name}: its walls leave no upright gap`;
  return `One cannot look straight through ${name}: its wards pass each other by ${readingText(strip, units)}`;
}

/** Who is tightest and who is widest, in one line. */
export function tightHeadline(rows: readonly TightRow[], by: TightBy, heightText: string, tilted?: string): string {
  const [first] = rows;
  const last = rows.at(-1);
  if (!first || !last) return 'No keyway is gauged yet';
  const tilt = tilted === undefined ? '' : ` tilted ${tilted}`;
  const what = {
    height: ` for a strip ${heightText} tall${tilt}`,
    mean: ` over all heights${tilt}`,
    sight: ' to look through',
  }[by];
  if (rows.length === 1) return `${keywayName(first.opening)}${what}`;
  if (last.rank === 1) return `All ${rows.length} keyways are equally tight${what}`;
  const [tight, wide] = [sharing(first.rank, rows), sharing(last.rank, rows)];
  return `${capital(theKeyways(tight))} ${tight.length > 1 ? 'are' : 'is'} the tightest${what}, ${theKeyways(wide)} the widest`;
}

/** Most keyways that a headline names. */
const MOST_NAMED = 3;

/** "the Heron keyway", "the Heron keyway and the Smew keyway alike", "4 keyways alike". */
function theKeyways(rows: readonly TightRow[]): string {
  if (rows.length > MOST_NAMED) return `${rows.length} keyways alike`;
  const names = nameList(rows.map(({ opening }) => `the ${keywayName(opening)}`));
  return rows.length > 1 ? `${names} alike` : names;
}
