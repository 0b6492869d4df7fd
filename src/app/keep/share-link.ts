import { type LinkWrite, writeLink } from '../../interchange/link/write.ts';
import type { Session } from '../state/session.ts';

/** The fragment of a link that carries the open family, or why there is none; null where none is open. */
export function linkToFamily({ documents, doors }: Session): LinkWrite | null {
  const { document } = documents.getState();
  return document && writeLink(doors.writeFamily(document.file));
}
