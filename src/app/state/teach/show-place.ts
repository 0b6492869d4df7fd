import type { Family } from '../../../family/family.ts';
import type { KnownFits } from '../../../family/known-fits.ts';
import type { LessonStep } from '../../../family/lesson.ts';
import { tierRows } from '../../../teach/tier-rows.ts';

/** Where a lesson that is shown stands: the step, and how much of it is shown. */
export interface ShowPlace {
  readonly step: number;
  readonly build: number;
}

/** How many states a step has before the next one: a question and its answer, the tiers one by one. */
export function buildsOf(step: LessonStep, family: Family, fits: KnownFits | null): number {
  if (step.show === 'question') return 2;
  if (step.show === 'tiers') return Math.max(1, tierRows(family, fits, step.blank).rows.length);
  return 1;
}

/**
 * The place after this one; the same one at the end of the lesson.
 *
 * @param builds how many states each step has.
 * @check tests/unit/app/show-place.test.ts
 */
export function placeAfter({ step, build }: ShowPlace, builds: readonly number[]): ShowPlace {
  if (build + 1 < (builds[step] ?? 1)) return { step, build: build + 1 };
  return step + 1 < builds.length ? { step: step + 1, build: 0 } : { step, build };
}

/** The place before this one: a step that is come back to is shown in full; the same one at the beginning. */
export function placeBefore({ step, build }: ShowPlace, builds: readonly number[]): ShowPlace {
  if (build > 0) return { step, build: build - 1 };
  return step > 0 ? { step: step - 1, build: (builds[step - 1] ?? 1) - 1 } : { step, build };
}

/** The beginning of a step, the nearest there is. */
export function placeAt(step: number, count: number): ShowPlace {
  return { step: Math.max(0, Math.min(count - 1, step)), build: 0 };
}

/** What a key of the keyboard or of a clicker asks of a lesson that is shown. */
export type ShowAct =
  | { readonly act: 'next' | 'previous' | 'first' | 'last' | 'end' | 'dark' | 'pointer' | 'again' | 'screen' | 'go' }
  | { readonly act: 'digit'; readonly digit: string };

const ACTS: Readonly<Record<string, Exclude<ShowAct['act'], 'digit'>>> = {
  ArrowRight: 'next',
  ArrowDown: 'next',
  PageDown: 'next',
  ' ': 'next',
  n: 'next',
  ArrowLeft: 'previous',
  ArrowUp: 'previous',
  PageUp: 'previous',
  Backspace: 'previous',
  Home: 'first',
  End: 'last',
  Escape: 'end',
  b: 'dark',
  '.': 'dark',
  l: 'pointer',
  i: 'again',
  f: 'screen',
  Enter: 'go',
};

/** What a key asks; null where it asks nothing. Space with shift goes back. */
export function showActOf(key: string, shift: boolean): ShowAct | null {
  if (/^[0-9]$/.test(key)) return { act: 'digit', digit: key };
  if (key === ' ' && shift) return { act: 'previous' };
  const act = ACTS[key.length === 1 ? key.toLowerCase() : key];
  return act ? { act } : null;
}
