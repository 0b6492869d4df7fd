import type { Family } from '../../../../family/family.ts';
import { readingText, type Units, wearLengthText } from '../../../../family/length-text.ts';
import { marginText, VERDICT_WORDS } from '../../../../family/margin-text.ts';
import { stripText } from '../../../state/plan/sections/report-readings.ts';
import { stoppingSites } from '../../../state/plan/sections/sections-rows.ts';
import type { Fact } from '../../../state/profile-facts.ts';
import { Cautions } from '../../cautions.tsx';
import { FactList } from '../../fact-list.tsx';
import readings from '../../readings.module.css';
import { useSession, useStore } from '../../use-store.ts';
import { VerdictMark } from '../../verdict-mark.tsx';
import { ComparePairKey } from './compare-pair-key.tsx';
import { PlanPairPicture } from './plan-pair-picture.tsx';
import { type PlanPairNow, usePlanPair } from './use-plan-pair.ts';
import { type FoundSections, useFoundSections, useSectionsLook } from './use-sections.ts';

/** The readings beside this: the wards of each section, proved, drawn and judged. */
export function SectionsReadings({ family }: { family: Family }) {
  const found = useFoundSections(family);
  return (
    <>
      {found ? <PickedPair family={family} found={found} /> : <Nothing />}
      <section className={readings.part}>
        <Cautions about="plan" />
      </section>
    </>
  );
}

function Nothing() {
  return (
    <section className={readings.part}>
      <p className={readings.note}>Here stands the picked section with the picked blank, once there are wards.</p>
    </section>
  );
}

const WANTED = { 1: 'must enter', 0: 'must not enter', null: 'may enter or not' } as const;

function PickedPair({ family, found }: { family: Family; found: FoundSections }) {
  const { section, blank } = useSectionsLook(found);
  const pair = usePlanPair(found);
  const cell = found.question.table[section]?.[blank] ?? null;
  const [row, column] = [found.sections[section], found.blanks[blank]];
  if (!row || !column) return <Nothing />;
  const stops = stoppingSites(row.depths, column.depths, found.named);
  return (
    <section className={readings.part} aria-labelledby="reading-plan-pair" data-plan-pair={pair ? 'drawn' : 'none'}>
      <h2 id="reading-plan-pair" className={readings.title}>
        {column.full} in {row.full}
      </h2>
      <p>
        The plan says that it {WANTED[`${cell}`]}. {stopsWords(stops)}
      </p>
      {pair && found.drawn ? (
        <>
          <PlanPairPicture pair={pair} drawn={found.drawn} sites={found.named} />
          <PairFigures pair={pair} found={found} section={section} blank={blank} />
          <ComparePairKey family={family} blank={pair.entrant} opening={pair.opening} />
        </>
      ) : (
        <p className={readings.note}>{notDrawnWords(found, row.reserve || column.reserve)}</p>
      )}
    </section>
  );
}

function stopsWords(sites: readonly string[]): string {
  if (sites.length === 0) return 'No ward stands in its way.';
  if (sites.length === 1) return `The ward at site ${sites[0]} stops it.`;
  const [last, ...rest] = [...sites].reverse();
  return `The wards at sites ${rest.reverse().join(', ')} and ${last} stop it, each by itself.`;
}

function notDrawnWords({ drawing, found, question }: FoundSections, reserve: boolean): string {
  if (found.sites > question.layout.sites.length) return 'It is not drawn: the blade has no room for so many sites.';
  if (drawing.phase === 'drawing') return 'It is being drawn and judged …';
  if (reserve && drawing.phase === 'done')
    return 'It is kept in reserve: sites are chosen for it, and it is drawn when it comes.';
  return 'It is not drawn.';
}

interface PairFiguresProps {
  readonly pair: PlanPairNow;
  readonly found: FoundSections;
  readonly section: number;
  readonly blank: number;
}

function PairFigures({ pair: { fit, guard }, found, section, blank }: PairFiguresProps) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const report = found.confirmed?.report;
  const web = report?.webs[blank];
  const sight = report?.sights[section];
  const hasWards = found.sections[section]?.depths.some((depth) => depth > 0) ?? false;
  const facts: Fact[] = [
    ...(fit.verdict === 'blocked' ? [{ term: 'Guard, wear of both', value: guardText(guard, units) }] : []),
    ...(web ? [{ term: 'Thinnest web of the blank', value: readingText(web.thickness, units) }] : []),
    ...(sight ? sightFacts(sight, hasWards, units) : []),
  ];
  return (
    <>
      <p className={readings.verdict} data-verdict={fit.verdict}>
        <VerdictMark verdict={fit.verdict} size={24} />
        {VERDICT_WORDS[fit.verdict]}
        <span className={readings.margin}>{marginText(fit, units, undefined, readingText)}</span>
      </p>
      <FactList facts={facts} />
    </>
  );
}

function guardText(guard: number | null, units: Units): string {
  if (guard === null) return 'measuring…';
  return Number.isFinite(guard) ? wearLengthText(guard, units) : 'no wear lets it in';
}

type Sight = NonNullable<FoundSections['confirmed']>['report']['sights'][number];

/** How far the wards of a keyway reach, and what a straight strip must be thinner than to pass. */
function sightFacts({ left, right, paracentric, strip }: Sight, hasWards: boolean, units: Units): Fact[] {
  const most = Math.max(left, right);
  const past =
    most > 0 ? `${readingText(most, units)} past the middle` : `${readingText(most, units)} short of the middle`;
  return [
    { term: paracentric ? 'Paracentric' : 'Longest ward', value: hasWards ? past : 'no ward' },
    {
      term: 'Line of sight',
      value: stripText(strip, units),
    },
  ];
}
