import { type ReactNode, useId, useRef } from 'react';
import { readingText, sizeText, type Units } from '../../../family/length-text.ts';
import type { Profile } from '../../../profile/profile.ts';
import {
  fadePicture,
  keepPicture,
  openStep,
  pictureIn,
  removePicture,
  stopKeeping,
} from '../../state/draw/underlay-editing.ts';
import { type TraceStep, type Underlay, underlaysOf } from '../../state/draw/underlay-state.ts';
import type { Session } from '../../state/session.ts';
import { Slider } from '../compare/conditions-slider.tsx';
import readings from '../readings.module.css';
import { useSession, useStore } from '../use-store.ts';
import { openPicture } from './open-picture.ts';
import { OutlineStep } from './trace-outline-step.tsx';
import styles from './trace-panel.module.css';
import { PerspectiveStep, ScaleStep, TurnStep } from './trace-steps.tsx';
import { useUnderlay } from './use-picture.ts';

/** The picture under the edited outline: opened, scaled, straightened, and traced by hand or by itself. */
export function TracePanel({ profile }: { profile: Profile }) {
  const session = useSession();
  const underlay = useUnderlay(profile.id);
  const { reading, trouble, wanted } = useStore(underlaysOf(session), (s) => s);
  return (
    <section
      className={readings.part}
      aria-labelledby="reading-picture"
      tabIndex={-1}
      data-wanted={wanted || undefined}
      onBlur={({ currentTarget, relatedTarget }) => {
        // The chooser of files takes the focus to nothing on the page; the help is needed until it comes back.
        if (wanted && relatedTarget && !currentTarget.contains(relatedTarget))
          underlaysOf(session).setState({ wanted: false });
      }}
    >
      <h2 id="reading-picture" className={readings.title}>
        Picture
      </h2>
      {wanted && (
        <p className={styles.wanted}>
          Open the picture of the unknown here. Step 4 finds its outline and has a key Identify.
        </p>
      )}
      {trouble?.id === profile.id && (
        <p role="alert" className={styles.trouble}>
          {trouble.what}. <span>{trouble.cure}</span>
        </p>
      )}
      {reading === profile.id && <p role="status">Reading the picture …</p>}
      {underlay ? (
        <Picture id={profile.id} underlay={underlay} />
      ) : (
        <NoPicture id={profile.id} failed={trouble?.id === profile.id} />
      )}
    </section>
  );
}

function NoPicture({ id, failed }: { id: string; failed: boolean }) {
  const session = useSession();
  const file = useStore(session.documents, (s) => s.document?.file);
  // The file keeps one that could not be read.
  const lost = failed && file !== undefined && pictureIn(file, id) !== undefined;
  return (
    <>
      {lost && (
        <span className={styles.keys}>
          <button type="button" className="key" onClick={() => stopKeeping(session, id)}>
            Take the picture out of the file
          </button>
        </span>
      )}
      <PickKey id={id} label="Trace a picture…" />
      <p className={readings.note}>A photograph or scan: PNG, JPEG or WebP. It may be dropped or pasted too.</p>
    </>
  );
}

/** A key that asks for a picture. */
function PickKey({ id, label }: { id: string; label: string }) {
  const session = useSession();
  const input = useRef<HTMLInputElement>(null);
  return (
    <span className={styles.keys}>
      <button type="button" className="key" onClick={() => input.current?.click()}>
        {label}
      </button>
      <input
        ref={input}
        type="file"
        hidden
        accept="image/png,image/jpeg,image/webp,image/*"
        aria-label="Picture file"
        onChange={(event) => takePicked(session, id, event.target)}
      />
    </span>
  );
}

function takePicked(session: Session, id: string, input: HTMLInputElement): void {
  const file = input.files?.[0];
  // The same file may be chosen again.
  input.value = '';
  if (file) openPicture(session, id, file);
}

function Picture({ id, underlay }: { id: string; underlay: Underlay }) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const { image, opacity, fault, frame } = underlay;
  return (
    <>
      <p className={styles.facts}>
        <b>{image.name}</b>, {image.size.width} × {image.size.height} pixels of {readingText(frame.nmPerPixel, units)}.{' '}
        {image.note}
      </p>
      <Slider
        name="Strength"
        label="Strength of the picture"
        value={Number((opacity * 100).toFixed(0))}
        unit="%"
        decimals={0}
        step={5}
        end={100}
        most={100}
        onChange={(value) => fadePicture(session, id, value / 100)}
      />
      <div className={styles.steps}>
        <Step id={id} underlay={underlay} step="scale" name="1 Scale" state={scaleState(underlay, units)}>
          <ScaleStep id={id} underlay={underlay} />
        </Step>
        <Step id={id} underlay={underlay} step="turn" name="2 Straighten" state={turnState(underlay)}>
          <TurnStep id={id} underlay={underlay} />
        </Step>
        <Step
          id={id}
          underlay={underlay}
          step="perspective"
          name="3 Perspective"
          state={rectangleState(underlay, units)}
        >
          <PerspectiveStep id={id} underlay={underlay} />
        </Step>
        <Step id={id} underlay={underlay} step="outline" name="4 Automatic outline" state="">
          <OutlineStep id={id} underlay={underlay} />
        </Step>
      </div>
      {fault && (
        <p role="alert" className={styles.trouble}>
          Not taken: {fault.what}. <span>{fault.cure}</span>
        </p>
      )}
      <KeepTick id={id} underlay={underlay} />
      <PickKey id={id} label="Another picture…" />
      <span className={styles.keys}>
        <button type="button" className="key" onClick={() => removePicture(session, id)}>
          Remove picture
        </button>
      </span>
    </>
  );
}

interface StepProps {
  readonly id: string;
  readonly underlay: Underlay;
  readonly step: TraceStep;
  readonly name: string;
  readonly state: string;
  readonly children: ReactNode;
}

/** One step, opened and put away by its key; only one is open at a time. */
function Step({ id, underlay, step, name, state, children }: StepProps) {
  const session = useSession();
  const bodyId = useId();
  const open = underlay.step === step;
  return (
    <div className={styles.step}>
      <button
        type="button"
        className={styles.stepKey}
        aria-expanded={open}
        aria-controls={open ? bodyId : undefined}
        onClick={() => openStep(session, id, open ? null : step)}
      >
        <span className={styles.arrow} aria-hidden="true">
          {open ? '▾' : '▸'}
        </span>
        <span className={styles.stepName}>{name}</span>
        <span className={styles.stepState}>{state}</span>
      </button>
      {open && (
        <div id={bodyId} className={styles.stepBody}>
          {children}
        </div>
      )}
    </div>
  );
}

function scaleState({ frame, told }: Underlay, units: Units): string {
  if (frame.scaleFrom === 'points') return readingText(told.distance, units);
  return frame.scaleFrom === 'rectangle' ? 'by the rectangle' : 'not known';
}

function turnState({ told }: Underlay): string {
  const parts = [
    ...(told.points.lineFrom && told.points.lineTo ? [`line ${told.lies}`] : []),
    ...(told.turn !== 0 ? [`${((told.turn * 180) / Math.PI).toFixed(1)}°`] : []),
  ];
  return parts.length > 0 ? parts.join(', ') : 'as it is';
}

function rectangleState({ frame, told }: Underlay, units: Units): string {
  return frame.perspective ? sizeText(told.width, told.height, units) : 'none';
}

/** Whether the file keeps the picture; it says what that adds. */
function KeepTick({ id, underlay }: { id: string; underlay: Underlay }) {
  const session = useSession();
  const { data } = underlay.image;
  const size = data === null ? 'too large to be kept' : `adds ${Math.ceil(data.length / 1000).toLocaleString('en')} kB`;
  return (
    <label className={styles.tick}>
      <input
        type="checkbox"
        checked={underlay.kept !== null}
        disabled={data === null}
        onChange={(event) => (event.target.checked ? keepPicture(session, id) : stopKeeping(session, id))}
      />
      <span>
        Keep the picture in the file <span className={readings.note}>({size})</span>
        {underlay.kept === null && (
          <span className={readings.note}> Else it is gone, with its marks, when the page is loaded again.</span>
        )}
      </span>
    </label>
  );
}
