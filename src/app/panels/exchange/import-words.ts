import { gapText, type Units } from '../../../family/length-text.ts';
import type { OutlineFaultKind } from '../../../geom/check-outline.ts';
import type { DrawnLoop } from '../../../interchange/take-outline.ts';
import { DRAWING_UNITS } from '../../state/exchange/import-state.ts';
import { NM_OF_UNIT } from '../../tools/ruler-steps.ts';

/** What is to be known of a loop before it is taken, each in a sentence; `bad` where it cannot be taken at all. */
export interface LoopWord {
  readonly words: string;
  readonly bad: boolean;
}

const FAULT_WORDS: Readonly<Record<OutlineFaultKind, string>> = {
  'self-crossing': 'Crosses itself',
  'self-touching': 'Touches itself',
  'repeated-vertex': 'Comes back to one of its own corners',
  'zero-area': 'Encloses nothing at this scale',
  'too-large': 'Too large for a section at this scale',
  'too-few-vertices': 'Encloses nothing at this scale',
  'too-many-vertices': 'Has more than 10,000 corners',
  'too-jagged': 'Is jagged all over: it needs more than 1,000 corners',
  'not-finite': 'Has coordinates that are no numbers',
};

/** All that is to be known of one loop, the worst first. */
export function loopWords(loop: DrawnLoop, loops: readonly DrawnLoop[], units: Units): LoopWord[] {
  const number = loops.indexOf(loop);
  const words: LoopWord[] = [];
  const say = (text: string, bad = false) => words.push({ words: text, bad });
  if (loop.fault) say(faultWords(loop.fault, units), true);
  if (loop.gaps.length > 0) say(gapWords(loop.gaps, units));
  if (loop.repeats > 0) say(`Drawn ${loop.repeats + 1} times in one place; taken once.`);
  if (loop.inside !== null)
    say(`Lies inside number ${loop.inside + 1}. A hole cannot be kept; ticked, it becomes a section of its own.`);
  const held = loops.filter(({ inside }) => inside === number).length;
  if (held > 0) say(`Holds ${held === 1 ? 'another loop' : `${held} other loops`}, not kept as a hole.`);
  return words;
}

function faultWords({ kind, at }: NonNullable<DrawnLoop['fault']>, units: Units): string {
  const place =
    at && kind !== 'too-large' ? `, ${coordinate(at.x, units)} from its left and ${coordinate(at.y, units)} up` : '';
  return `${FAULT_WORDS[kind]}${place}. It cannot be taken.`;
}

function gapWords(gaps: readonly number[], units: Units): string {
  const longest = gapText(gaps[0], units);
  if (gaps.length === 1) return `Open. Ticked, its gap of ${longest} is closed by a straight line.`;
  return `Open in ${gaps.length} places. Ticked, they are closed by straight lines, the longest ${longest}.`;
}

function coordinate(nm: number, units: Units): string {
  return units === 'in' ? `${(nm / NM_OF_UNIT.in).toFixed(3)} in` : `${(nm / NM_OF_UNIT.mm).toFixed(2)} mm`;
}

/** Nanometres in a unit, in words: "1 unit is 1 millimetre". */
export function scaleWords(nmPerUnit: number): string {
  const known = DRAWING_UNITS.find(({ nm }) => Math.abs(nm - nmPerUnit) < nm * 1e-9);
  return known ? known.name : `1 unit is ${Number((nmPerUnit / NM_OF_UNIT.mm).toPrecision(6))} mm`;
}

/** "1 section", "3 sections". */
export function countWords(n: number, one: string, more = `${one}s`): string {
  return `${n} ${n === 1 ? one : more}`;
}
