import { useMemo } from 'react';
import { middleOf, plugFace } from '../../../../family/plug-face.ts';
import type { Profile } from '../../../../profile/profile.ts';
import {
  type DrawnSections,
  type NamedSite,
  type NamedWard,
  wardNumbers,
} from '../../../state/plan/sections/drawn-sections.ts';
import { useSize } from '../../use-size.ts';
import { ClashHatch, PlugPicture } from '../../wall/plug-picture.tsx';
import styles from './plan-pair-picture.module.css';
import type { PlanPairNow } from './use-plan-pair.ts';

interface PlanPairPictureProps {
  readonly pair: PlanPairNow;
  readonly drawn: DrawnSections;
  readonly sites: readonly NamedSite[];
}

/** Room above and below the plug, and beside it for the numbers of the sites, pixels. */
const ROUND = 8;
const BESIDE = 30;

/** Name of the hatch; the wall has one of another scale. */
const HATCH = 'plan-clash';

/** The picked blank in the picked section's keyway, its wards numbered by their sites on the blade. */
export function PlanPairPicture({ pair, drawn, sites }: PlanPairPictureProps) {
  const [frame, size] = useSize<HTMLDivElement>();
  const face = useMemo(() => plugFace(drawn.openings), [drawn]);
  const wide = size ? (size.width - 2 * BESIDE) / 2 / face.half : 0;
  const pxPerMm = size ? Math.min(wide, (size.height - ROUND) / 2 / face.radius) : 0;
  const { opening, entrant, fit } = pair;
  return (
    <figure className={styles.figure}>
      <div ref={frame} className={styles.plug}>
        {size && pxPerMm > 0 && (
          <>
            <ClashHatch pxPerMm={pxPerMm} name={HATCH} />
            <PlugPicture
              opening={opening}
              entrant={entrant}
              fit={fit}
              tone={fit.verdict}
              face={face}
              pxPerMm={pxPerMm}
              width={size.width}
              height={size.height}
              glides
              hatch={HATCH}
            />
            <SiteNumbers opening={opening} sites={sites} half={face.half} pxPerMm={pxPerMm} {...size} />
          </>
        )}
      </div>
    </figure>
  );
}

interface SiteNumbersProps {
  readonly opening: Profile;
  readonly sites: readonly NamedSite[];
  readonly half: number;
  readonly pxPerMm: number;
  readonly width: number;
  readonly height: number;
}

/** Beside the plug the number of each ward's site, on the side that the ward stands on. */
function SiteNumbers({ opening, sites, half, pxPerMm, width, height }: SiteNumbersProps) {
  const middle = middleOf(opening);
  return (
    <svg className={styles.numbers} width={width} height={height} aria-hidden="true">
      {spreadApart(wardNumbers(opening, sites), (at) => height / 2 - (at - middle.y) * pxPerMm).map((ward) => {
        const { name, side, y, textY } = ward;
        const left = side === 'left';
        const edge = width / 2 + (left ? -1 : 1) * half * pxPerMm;
        const inner = width / 2 + ((left ? -1 : 1) * half * pxPerMm) / 2.6;
        const out = left ? edge - 6 : edge + 6;
        return (
          <g key={`${side} ${y}`}>
            <path d={`M${inner} ${y}H${edge}L${out} ${textY}`} />
            <text x={left ? out - 4 : out + 4} y={textY + 5} textAnchor={left ? 'end' : 'start'}>
              {name}
            </text>
          </g>
        );
      })}
    </svg>
  );
}

/** Least distance of two numbers on one side, pixels. */
const APART = 15;

/** The wards from the top down, each with the height of its number: numbers that would lie on each other move down. */
function spreadApart(wards: readonly NamedWard[], pixelOf: (at: number) => number) {
  const last = { left: Number.NEGATIVE_INFINITY, right: Number.NEGATIVE_INFINITY };
  return [...wards]
    .sort((a, b) => b.at - a.at)
    .map((ward) => {
      const y = pixelOf(ward.at);
      const textY = Math.max(y, last[ward.side] + APART);
      last[ward.side] = textY;
      return { ...ward, y, textY };
    });
}
