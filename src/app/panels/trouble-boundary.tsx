import { Component, type ContextType, type ReactNode } from 'react';
import { troubleText } from '../state/trouble-text.ts';
import { downloadFamily } from './exchange/save-file.ts';
import styles from './notices.module.css';
import { SessionContext } from './use-store.ts';

/** Catches what a picture could not be drawn for, says so, and lets the family be saved: a blank window would lose it. */
export class TroubleBoundary extends Component<{ children: ReactNode }, { trouble: string | null }> {
  static override contextType = SessionContext;
  declare context: ContextType<typeof SessionContext>;
  override state = { trouble: null };

  static getDerivedStateFromError(reason: unknown): { trouble: string } {
    return { trouble: troubleText(reason) };
  }

  override render(): ReactNode {
    const session = this.context;
    if (this.state.trouble === null) return this.props.children;
    return (
      <main className={styles.empty} role="alert">
        <h2>This could not be drawn</h2>
        <p>{this.state.trouble}</p>
        <p>The family is still in memory. Save it, then start again.</p>
        {session?.documents.getState().document && (
          <button type="button" className="key" onClick={() => downloadFamily(session)}>
            Save family
          </button>
        )}
        <button type="button" className="key" onClick={() => location.reload()}>
          Start again
        </button>
      </main>
    );
  }
}
