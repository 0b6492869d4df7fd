import { numberWord } from '../family/count-word.ts';
import { nameList } from '../family/name-list.ts';
import type { FormatBand, FormatLength } from '../fit/fit-sentence.ts';
import type { GaugeAnswer, Setter } from './gauge-answer.ts';

/** How the parts of the answer are written. */
export interface GaugeWords {
  /** A keyway as it stands in a sentence: "Marsh keyway". */
  nameOf(openingId: string): string;
  /** A thickness, unit included; one that is the most that goes in is never to be rounded up. */
  readonly thickness: FormatLength;
  /** A thickness as it was asked for; as any other where not given. */
  readonly asked?: FormatLength;
  /** The height that was asked for, unit included. */
  readonly height: FormatLength;
  /** The same where nothing so tall goes in: with all its digits, as it stands beside the tallest. */
  readonly tooTall: FormatLength;
  /** How far the strip may be tilted: "up to 2°"; upright where not given. */
  readonly tilted?: string;
  /** The height of the tallest strip, unit included; never to be rounded up. */
  readonly tallest: FormatLength;
  /** A height in the keyway above its lowest point, unit included. */
  readonly at: FormatLength;
  /** A stretch of such heights. */
  readonly band: FormatBand;
}

/** Heights nearer to each other than this are told as one, nanometres. */
const ONE_HEIGHT = 50_000;

/** Most openings told by name as those that set the limit. */
const MOST_SETTERS = 3;

/**
 * The answer as a sentence: "0.55 mm is the thickest strip 6 mm tall that enters all 11; the Marsh keyway sets it at
 * 4.2 mm; at 0.71 mm it still enters 7, two of them tight."
 *
 * @check tests/unit/gauge/gauge-answer.test.ts
 */
export function gaugeSentence(answer: GaugeAnswer, words: GaugeWords): string {
  const { openings, height, thickest } = answer;
  if (openings.length === 0) return 'There is no keyway to gauge.';
  const all = openings.length === 1 ? `the ${words.nameOf(openings[0])}` : `all ${openings.length}`;
  const tall = words.tilted === undefined ? 'tall' : `tall, tilted ${words.tilted},`;
  const head =
    thickest > 0
      ? `${capital(words.thickness(thickest))} is the thickest strip ${words.height(height)} ${tall} that enters ${all}`
      : `No strip ${words.tooTall(height)} ${tall} enters ${all}, however thin; the tallest that does is ${tallestWords(answer, words)}`;
  const parts = [head, settersWords(answer, words), askedWords(answer, words)];
  return `${parts.filter((part) => part !== '').join('; ')}.`;
}

/** A length as it begins a sentence: "Less than 0.001 mm". */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** The tallest strip where the height asked for is too tall: never told as just that height. */
function tallestWords({ height, tallest }: GaugeAnswer, words: GaugeWords): string {
  const text = words.tallest(tallest);
  return text === words.tooTall(height) ? `a hair less than ${text}` : text;
}

function settersWords({ openings, setters, thickest }: GaugeAnswer, words: GaugeWords): string {
  const names = setters.map(({ openingId }) => words.nameOf(openingId));
  const [first] = setters;
  if (openings.length === 1) return whereWords(first, words).replace(/^ /, 'held ');
  if (thickest === 0) return names.length === 1 ? `the ${names[0]} stops it` : `${countedNames(names)} stop it`;
  if (names.length === 1) return `the ${names[0]} sets it${whereWords(first, words)}`;
  return `${countedNames(names)} set it`;
}

/** " at 4.2 mm", " at 3.9–4.2 mm": the heights of the two places that hold the strip. */
function whereWords({ heights }: Setter, { at, band }: GaugeWords): string {
  if (!heights) return '';
  const [low, high] = [Math.min(...heights), Math.max(...heights)];
  return high - low < ONE_HEIGHT ? ` at ${at((low + high) / 2)}` : ` at ${band(low, high)}`;
}

function countedNames(names: readonly string[]): string {
  return names.length <= MOST_SETTERS ? `the ${nameList(names)}` : `${names.length} keyways`;
}

function askedWords({ asked, openings, thickest }: GaugeAnswer, words: GaugeWords): string {
  if (!asked) return '';
  const verdicts = [...asked.verdicts.values()];
  const tight = verdicts.filter((verdict) => verdict === 'tight').length;
  const count = verdicts.filter((verdict) => verdict !== 'blocked').length;
  const of = openings.length;
  const thick = (words.asked ?? words.thickness)(asked.thickness);
  if (of === 1) return `at ${thick} it ${count === 1 ? `enters${tightPart(count, tight)}` : 'does not'}`;
  if (count === of) return `at ${thick} it enters all${tightPart(count, tight)}`;
  if (count === 0) return `at ${thick} it enters none`;
  return `at ${thick} it ${asked.thickness > thickest ? 'still ' : ''}enters ${count}${tightPart(count, tight)}`;
}

/** What follows a count of openings that a tool goes into where some of them are tight: ", two of them tight". */
export function tightPart(count: number, tight: number): string {
  if (tight === 0) return '';
  if (tight === count) return count === 1 ? ', tight' : ', all of them tight';
  return `, ${numberWord(tight)} of them tight`;
}
