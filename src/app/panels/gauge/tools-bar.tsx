import { useId } from 'react';
import type { Family } from '../../../family/family.ts';
import type { ToolOrder } from '../../state/gauge/gauge-state.ts';
import fields from '../form-fields.module.css';
import { useSession, useStore } from '../use-store.ts';
import styles from './gauge-bar.module.css';
import { GaugeBar } from './gauge-bar.tsx';

/** The orders that can be chosen by name, and how each begins. */
const ORDERS: readonly { readonly label: string; readonly order: ToolOrder }[] = [
  { label: 'as in the family', order: { by: 'family', down: false } },
  { label: 'by name', order: { by: 'name', down: false } },
  { label: 'thin first', order: { by: 'size', down: false } },
  { label: 'thick first', order: { by: 'size', down: true } },
  { label: 'enters most first', order: { by: 'count', down: true } },
  { label: 'enters least first', order: { by: 'count', down: false } },
];

/** What is asked of the tools: how far they may tilt, their order, whether blanks are tried as well. */
export function ToolsBar({ family }: { family: Family }) {
  const { gauge } = useSession();
  const id = useId();
  const withBlanks = useStore(gauge, (s) => s.withBlanks);
  const order = useStore(gauge, (s) => s.order);
  const hasBlanks = family.profiles.some(({ kind }) => kind === 'blank');
  const place = ORDERS.findIndex(({ order: one }) => one.by === order.by && one.down === order.down);
  return (
    <GaugeBar family={family} withHeight={false} withThickness={false}>
      <div className={styles.field}>
        <label htmlFor={id}>order</label>
        <select
          id={id}
          className={`${fields.select} ${styles.select}`}
          value={place < 0 ? 'other' : String(place)}
          onChange={({ target }) => gauge.setState({ order: ORDERS[Number(target.value)].order })}
        >
          {place < 0 && <option value="other">{otherWords(family, order)}</option>}
          {ORDERS.map(({ label }, i) => (
            <option key={label} value={String(i)}>
              {label}
            </option>
          ))}
        </select>
      </div>
      {hasBlanks && (
        <label className={fields.tick}>
          <input
            type="checkbox"
            checked={withBlanks}
            onChange={({ target }) => gauge.setState({ withBlanks: target.checked })}
          />
          Blanks too
        </label>
      )}
    </GaugeBar>
  );
}

/** The order that a press on the head of the table made. */
function otherWords(family: Family, order: ToolOrder): string {
  if (order.by !== 'opening') return 'the other way round';
  const opening = family.profiles.find(({ id }) => id === order.openingId);
  return `by room in ${opening?.section ?? opening?.name ?? 'a keyway'}`;
}
