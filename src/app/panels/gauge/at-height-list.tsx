import { askedHeightText, spareText, thicknessFigure, thicknessText } from '../../state/gauge/gauge-lengths.ts';
import { shortName } from '../../state/gauge/gauge-words.ts';
import { fromTightAt, type ShownCurves } from '../../state/gauge/shown-gauge.ts';
import readings from '../readings.module.css';
import { useSession, useStore } from '../use-store.ts';
import { VerdictMark } from '../verdict-mark.tsx';
import styles from './at-height-list.module.css';

interface AtHeightListProps {
  readonly gauge: ShownCurves & { readonly height: number; readonly thickness: number | null };
  readonly pickedId: string | null;
}

/** The keyways from tight to wide at the height in hand: the chart's twin for eyes, fingers and ears. */
export function AtHeightList({ gauge, pickedId }: AtHeightListProps) {
  const { selection, settings, gauge: store } = useSession();
  const units = useStore(settings, (s) => s.units);
  const { height, thickness } = gauge;
  const rows = fromTightAt(gauge, height);
  return (
    <section className={readings.part} aria-labelledby="reading-at-height">
      <h2 id="reading-at-height" className={readings.title}>
        Strip {askedHeightText(height, units)} tall
      </h2>
      <p className={readings.note}>
        The thickest that goes in, tight first
        {thickness === null ? '' : `; spare for ${thicknessText(thickness, units)}`}
      </p>
      <ul className={readings.pairs} data-at-height>
        {rows.map(({ opening, most }) => (
          <li key={opening.id}>
            <button
              type="button"
              className={`${readings.pair} ${styles.row}`}
              aria-pressed={opening.id === pickedId}
              title={`Pick the ${opening.name}`}
              data-opening-row={opening.id}
              onClick={() => selection.setState({ openingId: opening.id, part: 'opening' })}
              onPointerEnter={() => store.setState({ pointed: opening.id })}
              onPointerLeave={() => store.setState({ pointed: null })}
            >
              {thickness !== null && <VerdictMark verdict={most >= thickness ? 'enters' : 'blocked'} size={18} />}
              <span className={readings.grow}>{shortName(opening)}</span>
              <span className={styles.figure}>{most > 0 ? thicknessFigure(most, units) : 'none so tall'}</span>
              {thickness !== null && most > 0 && (
                <span className={styles.spare}>
                  <span className="unseen">{most >= thickness ? 'enters, spare ' : 'blocked, '}</span>
                  {spareText(most - thickness, units)}
                </span>
              )}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
