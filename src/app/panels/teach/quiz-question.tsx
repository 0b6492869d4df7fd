import { useEffect, useMemo, useRef } from 'react';
import { type Family, openingsOf } from '../../../family/family.ts';
import { plugFace } from '../../../family/plug-face.ts';
import { type MarkedAnswer, type Said, scoreOf } from '../../../teach/quiz.ts';
import { sectionWords } from '../../state/teach/section-words.ts';
import type { QuizRound } from '../../state/teach/teach-state.ts';
import { useSize } from '../use-size.ts';
import { useSession, useStore } from '../use-store.ts';
import styles from './quiz.module.css';
import { QuizAnswer } from './quiz-answer.tsx';
import { ApartScene } from './slide/apart-scene.tsx';
import { PairScene } from './slide/pair-scene.tsx';
import { type TaughtPair, useTaughtPair } from './use-teaching.ts';

interface QuizQuestionPanelProps {
  readonly family: Family;
  readonly round: QuizRound;
  /** Number of the question, from 0. */
  readonly at: number;
  /** Every answer given so far, marked. */
  readonly answers: readonly (MarkedAnswer | null)[];
  say(said: Said): void;
  next(): void;
}

/** One question: the two apart, without names; after the answer together, with the verdict and why. */
export function QuizQuestionPanel({ family, round, at, answers, say, next }: QuizQuestionPanelProps) {
  const { entrantId, openingId } = round.questions[at];
  const find = (id: string) => family.profiles.find((profile) => profile.id === id) ?? null;
  const pair = useTaughtPair(family, find(entrantId), find(openingId));
  const { right, of, streak } = scoreOf(answers);
  const last = at === round.questions.length - 1;
  const ask = useRef<HTMLHeadingElement>(null);
  // Each question begins at its words, so that Enter and the letters are free.
  // biome-ignore lint/correctness/useExhaustiveDependencies: another question is what brings it up
  useEffect(() => ask.current?.focus({ preventScroll: true }), [at, round.telling]);
  return (
    <section className={styles.question} aria-labelledby="quiz-question" data-told={round.telling}>
      <header className={styles.head}>
        <h1 id="quiz-question" ref={ask} tabIndex={-1}>
          Does it go in?
        </h1>
        <p className={styles.count}>
          Question <b>{at + 1}</b> of {round.questions.length}
        </p>
        <p className={styles.count} data-score="">
          <b>{right}</b> of {of} right{streak > 1 ? `, ${streak} in a row` : ''}
        </p>
      </header>
      {pair ? <Scene family={family} pair={pair} told={round.telling} /> : <GonePair />}
      {pair && !round.telling && <Shapes pair={pair} />}
      <div className={styles.foot}>
        {round.telling ? (
          <QuizAnswer pair={pair} said={round.said[at]} answer={answers[at] ?? null} last={last} next={next} />
        ) : (
          <AnswerKeys say={say} />
        )}
      </div>
    </section>
  );
}

/** The two sections in words, for those who cannot see them. */
function Shapes({ pair: { entrant, opening } }: { pair: TaughtPair }) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  return (
    <p className="unseen" role="status">
      {entrant.kind === 'tool' ? 'Tool' : 'Blank'}: {sectionWords(entrant, units)}. Keyway:{' '}
      {sectionWords(opening, units)}.
    </p>
  );
}

function Scene({ family, pair, told }: { family: Family; pair: TaughtPair; told: boolean }) {
  const [frame, size] = useSize<HTMLDivElement>();
  const face = useMemo(() => plugFace(openingsOf(family)), [family]);
  const room = size && { face, width: size.width, height: size.height };
  return (
    <div ref={frame} className={styles.scene}>
      {room && told && <PairScene pair={pair} {...room} line={18} pushed={null} />}
      {room && !told && <ApartScene entrant={pair.entrant} opening={pair.opening} {...room} />}
    </div>
  );
}

function GonePair() {
  return (
    <p className={styles.gone}>
      This pair is no longer in the family, or nothing would be left of it after that much wear.
    </p>
  );
}

function AnswerKeys({ say }: { say(said: Said): void }) {
  return (
    <fieldset className={`bare ${styles.answers}`} aria-label="Your answer">
      <button type="button" className="key" onClick={() => say('enters')}>
        It enters <kbd>E</kbd>
      </button>
      <button
        type="button"
        className="key"
        title="Counts as entering: it goes in, with little room"
        onClick={() => say('tight')}
      >
        Tight <kbd>T</kbd>
      </button>
      <button type="button" className="key" onClick={() => say('blocked')}>
        It does not enter <kbd>D</kbd>
      </button>
    </fieldset>
  );
}
