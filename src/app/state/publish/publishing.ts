import type { Published, PublishInput } from '../../../jobs/publish-sheets.ts';
import { AskedJob } from '../asked-job.ts';
import type { Session } from '../session.ts';

/** The laying out of pages for a preview. */
export type Publishing = AskedJob<PublishInput, Published>;

const publishings = new WeakMap<Session, Publishing>();

/** What lays out the pages that are looked at in a window. */
export function publishingOf(session: Session): Publishing {
  const known = publishings.get(session);
  if (known) return known;
  const { doors, judging } = session;
  const made: Publishing = new AskedJob(
    (input, tell) => doors.publish.publishSheets({ ...input, known: judging.knownAsDrawn(input.family) }, tell),
    isSameOrder,
  );
  publishings.set(session, made);
  return made;
}

/** A family is a value: an unchanged one is the same object. */
export function isSameOrder(a: PublishInput, b: PublishInput): boolean {
  return a.family === b.family && a.as === b.as && JSON.stringify(a.sheet) === JSON.stringify(b.sheet);
}
