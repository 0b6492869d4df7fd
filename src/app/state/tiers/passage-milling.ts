import { type Family, openingsOf } from '../../../family/family.ts';
import type { MillPassageInput } from '../../../passage/mill-passage.ts';
import type { Passage } from '../../../passage/passage.ts';
import { AskedJob, makeAskedJobs } from '../asked-job.ts';
import type { Session } from '../session.ts';
import { makeStore, type Store } from '../store.ts';

/** Whether the blank of a passage is restricted to a straight cutter, and to which one. */
export interface MillingState {
  readonly on: boolean;
  readonly cutter: MillPassageInput['cutter'];
  readonly plain: MillPassageInput['plain'];
}

const UM = 1_000;

const USUAL: MillingState = {
  on: false,
  cutter: { flank: 0, rootRadius: 100 * UM, leastWidth: 400 * UM, depthStep: 50 * UM },
  plain: { thickness: null, height: null },
};

/** The search for a milled blank. */
export type PassageMilling = AskedJob<MillPassageInput, Passage | null>;

interface Milling {
  readonly store: Store<MillingState>;
  readonly finding: PassageMilling;
}

const findingOf = makeAskedJobs<MillPassageInput, Passage | null>(
  ({ doors }) => new AskedJob((input, tell) => doors.passage.millPassage(input, tell), isSame),
);

const millings = new WeakMap<Session, Milling>();

/** What is asked of a milled blank in a window, and its search. */
export function passageMillingOf(session: Session): Milling {
  const known = millings.get(session);
  if (known) return known;
  const made: Milling = { store: makeStore(USUAL), finding: findingOf(session) };
  millings.set(session, made);
  return made;
}

/** What is asked for a passage; null where its blank may have any form, or there is none. */
export function millInput(
  family: Family,
  passage: Passage | null,
  { on, cutter, plain }: MillingState,
): MillPassageInput | null {
  if (!on || !passage?.blank) return null;
  return { passage, openings: openingsOf(family).map(({ id, ring }) => ({ id, ring })), plain, cutter };
}

/** A passage is a value: an unchanged one is the same object, found for the same outlines. */
function isSame(a: MillPassageInput, b: MillPassageInput): boolean {
  return (
    a.passage === b.passage &&
    JSON.stringify([a.cutter, a.plain]) === JSON.stringify([b.cutter, b.plain]) &&
    a.openings.length === b.openings.length &&
    a.openings.every(({ id, ring }, i) => id === b.openings[i].id && ring === b.openings[i].ring)
  );
}
