import styles from './cut-key.module.css';

/** Pixels: the bow, one chamber, the blade's height, and the deepest cut's share of it. */
const BOW = 15;
const STEP = 13;
const BLADE = 20;
const DEEPEST = 0.62;
const SHOULDER = 6;

/** A key seen from its side with a bitting cut into it; not to scale. */
export function CutKey({ cuts, depths }: { cuts: readonly number[]; depths: number }) {
  const start = 2 * BOW + SHOULDER;
  const end = start + cuts.length * STEP + 10;
  const top = BOW - BLADE / 2;
  const at = (depth: number) => top + 2 + ((BLADE * DEEPEST) / Math.max(1, depths - 1)) * depth;
  const points = cuts.flatMap((depth, i) => {
    const x = start + (i + 0.5) * STEP;
    return [`${x - 3} ${at(depth)}`, `${x + 3} ${at(depth)}`];
  });
  const back = top + BLADE;
  const blade = `M${2 * BOW - 4} ${top}L${start - 3} ${top}L${points.join('L')}L${end - 3} ${top + 6}L${end} ${back - 5}L${end - 5} ${back}L${2 * BOW - 4} ${back}Z`;
  return (
    <svg className={styles.key} width={end + 2} height={2 * BOW} aria-hidden="true">
      <circle cx={BOW} cy={BOW} r={BOW - 1.5} />
      <path d={blade} />
      <circle className={styles.hole} cx={BOW - 4} cy={BOW} r={4} />
    </svg>
  );
}
