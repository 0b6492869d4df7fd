import { memo } from 'react';
import { cautionsAbout } from '../../../../family/cautions.ts';
import { readingText, type Units } from '../../../../family/length-text.ts';
import { middleOf } from '../../../../family/plug-face.ts';
import type { Profile } from '../../../../profile/profile.ts';
import {
  type PrintedEntry,
  type PrintedPlan,
  type PrintedRow,
  type PrintedSection,
  siteBandText,
  sizeOf,
} from '../../../state/plan/sections/printed-plan.ts';
import type { PrintedStrength } from '../../../state/plan/sections/printed-report.ts';
import { outlinePath } from '../../draw/outline-path.ts';
import styles from './printed-sheet.module.css';

interface PrintedSheetProps {
  readonly sheet: PrintedPlan;
  readonly strength: PrintedStrength;
  /** The day on which it is printed. */
  readonly date: string;
  /** How many times their true size the sections are drawn. */
  readonly scale: number;
  readonly units: Units;
  /** Width of a groove on the blade's face, nanometres. */
  readonly grooveWidth: number;
}

/** The planned family as it is printed: black on white whatever the theme, tables that break between rows. */
export const PrintedSheet = memo(function PrintedSheet(props: PrintedSheetProps) {
  const { sheet, strength, date, scale, units, grooveWidth } = props;
  return (
    <article className={styles.sheet} data-printed="" aria-label={`Printed sheet of ${sheet.title}`}>
      <header>
        <h1>
          <span>{sheet.title}: planned sections</span> <small>{date}</small>
        </h1>
        <Facts facts={sheet.facts} />
      </header>
      <Areas sheet={sheet} />
      <Pictures title="Keyways" kind="opening" sections={sheet.openings} scale={scale} />
      <Pictures title="Blanks" kind="blank" sections={sheet.blanks} scale={scale} />
      <Entries sheet={sheet} />
      <Sites sheet={sheet} units={units} grooveWidth={grooveWidth} />
      <section>
        <h2>Report</h2>
        <Facts facts={sheet.report} wide />
        {sheet.notes.map((note) => (
          <p key={note} className={styles.said}>
            {note}
          </p>
        ))}
      </section>
      <Strength strength={strength} />
      <section className={styles.whole}>
        <h2>Cautions</h2>
        <ul className={styles.cautions}>
          {[...cautionsAbout('plan'), ...cautionsAbout('strength')]
            .filter((sentence, i, all) => all.indexOf(sentence) === i)
            .map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
        </ul>
      </section>
    </article>
  );
});

/** What each blank bears in the material of the Strength sheet. */
function Strength({ strength: { material, wait, weakest, rows } }: { strength: PrintedStrength }) {
  return (
    <section>
      <h2>Strength in {material}</h2>
      <p className={styles.note}>
        Torque on the blade, estimated from its section. {wait || `The weakest in torsion is ${weakest}.`}
      </p>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">Blank</th>
            <th scope="col">Yields at</th>
            <th scope="col">Twists through at</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ name, yields, twists }, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: names may be alike, the order is fixed
            <tr key={i}>
              <th scope="row">{name}</th>
              <td>{yields}</td>
              <td>{twists}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Facts({ facts, wide = false }: { facts: PrintedPlan['facts']; wide?: boolean }) {
  return (
    <dl className={styles.facts} data-wide={wide || undefined}>
      {facts.map(({ term, value }) => (
        <div key={`${term} ${value}`}>
          <dt>{term}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

function Areas({ sheet: { areas, holders } }: { sheet: PrintedPlan }) {
  return (
    <>
      <section>
        <h2>Areas</h2>
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col">Area</th>
              <th scope="col">Section of its keyway</th>
            </tr>
          </thead>
          <tbody>
            {areas.map(({ name, depth, section }, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: names may be alike, the order is fixed
              <tr key={i}>
                <th scope="row" className={styles.area} data-group={section === null || undefined}>
                  <span style={{ paddingLeft: `${depth * 1.2}em` }}>{name}</span>
                </th>
                <td>{section ?? ''}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {holders.length > 0 && (
        <section>
          <h2>Holders</h2>
          <table className={styles.table}>
            <thead>
              <tr>
                <th scope="col">Holder</th>
                <th scope="col">Enters</th>
                <th scope="col">Carries the blank</th>
              </tr>
            </thead>
            <tbody>
              {holders.map(({ name, enters, blanks }, i) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: names may be alike, the order is fixed
                <tr key={i}>
                  <th scope="row">{name}</th>
                  <td>{enters}</td>
                  <td>{blanks}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
    </>
  );
}

interface PicturesProps {
  readonly title: string;
  readonly kind: 'opening' | 'blank';
  readonly sections: readonly PrintedSection[];
  readonly scale: number;
}

function Pictures({ title, kind, sections, scale }: PicturesProps) {
  // The first row stays on the page of its heading and bar.
  const width = Math.max(NARROWEST, ...sections.map(({ profile }) => paperSize(profile, scale).width));
  const inRow = Math.max(1, Math.floor((PAPER + 2) / (width + 2)));
  return (
    <section>
      <div className={styles.whole}>
        <h2>
          {title}, {scale}:1
        </h2>
        <p className={styles.note}>
          {kind === 'opening' ? 'Seen from the front of the plug.' : 'Seen from the bow.'} This bar is {scaleBar(scale)}{' '}
          mm of the section when the sheet is printed at 100 %: <ScaleBar scale={scale} />
        </p>
        <PictureRow sections={sections.slice(0, inRow)} scale={scale} width={width} />
      </div>
      {sections.length > inRow && <PictureRow sections={sections.slice(inRow)} scale={scale} width={width} />}
    </section>
  );
}

/** Width of the text on paper, and of the narrowest column of pictures, millimetres. */
const PAPER = 186;
const NARROWEST = 21.2;

interface PictureRowProps {
  readonly sections: readonly PrintedSection[];
  readonly scale: number;
  /** Width of a column, millimetres. */
  readonly width: number;
}

function PictureRow({ sections, scale, width }: PictureRowProps) {
  return (
    <ul className={styles.pictures}>
      {sections.map(({ profile, title: name, aside }) => (
        <li key={profile.id} style={{ width: `${width}mm` }}>
          <SectionPicture profile={profile} scale={scale} />
          <b>{name}</b>
          {aside !== '' && <span>{aside}</span>}
        </li>
      ))}
    </ul>
  );
}

/** A round length of the section that is about 20 mm on paper. */
function scaleBar(scale: number): number {
  return [10, 5, 4, 2, 1].find((mm) => mm * scale <= 25) ?? 1;
}

function ScaleBar({ scale }: { scale: number }) {
  const width = scaleBar(scale) * scale;
  return (
    <svg width={`${width}mm`} height="3mm" viewBox={`0 0 ${width} 3`} aria-hidden="true" className={styles.bar}>
      <path d={`M0.2 0V3M${width - 0.2} 0V3M0.2 1.5H${width - 0.2}`} />
    </svg>
  );
}

/** Metal round a keyway, or round nothing; millimetres of paper. */
const ROUND = 2.2;

/** What a section takes on paper with the metal round it, millimetres. */
function paperSize(profile: Profile, scale: number): { readonly width: number; readonly height: number } {
  const { width, height } = sizeOf(profile);
  return { width: width * scale + 2 * ROUND, height: height * scale + 2 * ROUND };
}

/** A section at its scale: the page's millimetres are the section's, times the scale. */
function SectionPicture({ profile, scale }: { profile: Profile; scale: number }) {
  const { width, height } = paperSize(profile, scale);
  const middle = middleOf(profile);
  return (
    <svg
      width={`${width.toFixed(3)}mm`}
      height={`${height.toFixed(3)}mm`}
      viewBox={`0 0 ${width.toFixed(3)} ${height.toFixed(3)}`}
      className={styles.picture}
      data-kind={profile.kind}
      aria-hidden="true"
    >
      {profile.kind === 'opening' && (
        <rect className={styles.metal} x="0.1" y="0.1" width={width - 0.2} height={height - 0.2} />
      )}
      <path
        d={outlinePath(profile.ring)}
        transform={`translate(${width / 2} ${height / 2}) scale(${scale} ${-scale}) translate(${-middle.x} ${-middle.y})`}
      />
    </svg>
  );
}

/** So many keyways stand side by side in one table. */
const COLUMNS = 24;

const ENTRY_MARKS: Readonly<Record<PrintedEntry['verdict'], string>> = {
  enters: '●',
  tight: '◐',
  blocked: '–',
  unknown: '?',
};

const NOT_JUDGED: PrintedEntry = { verdict: 'unknown', isFree: false };

function entryMark({ verdict, isFree }: PrintedEntry): string {
  return isFree ? `(${ENTRY_MARKS[verdict]})` : ENTRY_MARKS[verdict];
}

function Entries({ sheet: { openings, blanks, entries } }: { sheet: PrintedPlan }) {
  const parts = Array.from({ length: Math.ceil(openings.length / COLUMNS) }, (_, i) => i * COLUMNS);
  return (
    <section>
      <h2>Which blank enters which keyway</h2>
      <p className={styles.note}>
        ● enters, ◐ tight, – stays out, ? not judged; in brackets where the plan lets it do either.
      </p>
      {parts.map((from) => (
        <table key={from} className={`${styles.table} ${styles.matrix}`}>
          <thead>
            <tr>
              <th scope="col">Blank</th>
              {openings.slice(from, from + COLUMNS).map(({ profile }) => (
                <th key={profile.id} scope="col" className={styles.aslant}>
                  <span>{profile.section ?? profile.name}</span>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {blanks.map(({ profile }, b) => (
              <tr key={profile.id}>
                <th scope="row">{profile.name}</th>
                {openings.slice(from, from + COLUMNS).map(({ profile: opening }, i) => (
                  <td key={opening.id} data-entry={entries[b]?.[from + i]?.verdict}>
                    {entryMark(entries[b]?.[from + i] ?? NOT_JUDGED)}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      ))}
    </section>
  );
}

function Sites({ sheet, units, grooveWidth }: Pick<PrintedSheetProps, 'sheet' | 'units' | 'grooveWidth'>) {
  const { sites, wards, grooves } = sheet;
  return (
    <>
      <section>
        <h2>Ward sites</h2>
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col">Site</th>
              <th scope="col">Face and height of the groove, from the back of the blade</th>
            </tr>
          </thead>
          <tbody>
            {sites.map((site) => (
              <tr key={site.name}>
                <th scope="row">{site.name}</th>
                <td>{siteBandText(site, grooveWidth, units)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <DepthTable title="Wards of the keyways" head="Keyway" rows={wards} sheet={sheet} units={units} />
      <DepthTable title="Grooves of the blanks" head="Blank" rows={grooves} sheet={sheet} units={units} />
    </>
  );
}

interface DepthTableProps {
  readonly title: string;
  readonly head: string;
  readonly rows: readonly PrintedRow[];
  readonly sheet: PrintedPlan;
  readonly units: Units;
}

function DepthTable({ title, head, rows, sheet: { sites }, units }: DepthTableProps) {
  const unit = units === 'in' ? 'thou' : 'mm';
  return (
    <section>
      <h2>
        {title}, depth in {unit}
      </h2>
      <table className={`${styles.table} ${styles.depths}`}>
        <thead>
          <tr>
            <th scope="col">{head}</th>
            {sites.map(({ name, side }) => (
              <th key={name} scope="col">
                {name} {side === 'left' ? 'L' : 'R'}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ name, depths }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {depths.map((depth, i) => (
                <td key={sites[i].name}>{depth > 0 ? readingText(depth, units).split(' ')[0] : '–'}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
