import type { Family } from '../../../../family/family.ts';
import { readingText, type Units } from '../../../../family/length-text.ts';
import { USE_TORQUE } from '../../../../strength/materials.ts';
import type { SectionStrength } from '../../../../strength/strength.ts';
import type { StrengthRow } from '../../../state/plan/strength/strength-rows.ts';
import { materialOf } from '../../../state/plan/strength/strength-state.ts';
import {
  boundsText,
  limitText,
  memoryText,
  modulusText,
  momentText,
  sectionAreaText,
  sharpText,
  strengthText,
  stressText,
  torqueText,
  verdictSentence,
} from '../../../state/plan/strength/strength-words.ts';
import type { Fact } from '../../../state/profile-facts.ts';
import { Cautions } from '../../cautions.tsx';
import { FactList } from '../../fact-list.tsx';
import styles from '../../readings.module.css';
import { useSession, useStore } from '../../use-store.ts';
import { MaterialsThatDo } from './materials-that-do.tsx';
import { StrengthBeside } from './strength-beside.tsx';
import own from './strength-readings.module.css';
import { TorqueMark } from './torque-mark.tsx';
import { usePickedRow, useStrengthRows, useStrengthSettings } from './use-strength.ts';

/** The readings beside the strength of the blades: the picked one in figures, what it is compared with, the material. */
export function StrengthReadings({ family }: { family: Family }) {
  const rows = useStrengthRows(family);
  const row = usePickedRow(rows);
  if (!row) return null;
  return (
    <>
      <Picked family={family} row={row} />
      {row.section && <MaterialsThatDo family={family} section={row.section} />}
      {row.section && <StrengthBeside family={family} rows={rows} row={row} />}
      <TheMaterial family={family} />
      <section className={styles.part}>
        <Cautions about="strength" />
      </section>
    </>
  );
}

function Picked({ family, row }: { family: Family; row: StrengthRow }) {
  const units = useStore(useSession().settings, (s) => s.units);
  const { torqueNm } = useStrengthSettings(family);
  const { profile, section, verdict } = row;
  return (
    <section className={styles.part} aria-labelledby="reading-strength" data-strength-reading={profile.id}>
      <h2 id="reading-strength" className={styles.title}>
        {profile.name}
      </h2>
      {verdict && (
        <p className={own.verdict}>
          <TorqueMark verdict={verdict} size={22} />
          <span>{verdictSentence(profile.name, verdict, torqueNm, units)}</span>
        </p>
      )}
      {section ? <Figures row={row} section={section} torqueNm={torqueNm} units={units} /> : <p>Not solved yet …</p>}
    </section>
  );
}

interface FiguresProps {
  readonly row: StrengthRow;
  readonly section: SectionStrength;
  readonly torqueNm: number;
  readonly units: Units;
}

function Figures({ row, section, torqueNm, units }: FiguresProps) {
  const { limits, web, profile } = row;
  const { torsion, steps } = section;
  const last = steps[steps.length - 1];
  const facts: Fact[] = [
    { term: 'Area', value: sectionAreaText(section.area, units) },
    { term: web.way === 'any' ? 'Thinnest web' : 'Thinnest level web', value: readingText(web.thickness, units) },
    { term: 'Torsion constant J', value: `${momentText(torsion.best, units)} ${boundsText(torsion)}` },
    { term: 'Peak shear', value: stressText(section.peakShear * torqueNm * 1000, units) },
    ...(limits
      ? [
          { term: 'Yields at (von Mises)', value: limitText(limits.yieldNm, units) },
          { term: 'Yields at (Tresca)', value: limitText(limits.trescaNm, units) },
          { term: 'Plastic throughout at', value: limitText(limits.plasticNm, units) },
          { term: 'Bends at, about the weak axis', value: limitText(limits.bendingNm, units) },
        ]
      : []),
    { term: 'Second moment, weak axis', value: momentText(section.weakest, units) },
    { term: 'Section modulus, weak axis', value: modulusText(section.weakModulus, units) },
    { term: 'Least root radius', value: rootText(section, units) },
  ];
  const sharp = sharpText(section, (nm) => readingText(nm, units));
  return (
    <>
      <FactList facts={facts} />
      {sharp && (
        <p role="note" data-sharp>
          <strong>Sharp corners.</strong> {sharp}
        </p>
      )}
      {last && (
        <p className={styles.note}>
          J lies between {momentText(torsion.below, units, 6)} and {momentText(torsion.above, units, 6)}: two
          finite-element solutions on {last.triangles.toLocaleString('en-GB')} triangles bound it from both sides
          {section.converged ? '.' : '; they are not as close as was asked.'} Peak shear is an estimate, about 1 %
          {profile.milled ? '.' : '; at roundings drawn as straight chords up to 10 %, mostly too low.'}
        </p>
      )}
    </>
  );
}

function rootText({ leastRootRadius, sharpCorners }: SectionStrength, units: Units): string {
  if (leastRootRadius !== null) return readingText(leastRootRadius, units);
  return sharpCorners.length > 0 ? 'none stated' : 'no inner corner';
}

function TheMaterial({ family }: { family: Family }) {
  const units = useStore(useSession().settings, (s) => s.units);
  const settings = useStrengthSettings(family);
  const material = materialOf(settings);
  const memory = memoryText(material);
  const range = ([low, high]: readonly [number, number]) => (low === high ? `${low} GPa` : `${low}–${high} GPa`);
  const facts: Fact[] = [
    { term: 'Temper, form', value: `${material.temper}, ${material.form}` },
    { term: `Yield (${material.yieldBy})`, value: `${strengthText(material.yield, units)}, ${material.yieldAs}` },
    { term: 'Tensile strength', value: `${strengthText(material.tensile, units)}, ${material.tensileAs}` },
    { term: 'Modulus of elasticity E', value: range(material.E) },
    { term: 'Shear modulus G', value: range(material.G) },
    ...(material.hardness ? [{ term: 'Hardness', value: material.hardness }] : []),
  ];
  return (
    <section className={styles.part} aria-labelledby="reading-material">
      <h2 id="reading-material" className={styles.title}>
        {material.name.includes(material.alloy) ? material.name : `${material.name} ${material.alloy}`}
      </h2>
      <FactList facts={facts} />
      <p className={styles.note}>
        {material.source}. {memory} {material.note}
      </p>
      <p className={styles.note} data-use-torque>
        {torqueText(USE_TORQUE.nm, units)}: {USE_TORQUE.standard}, {USE_TORQUE.title}, {USE_TORQUE.meaning}.{' '}
        {USE_TORQUE.sure}
      </p>
    </section>
  );
}
