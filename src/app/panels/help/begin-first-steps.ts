import { openText } from '../../state/document-state.ts';
import { FIRST_FAMILY } from '../../state/help/first-steps.ts';
import type { Session } from '../../state/session.ts';
import { mayReplace } from '../exchange/may-replace.ts';

/** Opens the family of the first five minutes and begins them. */
export function beginFirstSteps(session: Session): void {
  if (!mayReplace(session)) return;
  if (openText(session.documents, session.doors, FIRST_FAMILY.text, FIRST_FAMILY.fileName))
    session.help.setState({ step: 0 });
}
