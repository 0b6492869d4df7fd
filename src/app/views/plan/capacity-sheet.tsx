import { whyNoneWords } from '../../../capacity/why-none-words.ts';
import type { Family } from '../../../family/family.ts';
import { CapacityChart } from '../../panels/plan/capacity/capacity-chart.tsx';
import { CapacityProgress } from '../../panels/plan/capacity/capacity-progress.tsx';
import { CapacityRules } from '../../panels/plan/capacity/capacity-rules.tsx';
import { DepthGrid } from '../../panels/plan/capacity/depth-grid.tsx';
import { SameBitting } from '../../panels/plan/capacity/same-bitting.tsx';
import { type ShownCapacity, useCapacity } from '../../panels/plan/capacity/use-capacity.ts';
import { useSession, useStore } from '../../panels/use-store.ts';
import { isAltered } from '../../state/conditions-state.ts';
import { alteredText } from '../../state/conditions-words.ts';
import { capacityHeadline, keptText, rulesText } from '../../state/plan/capacity/capacity-words.ts';
import styles from './capacity-sheet.module.css';

/** How many keys the family has: bittings under its rules, times the sections that exclude each other. */
export function CapacitySheet({ family }: { family: Family }) {
  const shown = useCapacity(family);
  const { capacity, current, judged, waiting, faults } = shown;
  return (
    <div className={styles.sheet} data-capacity={current ? 'counted' : 'waiting'}>
      <header className={styles.head}>
        <h1 className={styles.title}>{headline(shown)}</h1>
        <Under {...shown} />
      </header>
      <CapacityProgress waiting={waiting} />
      <div className={styles.body}>
        <div className={styles.asked}>
          <CapacityRules key={family.name} family={family} faults={faults} />
          <DepthGrid family={family} />
        </div>
        {capacity && (
          <div className={styles.told} data-busy={!current || undefined}>
            <SameBitting family={family} capacity={capacity} judged={judged} />
            <CapacityChart capacity={capacity} rules={shown.settings.rules} />
          </div>
        )}
      </div>
    </div>
  );
}

function headline({ capacity, current, faults }: ShownCapacity): string {
  if (faults.length > 0) return 'These rules contradict each other';
  return capacity && current ? capacityHeadline(capacity) : 'Key changes …';
}

/** That sections are counted for worn or tilted parts, with a key that judges them as drawn; nothing where they are. */
function WornNote() {
  const { conditions, settings } = useSession();
  const state = useStore(conditions, (s) => s);
  const units = useStore(settings, (s) => s.units);
  if (!isAltered(state)) return null;
  const { wear, tiltLimit } = state;
  const how = alteredText({ ...state, blankTolerance: null, openingTolerance: null }, units);
  return (
    <p className={styles.worn} data-worn={wear || tiltLimit}>
      Sections are counted for parts as set in Compare: {how}.{' '}
      <button type="button" className="key" onClick={() => conditions.setState({ wear: 0, tiltLimit: 0 })}>
        Count as drawn
      </button>
    </p>
  );
}

/** What is counted, or why nothing is. */
function Under({ capacity, current, faults, settings, judged }: ShownCapacity) {
  const [fault] = faults;
  if (fault)
    return (
      <p role="alert">
        {fault.what}. {fault.cure}
      </p>
    );
  if (!capacity || !current) return <p>{rulesText(settings.rules, settings.firstDepth)}</p>;
  const why = capacity.whyNone && whyNoneWords(settings.rules, capacity.whyNone, settings.firstDepth);
  return (
    <>
      <p>
        {rulesText(settings.rules, settings.firstDepth)}. {keptText(capacity)}
        {!judged && ' The family has no blanks or no keyways, so one section is counted.'}
      </p>
      {why && (
        <p role="alert" data-why-none>
          {why.join(' ')}
        </p>
      )}
      {judged && <WornNote />}
    </>
  );
}
