import { readLink } from '../../interchange/link/read.ts';
import { openText } from '../state/document-state.ts';
import type { Session } from '../state/session.ts';

/** What a family is called that came by a link, until it is saved. */
const FILE_NAME = 'shared-family.json';

/**
 * Opens the family that the fragment of an address carries, as one that no file holds. A link that is damaged, too
 * long or of another version changes nothing: why is told where refused files are.
 *
 * @returns whether it was opened.
 */
export function openLink({ documents, doors }: Session, fragment: string): boolean {
  const read = readLink(fragment);
  if (!read.ok) {
    documents.setState({ refusal: { fileName: 'The link', faults: read.faults } });
    return false;
  }
  if (!openText(documents, doors, read.text, FILE_NAME)) return false;
  documents.setState({ saved: null });
  return true;
}
