import type { DisplaySet } from '../../../print3d/display-set.ts';
import { pickPart } from '../../state/publish/block-state.ts';
import { partSize } from '../../state/publish/block-words.ts';
import { useSession, useStore } from '../use-store.ts';
import styles from './block-readings.module.css';
import { useBlockLook } from './use-block.ts';

/** Every part of a set in words; a press points it out in the picture. */
export function BlockParts({ set }: { readonly set: DisplaySet }) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const [{ picked, bed }, look] = useBlockLook();
  return (
    <ul className={styles.parts} aria-label="Parts of the set">
      {set.parts.map((part) => (
        <li key={part.name}>
          <button
            type="button"
            className={styles.partRow}
            aria-pressed={part.name === picked}
            onClick={() => look.setState(part.name === picked ? { picked: null } : pickPart(part, bed))}
          >
            <i className={styles.swatch} data-kind={part.kind} aria-hidden="true" />
            <b>{part.name}</b>
            <span>
              {partSize(part, units)}
              {set.beds > 1 && `, bed ${part.bed + 1}`}
            </span>
          </button>
        </li>
      ))}
    </ul>
  );
}
