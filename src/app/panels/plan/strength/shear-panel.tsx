import { useMemo } from 'react';
import type { Family } from '../../../../family/family.ts';
import { heightText, readingText, type Units } from '../../../../family/length-text.ts';
import type { SectionStrength } from '../../../../strength/strength.ts';
import { type ShearScale, shearScale } from '../../../state/plan/strength/shear-scale.ts';
import type { StrengthRow } from '../../../state/plan/strength/strength-rows.ts';
import { materialOf } from '../../../state/plan/strength/strength-state.ts';
import { stressText, torqueText } from '../../../state/plan/strength/strength-words.ts';
import { useSize } from '../../use-size.ts';
import { useSession, useStore } from '../../use-store.ts';
import styles from './shear-panel.module.css';
import { ShearPicture } from './shear-picture.tsx';
import { useStrengthSettings } from './use-strength.ts';

/** The shear over the picked blade under the torque compared with, as if nothing yielded, with its scale. */
export function ShearPanel({ family, row }: { family: Family; row: StrengthRow }) {
  const { section, profile, trouble } = row;
  return (
    <section className={styles.panel} aria-labelledby="shear-title" data-shear={section ? 'drawn' : 'waiting'}>
      <h2 id="shear-title" className={styles.title}>
        Shear in {profile.name}
      </h2>
      {section ? <Drawn family={family} row={row} section={section} /> : <p>{trouble || 'Not solved yet …'}</p>}
    </section>
  );
}

function Drawn({ family, row, section }: { family: Family; row: StrengthRow; section: SectionStrength }) {
  const units = useStore(useSession().settings, (s) => s.units);
  const settings = useStrengthSettings(family);
  const { torqueNm } = settings;
  const material = materialOf(settings);
  const scale = useMemo(() => shearScale(section, material, torqueNm, units), [section, material, torqueNm, units]);
  const [frame, size] = useSize<HTMLDivElement>();
  const peak = stressText(section.peakShear * torqueNm * 1000, units);
  const { profile } = row;
  return (
    <>
      <div className={styles.body}>
        <div ref={frame} className={styles.frame}>
          {size && size.height > 60 && (
            <ShearPicture
              profile={profile}
              section={section}
              scale={scale}
              width={size.width}
              height={size.height}
              label={pictureWords(row, section, torqueText(torqueNm, units), peak, units)}
            />
          )}
        </div>
        <Legend scale={scale} peak={peak} />
      </div>
      <p className={styles.note}>
        {torqueText(torqueNm, units)}, as if nothing yielded
        {scale.yieldLevel !== null && <>; beyond the thick line {material.alloy} would have yielded</>}
        {section.sharpCorners.length > 0 && <>; a cross marks a sharp inner corner, where no peak is told</>}
      </p>
    </>
  );
}

/** The bands from the highest down, as in the picture. */
function Legend({ scale, peak }: { scale: ShearScale; peak: string }) {
  const { texts, colours } = scale;
  return (
    <ol className={styles.legend} aria-label="Bands of shear stress">
      <li className={styles.greatest}>
        <svg width="20" height="20" viewBox="0 0 20 20" aria-hidden="true">
          <circle cx="10" cy="10" r="7" />
        </svg>
        {peak}
        <span className="unseen"> is the greatest</span>
      </li>
      {texts
        .map((text, i) => (
          <li key={text}>
            <span className={styles.swatch} style={{ background: colours[i] }} aria-hidden="true" />
            {i === texts.length - 1 ? `${text} +` : text}
          </li>
        ))
        .reverse()}
    </ol>
  );
}

function pictureWords({ profile }: StrengthRow, section: SectionStrength, torque: string, peak: string, units: Units) {
  const { peakAt, sharpCorners } = section;
  const xs = profile.ring.map(({ x }) => x);
  const back = Math.min(...profile.ring.map(({ y }) => y));
  const middle = (Math.min(...xs) + Math.max(...xs)) / 2;
  const side = peakAt.x < middle ? 'left' : 'right';
  const sharp = sharpCorners.length > 0 ? ` ${sharpCorners.length} sharp inner corners are marked.` : '';
  return `Shear over the section of ${profile.name} under ${torque}, in bands. The greatest, ${peak}, is ${readingText(Math.abs(peakAt.x - middle), units)} ${side} of the middle, ${heightText(peakAt.y - back, units)} above the back.${sharp}`;
}
