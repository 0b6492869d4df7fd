import { useId, useMemo } from 'react';
import { type Box, boxOf, NM_PER_MM, type Point } from '../../../geom/point.ts';
import { boundariesOf, type Region } from '../../../geom/region.ts';
import type { Passage } from '../../../passage/passage.ts';
import type { Profile } from '../../../profile/profile.ts';
import type { Units } from '../../state/length-text.ts';
import type { PassageLayers } from '../../state/tiers/passage-state.ts';
import { outlinePath } from '../draw/outline-path.ts';
import { PassageCallouts } from './passage-callouts.tsx';
import styles from './passage-picture.module.css';
import { PassageRuler } from './passage-ruler.tsx';

interface PassagePictureProps {
  readonly passage: Passage;
  /** Keyways of the family; those that are not in the passage are left out. */
  readonly openings: readonly Profile[];
  /** The keyway that is lit, null for none. */
  readonly lit: string | null;
  readonly layers: PassageLayers;
  readonly units: Units;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  /** What the picture shows, for those who cannot see it. */
  readonly label: string;
  /** Called with the keyway whose outline is pointed at, null where none is. */
  onPoint?(id: string | null): void;
}

/** Every layer shown: for a picture without keys to choose them. */
export const ALL_LAYERS: PassageLayers = { sections: true, common: true, blank: true, loss: true };

/** Room round the drawing, and for its ruler at the left, pixels. */
const MARGIN = 22;
const RULER = 58;

/** Keyways laid on each other at their best alignment, the part that they share lit, with the widest blank in it. */
export function PassagePicture(props: PassagePictureProps) {
  const { passage, openings, lit, layers, units, width, height, label, onPoint } = props;
  const hatch = `${useId()}loss`;
  const placed = useMemo(() => placedOpenings(passage, openings), [passage, openings]);
  const box = useMemo(() => boxRound(passage, placed), [passage, placed]);
  if (!box) return null;
  const { scale, x, y } = viewOf(box, width, height);
  const loss = lit === null ? null : (passage.members.find(({ id }) => id === lit)?.loss ?? null);
  return (
    <svg className={styles.picture} width={width} height={height} role="img" aria-label={label}>
      <defs>
        <pattern id={hatch} width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <rect className={styles.hatchGround} width="9" height="9" />
          <rect className={styles.hatchStripe} width="4.5" height="9" />
        </pattern>
      </defs>
      <rect className={styles.plug} width={width} height={height} />
      <g transform={`translate(${x} ${y}) scale(${scale} ${-scale})`}>
        {layers.sections &&
          placed.map(({ id, path, at }) => <path key={id} className={styles.room} d={path} transform={at} />)}
        {layers.common && <path className={styles.common} d={regionPath(passage.common)} />}
        {layers.sections &&
          placed.map(({ id, path, at }) => (
            <path key={id} className={styles.section} data-lit={id === lit || undefined} d={path} transform={at} />
          ))}
        {layers.blank && passage.blank && <path className={styles.blank} d={outlinePath(passage.blank.ring)} />}
      </g>
      {layers.loss && loss && (
        <path className={styles.loss} fill={`url(#${hatch})`} d={pixelPath(loss.region, { scale, x, y })} />
      )}
      {layers.sections && onPoint && (
        <g transform={`translate(${x} ${y}) scale(${scale} ${-scale})`} onPointerLeave={() => onPoint(null)}>
          {placed.map(({ id, name, path, at }) => (
            <path key={id} className={styles.reach} d={path} transform={at} onPointerEnter={() => onPoint(id)}>
              <title>{name}</title>
            </path>
          ))}
        </g>
      )}
      {layers.blank && (
        <PassageCallouts
          passage={passage}
          openings={openings}
          view={{ scale, x, y }}
          drawing={{ left: x + box.minX * scale, right: x + box.maxX * scale }}
          room={{ left: RULER + MARGIN, right: width - MARGIN / 2 }}
        />
      )}
      <PassageRuler box={box} view={{ scale, x, y }} units={units} left={RULER} />
    </svg>
  );
}

interface PlacedOpening {
  readonly id: string;
  readonly name: string;
  readonly path: string;
  readonly at: string;
  readonly box: Box;
}

function placedOpenings({ members }: Passage, openings: readonly Profile[]): PlacedOpening[] {
  const profiles = new Map(openings.map((opening) => [opening.id, opening]));
  return members.flatMap(({ id, move }) => {
    const opening = profiles.get(id);
    if (!opening) return [];
    const { minX, minY, maxX, maxY } = boxOf(opening.ring);
    const box = { minX: minX + move.x, minY: minY + move.y, maxX: maxX + move.x, maxY: maxY + move.y };
    const at = `translate(${move.x / NM_PER_MM} ${move.y / NM_PER_MM})`;
    return [{ id, name: opening.name, path: outlinePath(opening.ring), at, box }];
  });
}

/** The box round all that is drawn, millimetres; null where there is nothing. */
function boxRound({ blank }: Passage, placed: readonly PlacedOpening[]): Box | null {
  const corners = placed.flatMap(({ box }) => [
    { x: box.minX, y: box.minY },
    { x: box.maxX, y: box.maxY },
  ]);
  const all: readonly Point[] = blank ? [...corners, ...blank.ring] : corners;
  if (all.length === 0) return null;
  const { minX, minY, maxX, maxY } = boxOf(all);
  return { minX: minX / NM_PER_MM, minY: minY / NM_PER_MM, maxX: maxX / NM_PER_MM, maxY: maxY / NM_PER_MM };
}

/** Pixels a millimetre, and where the drawing's origin lies. */
function viewOf({ minX, minY, maxX, maxY }: Box, width: number, height: number) {
  const [wide, high] = [Math.max(20, width - RULER - 2 * MARGIN), Math.max(20, height - 2 * MARGIN)];
  const scale = Math.min(wide / (maxX - minX), high / (maxY - minY));
  return {
    scale,
    x: RULER + MARGIN + wide / 2 - (scale * (minX + maxX)) / 2,
    y: MARGIN + high / 2 + (scale * (minY + maxY)) / 2,
  };
}

function regionPath(region: Region): string {
  return boundariesOf(region).map(outlinePath).join('');
}

/** A region in pixels, so that its hatch is as coarse at every scale. */
function pixelPath(region: Region, { scale, x, y }: { scale: number; x: number; y: number }): string {
  const place = (p: Point) =>
    `${(x + (p.x / NM_PER_MM) * scale).toFixed(2)} ${(y - (p.y / NM_PER_MM) * scale).toFixed(2)}`;
  return boundariesOf(region)
    .map((boundary) => `M${boundary.map(place).join('L')}Z`)
    .join('');
}
