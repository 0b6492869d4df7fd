import { useEffect, useMemo, useRef, useState } from 'react';
import type { Family } from '../../../../family/family.ts';
import type { PrintSource } from '../../../state/plan/sections/print-source.ts';
import { type PrintedPlan, printedPlan } from '../../../state/plan/sections/printed-plan.ts';
import { type PrintedStrength, printedStrength } from '../../../state/plan/sections/printed-report.ts';
import type { SectionsQuestion } from '../../../state/plan/sections/sections-question.ts';
import { PRINT_SCALES, type PrintChoice, sectionsLookOf } from '../../../state/plan/sections/sections-state.ts';
import { plannedProfiles } from '../../../state/plan/sections/taken-standing.ts';
import { materialOf } from '../../../state/plan/strength/strength-state.ts';
import { useSession, useStore } from '../../use-store.ts';
import { useStrengthSettings } from '../strength/use-strength.ts';
import { usePlanStrength } from './plan-strength-line.tsx';
import styles from './print-preview.module.css';
import { PrintedSheet } from './printed-sheet.tsx';
import type { FoundSections } from './use-sections.ts';

interface PrintPreviewProps {
  readonly family: Family;
  readonly question: SectionsQuestion;
  readonly found: FoundSections | null;
  readonly choice: PrintChoice;
}

/** The sheet as it will be printed, with its scale, and the key that prints it; it stands in place of the tables. */
export function PrintPreview({ family, question, found, choice }: PrintPreviewProps) {
  const session = useSession();
  const look = sectionsLookOf(session);
  const units = useStore(session.settings, (s) => s.units);
  const source = usePrintSource(found, choice);
  const first = useRef<HTMLButtonElement>(null);
  useEffect(() => first.current?.focus(), []);
  const sheet = useMemo(
    () => (source ? printedPlan(family, question, source, units) : null),
    [family, question, source, units],
  );
  const strength = usePrintedStrength(family, sheet);
  const [date] = useState(() => new Date().toLocaleDateString('en-GB', { dateStyle: 'long' }));
  const close = () => look.setState({ printing: null, backFromPrint: true });
  return (
    <section
      className={styles.preview}
      aria-label="Print the planned family"
      data-plan-print=""
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.stopPropagation();
        close();
      }}
    >
      <div className={styles.bar}>
        <button ref={first} type="button" className="key" disabled={!sheet} onClick={() => window.print()}>
          Print
        </button>
        <ScaleField choice={choice} />
        <SourceField choice={choice} canDraw={source?.from === 'drawn'} />
        {strength.wait !== '' && <span role="status">{strength.wait}</span>}
        <button type="button" className="key" title="Back to the sections (Escape)" onClick={close}>
          Back
        </button>
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keys must reach it */}
      <section className={styles.desk} tabIndex={0} aria-label="Preview">
        {sheet ? (
          <PrintedSheet
            sheet={sheet}
            strength={strength}
            date={date}
            scale={choice.scale}
            units={units}
            grooveWidth={question.plan.blade.grooveWidth}
          />
        ) : (
          <p>There is nothing to print yet: the sections are not drawn.</p>
        )}
      </section>
    </section>
  );
}

const NO_BLANKS: PrintedPlan['blanks'] = [];

/** The strength of the blanks on the sheet, examined while it is there. */
function usePrintedStrength(family: Family, sheet: PrintedPlan | null): PrintedStrength {
  const units = useStore(useSession().settings, (s) => s.units);
  const printed = sheet?.blanks ?? NO_BLANKS;
  const blanks = useMemo(() => printed.map(({ profile }) => profile), [printed]);
  const strength = usePlanStrength(family, blanks);
  const material = materialOf(useStrengthSettings(family));
  return useMemo(() => printedStrength(blanks, strength, material, units), [blanks, strength, material, units]);
}

/** What is printed, as it is wished for or as it is there. */
function usePrintSource(sections: FoundSections | null, choice: PrintChoice): PrintSource | null {
  const { documents, results, guard: guards } = useSession();
  const guard = useStore(guards, (s) => s);
  const found = sections?.found ?? null;
  const document = useStore(documents, (s) => s.document);
  const fits = useStore(results, (s) => s.fits);
  const confirmed = sections?.confirmed ?? null;
  // Apart, so that what is drawn stays the same value while pairs of the family are judged.
  const held = useMemo<PrintSource | null>(
    () => (document && plannedProfiles(document).length > 0 ? { from: 'family', document, fits, guard } : null),
    [document, fits, guard],
  );
  const drawn = useMemo<PrintSource | null>(
    () => confirmed && found && { from: 'drawn', confirmed, found },
    [confirmed, found],
  );
  return choice.from === 'family' ? (held ?? drawn) : (drawn ?? held);
}

function ScaleField({ choice }: { choice: PrintChoice }) {
  const look = sectionsLookOf(useSession());
  return (
    <label className={styles.field}>
      Sections drawn
      <select
        value={choice.scale}
        onChange={(event) => look.setState({ printing: { ...choice, scale: Number(event.target.value) } })}
      >
        {PRINT_SCALES.map((scale) => (
          <option key={scale} value={scale}>
            {scale === 1 ? 'true size, 1:1' : `${scale}:1`}
          </option>
        ))}
      </select>
    </label>
  );
}

function SourceField({ choice, canDraw }: { choice: PrintChoice; canDraw: boolean }) {
  const { documents } = useSession();
  const look = sectionsLookOf(useSession());
  const isHeld = useStore(documents, (s) => s.document !== null && plannedProfiles(s.document).length > 0);
  if (!isHeld || (!canDraw && choice.from === 'drawn')) return null;
  return (
    <label className={styles.field}>
      of
      <select
        value={choice.from}
        onChange={(event) =>
          look.setState({ printing: { ...choice, from: event.target.value === 'family' ? 'family' : 'drawn' } })
        }
      >
        <option value="drawn">the plan as it is now</option>
        <option value="family">the sections in the family</option>
      </select>
    </label>
  );
}
