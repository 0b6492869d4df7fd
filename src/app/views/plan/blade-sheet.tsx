import type { Family } from '../../../family/family.ts';
import notices from '../../panels/notices.module.css';
import { BladeForm } from '../../panels/plan/blade/blade-form.tsx';
import { BladePicture } from '../../panels/plan/blade/blade-picture.tsx';
import { type BladeNow, useBladeLayout } from '../../panels/plan/blade/use-blade-layout.ts';
import { useSession } from '../../panels/use-store.ts';
import { beginBladeAnew } from '../../state/plan/blade/blade-editing.ts';
import { arrangementWords, countWords } from '../../state/plan/blade/blade-words.ts';
import styles from './blade-sheet.module.css';

/** What the blades may be made like, and the places for wards. */
export function BladeSheet({ family }: { family: Family }) {
  const session = useSession();
  const now = useBladeLayout(family);
  if (!now)
    return (
      <section className={notices.empty}>
        <h2>{family.name} has no plan</h2>
        <p>
          The blade of a plan says how thick and high blanks are and where they may be grooved; from that come the
          places for wards.
        </p>
        <button type="button" className="key" onClick={() => beginBladeAnew(session)}>
          Begin with a common small blade
        </button>
      </section>
    );
  return (
    <div className={styles.sheet} data-sites={now.layout.sites.length}>
      <div className={styles.picture}>
        <Count now={now} />
        <BladePicture now={now} />
      </div>
      <div className={styles.form}>
        <BladeForm family={family} now={now} />
      </div>
    </div>
  );
}

/** How many sites there are, or why there are none. */
function Count({ now: { layout } }: { now: BladeNow }) {
  const fault = layout.limits.find(({ kind }) => kind === 'fault');
  return (
    <div className={styles.count} role="status">
      <h1>{countWords(layout)}</h1>
      {fault ? (
        <p className={styles.fault}>
          <span aria-hidden="true">⚠ </span>
          {fault.words}.
        </p>
      ) : (
        layout.arrangement && <p>{arrangementWords(layout.arrangement)}</p>
      )}
    </div>
  );
}
