import type { Role } from './resolve.ts';
import { askedAs } from './take-meaning.ts';

/** A question to be filled with names: for those who pick rather than type, and as examples. */
export interface ExampleForm {
  /** "does X go into Y" */
  readonly label: string;
  /** The parts that its names have, in order; null: any name will do. */
  readonly slots: readonly (Role | null)[];
  /** The question with names filled in, as many as there are slots. */
  readonly question: (names: readonly string[]) => string;
}

const form = (
  label: string,
  slots: ExampleForm['slots'],
  write: (names: readonly string[]) => string,
): ExampleForm => ({
  label,
  slots,
  question: (names) => write(names.map(askedAs)),
});

/** Every question that is understood, once. */
export const EXAMPLE_FORMS: readonly ExampleForm[] = [
  form('does X go into Y', ['entrant', 'opening'], ([x, y]) => `Does ${x} go into ${y}?`),
  form('why does X not go into Y', ['entrant', 'opening'], ([x, y]) => `Why does ${x} not go into ${y}?`),
  form('how much room has X in Y', ['entrant', 'opening'], ([x, y]) => `How much room has ${x} in ${y}?`),
  form('what is X', [null], ([x]) => `What is ${x}?`),
  form('what goes into Y', ['opening'], ([y]) => `What goes into ${y}?`),
  form('what goes into Y and Z', ['opening', 'opening'], ([y, z]) => `What goes into ${y} and ${z}?`),
  form('what does X go into', ['entrant'], ([x]) => `What does ${x} go into?`),
  form('what differs between X and Z', [null, null], ([x, z]) => `What differs between ${x} and ${z}?`),
  form('is X the same as Z', [null, null], ([x, z]) => `Is ${x} the same as ${z}?`),
  form('which blank goes into all keyways', [], () => 'Which blank goes into all keyways?'),
];
