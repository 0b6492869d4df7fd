import { useId } from 'react';
import type { Family } from '../../../../family/family.ts';
import type { StrengthRow } from '../../../state/plan/strength/strength-rows.ts';
import { setStrength } from '../../../state/plan/strength/strength-state.ts';
import { limitText, momentText, ratioText } from '../../../state/plan/strength/strength-words.ts';
import fields from '../../form-fields.module.css';
import readings from '../../readings.module.css';
import { useSession, useStore } from '../../use-store.ts';
import styles from './strength-beside.module.css';
import { useStrengthSettings } from './use-strength.ts';

interface StrengthBesideProps {
  readonly family: Family;
  readonly rows: readonly StrengthRow[];
  readonly row: StrengthRow;
}

/** The picked blade beside another one, in the same material: figures and their ratio. */
export function StrengthBeside({ family, rows, row }: StrengthBesideProps) {
  const session = useSession();
  const id = useId();
  const { besideId } = useStrengthSettings(family);
  const others = rows.filter(({ profile }) => profile.id !== row.profile.id);
  const beside = others.find(({ profile }) => profile.id === besideId);
  if (others.length === 0) return null;
  return (
    <section className={readings.part} aria-label="Beside another blade" data-beside={beside?.profile.id ?? ''}>
      <div className={fields.field}>
        <label htmlFor={id}>Beside another blade</label>
        <select
          id={id}
          className={fields.select}
          value={beside?.profile.id ?? ''}
          onChange={({ target }) => setStrength(session, family.name, { besideId: target.value || null })}
        >
          <option value="">none</option>
          {others.map(({ profile }) => (
            <option key={profile.id} value={profile.id}>
              {profile.name}
            </option>
          ))}
        </select>
      </div>
      {beside && <Ratios row={row} beside={beside} />}
    </section>
  );
}

function Ratios({ row, beside }: { row: StrengthRow; beside: StrengthRow }) {
  const units = useStore(useSession().settings, (s) => s.units);
  const [a, b] = [row, beside];
  if (!a.section || !b.section || !a.limits || !b.limits) return <p>Not solved yet …</p>;
  const lines = [
    ['J', momentText(b.section.torsion.best, units), ratioText(a.section.torsion.best, b.section.torsion.best)],
    ['Yields at', limitText(b.limits.yieldNm, units), ratioText(a.limits.yieldNm.low, b.limits.yieldNm.low)],
    ['Plastic at', limitText(b.limits.plasticNm, units), ratioText(a.limits.plasticNm.low, b.limits.plasticNm.low)],
    ['Bends at', limitText(b.limits.bendingNm, units), ratioText(a.limits.bendingNm.low, b.limits.bendingNm.low)],
  ];
  return (
    <table className={styles.table}>
      <thead>
        <tr>
          <th scope="col">
            <span className="unseen">Figure</span>
          </th>
          <th scope="col">{b.profile.name}</th>
          <th scope="col">{a.profile.name}</th>
        </tr>
      </thead>
      <tbody>
        {lines.map(([term, value, ratio]) => (
          <tr key={term}>
            <th scope="row">{term}</th>
            <td>{value}</td>
            <td>{ratio}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
