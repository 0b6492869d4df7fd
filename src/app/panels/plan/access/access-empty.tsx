import { countWord } from '../../../../family/count-word.ts';
import type { Family } from '../../../../family/family.ts';
import { openingsOf } from '../../../../family/family.ts';
import { takePlan, typeName } from '../../../state/plan/access/access-editing.ts';
import { accessLookOf } from '../../../state/plan/access/access-state.ts';
import { planOfSections } from '../../../state/plan/access/plan-of-sections.ts';
import { useSession, useStore } from '../../use-store.ts';
import styles from './access-empty.module.css';

/** What stands in the middle while nothing is planned, and the ways to begin. */
export function AccessEmpty({ family }: { family: Family }) {
  const session = useSession();
  return (
    <section className={styles.empty}>
      <h2>Nothing is planned yet</h2>
      <p>
        A plan begins with who may go where. Write down the areas, each with a keyway of its own, in groups such as
        buildings; then the holders, people or roles, and tick the areas that each must enter. Which blanks and sections
        that takes is told at once.
      </p>
      <ul className={styles.ways}>
        <li>
          <button type="button" className="key" onClick={() => typeName(session, { what: 'new area', place: {} })}>
            Begin with an area
          </button>
          <span>Type one name after another.</span>
        </li>
        <li>
          <button type="button" className="key" onClick={() => accessLookOf(session).setState({ pasting: true })}>
            Paste a table
          </button>
          <span>A list of holders and areas, or a matrix with ticks, from a spreadsheet.</span>
        </li>
        {openingsOf(family).length > 0 && <OwnSections family={family} />}
      </ul>
    </section>
  );
}

function OwnSections({ family }: { family: Family }) {
  const session = useSession();
  const isJudging = useStore(session.results, (s) => s.phase === 'judging');
  const begin = () => {
    const { units } = session.documents.getState().document?.file ?? { units: 'mm' };
    const plan = planOfSections(family, session.results.getState().fits, session.doors.access.emptyPlan(units));
    const words = `${countWord(plan.areas.length, 'area')} and ${countWord(plan.holders.length, 'holder')} from the sections.`;
    takePlan(session, plan, words);
  };
  return (
    <li>
      <button type="button" className="key" disabled={isJudging} onClick={begin}>
        Begin with this family’s own sections
      </button>
      <span>
        {isJudging
          ? 'As soon as every pair is judged.'
          : 'An area for each section, a holder for each blank that enters several.'}
      </span>
    </li>
  );
}
