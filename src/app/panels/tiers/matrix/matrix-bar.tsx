import { useId } from 'react';
import { CELL_SIZES, type CellSize, type MatrixOrder } from '../../../state/tiers/tiers-state.ts';
import { useSession, useStore } from '../../use-store.ts';
import styles from '../tiers-bar.module.css';

const ORDERS: readonly (readonly [MatrixOrder, string])[] = [
  ['chart', 'by chart'],
  ['tier', 'by tier'],
  ['name', 'by name'],
];

const SIZE_NAMES: Readonly<Record<CellSize, string>> = {
  small: 'Small cells',
  middle: 'Middle cells',
  large: 'Large cells with margins',
};

/** In what order the matrix stands and how large its cells are. */
export function MatrixBar() {
  const { tiers } = useSession();
  const rowOrder = useStore(tiers, (s) => s.rowOrder);
  const columnOrder = useStore(tiers, (s) => s.columnOrder);
  return (
    <div className={styles.bar}>
      <OrderField
        label="Rows"
        title="The order of the rows"
        value={rowOrder}
        onChange={(next) => tiers.setState({ rowOrder: next })}
      />
      <OrderField
        label="Columns"
        title="The order of the columns"
        value={columnOrder}
        onChange={(next) => tiers.setState({ columnOrder: next })}
      />
      <SizeKeys />
    </div>
  );
}

interface OrderFieldProps {
  readonly label: string;
  readonly title: string;
  readonly value: MatrixOrder;
  onChange(order: MatrixOrder): void;
}

function OrderField({ label, title, value, onChange }: OrderFieldProps) {
  const id = useId();
  return (
    <span className={styles.field}>
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        className={styles.select}
        title={title}
        value={value}
        onChange={(event) => {
          const chosen = ORDERS.find(([order]) => order === event.target.value);
          if (chosen) onChange(chosen[0]);
        }}
      >
        {ORDERS.map(([order, words]) => (
          <option key={order} value={order}>
            {words}
          </option>
        ))}
      </select>
    </span>
  );
}

/** Three sizes, drawn as squares; the one in force again lets the sheet choose. */
function SizeKeys() {
  const { tiers } = useSession();
  const size = useStore(tiers, (s) => s.cellSize);
  return (
    <fieldset className="key-row bare" aria-label="Cell size">
      {CELL_SIZES.map((name, at) => (
        <button
          key={name}
          type="button"
          className="key"
          aria-label={SIZE_NAMES[name]}
          title={SIZE_NAMES[name]}
          aria-pressed={size === name}
          onClick={() => tiers.setState({ cellSize: size === name ? null : name })}
        >
          <svg width="20" height="20" viewBox="0 0 20 20" aria-hidden="true">
            <rect
              x={[6.5, 4, 1.5][at]}
              y={[6.5, 4, 4][at]}
              width={[7, 12, 17][at]}
              height={[7, 12, 12][at]}
              fill="none"
              stroke="currentColor"
              strokeWidth="2"
            />
            {name === 'large' && <path d="M9 10h6.5" stroke="currentColor" strokeWidth="2" />}
            {name === 'large' && <circle cx="5.4" cy="10" r="1.8" fill="currentColor" />}
          </svg>
        </button>
      ))}
    </fieldset>
  );
}
