import { useId, useMemo } from 'react';
import { VERDICT_WORDS } from '../../../../family/margin-text.ts';
import { type PlugFace, plugFace } from '../../../../family/plug-face.ts';
import type { Verdict } from '../../../../fit/fit.ts';
import type { Profile } from '../../../../profile/profile.ts';
import { pickShown, restWords } from '../../../../teach/shown-wall.ts';
import { shortNameOf, type TeachingKnowledge } from '../../../../teach/teaching-knowledge.ts';
import { VerdictMark } from '../../verdict-mark.tsx';
import { ClashHatch, PlugPicture } from '../../wall/plug-picture.tsx';
import { useTeaching } from '../use-teaching.ts';
import styles from './slide.module.css';
import { LEAST_TYPE, type SlideProps } from './slide-text.tsx';
import { type Room, wallGrid } from './wall-grid.ts';

/** One blank in many keyways at once: picture, name, mark and word of each. */
export function WallPicture({ family, parts, room, unit }: SlideProps & { room: Room }) {
  const knowledge = useTeaching(family);
  const { blank, openings } = parts;
  const face = useMemo(() => plugFace(openings), [openings]);
  const grid = wallGrid(openings.length, room, face, Math.max(LEAST_TYPE, 30 * unit));
  const hatch = `${useId()}hatch`;
  if (!blank) return null;
  const shown = pickShown(knowledge, blank, openings, grid.places);
  const rest = openings.filter((opening) => !shown.includes(opening));
  return (
    <>
      <ClashHatch pxPerMm={grid.pxPerMm / 1.4} name={hatch} />
      <ul className={styles.wall} style={{ gridTemplateColumns: `repeat(${grid.columns}, minmax(0, 1fr))` }}>
        {shown.map((opening) => (
          <Cell key={opening.id} {...{ knowledge, blank, opening, face, hatch, grid }} />
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
  readonly grid: ReturnType<typeof wallGrid>;
}

function Cell({ knowledge, blank, opening, face, hatch, grid }: CellProps) {
  const fit = knowledge.fitOf(blank.id, opening.id);
  const tone: Verdict | 'unknown' = fit?.verdict ?? 'unknown';
  return (
    <li className={styles.cell} data-opening-id={opening.id} data-verdict={tone} style={{ fontSize: grid.type }}>
      <PlugPicture
        opening={opening}
        entrant={blank}
        fit={fit}
        tone={tone}
        face={face}
        pxPerMm={grid.pxPerMm}
        width={grid.pictureWidth}
        height={grid.pictureHeight}
        glides={false}
        hatch={hatch}
      />
      <b>{shortNameOf(opening)}</b>
      <span className={styles.word} data-verdict={tone}>
        <VerdictMark verdict={fit?.verdict ?? null} size={Math.round(grid.type * 1.15)} />
        {fit ? VERDICT_WORDS[fit.verdict] : 'waiting'}
      </span>
    </li>
  );
}
