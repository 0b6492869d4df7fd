import type { BittingRules } from '../../../../capacity/bitting-rules.ts';
import type { Capacity } from '../../../../capacity/capacity.ts';
import { capacityChart } from '../../../state/plan/capacity/capacity-chart.ts';
import { addedChamberText, countText, factorText, variantName } from '../../../state/plan/capacity/capacity-words.ts';
import { useSize } from '../../use-size.ts';
import styles from './capacity-chart.module.css';

/** Pixels: a row, a gap between two kinds, the room for names and for figures. */
const ROW = 23;
const GAP = 8;
const NAMES = 92;
const FIGURES = 214;
const FACTORS = 62;
const HEAD = 22;

/** What one less and one more of chambers, depths and sections brings, on a scale of powers of ten. */
export function CapacityChart({ capacity, rules }: { capacity: Capacity; rules: BittingRules }) {
  const [frame, size] = useSize<HTMLDivElement>();
  const { rows, lines } = capacityChart(capacity);
  if (rows.length === 0) return null;
  const kinds = [...new Set(rows.map(({ variant }) => variant.of))];
  const places = rows.map(({ variant }, i) => HEAD + i * ROW + kinds.indexOf(variant.of) * GAP + ROW / 2);
  const height = HEAD + rows.length * ROW + Math.max(0, kinds.length - 1) * GAP + 4;
  const width = size?.width ?? 0;
  const x = (share: number) => NAMES + share * Math.max(40, width - NAMES - FIGURES);
  return (
    <section className={styles.section} aria-labelledby="capacity-chart-title">
      <h2 id="capacity-chart-title" className={styles.title}>
        One more, one less
      </h2>
      <div ref={frame}>
        {width > 0 && (
          <svg className={styles.chart} width={width} height={height} role="img" aria-label={chartWords(capacity)}>
            {lines.map(({ power, share }) => (
              <g key={power} className={styles.line}>
                <path d={`M${x(share)} ${HEAD - 2}V${height - 4}`} />
                <text x={x(share)} y={13}>
                  {powerText(power)}
                </text>
              </g>
            ))}
            {rows.map(({ variant, share }, i) => (
              <g key={`${variant.of} ${variant.count}`} className={styles.row} data-now={variant.now || undefined}>
                <text x={NAMES - 8} y={places[i] + 5} textAnchor="end">
                  {variantName(variant)}
                </text>
                <path d={`M${NAMES} ${places[i]}H${x(share)}`} />
                {variant.now ? (
                  <path className={styles.solid} d={`M${x(share)} ${places[i] - 7}l7 7-7 7-7-7Z`} />
                ) : (
                  <circle cx={x(share)} cy={places[i]} r={5} />
                )}
                <text x={width - FACTORS} y={places[i] + 5} textAnchor="end">
                  {countText(variant.keys)}
                </text>
                <text className={styles.factor} x={width - 2} y={places[i] + 5} textAnchor="end">
                  {factorText(variant, capacity.keys)}
                </text>
              </g>
            ))}
          </svg>
        )}
      </div>
      <p className={styles.note}>
        Key changes; each upright line is ten times the one before. The filled mark is the system as it is asked for.{' '}
        {addedChamberText(rules)}
      </p>
    </section>
  );
}

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** 1, 10, 100, then powers: "10⁷". */
function powerText(power: number): string {
  if (power < 3) return String(10 ** power);
  return `10${[...String(power)].map((digit) => RAISED[Number(digit)]).join('')}`;
}

function chartWords({ variants, keys }: Capacity): string {
  const told = variants.filter(({ now }) => !now).map((v) => `${variantName(v)}: ${countText(v.keys)}`);
  return `Key changes as asked: ${countText(keys)}. With ${told.join('; with ')}.`;
}
