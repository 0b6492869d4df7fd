import { isPair } from '../state/selection-state.ts';
import { FamilyMenu } from './family-menu.tsx';
import { FamilyTitle } from './family-title.tsx';
import { HelpMenu } from './help/help-menu.tsx';
import { HistoryKeys } from './history-keys.tsx';
import { ThemeKey, UnitsKeys } from './settings-keys.tsx';
import styles from './top-bar.module.css';
import { useSession, useStore } from './use-store.ts';
import { VIEWS } from './view-list.ts';

/** The strip along the top of the sheet: whose family this is, the views, and what serves them all. */
export function TopBar({ dark }: { dark: boolean }) {
  const { selection } = useSession();
  const view = useStore(selection, (s) => s.view);
  const canCompare = useStore(selection, isPair);
  const views = VIEWS.filter(({ name }) => canCompare || name !== 'compare');
  return (
    <header className={styles.bar}>
      <div className={styles.head}>
        <p className={styles.word}>Sectionary</p>
        <FamilyTitle />
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
