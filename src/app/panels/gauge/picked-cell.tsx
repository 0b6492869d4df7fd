import type { Family } from '../../../family/family.ts';
import { readingText, type Units } from '../../../family/length-text.ts';
import { VERDICT_WORDS } from '../../../family/margin-text.ts';
import type { ToolCell } from '../../../gauge/tool-table.ts';
import type { Profile } from '../../../profile/profile.ts';
import { spareText } from '../../state/gauge/gauge-lengths.ts';
import readings from '../readings.module.css';
import { useSession, useStore } from '../use-store.ts';
import { VerdictMark } from '../verdict-mark.tsx';
import type { ShownGauge } from './use-gauge.ts';
import { useShownTools } from './use-tools.ts';

/** The picked tool in the picked keyway, with a way to look at the pair. */
export function PickedCell({ family, gauge }: { family: Family; gauge: ShownGauge }) {
  const { selection, settings, gauge: store } = useSession();
  const units = useStore(settings, (s) => s.units);
  const withBlanks = useStore(store, (s) => s.withBlanks);
  const entrantId = useStore(selection, (s) => s.entrantId);
  const tools = useShownTools(family, withBlanks);
  const shown = tools.find(({ tool }) => tool.id === entrantId);
  const opening = gauge.picked;
  const cell = shown?.cells.find(({ openingId }) => openingId === opening?.id);
  if (!shown || !opening) return null;
  return (
    <section className={readings.part} aria-labelledby="reading-cell" data-picked-cell>
      <h2 id="reading-cell" className={readings.title}>
        {shown.tool.name}
      </h2>
      {cell ? (
        <>
          <p className={readings.verdict} data-verdict={cell.verdict}>
            <VerdictMark verdict={cell.verdict} size={24} />
            {VERDICT_WORDS[cell.verdict]}
          </p>
          <p>{cellSentence(cell, opening, units)}</p>
          <button type="button" className="key" onClick={() => selection.setState({ view: 'compare' })}>
            See it in Compare
          </button>
        </>
      ) : (
        <p>Not tried yet …</p>
      )}
    </section>
  );
}

/** What the cell means in words. */
function cellSentence({ verdict, spare, clearance }: ToolCell, opening: Profile, units: Units): string {
  if (spare !== null && verdict === 'blocked')
    return spare < 0
      ? `Too thick for ${opening.name}: ${spareText(spare, units)}.`
      : `It does not go into ${opening.name}.`;
  if (spare !== null)
    return `In ${opening.name} it could be thicker by ${readingText(spare, units)}. Straight: gauged by the curve.`;
  if (verdict === 'blocked')
    return `In ${opening.name} it is too deep by ${readingText(clearance, units)}. Shaped: judged by the full fit.`;
  return `In ${opening.name} it keeps ${readingText(clearance, units)} all round. Shaped: judged by the full fit.`;
}
