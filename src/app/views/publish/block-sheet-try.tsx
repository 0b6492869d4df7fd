import { useEffect, useMemo, useState } from 'react';
import { openingsOf } from '../../../family/family.ts';
import type { DisplaySet } from '../../../print3d/display-set.ts';
import type { SolidPicture } from '../../canvas/solid/solid-picture.ts';
import { NAMED_VIEWS, type TurnedView } from '../../canvas/solid/turned-view.ts';
import { BlockPairReading } from '../../panels/publish/block-pair-reading.tsx';
import { COUPON, INWARD, tryPicture } from '../../panels/publish/block-try-picture.ts';
import { type JudgedPair, useBlockLook, useBlockPair } from '../../panels/publish/use-block.ts';
import { useSession, useStore } from '../../panels/use-store.ts';
import { VerdictMark } from '../../panels/verdict-mark.tsx';
import { printedText } from '../../state/publish/block-length.ts';
import { type InsertionRange, insertionRange } from '../../state/publish/block-pair.ts';
import { insertionWords, lackWords } from '../../state/publish/block-words.ts';
import { FootKey } from '../foot-key.tsx';
import styles from './block-sheet.module.css';
import { NoSolids } from './block-sheet-no-solids.tsx';
import { type Slide, useSlide } from './block-sheet-slide.ts';
import { BlockStage, type StageProps, useStill } from './block-sheet-stage.tsx';

/** A coupon before an opening of the block: it slides in and stops where it must. */
export function TryStage({ set, family, ...rest }: StageProps) {
  const pair = useBlockPair(family, set);
  if (!set) return <p className={styles.waiting}>The block is shown here once it is built.</p>;
  if (!pair) {
    const lacks = openingsOf(family).length === 0 ? 'keyway' : 'blank or tool';
    return (
      <p className={styles.waiting}>To try a coupon, the family needs a {lacks}: draw one, or open another family.</p>
    );
  }
  const { coupon, frame } = pair;
  if (!coupon || !frame) return <p className={styles.waiting}>{lackWords(pair)}</p>;
  return <TriedPair {...{ ...rest, family, set, coupon, frame, pair }} />;
}

interface TriedPairProps extends StageProps {
  readonly set: DisplaySet;
  readonly pair: JudgedPair;
  readonly coupon: NonNullable<JudgedPair['coupon']>;
  readonly frame: NonNullable<JudgedPair['frame']>;
}

function TriedPair({ family, set, pair, coupon, frame, scene, stillOf }: TriedPairProps) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const [{ through }, look] = useBlockLook();
  const range = useMemo(() => insertionRange(coupon, pair.fit.verdict), [coupon, pair.fit.verdict]);
  const slide = useSlide(look, range);
  const { entrant, opening } = pair;
  // biome-ignore lint/correctness/useExhaustiveDependencies: another pair begins before the block
  useEffect(() => look.setState({ inserted: null }), [look, entrant, opening]);
  const { inserted } = slide;
  const picture = useTriedPicture(set, { ...pair, coupon, frame }, inserted, range.waits, through);
  const [view, setView] = useState<TurnedView>(NAMED_VIEWS.before);
  useStill(stillOf, picture, view);
  const words = insertionWords(pair, range, inserted, frame.depth, units);
  const onKey = (key: string) => {
    if (key === ' ' || key === 'Enter') slide.play();
    else if (key === 'i') slide.by(STEP_MM);
    else if (key === 'o') slide.by(-STEP_MM);
    else return false;
    return true;
  };
  const hold = (id: string | null) => (id === COUPON ? slideByHand(slide, scene.current) : null);
  return (
    <BlockStage
      picture={picture}
      label={`${words} Space slides it, I in and O out by steps`}
      caption={
        <>
          {inserted >= range.stops && <VerdictMark verdict={pair.fit.verdict} size={30} />}
          {words}
        </>
      }
      plate={null}
      home="before"
      {...{ scene, view, setView, onKey, hold }}
      onPick={() => {}}
      instead={
        <NoSolids>
          <BlockPairReading family={family} set={set} />
        </NoSolids>
      }
    >
      <SlideBar
        {...{ slide, range }}
        name={`How far ${entrant.name} is in ${opening.name}`}
        words={inserted < 0 ? 'before the block' : printedText(inserted, units)}
      />
      <FootKey title="Slide it in, or out again (Space)" press={slide.play}>
        {inserted >= range.stops ? 'Take it out' : 'Slide it in'}
      </FootKey>
      <FootKey title="See through the block" pressed={through} press={() => look.setState({ through: !through })}>
        See through
      </FootKey>
    </BlockStage>
  );
}

/** A key moves the coupon so far, millimetres as printed. */
const STEP_MM = 2;

const SLIDER_STEPS: Readonly<Record<string, number>> = {
  ...{ ArrowRight: 1, ArrowUp: 1, PageUp: 4 },
  ...{ ArrowLeft: -1, ArrowDown: -1, PageDown: -4 },
};

interface SlideBarProps {
  readonly slide: Slide;
  readonly range: InsertionRange;
  readonly name: string;
  /** Where it is, in words. */
  readonly words: string;
}

/** The way of the coupon as a slider: it may be pushed on to the shoulder, but follows no further than the coupon goes. */
function SlideBar({ slide, range, name, words }: SlideBarProps) {
  return (
    <span className={styles.slide}>
      <input
        type="range"
        min={range.waits}
        max={range.whole}
        step="any"
        value={slide.inserted}
        aria-label={name}
        aria-valuetext={words}
        onChange={(event) => slide.to(event.target.valueAsNumber)}
        onKeyDown={(event) => {
          const steps = SLIDER_STEPS[event.key];
          if (steps === undefined) return;
          event.preventDefault();
          slide.by(steps * STEP_MM);
        }}
      />
    </span>
  );
}

function useTriedPicture(
  set: DisplaySet,
  {
    opening: { ring: opening },
    coupon,
    frame,
    fit,
    explanation,
  }: Omit<TriedPairProps['pair'], 'coupon' | 'frame'> & Pick<TriedPairProps, 'coupon' | 'frame'>,
  inserted: number,
  waits: number,
  through: boolean,
): SolidPicture {
  const isStopped = fit.verdict === 'blocked' && inserted >= 0;
  const { placement } = fit;
  return useMemo(
    () =>
      tryPicture(set, {
        ...{ coupon, frame, placement, inserted, waits, opening, through },
        collisions: isStopped ? explanation.collisions : [],
      }),
    [set, coupon, frame, placement, inserted, waits, opening, through, isStopped, explanation],
  );
}

/** Along less than so many pixels a millimetre the way is seen end on: then up is in. */
const END_ON = 0.35;

/** Lets the coupon follow the hand along its way, however it is turned on the screen. */
function slideByHand(slide: Slide, scene: StageProps['scene']['current']): ((dx: number, dy: number) => void) | null {
  const along = scene?.pixelsAlong(COUPON, INWARD);
  if (!along) return null;
  const length = Math.hypot(along.x, along.y);
  const way = length < END_ON ? { x: 0, y: -1 } : along;
  let at = slide.inserted;
  return (dx, dy) => {
    at += (dx * way.x + dy * way.y) / (way.x ** 2 + way.y ** 2);
    slide.to(at);
  };
}
