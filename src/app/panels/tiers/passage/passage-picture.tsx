import { useId, useMemo } from 'react';
import type { Units } from '../../../../family/length-text.ts';
import type { Passage } from '../../../../passage/passage.ts';
import type { Profile } from '../../../../profile/profile.ts';
import type { PassageLayers } from '../../../state/tiers/passage-state.ts';
import {
  boxRound,
  type PlacedOpening,
  pixelPath,
  placedOpenings,
  regionBoundaries,
  viewOf,
} from '../../../state/tiers/passage-view.ts';
import { outlinePath } from '../../draw/outline-path.ts';
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
const ROOM = { margin: 22, ruler: 58 };

/** Keyways laid on each other at their best alignment, the part that they share lit, with the widest blank in it. */
export function PassagePicture(props: PassagePictureProps) {
  const { passage, openings, lit, layers, units, width, height, label, onPoint } = props;
  const id = useId();
  const placed = useMemo(() => placedOpenings(passage, openings), [passage, openings]);
  const box = useMemo(() => boxRound(passage, placed), [passage, placed]);
  if (!box) return null;
  const view = viewOf(box, { width, height }, ROOM);
  const { scale, x, y } = view;
  const frame = `translate(${x} ${y}) scale(${scale} ${-scale})`;
  const loss = lit === null ? null : (passage.members.find(({ id }) => id === lit)?.loss ?? null);
  return (
    <svg className={styles.picture} width={width} height={height} role="img" aria-label={label}>
      <Hatches loss={`${id}loss`} shared={`${id}shared`} scale={scale} />
      <rect className={styles.plug} width={width} height={height} />
      {layers.sections && <Rooms placed={placed} frame={frame} size={{ width, height }} />}
      <g transform={frame}>
        {layers.common && (
          <path
            className={styles.common}
            fill={`url(#${id}shared)`}
            d={regionBoundaries(passage.common).map(outlinePath).join('')}
          />
        )}
        {layers.sections &&
          placed.map(({ id, ring, at }) => (
            <path
              key={id}
              className={styles.section}
              data-lit={id === lit || undefined}
              d={outlinePath(ring)}
              transform={at}
            />
          ))}
        {layers.blank && passage.blank && <path className={styles.blank} d={outlinePath(passage.blank.ring)} />}
      </g>
      {layers.loss && loss && (
        <path className={styles.loss} fill={`url(#${id}loss)`} d={pixelPath(loss.region, view)} />
      )}
      {layers.sections && onPoint && (
        <g transform={frame} onPointerLeave={() => onPoint(null)}>
          <Reaches placed={placed} onPoint={onPoint} />
        </g>
      )}
      {layers.blank && (
        <PassageCallouts
          passage={passage}
          openings={openings}
          view={view}
          drawing={{ left: x + box.minX * scale, right: x + box.maxX * scale }}
          room={{ left: ROOM.ruler + ROOM.margin, right: width - ROOM.margin / 2 }}
        />
      )}
      <PassageRuler box={box} view={view} units={units} left={ROOM.ruler} />
    </svg>
  );
}

/**
 * What the keyways leave open, each lightly, so that it is darker where more of them do: a mask, since coats of a colour this
 * thin would shift its hue as they are rounded.
 */
function Rooms({ placed, frame, size }: RoomsProps) {
  const id = useId();
  return (
    <>
      <mask id={id} maskUnits="userSpaceOnUse" x="0" y="0" {...size}>
        <g transform={frame} fillOpacity={shadeOfEach(placed.length)}>
          {placed.map(({ id: opening, ring, at }) => (
            <path key={opening} className={styles.room} d={outlinePath(ring)} transform={at} />
          ))}
        </g>
      </mask>
      <rect className={styles.rooms} {...size} mask={`url(#${id})`} />
    </>
  );
}

interface RoomsProps {
  readonly placed: readonly PlacedOpening[];
  /** From millimetres to the picture. */
  readonly frame: string;
  readonly size: { readonly width: number; readonly height: number };
}

/** How dark it is where all keyways but one are open: well below what all share, as its sign in the legend is. */
const DARKEST = 0.45;

/** How opaque each of so many keyways is, so that together they stay lighter than what all of them share. */
function shadeOfEach(count: number): number {
  return 1 - (1 - DARKEST) ** (1 / Math.max(1, count - 1));
}

/** The stripes of what the blank gives up, and those of what all keyways share, which is drawn so many pixels a millimetre. */
function Hatches({ loss, shared, scale }: { loss: string; shared: string; scale: number }) {
  return (
    <defs>
      <pattern id={loss} width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <rect className={styles.hatchGround} width="9" height="9" />
        <rect className={styles.hatchStripe} width="4.5" height="9" />
      </pattern>
      <pattern
        id={shared}
        width="9"
        height="9"
        patternUnits="userSpaceOnUse"
        patternTransform={`scale(${1 / scale}) rotate(45)`}
      >
        <rect className={styles.sharedGround} width="9" height="9" />
        <rect className={styles.sharedStripe} width="2" height="9" />
      </pattern>
    </defs>
  );
}

/** Unseen broad lines along the outlines, to point at. */
function Reaches({ placed, onPoint }: { placed: readonly PlacedOpening[]; onPoint(id: string): void }) {
  return placed.map(({ id, name, ring, at }) => (
    <path key={id} className={styles.reach} d={outlinePath(ring)} transform={at} onPointerEnter={() => onPoint(id)}>
      <title>{name}</title>
    </path>
  ));
}
