import type { Family } from '../../../family/family.ts';
import { VERDICT_WORDS } from '../../../family/margin-text.ts';
import { whyTight } from '../../../gauge/judge-strip.ts';
import { cellSentence } from '../../state/gauge/cell-sentence.ts';
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
  const curve = gauge.curves.get(opening.id);
  const why = shown.straight && curve ? whyTight(curve, shown.size, family.runningClearance) : null;
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
          <p>{cellSentence(cell, opening, why, units)}</p>
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
