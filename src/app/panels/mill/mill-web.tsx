import { useMemo } from 'react';
import type { Family } from '../../../family/family.ts';
import { heightText } from '../../../family/length-text.ts';
import type { Profile } from '../../../profile/profile.ts';
import { thinnestWeb } from '../../../profile/thinnest-web.ts';
import { setLeastWeb } from '../../state/draw/mill-editing.ts';
import { lengthText } from '../../state/draw/mill-words.ts';
import readings from '../readings.module.css';
import { useSession, useStore } from '../use-store.ts';
import styles from './mill-panel.module.css';
import { LengthField } from './mill-size-field.tsx';

/** Where the blade is thinnest, and the least web that the family wants. */
export function WebReading({ family, profile }: { family: Family; profile: Profile }) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const { leastWeb } = family;
  const web = useMemo(() => profile.milled && thinnestWeb(profile.milled), [profile.milled]);
  if (!web) return null;
  const isThin = leastWeb !== undefined && web.thickness < leastWeb;
  const thick = Math.round(web.thickness / 1000) * 1000;
  const height = heightText((web.left.y + web.right.y) / 2, units);
  return (
    <section className={readings.part} aria-labelledby="mill-web">
      <h2 id="mill-web" className={readings.title}>
        Web
      </h2>
      <p className={styles.web} data-thin={isThin} role="status">
        {isThin && (
          <b>
            <span aria-hidden="true">⚠ </span>Too thin:{' '}
          </b>
        )}
        {lengthText(thick, units)} at its thinnest, {height} above the back
        {isThin && `; the least is ${lengthText(leastWeb, units)}`}.
      </p>
      <div className={styles.sizes} data-units={units}>
        <LengthField
          name="Least web (0: none)"
          label="Least web of the family, 0 for none"
          value={leastWeb ?? 0}
          units={units}
          fault=""
          onTake={(nm) => setLeastWeb(session, nm > 0 ? nm : null)}
        />
      </div>
    </section>
  );
}
