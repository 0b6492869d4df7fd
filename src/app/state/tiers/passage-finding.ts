import type { PassageInput } from '../../../passage/find-passage.ts';
import type { Passage } from '../../../passage/passage.ts';
import { AskedJob, makeAskedJobs } from '../asked-job.ts';
import type { PassageDoors } from './passage-doors.ts';

/**
 * Finds passages in another thread; the same outlines, chosen alike, are not searched twice, and nothing chosen asks for
 * none.
 *
 * @check tests/unit/app/passage-finding.test.ts
 */
export class PassageFinding extends AskedJob<PassageInput, Passage> {
  constructor(doors: PassageDoors) {
    super((input, onProgress) => doors.findPassage(input, onProgress), isSame);
  }

  override ask(input: PassageInput | null): void {
    super.ask(input !== null && input.chosen.length > 0 ? input : null);
  }
}

/** Whether two questions have the same answer: outlines are values, an unchanged one is the same object. */
function isSame(a: PassageInput, b: PassageInput): boolean {
  return (
    a.runningClearance === b.runningClearance &&
    a.chosen.length === b.chosen.length &&
    a.openings.length === b.openings.length &&
    a.chosen.every((id, i) => id === b.chosen[i]) &&
    a.openings.every(({ id, ring }, i) => id === b.openings[i].id && ring === b.openings[i].ring)
  );
}

/** The search of a window. */
export const passageFindingOf = makeAskedJobs<PassageInput, Passage>(({ doors }) => new PassageFinding(doors.passage));

/**
 * Whether what was found for one question may stand in while another is answered: each keyway that it lays on the others
 * is there as it was.
 *
 * @check tests/unit/app/passage-finding.test.ts
 */
export function standsIn(found: PassageInput, asked: PassageInput): boolean {
  const rings = (input: PassageInput) => new Map(input.openings.map(({ id, ring }) => [id, ring]));
  const [before, now] = [rings(found), rings(asked)];
  return found.chosen.every((id) => now.has(id) && before.get(id) === now.get(id));
}
