import { useEffect, useMemo, useRef, useState } from 'react';
import type { Family } from '../../../family/family.ts';
import type { Lesson } from '../../../family/lesson.ts';
import { PassageAhead } from '../../panels/teach/slide/passage-ahead.tsx';
import { StepSlide } from '../../panels/teach/slide/step-slide.tsx';
import { useFamily } from '../../panels/use-family.ts';
import { useSize } from '../../panels/use-size.ts';
import { useSession, useStore } from '../../panels/use-store.ts';
import { buildsOf, placeAfter, placeAt, placeBefore, type ShowPlace } from '../../state/teach/show-place.ts';
import { ConditionsNote } from './conditions-note.tsx';
import styles from './presenter.module.css';
import { PresenterKeys } from './presenter-keys.tsx';
import { PresenterWords } from './presenter-words.tsx';
import { useAlone } from './use-alone.ts';
import { useAwake } from './use-awake.ts';
import { useFullScreen } from './use-full-screen.ts';
import { usePointerDot } from './use-pointer-dot.ts';
import { usePresenterKeys } from './use-presenter-keys.ts';

/** The lesson over the whole window, while it is presented. */
export function Presenter() {
  const { teach } = useSession();
  const presenting = useStore(teach, (s) => s.presenting);
  const family = useFamily();
  const lesson = family?.lesson;
  if (!presenting || !family || !lesson || lesson.steps.length === 0) return null;
  return <Show family={family} lesson={lesson} />;
}

/** The part of the width, from the left, where a click goes back. */
const BACK_ZONE = 0.3;

function Show({ family, lesson }: { family: Family; lesson: Lesson }) {
  const { teach } = useSession();
  const [area, size] = useSize<HTMLDivElement>();
  const { place, builds, go } = usePlace(family, lesson);
  const [dark, setDark] = useState(false);
  const [run, setRun] = useState(0);
  const [typed, setTyped] = useState('');
  const end = () => teach.setState({ presenting: false });
  const { toggle } = useFullScreen(area, end);
  useAlone(area, '[data-present]');
  const awake = useAwake();
  const steps = stepActs(place, builds, (next) => (dark ? setDark(false) : go(next)));
  const pointer = usePointerDot(area, (x) => (size && x < size.width * BACK_ZONE ? steps.previous() : steps.next()));
  const acts = { ...steps, end, dark: () => setDark(!dark), again: () => setRun(run + 1), screen: toggle };
  usePresenterKeys({ acts, pointer, typed, setTyped, dark });
  const step = lesson.steps[place.step];
  return (
    <div
      ref={area}
      role="dialog"
      aria-modal="true"
      aria-label={`Lesson: ${lesson.title}`}
      tabIndex={-1}
      className={styles.presenter}
      data-awake={awake}
      data-dark={dark}
      data-step={place.step + 1}
      data-build={place.build}
    >
      {size && step && (
        <StepSlide
          key={place.step}
          family={family}
          step={step}
          frame={{ ...size, build: place.build, run: step.push ? run : null }}
        />
      )}
      <div className={styles.progress} aria-hidden="true">
        <div style={{ width: `${((place.step + 1) / builds.length) * 100}%` }} />
      </div>
      <p className={styles.counter} data-typed={typed !== ''}>
        {typed !== '' ? `go to ${typed}` : `${place.step + 1} / ${builds.length}`}
      </p>
      <PresenterKeys
        acts={acts}
        pointer={pointer}
        dark={dark}
        place={place}
        builds={builds}
        again={step?.push === true}
      />
      {step && <ConditionsNote step={step} />}
      {step?.show !== 'passage' && <PassageAhead family={family} steps={lesson.steps.slice(place.step + 1)} />}
      {dark && <p className={styles.dark}>The screen is dark. B brings the lesson back.</p>}
      <div ref={pointer.dot} className={styles.dot} data-seen={pointer.seen} aria-hidden="true" />
      <PresenterWords family={family} lesson={lesson} place={place} dark={dark} />
    </div>
  );
}

/** The ways from one place of the lesson to another. */
function stepActs(place: ShowPlace, builds: readonly number[], go: (place: ShowPlace) => void) {
  return {
    next: () => go(placeAfter(place, builds)),
    previous: () => go(placeBefore(place, builds)),
    first: () => go(placeAt(0, builds.length)),
    last: () => go(placeAt(builds.length - 1, builds.length)),
    go: (step: number) => go(placeAt(step, builds.length)),
  };
}

/** Where the lesson stands, how many states its steps have, and the way to another place. */
function usePlace(family: Family, { steps }: Lesson) {
  const { teach, results } = useSession();
  const fits = useStore(results, (s) => s.fits);
  const builds = useMemo(() => steps.map((step) => buildsOf(step, family, fits)), [steps, family, fits]);
  const start = useRef(teach.getState().step);
  const [asked, go] = useState<ShowPlace>(() => placeAt(start.current, steps.length));
  // An undo elsewhere may have taken steps out.
  const place = asked.step < steps.length ? asked : placeAt(asked.step, steps.length);
  // The step that was shown last is the one that is picked in the script.
  useEffect(() => teach.setState({ step: place.step }), [teach, place.step]);
  return { place, builds, go };
}
