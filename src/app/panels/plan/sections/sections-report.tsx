import type { ReactNode } from 'react';
import { countWord } from '../../../../family/count-word.ts';
import type { Family } from '../../../../family/family.ts';
import { alikeWords } from '../../../../family/guard-margin.ts';
import { readingText, type Units, wearLengthText } from '../../../../family/length-text.ts';
import type { DrawnPlan, PlanPair, PlanReport } from '../../../../plan/drawn-plan.ts';
import { sayConfirmed } from '../../../../plan/say-confirmed.ts';
import type { Profile } from '../../../../profile/profile.ts';
import { NO_TOLERANCE, type PlanReading, planReadings } from '../../../state/plan/sections/report-readings.ts';
import { sectionsLookOf } from '../../../state/plan/sections/sections-state.ts';
import { useSession, useStore } from '../../use-store.ts';
import { ComparePairKey } from './compare-pair-key.tsx';
import { PlanStrengthLine } from './plan-strength-line.tsx';
import styles from './sections-report.module.css';
import type { FoundSections } from './use-sections.ts';

/** The margins of what is drawn; or why it is not offered. */
export function SectionsReport({ family, found }: { family: Family; found: FoundSections }) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const { drawing, confirmed } = found;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keys must reach it
    <section className={styles.report} tabIndex={0} aria-label="Report" data-plan-report={drawing.phase}>
      {confirmed ? (
        <ReportLines family={family} found={found} report={confirmed.report} units={units} />
      ) : (
        <NotConfirmed found={found} />
      )}
    </section>
  );
}

interface ReportLinesProps {
  readonly family: Family;
  readonly found: FoundSections;
  readonly report: PlanReport;
  readonly units: Units;
}

function ReportLines({ family, found, report, units }: ReportLinesProps) {
  const { pairs, clearance, guard, gap, placed } = report;
  const parts = partsById(found);
  const { tolerance } = found.question.gap;
  return (
    <>
      <p>
        Every pair was judged by its outlines
        {tolerance > 0 && `, for all parts within ${readingText(tolerance, units)} of their drawing to either side`}:{' '}
        {countWord(pairs.wanted, 'pair')} enter, {countWord(pairs.forbidden, 'pair')} stay out
        {pairs.free > 0 ? `, ${pairs.free} may do either` : ''}. Keyways are drawn {readingText(gap, units)} larger all
        round than their blanks. {placed} {sayConfirmed(report, (id) => parts.get(id)?.name ?? id).join(' ')}
      </p>
      {tolerance === 0 && <p className={styles.warning}>{NO_TOLERANCE}</p>}
      <PairLine family={family} parts={parts} term="Smallest clearance" pair={clearance} none="no pair must enter">
        {clearance && readingText(clearance.length, units)}
      </PairLine>
      <PairLine family={family} parts={parts} term="Guard margin" pair={guard} none="no wear lets any pair in">
        {guard && `goes in after ${wearLengthText(guard.length, units)} of wear of both`}
      </PairLine>
      <PlanStrengthLine family={family} found={found} />
      <ReadingsTable found={found} rows={planReadings(report, found.question.access)} units={units} />
    </>
  );
}

function partsById({ drawn }: FoundSections): ReadonlyMap<string, Profile> {
  return new Map([...(drawn?.openings ?? []), ...(drawn?.blanks ?? [])].map((profile) => [profile.id, profile]));
}

interface PairLineProps {
  readonly family: Family;
  readonly parts: ReadonlyMap<string, Profile>;
  readonly term: string;
  readonly pair: PlanPair | null;
  readonly none: string;
  readonly children: ReactNode;
}

function PairLine({ family, parts, term, pair, none, children }: PairLineProps) {
  return (
    <div className={styles.line}>
      <b>{term}</b>
      {pair ? (
        <>
          <span>
            {children}: {parts.get(pair.blank)?.name ?? pair.blank} in {parts.get(pair.opening)?.name ?? pair.opening}
            {alikeWords(pair)}
          </span>
          <ComparePairKey family={family} blank={parts.get(pair.blank)} opening={parts.get(pair.opening)} />
        </>
      ) : (
        <span>{none}</span>
      )}
    </div>
  );
}

interface ReadingsTableProps {
  readonly found: FoundSections;
  readonly rows: readonly PlanReading[];
  readonly units: Units;
}

/** The extremes: thinnest webs, longest wards, narrowest lines of sight; the picture beside shows what is picked. */
function ReadingsTable({ found, rows, units }: ReadingsTableProps) {
  const look = sectionsLookOf(useSession());
  return (
    <table className={styles.table}>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">Which</th>
          <th scope="col">Figure</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ what, kind, place, figure }) => {
          const name = (kind === 'blank' ? found.blanks : found.sections)[place]?.name ?? '';
          return (
            <tr key={`${what} ${place}`}>
              <th scope="row">{what}</th>
              <td>
                <button
                  type="button"
                  className={styles.pick}
                  title="Show it in the picture beside"
                  onClick={() => look.setState(kind === 'blank' ? { blank: place } : { section: place })}
                >
                  {name}
                </button>
              </td>
              <td>{figure(units)}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

function NotConfirmed({ found }: { found: FoundSections }) {
  const { drawing, question, found: wards } = found;
  if (wards.sites > question.layout.sites.length)
    return <p>Nothing is drawn: the blade has no room for so many sites. The nearest plans that fit stand above.</p>;
  if (drawing.phase === 'drawing') return <p>The sections are being drawn, and every pair is being judged …</p>;
  if (drawing.phase === 'done' && !drawing.answer.ok) return <Refused refused={drawing.answer} />;
  return <p>Nothing is drawn, so nothing is judged.</p>;
}

/** Why a drawn plan is not offered: pairs that the judge of fits did not confirm, limits, and what would do. */
export function Refused({ refused }: { refused: Extract<DrawnPlan, { ok: false }> }) {
  const { why, pairs, nearest } = refused;
  return (
    <div className={styles.refused} role="alert">
      <h2>{pairs.length > 0 ? 'Not offered: the outlines do not do what the plan says' : 'It could not be drawn'}</h2>
      {pairs.length > 0 && (
        <ul>
          {pairs.map(({ blank, opening, words }) => (
            <li key={`${blank} ${opening}`}>{words}</li>
          ))}
        </ul>
      )}
      {why.length > 0 && (
        <ul>
          {why.map(({ field, words, cure }) => (
            <li key={field + words}>
              {words}. {cure}
            </li>
          ))}
        </ul>
      )}
      {nearest && <p>{nearest}</p>}
    </div>
  );
}
