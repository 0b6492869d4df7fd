import { useMemo } from 'react';
import type { Family } from '../../../family/family.ts';
import { readingText } from '../../../family/length-text.ts';
import type { ToolCover } from '../../../gauge/cover-tools.ts';
import { envelopeOf, settersAt } from '../../../gauge/family-limit.ts';
import { tallestOf, thicknessAt } from '../../../gauge/thickness-curve.ts';
import { type CoverNames, coverNote } from '../../state/gauge/cover-words.ts';
import {
  askedHeightText,
  exactHeightText,
  HEIGHT_MEASURES,
  tallestText,
  thicknessText,
} from '../../state/gauge/gauge-lengths.ts';
import { alikeNames } from '../../state/gauge/gauge-words.ts';
import { tickAll, tickOpening } from '../../state/gauge/tick-openings.ts';
import fields from '../form-fields.module.css';
import readings from '../readings.module.css';
import { useSession, useStore } from '../use-store.ts';
import { useCoverNames } from './cover-line.tsx';
import { GaugeLengthField } from './gauge-length-field.tsx';
import { KeepStripKey } from './keep-strip-key.tsx';
import { PickedCell } from './picked-cell.tsx';
import styles from './tools-readings.module.css';
import { type ShownGauge, useGauge } from './use-gauge.ts';
import { useCover, useTicked } from './use-tools.ts';

/** What belongs beside the Tools sheet: the picked cell, the fewest tools, the strip that would do, the ticks. */
export function ToolsReadings({ family }: { family: Family }) {
  const gauge = useGauge(family);
  const names = useCoverNames(family);
  const ticked = useTicked(gauge.openings);
  const cover = useCover(family, ticked);
  if (gauge.openings.length === 0) return null;
  return (
    <>
      <PickedCell family={family} gauge={gauge} />
      {cover && <Fewest cover={cover} names={names} />}
      <StripThatDoes family={family} gauge={gauge} ticked={ticked} names={names} />
      <Ticks gauge={gauge} ticked={ticked} />
    </>
  );
}

/** The least set: each tool with the keyways to take it for. */
function Fewest({ cover, names }: { cover: ToolCover; names: CoverNames }) {
  const units = useStore(useSession().settings, (s) => s.units);
  const { tools, uncovered } = cover;
  if (tools.length === 0 && uncovered.length === 0) return null;
  return (
    <section className={readings.part} aria-labelledby="reading-fewest" data-fewest={tools.length}>
      <h2 id="reading-fewest" className={readings.title}>
        The fewest tools
      </h2>
      <ul className={styles.uses}>
        {tools.map((toolId) => (
          <li key={toolId}>
            <b>{names.toolName(toolId)}</b>
            <span>for {takenForWords(cover, toolId, names)}</span>
          </li>
        ))}
        {uncovered.length > 0 && (
          <li data-uncovered>
            <b>Nothing enters</b>
            <span>{uncovered.map(names.openingName).join(', ')}</span>
          </li>
        )}
      </ul>
      {tools.length > 0 && (
        <p className={readings.note}>
          {coverNote(cover)} Least gap all round: {readingText(cover.clearance, units)}.
        </p>
      )}
    </section>
  );
}

/** The keyways that a tool of the set is taken for. */
function takenForWords({ tools, uses, uncovered }: ToolCover, toolId: string, names: CoverNames): string {
  if (tools.length === 1 && uncovered.length === 0 && uses.length > 1) return `all ${uses.length} of them`;
  return uses
    .filter((use) => use.toolId === toolId)
    .map((use) => names.openingName(use.openingId))
    .join(', ');
}

interface StripThatDoesProps {
  readonly family: Family;
  readonly gauge: ShownGauge;
  readonly ticked: readonly string[];
  readonly names: CoverNames;
}

/** What straight strip would enter all ticked keyways. */
function StripThatDoes({ family, gauge, ticked, names }: StripThatDoesProps) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const { complete, curves, height } = gauge;
  const chosen = useMemo(
    () => (complete ? [...curves.values()].filter(({ openingId }) => ticked.includes(openingId)) : []),
    [complete, curves, ticked],
  );
  const limit = useMemo(() => envelopeOf(chosen), [chosen]);
  if (chosen.length === 0) return null;
  const most = thicknessAt(limit, height);
  const thick = thicknessText(most, units);
  const setters = settersAt(chosen, height, limit);
  const who = `${alikeNames(gauge.openings.filter(({ id }) => setters.includes(id)))} ${setters.length === 1 ? 'sets' : 'set'} that`;
  const what = chosen.length === 1 ? names.openingName(chosen[0].openingId) : `all ${chosen.length} ticked keyways`;
  return (
    <section className={readings.part} aria-labelledby="reading-strip" data-strip-that-does>
      <h2 id="reading-strip" className={readings.title}>
        One strip that would do
      </h2>
      <GaugeLengthField
        label="Height"
        nm={height}
        measure={HEIGHT_MEASURES[units]}
        mayBeEmpty={false}
        onTake={(nm) => session.gauge.setState({ height: nm })}
      />
      <p>
        {most > 0
          ? `A strip ${askedHeightText(height, units)} tall and ${thick.startsWith('less') ? thick : `up to ${thick}`} thick enters ${what}; the thickest touches. ${who}.`
          : `No strip ${exactHeightText(height, units)} tall enters ${what}: the tallest is ${tallestText(tallestOf(limit), units)}.`}
      </p>
      <KeepStripKey family={family} height={height} thickness={null} most={most} />
    </section>
  );
}

/** The keyways to be covered, each with a tick. */
function Ticks({ gauge, ticked }: { gauge: ShownGauge; ticked: readonly string[] }) {
  const session = useSession();
  const { openings } = gauge;
  return (
    <section className={readings.part} aria-labelledby="reading-ticks">
      <h2 id="reading-ticks" className={readings.title}>
        Keyways to cover
      </h2>
      <div className="key-row">
        <button
          type="button"
          className="key"
          disabled={ticked.length === openings.length}
          onClick={() => tickAll(session, true)}
        >
          All
        </button>
        <button type="button" className="key" disabled={ticked.length === 0} onClick={() => tickAll(session, false)}>
          None
        </button>
      </div>
      <fieldset className={styles.ticks}>
        <legend className="unseen">Keyways to cover</legend>
        {openings.map((opening) => (
          <label key={opening.id} className={fields.tick}>
            <input
              type="checkbox"
              checked={ticked.includes(opening.id)}
              onChange={() => tickOpening(session, openings, opening.id)}
            />
            {opening.name}
          </label>
        ))}
      </fieldset>
    </section>
  );
}
