import { useDeferredValue, useEffect } from 'react';
import { readingText } from '../../../family/length-text.ts';
import type { WardAnswer } from '../../../passage/ward-by-ward.ts';
import { passingWords, wardName } from '../../../passage/ward-sentence.ts';
import { bandWriter } from '../../state/pair-sentence.ts';
import styles from '../readings.module.css';
import type { ShownPair } from '../use-pair.ts';
import { useSession, useStore } from '../use-store.ts';
import own from './ward-list.module.css';
import { shownWards, wardsOf } from './ward-state.ts';

/** Each ward of the keyway and what lets it by: pointing at a line lights ward and groove in the drawing. */
export function WardList({ pair }: { pair: ShownPair }) {
  const session = useSession();
  const store = wardsOf(session);
  const lit = useStore(store, (s) => s.lit);
  // A blank that is dragged shows its wards as time allows.
  const wards = shownWards(useDeferredValue(pair));
  const light = (index: number | null) => store.setState({ lit: index });
  // biome-ignore lint/correctness/useExhaustiveDependencies: another pair has other wards
  useEffect(() => () => store.setState({ lit: null }), [store, pair.entrant.id, pair.opening.id]);
  return (
    <section className={styles.part} aria-labelledby="reading-wards">
      <h2 id="reading-wards" className={styles.title}>
        Ward by ward
      </h2>
      {wards.length === 0 ? (
        <p>{pair.opening.name} has no wards: nothing stands into it from its sides.</p>
      ) : (
        <ol className={own.wards} onPointerLeave={() => light(null)} onBlur={() => light(null)}>
          {wards.map((ward, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: wards have no identity but their place in the list
            <li key={i}>
              <WardLine ward={ward} lit={lit === i} onLight={() => light(i)} />
            </li>
          ))}
        </ol>
      )}
      {wards.length > 0 && (
        <p className={styles.note}>From the back upwards. Point at a line to light its ward and its groove.</p>
      )}
    </section>
  );
}

function WardLine({ ward, lit, onLight }: { ward: WardAnswer; lit: boolean; onLight(): void }) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const length = (nm: number) => readingText(nm, units);
  const band = bandWriter(units);
  const words = passingWords(ward, length, band);
  return (
    <button
      type="button"
      className={own.ward}
      data-passes={ward.passing.how === 'groove' || ward.passing.how === 'clear'}
      data-lit={lit || undefined}
      onPointerEnter={onLight}
      onFocus={onLight}
      onClick={onLight}
    >
      <Mark passes={ward.passing.how === 'groove' || ward.passing.how === 'clear'} />
      <span>
        <b>{wardName(ward, band)}:</b> {words}
      </span>
    </button>
  );
}

/** A gap between two jaws, or jaws that bite: beside words, so without a name of its own. */
function Mark({ passes }: { passes: boolean }) {
  return (
    <svg className={own.mark} width="20" height="20" viewBox="0 0 20 20" aria-hidden="true">
      {passes ? (
        <path d="M2 3v14M18 3v14M6 10h8M8.5 7l-3 3 3 3M11.5 7l3 3-3 3" />
      ) : (
        <path d="M1 4l9 6-9 6zM19 4l-9 6 9 6z" />
      )}
    </svg>
  );
}
