import { useMemo } from 'react';
import type { Capacity } from '../../../../capacity/capacity.ts';
import type { Family } from '../../../../family/family.ts';
import {
  type CountedSection,
  countedSections,
  type JudgedBlanks,
} from '../../../state/plan/capacity/capacity-sections.ts';
import { setCapacity } from '../../../state/plan/capacity/capacity-state.ts';
import { bittingText, countText } from '../../../state/plan/capacity/capacity-words.ts';
import { trayReach } from '../../../state/tray-reach.ts';
import { SectionThumb } from '../../section-thumb.tsx';
import { useSession } from '../../use-store.ts';
import { CutKey } from './cut-key.tsx';
import styles from './same-bitting.module.css';
import { useCapacitySettings } from './use-capacity.ts';

/** So many sections are drawn; the others are counted in words. */
const MOST_DRAWN = 24;

interface SameBittingProps {
  readonly family: Family;
  readonly capacity: Capacity;
  readonly judged: JudgedBlanks | null;
}

/** One bitting on every section that is counted: as many keys that do not open each other's cylinders. */
export function SameBitting({ family, capacity, judged }: SameBittingProps) {
  const session = useSession();
  const { rules, firstDepth } = useCapacitySettings(family);
  const { example, exampleNumber, bittings } = capacity;
  const { chambers } = rules;
  const counted = useMemo(
    () => (judged ? countedSections(family, capacity, judged, chambers) : []),
    [family, capacity, judged, chambers],
  );
  const reach = useMemo(() => trayReach(family), [family]);
  if (!example) return null;
  // A prime step visits all of them before it comes back.
  const step = (by: bigint) =>
    setCapacity(session, family.name, { example: (exampleNumber + by + bittings) % bittings });
  return (
    <section className={styles.section} aria-labelledby="same-bitting-title" data-example={example.join(' ')}>
      <header className={styles.head}>
        <h2 id="same-bitting-title" className={styles.title}>
          {counted.length > 1 ? `The same bitting in ${counted.length} sections` : 'A bitting'}:{' '}
          <span className={styles.cuts}>{bittingText(example, firstDepth)}</span>
        </h2>
        <button type="button" className="key" onClick={() => step(10_007n)}>
          Another one
        </button>
      </header>
      <ul className={styles.keys}>
        {counted.length === 0 && (
          <li>
            <CutKey cuts={example} depths={rules.depths} />
          </li>
        )}
        {counted.slice(0, MOST_DRAWN).map((section) => (
          <Key key={section.keyway.id} section={section} reach={reach} cuts={example} depths={rules.depths} />
        ))}
      </ul>
      <p className={styles.note}>
        {counted.length > MOST_DRAWN && `And ${counted.length - MOST_DRAWN} sections more. `}
        Number {countText(exampleNumber + 1n)} of {countText(bittings)}, drawn not to scale
        {counted.length > 1 && '; none of these keys goes into the keyway of another'}.
      </p>
    </section>
  );
}

interface KeyProps {
  readonly section: CountedSection;
  readonly reach: { readonly x: number; readonly y: number };
  readonly cuts: readonly number[];
  readonly depths: number;
}

function Key({ section, reach, cuts, depths }: KeyProps) {
  const { keyway, blank } = section;
  return (
    <li className={styles.key} title={`${keyway.name}: keys on ${blank.name}`}>
      <SectionThumb profile={keyway} reachX={reach.x} reachY={reach.y} width={24} height={46} />
      <span className={styles.words}>
        {keyway.section ?? keyway.name}
        <CutKey cuts={cuts} depths={depths} />
      </span>
    </li>
  );
}
