import { useState } from 'react';
import { cautionsAbout } from '../../../family/cautions.ts';
import { HINTS } from '../../state/help/hint-words.ts';
import { seekWords } from '../../state/help/word-list.ts';
import type { ViewName } from '../../state/selection-state.ts';
import { ModalSheet } from '../modal-sheet.tsx';
import { useSession } from '../use-store.ts';
import { VIEWS } from '../view-list.ts';
import { beginFirstSteps } from './begin-first-steps.ts';
import styles from './help-sheet.module.css';

/** The views, the words, what the answers mean, and cautions. */
export function HelpSheet({ onClose }: { onClose(): void }) {
  const session = useSession();
  const show = (view: ViewName) => {
    session.selection.setState({ view });
    onClose();
  };
  return (
    <ModalSheet title="Help" large onClose={onClose}>
      <div className={styles.page}>
        <section className={styles.group} aria-label="The views">
          <h3>Begin here</h3>
          <p>
            <button
              type="button"
              className="key"
              data-first=""
              onClick={() => {
                onClose();
                beginFirstSteps(session);
              }}
            >
              First five minutes
            </button>{' '}
            Three sections, from one blank in one keyway to a printed chart.
          </p>
          <ul className={styles.views}>
            {VIEWS.map(({ name, label, title }) => (
              <li key={name}>
                <button type="button" className="key" onClick={() => show(name)}>
                  {label}
                </button>
                <span>
                  <b>{title}.</b> {HINTS[name]}
                </span>
              </li>
            ))}
          </ul>
        </section>
        <Words />
        <Cautions />
      </div>
    </ModalSheet>
  );
}

function Words() {
  const [sought, setSought] = useState('');
  const found = seekWords(sought);
  return (
    <section className={styles.group} aria-label="Words">
      <header className={styles.seek}>
        <h3>Words</h3>
        <input
          type="search"
          aria-label="Find a word"
          placeholder="Find a word"
          value={sought}
          onChange={(event) => setSought(event.target.value)}
        />
      </header>
      <p>
        A keyway is seen from the front of the plug and a section from the bow towards the tip, so a blank lies on its
        keyway unmirrored.
      </p>
      <p role="status" className={found.length > 0 ? 'unseen' : undefined}>
        {found.length > 0 ? '' : `No word here has “${sought.trim()}” in it.`}
      </p>
      {found.map(({ head, words }) => (
        <section key={head}>
          <h4>{head}</h4>
          <dl className={styles.words}>
            {words.map(([word, meaning]) => (
              <div key={word}>
                <dt>{word}</dt>
                <dd>{meaning}</dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
    </section>
  );
}

function Cautions() {
  return (
    <section className={styles.group} aria-label="Cautions">
      <h3>Before cutting metal</h3>
      <ul className={styles.cautions}>
        {cautionsAbout('everything').map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <p>Families stay on this computer: nothing is sent anywhere. Polderwick College and its sections are invented.</p>
    </section>
  );
}
