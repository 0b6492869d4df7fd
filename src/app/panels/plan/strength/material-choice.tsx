import { useId } from 'react';
import { MATERIALS } from '../../../../strength/materials.ts';
import { materialText } from '../../../state/plan/strength/strength-words.ts';
import styles from '../../form-fields.module.css';

const FAMILIES = [...new Set(MATERIALS.map(({ family }) => family))];

/** The materials of the shared table, by kind of metal. */
export function MaterialChoice({ id, onChoose }: { id: string; onChoose(id: string): void }) {
  const field = useId();
  return (
    <div className={styles.field}>
      <label htmlFor={field}>Material</label>
      <select id={field} className={styles.select} value={id} onChange={(event) => onChoose(event.target.value)}>
        {FAMILIES.map((family) => (
          <optgroup key={family} label={family}>
            {MATERIALS.filter((material) => material.family === family).map((material) => (
              <option key={material.id} value={material.id}>
                {materialText(material)}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
    </div>
  );
}
