import type { EntryMatrix } from '../../src/family/entry-matrix.ts';
import { entrantsOf, type Family, openingsOf } from '../../src/family/family.ts';
import type { Fit, Verdict } from '../../src/fit/fit.ts';
import type { TextMeasure } from '../../src/lettering/text-measure.ts';
import { type SheetGround, sheetGround } from '../../src/publish/sheet-ground.ts';

const THERE = { x: 0, y: 0, tilt: 0 };

/** A fit that says a verdict, the blank where it is drawn: for tests of pages, which look at no figure. */
export function plainFit(verdict: Verdict): Fit {
  const clearance = { enters: 50_000, tight: 10_000, blocked: -200_000 }[verdict];
  return { verdict, clearance, accuracy: 0, placement: THERE, play: { lateral: 0, vertical: 0 }, seated: THERE };
}

/** What sheets are laid out from, with verdicts that are told instead of judged: judging thousands of pairs takes minutes. */
export function toldGround(
  family: Family,
  verdictOf: (entrant: number, opening: number) => Verdict,
  measure: TextMeasure,
): SheetGround {
  const openings = openingsOf(family);
  const entrants = entrantsOf(family);
  const matrix: EntryMatrix = {
    openings: openings.map(({ id }) => id),
    profiles: entrants.map(({ id }) => id),
    fits: entrants.map((_, e) => openings.map((__, o) => plainFit(verdictOf(e, o)))),
  };
  return sheetGround(family, matrix, measure);
}
