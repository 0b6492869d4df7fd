import { removeNotice, showNotice } from './notices-state.ts';
import { pickProfile, type ViewName } from './selection-state.ts';
import type { Session } from './session.ts';

const KEYS = { draw: 'Open in Draw', wall: 'Try it on the Wall' } as const;

interface Added {
  /** The notice's name; another one of that name takes its place. */
  readonly notice: string;
  readonly blankId: string;
  readonly title: string;
  readonly words: string;
  /** Where to look at it, the likelier one first. */
  readonly views: readonly (ViewName & keyof typeof KEYS)[];
}

/**
 * Picks a blank that was added to the family, says so, and offers the views to look at it.
 *
 * @check tests/unit/app/growing.test.ts
 * @check tests/unit/app/passage-blank.test.ts
 */
export function showAdded(session: Session, { notice, blankId, title, words, views }: Added): void {
  const close = () => removeNotice(session, notice);
  const open = (view: ViewName) => () => {
    close();
    session.selection.setState({ view });
  };
  pickProfile(session.selection, { id: blankId, kind: 'blank' });
  showNotice(session, {
    id: notice,
    tone: 'news',
    title,
    words,
    keys: [...views.map((view) => ({ label: KEYS[view], press: open(view) })), { label: 'Stay here', press: close }],
  });
}
