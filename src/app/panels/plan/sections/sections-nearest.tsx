import { countWord } from '../../../../family/count-word.ts';
import { isMadeByKey, type NearPlan, type PlanChange } from '../../../state/plan/sections/near-plans.ts';
import { changePlan } from '../../../state/plan/sections/sections-choices.ts';
import { sectionsLookOf } from '../../../state/plan/sections/sections-state.ts';
import { changeWords } from '../../../state/plan/sections/sections-words.ts';
import { useSession, useStore } from '../../use-store.ts';
import styles from './sections-nearest.module.css';
import { type FoundSections, useSectionsPlanning } from './use-sections.ts';

/** Where the blade has no room for the plan: which limit binds, and changes that would do, each with its key. */
export function SectionsNearest({ found }: { found: FoundSections }) {
  const session = useSession();
  const planning = useSectionsPlanning();
  const near = useStore(planning.store, (s) => s.near);
  const { question, found: wards } = found;
  if (wards.sites <= question.layout.sites.length) return null;
  const binds = question.layout.limits.filter(({ kind }) => kind !== 'note');
  const apply = (change: PlanChange) => {
    if (changePlan(session, change) === null)
      sectionsLookOf(session).setState({ said: 'The plan was changed. Undo takes it back.' });
  };
  return (
    <section className={styles.nearest} aria-labelledby="plan-nearest" data-plan-nearest={near ? 'there' : 'looking'}>
      {binds.length > 0 && (
        <ul className={styles.limits} aria-label="Limits that bind">
          {binds.map(({ field, words, cure }) => (
            <li key={field + words}>
              {words}. <span>{cure}</span>
            </li>
          ))}
        </ul>
      )}
      <h2 id="plan-nearest">{near === null ? 'Looking for the nearest plan that fits …' : nearTitle(near)}</h2>
      {near && (
        <ul className={styles.ways}>
          {near.map((plan) => (
            <NearRow key={JSON.stringify(plan.change)} near={plan} from={found} apply={apply} />
          ))}
        </ul>
      )}
    </section>
  );
}

function nearTitle(near: readonly NearPlan[]): string {
  if (near.length === 0)
    return 'No single change near this plan makes it fit; change the blade, or plan fewer sections';
  return near.some(({ sites, room }) => sites <= room) ? 'Nearest plans that fit' : 'Nearest, but still too many';
}

interface NearRowProps {
  readonly near: NearPlan;
  readonly from: FoundSections;
  apply(change: PlanChange): void;
}

function NearRow({ near: { change, sites, room }, from, apply }: NearRowProps) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const { key, what } = changeWords(change, from.question.plan, units);
  return (
    <li>
      {isMadeByKey(change, from.question) && (
        <button type="button" className="key" onClick={() => apply(change)}>
          {key}
        </button>
      )}
      <span>
        {what}: {countWord(sites, 'site')}, the blade has {room}
      </span>
    </li>
  );
}
