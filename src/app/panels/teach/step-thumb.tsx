import { memo } from 'react';
import type { LessonStep } from '../../../family/lesson.ts';
import type { Profile } from '../../../profile/profile.ts';
import { SectionThumb } from '../section-thumb.tsx';
import styles from './step-list.module.css';

const TALL = 40;
const WIDE = 22;

interface StepThumbProps {
  readonly step: LessonStep;
  readonly blank: Profile | null;
  readonly opening: Profile | null;
  /** Half the size of the largest profile, in millimetres. */
  readonly reach: { readonly x: number; readonly y: number };
}

/** A small picture of a step: its blank and its keyway, or a sign of its kind. */
export const StepThumb = memo(function StepThumb({ step, blank, opening, reach }: StepThumbProps) {
  const size = { reachX: reach.x, reachY: reach.y, width: WIDE, height: TALL };
  const pair = step.show === 'pair' || step.show === 'question';
  return (
    <span className={styles.thumb} aria-hidden="true">
      {(pair || step.show === 'wall') && blank && <SectionThumb profile={blank} {...size} />}
      {pair && opening && <SectionThumb profile={opening} {...size} />}
      {!pair && <Sign show={step.show} />}
    </span>
  );
});

/** Lines of text; plugs in rows; plates over each other; outlines over each other. */
const SIGNS: Readonly<Record<'words' | 'wall' | 'tiers' | 'passage', string>> = {
  words: 'M2 8h32M2 17h32M2 26h22',
  wall: 'M3 4h8v12H3zM15 4h8v12h-8zM27 4h8v12h-8zM3 21h8v12H3zM15 21h8v12h-8zM27 21h8v12h-8z',
  tiers: 'M14 2h10v8H14zM4 15h10v8H4zM24 15h10v8H24zM0 28h8v8H0zM14 28h8v8h-8zM28 28h8v8h-8zM19 10L9 15M19 10L29 15',
  passage: 'M8 3h12v32H8zM14 5h12v28H14zM11 8h12v23H11z',
};

function Sign({ show }: { show: LessonStep['show'] }) {
  if (show === 'pair' || show === 'question') return null;
  return (
    <svg width={show === 'wall' ? 28 : 38} height={TALL - 2} viewBox="-1 0 40 38" aria-hidden="true">
      <path d={SIGNS[show]} fill="none" stroke="currentColor" strokeWidth="2" />
    </svg>
  );
}
