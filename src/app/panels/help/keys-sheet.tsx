import { KEYS } from '../../state/help/key-list.ts';
import { ModalSheet } from '../modal-sheet.tsx';
import styles from './help-sheet.module.css';

/** Every shortcut on one sheet. */
export function KeysSheet({ onClose }: { onClose(): void }) {
  return (
    <ModalSheet title="Keys" large onClose={onClose}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keys must reach it */}
      <section className={styles.scroll} aria-label="Shortcuts" tabIndex={0} data-first="">
        <div className={styles.columns}>
          {KEYS.map(({ place, keys }) => (
            <section key={place} className={styles.group}>
              <h3>{place}</h3>
              <dl className={styles.keys}>
                {keys.map(([pressed, what]) => (
                  <div key={pressed}>
                    <dt>
                      <kbd>{pressed}</kbd>
                    </dt>
                    <dd>{what}</dd>
                  </div>
                ))}
              </dl>
            </section>
          ))}
        </div>
      </section>
    </ModalSheet>
  );
}
