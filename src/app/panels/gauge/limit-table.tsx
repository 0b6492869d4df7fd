import { Fragment } from 'react';
import { heightNumber, type Units } from '../../../family/length-text.ts';
import type { LimitStretch } from '../../../gauge/family-limit.ts';
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
          {limit.stretches.map(({ openingIds, joining, from, to }) => (
            <Fragment key={from}>
              <tr>
                <td>{stripHeightText(to, units)}</td>
                <td>{namesOf(openingIds)}</td>
                <td>{thicknessFigure(thicknessAt(limit, to), units)}</td>
              </tr>
              {joiningLines(joining, namesOf, units).map((line) => (
                <tr key={line}>
                  <td colSpan={3} className={styles.joining}>
                    {line}
                  </td>
                </tr>
              ))}
            </Fragment>
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

/** More lines than this say less than a count. */
const MOST_LINES = 3;

/** From which heights others set the limit too, a line each. */
function joiningLines(
  joining: LimitStretch['joining'],
  namesOf: (ids: readonly string[]) => string,
  units: Units,
): string[] {
  const heights = [...new Set(joining.map(({ from }) => from))];
  if (heights.length > MOST_LINES)
    return [`from ${stripHeightText(heights[0], units)} on others too, ${joining.length} in the end`];
  return heights.map((height) => {
    const ids = joining.filter(({ from }) => from === height).map(({ openingId }) => openingId);
    return `from ${stripHeightText(height, units)} ${namesOf(ids)} too`;
  });
}
