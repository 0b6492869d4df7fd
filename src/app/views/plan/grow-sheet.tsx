import type { Family } from '../../../family/family.ts';
import { Cautions } from '../../panels/cautions.tsx';
import { EmptyNotice } from '../../panels/empty-notice.tsx';
import { GrowHead, GrowNeighbours } from '../../panels/plan/grow/grow-head.tsx';
import { GrowProgress } from '../../panels/plan/grow/grow-progress.tsx';
import { GrowProposals } from '../../panels/plan/grow/grow-proposals.tsx';
import { useAskedGrowth } from '../../panels/plan/grow/use-growth.ts';
import { useSession } from '../../panels/use-store.ts';
import { growStateOf } from '../../state/plan/grow/grow-state.ts';
import { namesOf, noRoomWords, reissueWords } from '../../state/plan/grow/grow-words.ts';
import styles from './grow-sheet.module.css';

/** How many sections more, and where the next ones go. */
export function GrowSheet({ family }: { family: Family }) {
  const { report, phase } = useAskedGrowth(family);
  const session = useSession();
  if (report?.none?.why === 'no-keyways') return <EmptyNotice {...noRoomWords(report.none)} />;
  const none = report?.none ?? null;
  const reissue = report ? reissueWords(report, namesOf(family)) : '';
  const offer = none?.why === 'no-all-section' && none.passage !== null;
  return (
    <div className={styles.sheet} data-grow={report || phase !== 'found' ? phase : 'finding'}>
      <GrowHead family={family} report={report} />
      <GrowNeighbours family={family} />
      <GrowProgress />
      <div className={styles.body}>
        {none && (
          <section className={styles.none}>
            <h2>{noRoomWords(none).title}</h2>
            <p>{noRoomWords(none).what}</p>
            {reissue && <p data-reissue>{reissue}</p>}
            {offer && (
              <button
                type="button"
                className="key"
                onClick={() => growStateOf(session).setState({ top: 'passage', picked: 0 })}
              >
                Use the widest blank that passes all
              </button>
            )}
          </section>
        )}
        {report && !none && <GrowProposals family={family} report={report} />}
        <div className={styles.cautions}>
          <Cautions about="plan" />
        </div>
      </div>
    </div>
  );
}
