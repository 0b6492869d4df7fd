import { heightNumber } from '../../../family/length-text.ts';
import { thicknessAt } from '../../../gauge/thickness-curve.ts';
import { stripHeightText, thicknessFigure } from '../../state/gauge/gauge-lengths.ts';
import { alikeNames } from '../../state/gauge/gauge-words.ts';
import readings from '../readings.module.css';
import { useSession, useStore } from '../use-store.ts';
import styles from './limit-table.module.css';
import type { ShownGauge } from './use-gauge.ts';

/** The family's limit in figures: which keyway sets it from which height on, and how thick a strip may be there. */
export function LimitTable({ gauge }: { gauge: ShownGauge }) {
  const units = useStore(useSession().settings, (s) => s.units);
  const { limit, openings } = gauge;
  if (!limit) return null;
  const namesOf = (ids: readonly string[]) => alikeNames(openings.filter(({ id }) => ids.includes(id)));
  const last = limit.stretches.at(-1);
  return (
    <section className={readings.part} aria-labelledby="reading-limit">
      <h2 id="reading-limit" className={readings.title}>
        Who sets the limit
      </h2>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">Strip up to</th>
            <th scope="col">Set by</th>
            <th scope="col">Thickest</th>
          </tr>
        </thead>
        <tbody>
          {limit.stretches.map(({ openingIds, from, to }) => (
            <tr key={from}>
              <td>{stripHeightText(to, units)}</td>
              <td>{namesOf(openingIds)}</td>
              <td>{thicknessFigure(thicknessAt(limit, to), units)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {last && (
        <p className={readings.note}>
          Nothing taller than {heightNumber(last.to, units)} {units} enters all. The taller a strip is, the thinner it
          must be.
        </p>
      )}
    </section>
  );
}
