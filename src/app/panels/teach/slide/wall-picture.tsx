import { useId, useMemo } from 'react';
import { VERDICT_WORDS } from '../../../../family/margin-text.ts';
import { type PlugFace, plugFace } from '../../../../family/plug-face.ts';
import type { Verdict } from '../../../../fit/fit.ts';
import type { Profile } from '../../../../profile/profile.ts';
import { pickShown, restWords } from '../../../../teach/shown-wall.ts';
import { shortNameOf, type TeachingKnowledge } from '../../../../teach/teaching-knowledge.ts';
import { type WallCells, type WallGrid, type WallRoom, wallGrid } from '../../../../teach/wall-grid.ts';
import { VerdictMark } from '../../verdict-mark.tsx';
import { ClashHatch, PlugPicture } from '../../wall/plug-picture.tsx';
import { useTeaching } from '../use-teaching.ts';
import styles from './slide.module.css';
import { LEAST_TYPE, type SlideProps } from './slide-text.tsx';

/** Pixels between cells, and over and under a plug together; lines of type under each. */
const GAP = 8;
const AIR = 24;
const LINES = 2.9;

function cellsOf(face: PlugFace, type: number): WallCells {
  const under = () => LINES * type + AIR;
  return { face, leastWidth: 5.2 * type, leastScale: 9, beside: 2 * GAP, rest: 1.6 * type, under };
}

/** One blank in many keyways at once: picture, name, mark and word of each. */
export function WallPicture({ family, parts, room, unit }: SlideProps & { room: WallRoom }) {
  const knowledge = useTeaching(family);
  const { blank, openings } = parts;
  const face = useMemo(() => plugFace(openings), [openings]);
  const type = Math.max(LEAST_TYPE, 30 * unit);
  const grid = wallGrid(openings.length, room, cellsOf(face, type));
  const hatch = `${useId()}hatch`;
  if (!blank) return null;
  const shown = pickShown(knowledge, blank, openings, grid.places);
  const rest = openings.filter((opening) => !shown.includes(opening));
  return (
    <>
      <ClashHatch pxPerMm={grid.scale / 1.4} name={hatch} />
      <ul className={styles.wall} style={{ gridTemplateColumns: `repeat(${grid.columns}, minmax(0, 1fr))` }}>
        {shown.map((opening) => (
          <Cell key={opening.id} {...{ knowledge, blank, opening, face, hatch, grid, type }} />
        ))}
      </ul>
      {rest.length > 0 && <p className={styles.rest}>{restWords(knowledge, blank, rest)}</p>}
    </>
  );
}

interface CellProps {
  readonly knowledge: TeachingKnowledge;
  readonly blank: Profile;
  readonly opening: Profile;
  readonly face: PlugFace;
  readonly hatch: string;
  readonly grid: WallGrid;
  /** Size of type, pixels. */
  readonly type: number;
}

function Cell({ knowledge, blank, opening, face, hatch, grid, type }: CellProps) {
  const fit = knowledge.fitOf(blank.id, opening.id);
  const tone: Verdict | 'unknown' = fit?.verdict ?? 'unknown';
  return (
    <li className={styles.cell} data-opening-id={opening.id} data-verdict={tone} style={{ fontSize: type }}>
      <PlugPicture
        opening={opening}
        entrant={blank}
        fit={fit}
        tone={tone}
        face={face}
        pxPerMm={grid.scale}
        width={Math.floor(grid.width) - GAP}
        height={Math.max(20, Math.floor(grid.height - LINES * type))}
        glides={false}
        hatch={hatch}
      />
      <b>{shortNameOf(opening)}</b>
      <span className={styles.word} data-verdict={tone}>
        <VerdictMark verdict={fit?.verdict ?? null} size={Math.round(type * 1.15)} />
        {fit ? VERDICT_WORDS[fit.verdict] : 'waiting'}
      </span>
    </li>
  );
}
