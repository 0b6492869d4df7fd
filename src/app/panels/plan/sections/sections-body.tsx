import { useRef } from 'react';
import type { Family } from '../../../../family/family.ts';
import { type SectionsTable, sectionsLookOf } from '../../../state/plan/sections/sections-state.ts';
import { useSession } from '../../use-store.ts';
import { PlanRows } from './plan-rows.tsx';
import styles from './sections-body.module.css';
import { SectionsPairs } from './sections-pairs.tsx';
import { SectionsReport } from './sections-report.tsx';
import { type FoundSections, useSectionsLook } from './use-sections.ts';

const TABLES = [
  { table: 'sections', label: 'Sections', title: 'Each section with its wards' },
  { table: 'blanks', label: 'Blanks', title: 'Each blank with its grooves' },
  { table: 'pairs', label: 'Pairs', title: 'Which blank must enter which section' },
  { table: 'report', label: 'Report', title: 'Margins of what is drawn' },
] as const;

/** What was found as tables: sections, blanks, pairs, and the report on what is drawn. */
export function SectionsBody({ family, found }: { family: Family; found: FoundSections }) {
  const { table } = useSectionsLook(found);
  return (
    <div className={styles.body}>
      <TableTabs shown={table} />
      <div id="plan-table" role="tabpanel" aria-labelledby={`plan-tab-${table}`} className={styles.panel}>
        {table === 'sections' && <SectionsRows found={found} />}
        {table === 'blanks' && <BlankRows found={found} />}
        {table === 'pairs' && <SectionsPairs found={found} />}
        {table === 'report' && <SectionsReport family={family} found={found} />}
      </div>
    </div>
  );
}

/** Tabs as the pattern has them: one of them is reached by Tab, the arrows walk from one to the next. */
function TableTabs({ shown }: { shown: SectionsTable }) {
  const look = sectionsLookOf(useSession());
  const row = useRef<HTMLDivElement>(null);
  const at = TABLES.findIndex(({ table }) => table === shown);
  const go = (place: number) => {
    const next = TABLES[(place + TABLES.length) % TABLES.length];
    look.setState({ table: next.table });
    row.current?.querySelector<HTMLElement>(`#plan-tab-${next.table}`)?.focus();
  };
  return (
    <div
      ref={row}
      role="tablist"
      aria-label="What is shown of the plan"
      className={styles.tabs}
      onKeyDown={(event) => {
        const to = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: TABLES.length - 1 }[event.key];
        if (to === undefined) return;
        event.preventDefault();
        go(to);
      }}
    >
      {TABLES.map(({ table, label, title }) => (
        <button
          key={table}
          id={`plan-tab-${table}`}
          type="button"
          role="tab"
          className={styles.tab}
          title={title}
          aria-selected={table === shown}
          aria-controls="plan-table"
          tabIndex={table === shown ? 0 : -1}
          onClick={() => look.setState({ table })}
        >
          {label}
        </button>
      ))}
    </div>
  );
}

function SectionsRows({ found }: { found: FoundSections }) {
  const look = sectionsLookOf(useSession());
  const { section } = useSectionsLook(found);
  return (
    <PlanRows
      label="Sections with their wards"
      rows={found.sections}
      picked={section}
      what="wards"
      several={found.several}
      nameHead="Section, and the areas that have it"
      sites={found.named}
      onPick={(place) => look.setState({ section: place })}
    />
  );
}

function BlankRows({ found }: { found: FoundSections }) {
  const look = sectionsLookOf(useSession());
  const { blank } = useSectionsLook(found);
  return (
    <PlanRows
      label="Blanks with their grooves"
      rows={found.blanks}
      picked={blank}
      what="grooves"
      several={found.several}
      nameHead="Blank, and who carries it"
      sites={found.named}
      onPick={(place) => look.setState({ blank: place })}
    />
  );
}
