import { type Notice, type NoticeKey, removeNotice } from '../../state/notices-state.ts';
import type { Session } from '../../state/session.ts';

const ID = 'save';

/** The notice of a save that did not go as wished; each of its keys also puts it away. */
export function tellNotSaved(session: Session, words: string, keys: readonly NoticeKey[]): Notice {
  const away = { label: 'Put away', press: () => {} };
  return {
    id: ID,
    tone: 'warning',
    title: 'Not saved as you wished',
    words,
    keys: [...keys, away].map(({ label, press }) => ({
      label,
      press: () => {
        removeNotice(session, ID);
        press();
      },
    })),
  };
}
