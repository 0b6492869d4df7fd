import { useMemo } from 'react';
import type { Family } from '../../../../family/family.ts';
import { MATERIALS } from '../../../../strength/materials.ts';
import type { SectionStrength } from '../../../../strength/strength.ts';
import { materialsThatDo } from '../../../../strength/torque-limits.ts';
import { setStrength } from '../../../state/plan/strength/strength-state.ts';
import { limitText, materialText, torqueText } from '../../../state/plan/strength/strength-words.ts';
import readings from '../../readings.module.css';
import { useSession, useStore } from '../../use-store.ts';
import styles from './materials-that-do.module.css';
import { TorqueMark } from './torque-mark.tsx';
import { useStrengthSettings } from './use-strength.ts';

const ORDER = ['elastic', 'part-plastic', 'too-much'] as const;

/** Every material with what the picked blade bears in it, those that do first; a press takes it for all blades. */
export function MaterialsThatDo({ family, section }: { family: Family; section: SectionStrength }) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const { torqueNm, materialId } = useStrengthSettings(family);
  const all = useMemo(() => {
    const judged = materialsThatDo(section, MATERIALS, torqueNm);
    return ORDER.flatMap((verdict) => judged.filter((one) => one.verdict === verdict));
  }, [section, torqueNm]);
  const bearing = all.filter(({ verdict }) => verdict === 'elastic').length;
  return (
    <section className={readings.part} aria-labelledby="reading-materials" data-materials={bearing}>
      <h2 id="reading-materials" className={readings.title}>
        {bearing === 0 ? 'No material' : bearing} of {all.length} {bearing === 1 ? 'bears' : 'bear'}{' '}
        {torqueText(torqueNm, units)}
      </h2>
      <ul className={styles.list} aria-label="Materials, those that do first">
        {all.map(({ material, limits, verdict }) => (
          <li key={material.id}>
            <button
              type="button"
              className={styles.material}
              aria-pressed={material.id === materialId}
              title="Take this material for all blades"
              onClick={() => setStrength(session, family.name, { materialId: material.id })}
            >
              <TorqueMark verdict={verdict} size={16} />
              <span>{materialText(material)}</span>
              <span className={styles.limits}>
                {limitText(limits.yieldNm, units)}, then {limitText(limits.plasticNm, units)}
              </span>
            </button>
          </li>
        ))}
      </ul>
      <p className={readings.note}>
        Open: nothing yields. Half: part of the section yields. Full: it twists through. Figures: torque to yield, to
        full plasticity.
      </p>
    </section>
  );
}
