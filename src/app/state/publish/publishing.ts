import type { Published, PublishInput } from '../../../jobs/publish-sheets.ts';
import { AskedJob, makeAskedJobs } from '../asked-job.ts';

/** The laying out of pages for a preview. */
export type Publishing = AskedJob<PublishInput, Published>;

/** What lays out the pages that are looked at in a window. */
export const publishingOf = makeAskedJobs<PublishInput, Published>(
  ({ doors, judging }) =>
    new AskedJob(
      (input, tell) => doors.publish.publishSheets({ ...input, known: judging.knownAsDrawn(input.family) }, tell),
      isSameOrder,
    ),
);

/** A family is a value: an unchanged one is the same object. */
export function isSameOrder(a: PublishInput, b: PublishInput): boolean {
  return a.family === b.family && a.as === b.as && JSON.stringify(a.sheet) === JSON.stringify(b.sheet);
}
