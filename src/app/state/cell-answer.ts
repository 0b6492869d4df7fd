import type { Units } from '../../family/length-text.ts';
import { MEASURING, marginText, VERDICT_WORDS } from '../../family/margin-text.ts';
import type { Fit, Verdict } from '../../fit/fit.ts';
import type { ThreeWay } from '../../fit/judge-tolerance.ts';
import type { WearFigures } from '../../jobs/judge-details.ts';
import type { Telling } from './conditions-state.ts';
import { NOT_MEASURED, PARTS_WORDS, shortWearText, wearText } from './pair-words.ts';

/** What a cell of the wall knows of its pair. */
export interface CellFigures {
  readonly fit: Fit | undefined;
  /** True where the wear would leave nothing of the blank. */
  readonly wornAway: boolean;
  readonly threeWay: ThreeWay | undefined;
  readonly wear: WearFigures | undefined;
  /** True where the judging was stopped, so that nothing more comes. */
  readonly halted: boolean;
}

/** What a cell of the wall says: its mark, a word, a second line, both as one phrase, and which outline the plug gets. */
export interface CellAnswer {
  readonly mark: Verdict | ThreeWay | null;
  readonly word: string;
  readonly figure: string;
  readonly phrase: string;
  readonly tone: Verdict | 'unknown';
}

const UNKNOWN: CellAnswer = {
  mark: null,
  word: 'waiting',
  figure: '\u00a0',
  phrase: 'not judged yet',
  tone: 'unknown',
};

/** The outline of a plug by the answer for all parts: as solid as the answer is. */
const TONES: Readonly<Record<ThreeWay, Verdict>> = { always: 'enters', depends: 'tight', never: 'blocked' };

const UNJUDGED: CellAnswer = { ...UNKNOWN, word: 'not judged', phrase: 'not judged' };

/** The answer of one pair as the wall is to tell it. */
export function cellAnswer(telling: Telling, figures: CellFigures, units: Units): CellAnswer {
  const { fit, wornAway, threeWay, wear, halted } = figures;
  if (wornAway) return { ...UNKNOWN, word: 'worn away', phrase: 'nothing is left of it' };
  if (!fit) return halted ? UNJUDGED : UNKNOWN;
  if (telling === 'parts') {
    if (!threeWay) return { ...UNKNOWN, word: MEASURING, phrase: MEASURING };
    const { whole, word, rest } = PARTS_WORDS[threeWay];
    return { mark: threeWay, word, figure: rest, phrase: whole, tone: TONES[threeWay] };
  }
  const { verdict } = fit;
  const word = VERDICT_WORDS[verdict];
  const figure =
    telling === 'guard' ? shortWearText(wear, units) : marginText(fit, units, halted ? NOT_MEASURED : MEASURING);
  const phrase = `${word}, ${telling === 'guard' ? wearText(wear, units) : figure}`;
  return { mark: verdict, word, figure, phrase, tone: verdict };
}
