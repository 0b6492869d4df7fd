import { readingText } from '../../../family/length-text.ts';
import type { Verdict } from '../../../fit/fit.ts';
import { askedHeightText, askedThicknessText, spareText, thicknessFigure } from '../../state/gauge/gauge-lengths.ts';
import { shortName } from '../../state/gauge/gauge-words.ts';
import { fromTightAt } from '../../state/gauge/shown-gauge.ts';
import readings from '../readings.module.css';
import { useSession, useStore } from '../use-store.ts';
import { VerdictMark } from '../verdict-mark.tsx';
import styles from './at-height-list.module.css';
import type { ShownGauge } from './use-gauge.ts';

interface AtHeightListProps {
  readonly gauge: ShownGauge;
  readonly runningClearance: number;
}

/** The keyways from tight to wide at the height in hand: the chart's twin for eyes, fingers and ears. */
export function AtHeightList({ gauge, runningClearance }: AtHeightListProps) {
  const { selection, settings, gauge: store } = useSession();
  const units = useStore(settings, (s) => s.units);
  const { height, thickness, picked, verdicts } = gauge;
  const rows = fromTightAt(gauge, height);
  return (
    <section className={readings.part} aria-labelledby="reading-at-height">
      <h2 id="reading-at-height" className={readings.title}>
        Strip {askedHeightText(height, units)} tall
      </h2>
      <p className={readings.note}>
        {thickness === null
          ? 'The thickest that goes in, touching; the tightest keyway first'
          : `The thickest that goes in; spare for ${askedThicknessText(thickness, units)}, both sides together. Tight: less than ${readingText(runningClearance, units)} all round.`}
      </p>
      <ul className={readings.pairs} data-at-height>
        {rows.map(({ opening, most }) => (
          <li key={opening.id}>
            <button
              type="button"
              className={`${readings.pair} ${styles.row}`}
              aria-pressed={opening === picked}
              title={`Pick the ${opening.name}`}
              data-opening-row={opening.id}
              onClick={() => selection.setState({ openingId: opening.id, part: 'opening' })}
              onPointerEnter={() => store.setState({ pointed: opening.id })}
              onPointerLeave={() => store.setState({ pointed: null })}
            >
              {thickness !== null && <VerdictMark verdict={verdicts.get(opening.id) ?? null} size={18} />}
              <span className={readings.grow}>{shortName(opening)}</span>
              <span className={styles.figure}>{most > 0 ? thicknessFigure(most, units) : 'none so tall'}</span>
              {thickness !== null && most > 0 && (
                <span className={styles.spare}>
                  <span className="unseen">{spareLead(verdicts.get(opening.id))}</span>
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

/** What a spare thickness is said of, for ears: eyes have the mark. */
function spareLead(verdict: Verdict | undefined): string {
  if (verdict === 'blocked') return 'blocked, ';
  return verdict === 'tight' ? 'tight, spare ' : 'enters, spare ';
}
