import type { Family } from '../../../family/family.ts';
import { PrintPreview } from '../../panels/plan/sections/print-preview.tsx';
import { SectionsBody } from '../../panels/plan/sections/sections-body.tsx';
import { SectionsHead } from '../../panels/plan/sections/sections-head.tsx';
import { SectionsHindrance, SectionsNoPlan } from '../../panels/plan/sections/sections-hindrance.tsx';
import { SectionsKeys } from '../../panels/plan/sections/sections-keys.tsx';
import { SectionsNearest } from '../../panels/plan/sections/sections-nearest.tsx';
import { SectionsOptions } from '../../panels/plan/sections/sections-options.tsx';
import { SearchProgress, SectionsProgress } from '../../panels/plan/sections/sections-progress.tsx';
import { TakenLine } from '../../panels/plan/sections/taken-line.tsx';
import { useFoundSections, useSectionsQuestion, useWatch } from '../../panels/plan/sections/use-sections.ts';
import { useSession, useStore } from '../../panels/use-store.ts';
import { sectionsLookOf } from '../../state/plan/sections/sections-state.ts';
import styles from './sections-sheet.module.css';

/** The wards of each section, proved, drawn and judged. */
export function SectionsSheet({ family }: { family: Family }) {
  const question = useSectionsQuestion(family);
  const found = useFoundSections(family);
  const { printing, taking } = useStore(sectionsLookOf(useSession()), (s) => s);
  useWatch(printing === null && taking === null);
  if (!question) return <SectionsNoPlan family={family} />;
  if (printing) return <PrintPreview family={family} question={question} found={found} choice={printing} />;
  return (
    <div className={styles.sheet} data-plan-sections={found ? 'found' : 'none'}>
      <div className={styles.top}>
        {question.hindrance ? (
          <SectionsHindrance hindrance={question.hindrance} />
        ) : (
          <SectionsHead question={question} found={found}>
            <SectionsKeys family={family} found={found} />
          </SectionsHead>
        )}
        <SectionsOptions plan={question.plan} />
      </div>
      <SectionsProgress />
      <TakenLine question={question} drawn={found?.drawn ?? null} />
      {found && <SectionsNearest found={found} />}
      {found && <SectionsBody family={family} found={found} />}
      <SearchProgress />
    </div>
  );
}
