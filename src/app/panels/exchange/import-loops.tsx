import { memo, useEffect, useId, useRef } from 'react';
import { sizeText, type Units } from '../../../family/length-text.ts';
import type { Placing } from '../../../interchange/place-loop.ts';
import type { DrawnLoop } from '../../../interchange/take-outline.ts';
import type { ProfileKind } from '../../../profile/profile.ts';
import { type DrawingImport, isSound, type LoopChoice } from '../../state/exchange/import-state.ts';
import type { Importing, IncomingFile } from '../../state/exchange/importing.ts';
import { loopPath, seenAs, thumbMatrix } from '../../tools/loops-view.ts';
import styles from './import-loops.module.css';
import { KINDS, KindQuestion } from './import-questions.tsx';
import { countWords, loopWords } from './import-words.ts';

interface ImportLoopsProps {
  readonly now: DrawingImport;
  readonly units: Units;
  readonly importing: Importing<IncomingFile>;
  /** The sections of the open family, to pick from. */
  readonly sections: readonly string[];
}

/** Every loop of a drawing in a list: what it is, what is wrong with it, and what it is to become. */
export function ImportLoops({ now, units, importing, sections }: ImportLoopsProps) {
  const sectionsId = useId();
  const sound = now.drawing.loops.filter(isSound).length;
  const tickAll = (ticked: boolean) =>
    importing.choose({
      choices: now.choices.map((choice, i) => {
        const { gaps } = now.drawing.loops[i];
        return { ...choice, ticked: ticked && isSound(now.drawing.loops[i]) && gaps.length === 0 };
      }),
    });
  return (
    <>
      <div className={styles.head}>
        <p>
          <b>{countWords(now.drawing.loops.length, 'loop')}</b> found
        </p>
        <span className="key-row">
          <button type="button" className="key" disabled={sound === 0} onClick={() => tickAll(true)}>
            Tick all
          </button>
          <button type="button" className="key" onClick={() => tickAll(false)}>
            Tick none
          </button>
        </span>
      </div>
      <KindQuestion now={now} importing={importing} />
      <ol className={styles.loops} aria-label="Loops of the drawing">
        {now.drawing.loops.map((_, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a loop is known by its number only
          <LoopRow key={i} i={i} now={now} units={units} importing={importing} sectionsId={sectionsId} />
        ))}
      </ol>
      <datalist id={sectionsId}>
        {sections.map((section) => (
          <option key={section} value={section} />
        ))}
      </datalist>
    </>
  );
}

interface LoopRowProps {
  readonly i: number;
  readonly now: DrawingImport;
  readonly units: Units;
  readonly importing: Importing<IncomingFile>;
  readonly sectionsId: string;
}

/** Drawn again only when what it says changes: a drawing may have hundreds of loops. */
const LoopRow = memo(DrawnLoopRow, (a, b) => {
  const samePointed = (a.now.pointed === a.i) === (b.now.pointed === b.i);
  const sameLoop = a.now.drawing === b.now.drawing && a.now.choices[a.i] === b.now.choices[b.i];
  return (
    samePointed &&
    sameLoop &&
    a.now.placing === b.now.placing &&
    a.units === b.units &&
    (a.now.replacing === null) === (b.now.replacing === null)
  );
});

function DrawnLoopRow({ i, now, units, importing, sectionsId }: LoopRowProps) {
  const loop = now.drawing.loops[i];
  const choice = now.choices[i];
  const wordsId = useId();
  const row = useRef<HTMLLIElement>(null);
  const pointed = now.pointed === i;
  useEffect(() => {
    if (pointed) row.current?.scrollIntoView({ block: 'nearest' });
  }, [pointed]);
  const sound = isSound(loop);
  const ticked = choice.ticked && sound;
  const change = (next: Partial<LoopChoice>) => importing.chooseLoop(i, next);
  return (
    <li
      ref={row}
      className={styles.loop}
      data-pointed={pointed}
      onFocus={() => !pointed && importing.choose({ pointed: i })}
    >
      <input
        type="checkbox"
        className={styles.tick}
        data-first={pointed || undefined}
        aria-label={`Take number ${i + 1}, ${choice.name}`}
        aria-describedby={wordsId}
        checked={ticked}
        disabled={!sound}
        onChange={(event) => change({ ticked: event.target.checked })}
      />
      <LoopThumb {...loop} path={loopPath(loop)} placing={now.placing} ticked={ticked} kind={choice.kind} />
      <div className={styles.facts} id={wordsId}>
        <p className={styles.name}>
          <b>{i + 1}</b> {loop.label || choice.name}
        </p>
        <p>
          {sizeText(loop.width, loop.height, units)}, {countWords(loop.vertices.length, 'corner')}
        </p>
        {loopWords(loop, now.drawing.loops, units).map(({ words, bad }) => (
          <p key={words} className={bad ? styles.bad : styles.word}>
            {words}
          </p>
        ))}
      </div>
      {ticked && (
        <div className={styles.fields}>
          <LighterTick loop={loop} on={choice.lighter} change={change} />
          {now.replacing === null && <HeadFields i={i} choice={choice} change={change} sectionsId={sectionsId} />}
        </div>
      )}
    </li>
  );
}

interface LighterTickProps {
  readonly loop: DrawnLoop;
  readonly on: boolean;
  change(next: Partial<LoopChoice>): void;
}

/** Offers the outline with fewer corners where there is one. */
function LighterTick({ loop: { lighter, vertices }, on, change }: LighterTickProps) {
  if (!lighter) return null;
  return (
    <label className={styles.lighter}>
      <input type="checkbox" checked={on} onChange={(event) => change({ lighter: event.target.checked })} />
      Fewer corners: {lighter.length.toLocaleString('en')} in place of {vertices.length.toLocaleString('en')}, at most
      0.5 µm off
    </label>
  );
}

interface HeadFieldsProps {
  readonly i: number;
  readonly choice: LoopChoice;
  readonly sectionsId: string;
  change(next: Partial<LoopChoice>): void;
}

/** What a loop is called and what it becomes. */
function HeadFields({ i, choice, change, sectionsId }: HeadFieldsProps) {
  return (
    <>
      <label className={styles.wide}>
        Name
        <input
          className={styles.field}
          value={choice.name}
          maxLength={200}
          aria-invalid={choice.name.trim() === ''}
          aria-label={`Name of number ${i + 1}`}
          onChange={(event) => change({ name: event.target.value })}
        />
      </label>
      <label>
        It is a
        <select
          className={styles.field}
          value={choice.kind}
          aria-label={`Number ${i + 1} is a`}
          onChange={(event) => change({ kind: event.target.value as ProfileKind })}
        >
          {KINDS.map(({ kind, label }) => (
            <option key={kind} value={kind}>
              {label}
            </option>
          ))}
        </select>
      </label>
      <label>
        Section
        <input
          className={styles.field}
          value={choice.section}
          maxLength={200}
          list={sectionsId}
          placeholder="none"
          aria-label={`Section of number ${i + 1}`}
          onChange={(event) => change({ section: event.target.value })}
        />
      </label>
    </>
  );
}

interface ThumbProps {
  readonly path: string;
  readonly width: number;
  readonly height: number;
  readonly placing: Pick<Placing, 'seenFrom' | 'quarters'>;
  readonly ticked: boolean;
  readonly kind: ProfileKind;
}

function LoopThumb({ path, width, height, placing, ticked, kind }: ThumbProps) {
  return (
    <svg className={styles.thumb} width="40" height="52" aria-hidden="true" data-ticked={ticked} data-kind={kind}>
      <path d={path} transform={thumbMatrix({ width, height }, seenAs(placing), [40, 52], 30)} />
    </svg>
  );
}
