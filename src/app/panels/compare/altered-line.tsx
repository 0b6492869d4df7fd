import { AS_DRAWN } from '../../state/conditions-state.ts';
import { alteredText, isOtherThanDrawn } from '../../state/conditions-words.ts';
import { useSession, useStore } from '../use-store.ts';
import styles from './altered-line.module.css';

/** Says so where pairs are judged otherwise than drawn, with the way back; nothing where they are judged as drawn. */
export function AlteredLine() {
  const { conditions, settings } = useSession();
  const state = useStore(conditions, (s) => s);
  const units = useStore(settings, (s) => s.units);
  if (!isOtherThanDrawn(state)) return null;
  return (
    <p className={styles.line} data-altered="">
      <span className={styles.what}>{alteredText(state, units)}</span>
      <button
        type="button"
        className="key"
        title="New parts, held upright, tolerances of the family file"
        onClick={() => conditions.setState(AS_DRAWN)}
      >
        As drawn
      </button>
    </p>
  );
}
