import { useMemo } from 'react';
import type { Family } from '../../../family/family.ts';
import { readingText } from '../../../family/length-text.ts';
import { MEASURING, marginText, VERDICT_WORDS } from '../../../family/margin-text.ts';
import { plugFace } from '../../../family/plug-face.ts';
import type { DisplaySet } from '../../../print3d/display-set.ts';
import { insertedBy, insertionRange, printedFit } from '../../state/publish/block-pair.ts';
import { gapWords, insertionWords, lackWords } from '../../state/publish/block-words.ts';
import readings from '../readings.module.css';
import { useSize } from '../use-size.ts';
import { useSession, useStore } from '../use-store.ts';
import { VerdictMark } from '../verdict-mark.tsx';
import { ClashHatch, PlugPicture } from '../wall/plug-picture.tsx';
import styles from './block-readings.module.css';
import { type JudgedPair, useBlockLook, useBlockPair, useBlockSetup } from './use-block.ts';

interface BlockPairReadingProps {
  readonly family: Family;
  readonly set: DisplaySet;
}

/** The picked pair as it is tried in the block: where the coupon is, what the sections say, what the gap changes. */
export function BlockPairReading({ family, set }: BlockPairReadingProps) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const pair = useBlockPair(family, set);
  if (!pair) return null;
  const { entrant, opening, fit, sentence } = pair;
  return (
    <section className={readings.part} aria-labelledby="reading-block-pair">
      <h2 id="reading-block-pair" className={readings.title}>
        {entrant.name} in {opening.name}
      </h2>
      <p className={readings.verdict} data-verdict={fit.verdict}>
        <VerdictMark verdict={fit.verdict} size={26} />
        {VERDICT_WORDS[fit.verdict]}
        <span className={readings.margin}>{marginText(fit, units, MEASURING, readingText)}</span>
      </p>
      <Standing pair={pair} />
      <p>{sentence}</p>
      <SectionPicture pair={pair} />
      <GapReading family={family} set={set} pair={pair} />
      <p className={readings.note}>Pick another blank or keyway in the tray at the left.</p>
    </section>
  );
}

/** Where the coupon is; told as it stops. */
function Standing({ pair }: { readonly pair: JudgedPair }) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const [{ inserted }] = useBlockLook();
  const { coupon, frame, fit } = pair;
  if (!coupon || !frame) return <p role="status">{lackWords(pair)}</p>;
  const range = insertionRange(coupon, fit.verdict);
  const at = insertedBy(range, inserted);
  const isStill = at <= 0 || at >= range.stops;
  const words = insertionWords(pair, range, at, frame.depth, units);
  return (
    <>
      <p data-inserted={Math.round(at * 100) / 100}>{words}</p>
      <p role="status" className="unseen">
        {isStill ? words : ''}
      </p>
    </>
  );
}

/** What the fitting gap does to this pair. */
function GapReading({ family, set, pair }: BlockPairReadingProps & { readonly pair: JudgedPair }) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const { gap } = useBlockSetup(family);
  const { entrant, opening, fit } = pair;
  const letsIn = set.checks.some(
    ({ kind, subjects }) => kind === 'gap-lets-in' && subjects.includes(entrant.id) && subjects.includes(opening.id),
  );
  return (
    <>
      <h3>As printed</h3>
      <p data-letting-in={letsIn || undefined} className={letsIn ? styles.lets : undefined}>
        {gapWords(fit.verdict, printedFit(fit.clearance, set.scale, gap), set.scale, letsIn, units)}
      </p>
    </>
  );
}

const HATCH = 'block-clash';
const HEIGHT = 170;

/** The two sections seen from the front, the overlap hatched. */
function SectionPicture({ pair: { opening, entrant, fit } }: { readonly pair: JudgedPair }) {
  const [frame, size] = useSize<HTMLDivElement>();
  const face = useMemo(() => plugFace([opening]), [opening]);
  const pxPerMm = size ? Math.min(size.width / 2 / face.half, (HEIGHT - 8) / 2 / face.radius) : 0;
  return (
    <div ref={frame} className={styles.section}>
      {size && pxPerMm > 0 && (
        <>
          <ClashHatch pxPerMm={pxPerMm} name={HATCH} />
          <PlugPicture
            {...{ opening, entrant, fit, face, pxPerMm }}
            tone={fit.verdict}
            width={size.width}
            height={HEIGHT}
            glides={false}
            hatch={HATCH}
          />
        </>
      )}
    </div>
  );
}
