import { wantHints } from '../../state/help/help-state.ts';
import { HangingPanel } from '../hanging-panel.tsx';
import styles from '../menu-row.module.css';
import { MenuRow } from '../menu-row.tsx';
import { useSession, useStore } from '../use-store.ts';
import { beginFirstSteps } from './begin-first-steps.ts';
import { HelpSheet } from './help-sheet.tsx';
import { KeysSheet } from './keys-sheet.tsx';
import { useHelpKey } from './use-help-key.ts';

/** First steps, words, shortcuts, cautions, and the hints of the views. */
export function HelpMenu() {
  const session = useSession();
  const { help } = session;
  const open = useStore(help, (s) => s.open);
  const hints = useStore(help, (s) => s.hints);
  useHelpKey();
  const close = () => help.setState({ open: null });
  return (
    <>
      <HangingPanel label="Help ▾" title="First steps, words, keys, cautions">
        {(putAway) => (
          <ul className={styles.menu}>
            <MenuRow
              close={putAway}
              onPress={() => beginFirstSteps(session)}
              name="First five minutes"
              hint="three sections, from a blank to a printed chart"
            />
            <MenuRow
              close={putAway}
              onPress={() => help.setState({ open: 'words' })}
              name="Help…"
              hint="the views, the words, what the answers mean, cautions"
            />
            <MenuRow
              close={putAway}
              onPress={() => help.setState({ open: 'keys' })}
              name="Keys…"
              hint="all shortcuts; press ?"
            />
            <MenuRow
              close={putAway}
              onPress={() => wantHints(help, !hints)}
              name={hints ? 'Hints: none any more' : 'Hints: show them'}
              hint="a line over each view: what to do first"
            />
          </ul>
        )}
      </HangingPanel>
      {open === 'words' && <HelpSheet onClose={close} />}
      {open === 'keys' && <KeysSheet onClose={close} />}
    </>
  );
}
