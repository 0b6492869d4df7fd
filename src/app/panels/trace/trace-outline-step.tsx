import { useEffect, useId, useState } from 'react';
import { readingText, sizeText, type Units } from '../../../family/length-text.ts';
import { sizeOfLoop } from '../../../trace/pick-loop.ts';
import type { TracedLoop } from '../../../trace/trace-picture.ts';
import {
  dropTrace,
  newProfileOfPicture,
  outlineOfPicture,
  pickedLoop,
  pickLoop,
  setHand,
  stopTracing,
  toleranceOf,
  traceNow,
} from '../../state/draw/tracing.ts';
import type { Underlay } from '../../state/draw/underlay-state.ts';
import { identifyTraced } from '../../state/names/identifying.ts';
import { SMALL_LENGTHS } from '../compare/conditions-measure.ts';
import { Slider } from '../compare/conditions-slider.tsx';
import readings from '../readings.module.css';
import { useSession, useStore } from '../use-store.ts';
import styles from './trace-panel.module.css';

interface StepProps {
  readonly id: string;
  readonly underlay: Underlay;
}

/** The automatic outline: how it is found, what was found, and what becomes of it. */
export function OutlineStep({ id, underlay }: StepProps) {
  const session = useSession();
  // biome-ignore lint/correctness/useExhaustiveDependencies: another frame or picture asks for another search
  useEffect(() => traceNow(session, id), [session, id, underlay.opened]);
  useEffect(() => () => dropTrace(session, id), [session, id]);
  return (
    <>
      <ThresholdFields id={id} underlay={underlay} />
      <OutlineFields id={id} underlay={underlay} />
      <Found id={id} underlay={underlay} />
      <UseKeys id={id} underlay={underlay} />
    </>
  );
}

/** How dark is told from light. */
function ThresholdFields({ id, underlay }: StepProps) {
  const session = useSession();
  const { grey, shade, blur } = underlay.hand;
  const key = (value: 'dark' | 'light', label: string) => (
    <button
      type="button"
      className="key"
      aria-pressed={shade === value}
      onClick={() => setHand(session, id, { shade: value })}
    >
      {label}
    </button>
  );
  return (
    <>
      <fieldset className="key-row bare" aria-label="Outline what is">
        {key('dark', 'Dark')}
        {key('light', 'Light')}
      </fieldset>
      <Slider
        name="Threshold"
        label="Threshold between dark and light"
        value={Number((grey * 100).toFixed(1))}
        unit="%"
        decimals={1}
        step={0.5}
        end={100}
        most={100}
        onChange={(value) => setHand(session, id, { grey: value / 100 })}
      />
      <Slider
        name="Blur"
        label="Blur before the threshold"
        value={blur}
        unit="px"
        decimals={1}
        step={0.1}
        end={4}
        most={6}
        onChange={(value) => setHand(session, id, { blur: value })}
      />
    </>
  );
}

/** How an outline is made of the line between dark and light. */
function OutlineFields({ id, underlay }: StepProps) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const { unit, per, decimals, step } = SMALL_LENGTHS[units];
  return (
    <>
      <Slider
        name="Simplify"
        label="Simplify by at most"
        value={toleranceOf(underlay) / per}
        unit={unit}
        decimals={decimals}
        step={step}
        end={50_000 / per}
        most={200_000 / per}
        onChange={(value) => setHand(session, id, { tolerance: Math.max(500, Math.round(value * per)) })}
      />
      <label className={styles.tick}>
        <input
          type="checkbox"
          checked={underlay.hand.sharpen}
          onChange={(event) => setHand(session, id, { sharpen: event.target.checked })}
        />
        <span>Let straight edges meet in sharp corners</span>
      </label>
    </>
  );
}

/** Most found outlines that are listed; all can be picked on the drawing. */
const MOST_LISTED = 8;

function Found({ id, underlay }: StepProps) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const { running, found, picked, trouble } = underlay.tracing;
  const loop = pickedLoop(underlay);
  const loops = found?.loops ?? [];
  return (
    <>
      <p role="status" data-tracing={running ? 'running' : 'done'}>
        {foundWords(running, loops.length)}{' '}
        {running && (
          <button type="button" className="key" onClick={() => stopTracing(session)}>
            Stop
          </button>
        )}
      </p>
      {trouble && !running && (
        <p role="alert" className={styles.trouble}>
          {trouble}
        </p>
      )}
      {loops.length > 1 && (
        <fieldset className={`${styles.loops} bare`} aria-label="Found outlines">
          {loops.slice(0, MOST_LISTED).map((each, i) => (
            <button
              // biome-ignore lint/suspicious/noArrayIndexKey: a found outline is its number
              key={i}
              type="button"
              className={styles.loop}
              aria-pressed={i === picked}
              onClick={() => pickLoop(session, id, i)}
            >
              <span>{loopSize(each, units)}</span>
              <span className={readings.note}>{loopKind(each)}</span>
            </button>
          ))}
        </fieldset>
      )}
      {loop && <p>{loopWords(loop, units)}</p>}
      {loop?.touchesEdge && <p className={styles.trouble}>The edge of the picture cuts this outline off.</p>}
    </>
  );
}

function foundWords(running: boolean, count: number): string {
  if (running) return 'Looking for outlines …';
  if (count === 0) return '';
  return count === 1 ? 'One outline found.' : `${count} outlines found. Press on one, or pick it here.`;
}

function loopSize(loop: TracedLoop, units: Units): string {
  const { width, height } = sizeOfLoop(loop);
  return sizeText(width, height, units);
}

function loopKind({ hole, touchesEdge, solid, vertices }: TracedLoop): string {
  if (touchesEdge) return 'cut off';
  if (hole) return 'inside';
  return solid < 0.5 ? 'frame' : `${vertices.length} corners`;
}

function loopWords(loop: TracedLoop, units: Units): string {
  const corners = `${loop.vertices.length} corners, no further than ${readingText(loop.deviation, units)} from the line between dark and light`;
  const sharp = loop.sharpened > 0 ? `; corners sharpened by up to ${readingText(loop.sharpened, units)}` : '';
  return `${loopSize(loop, units)}: ${corners}${sharp}. A pixel is ${readingText(loop.pixel, units)}.`;
}

function UseKeys({ id, underlay }: StepProps) {
  const session = useSession();
  const noScale = underlay.frame.scaleFrom === 'assumed';
  const none = noScale || pickedLoop(underlay) === null;
  const name = underlay.image.name.replace(/\.[a-z0-9]+$/i, '') || 'Traced section';
  const section = useStore(session.documents, (s) => s.document?.family.profiles.find((p) => p.id === id)?.name);
  const noteId = useId();
  const [wrong, setWrong] = useState<string | null>(null);
  return (
    <>
      {wrong && (
        <p role="alert" className={styles.trouble}>
          {wrong}
        </p>
      )}
      <span className={styles.keys}>
        <button
          type="button"
          className="key"
          disabled={none}
          aria-describedby={noteId}
          onClick={() => outlineOfPicture(session, id)}
        >
          Use as outline
        </button>
        <button type="button" className="key" disabled={none} onClick={() => newProfileOfPicture(session, id, name)}>
          As a new section
        </button>
        <button
          type="button"
          className="key"
          disabled={none}
          title="What section of the family it is like; it is not added"
          onClick={() => setWrong(identifyTraced(session, id, name))}
        >
          Identify
        </button>
      </span>
      <p id={noteId} className={readings.soft}>
        {noScale
          ? 'The scale is not known yet, so the sizes above are a guess: set two points and their distance (step 1), or the corners of a known rectangle (step 3).'
          : `The first replaces the outline of ${section ?? 'the section'}; undo brings it back.`}
      </p>
    </>
  );
}
