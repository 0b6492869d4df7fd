import { isEdited } from '../state/document-state.ts';
import { FamilyMenu } from './family-menu.tsx';
import { HelpMenu } from './help/help-menu.tsx';
import { HistoryKeys } from './history-keys.tsx';
import { KeepStatusWords } from './keep/keep-status.tsx';
import { ThemeKey, UnitsKeys } from './settings-keys.tsx';
import styles from './top-bar.module.css';
import { useSession, useStore } from './use-store.ts';
import { VIEWS } from './view-list.ts';

/** Names with more letters are set smaller, in two lines. */
const LONG_NAME = 20;

/** The strip along the top of the sheet: whose family this is, the views, and what serves them all. */
export function TopBar({ dark }: { dark: boolean }) {
  const { documents, selection } = useSession();
  const family = useStore(documents, (s) => s.document?.family ?? null);
  const edited = useStore(documents, isEdited);
  const view = useStore(selection, (s) => s.view);
  const canCompare = useStore(selection, (s) => s.entrantId !== null && s.openingId !== null);
  const views = VIEWS.filter(({ name }) => canCompare || name !== 'compare');
  return (
    <header className={styles.bar}>
      <div className={styles.head}>
        <p className={styles.word}>Sectionary</p>
        <div className={styles.title} title={family ? titleOf(family.name, edited) : undefined}>
          <p className={styles.family} data-long={(family?.name.length ?? 0) > LONG_NAME}>
            {family?.name ?? 'No family open'}
          </p>
          <p className={styles.state}>
            {edited && <em className={styles.edited}>edited</em>}
            <KeepStatusWords />
          </p>
        </div>
      </div>
      <nav className="key-row" aria-label="Views">
        {views.map(({ name, label, title }) => (
          <button
            key={name}
            type="button"
            className="key"
            aria-current={view === name ? 'page' : undefined}
            title={title}
            onClick={() => selection.setState({ view: name })}
          >
            {label}
          </button>
        ))}
      </nav>
      <div className={styles.tools}>
        <HistoryKeys />
        <FamilyMenu />
        <UnitsKeys />
        <ThemeKey dark={dark} />
        <HelpMenu />
      </div>
    </header>
  );
}

function titleOf(name: string, edited: boolean): string {
  return edited ? `${name}: the open family; its edits are not saved in a file` : `${name}: the open family`;
}
