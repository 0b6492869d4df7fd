import { type LinkWrite, writeLink } from '../../interchange/link/write.ts';
import type { Session } from '../state/session.ts';

/** A link, or that there is none, and in how many sections of the family a picture is kept. */
export type FamilyLink = LinkWrite & { readonly pictures: number };

/** The fragment of a link that carries the open family, or why there is none; null where none is open. */
export function linkToFamily({ documents, doors }: Session): FamilyLink | null {
  const { document } = documents.getState();
  if (!document) return null;
  const pictures = document.file.profiles.filter(({ picture }) => picture !== undefined).length;
  return { ...writeLink(doors.writeFamily(document.file)), pictures };
}
