import { type KeyboardEvent, useEffect, useMemo, useRef } from 'react';
import type { Family } from '../../../../family/family.ts';
import { readingText, type Units } from '../../../../family/length-text.ts';
import type { Candidate, Identification } from '../../../../identify/identify.ts';
import { candidateName, candidateWords } from '../../../../identify/say-identity.ts';
import type { Profile } from '../../../../profile/profile.ts';
import { areaText } from '../../../state/names/identify-words.ts';
import { pickCandidate } from '../../../state/names/identifying.ts';
import { trayReach } from '../../../state/tray-reach.ts';
import { SectionThumb } from '../../section-thumb.tsx';
import { useSession, useStore } from '../../use-store.ts';
import styles from './identify-list.module.css';

/** More sections than this are never worth a look. */
const MOST_LISTED = 60;

const STEPS: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowRight: 1, ArrowUp: -1, ArrowLeft: -1 };

interface IdentifyListProps {
  readonly family: Family;
  readonly answer: Identification;
  readonly profiles: readonly Profile[];
  readonly picked: number;
}

/** The sections, the closest first; the arrow keys walk them, Home and End go to the ends. */
export function IdentifyList({ family, answer, profiles, picked }: IdentifyListProps) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const listed = answer.ranked.slice(0, MOST_LISTED);
  const more = answer.ranked.length - listed.length + answer.beyond;
  const reach = useMemo(() => trayReach(family), [family]);
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key in STEPS) pickCandidate(session, Math.min(listed.length - 1, picked + STEPS[event.key]));
    else if (event.key === 'Home') pickCandidate(session, 0);
    else if (event.key === 'End') pickCandidate(session, listed.length - 1);
    else return;
    event.preventDefault();
  };
  return (
    <div className={styles.side}>
      <h3 className={styles.title}>The closest first</h3>
      <div
        role="listbox"
        aria-label="Sections by how close they lie"
        tabIndex={0}
        className={styles.list}
        aria-activedescendant={`candidate-${picked}`}
        onKeyDown={onKeyDown}
      >
        {listed.map((candidate, i) => (
          <Row
            key={candidate.ids[0]}
            index={i}
            candidate={candidate}
            name={candidateName(candidate, profiles)}
            words={candidateWords(answer, i)}
            profile={profiles.find(({ id }) => id === candidate.ids[0])}
            reach={reach}
            units={units}
            picked={i === picked}
          />
        ))}
      </div>
      {more > 0 && <p className={styles.more}>and {more} more, further off</p>}
    </div>
  );
}

interface RowProps {
  readonly index: number;
  readonly candidate: Candidate;
  readonly name: string;
  readonly words: string;
  readonly profile: Profile | undefined;
  readonly reach: { readonly x: number; readonly y: number };
  readonly units: Units;
  readonly picked: boolean;
}

function Row({ index, candidate, name, words, profile, reach, units, picked }: RowProps) {
  const session = useSession();
  const row = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (picked) row.current?.scrollIntoView({ block: 'nearest' });
  }, [picked]);
  const { most, mean, areaApart, pose } = candidate.comparison;
  const about = candidate.careful ? '' : 'about ';
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the listbox round it takes the keys, as its pattern asks
    // biome-ignore lint/a11y/useFocusableInteractive: the listbox holds the focus and names the active row
    <div
      ref={row}
      id={`candidate-${index}`}
      role="option"
      aria-selected={picked}
      className={styles.row}
      onClick={() => pickCandidate(session, index)}
    >
      {profile && <SectionThumb profile={profile} reachX={reach.x} reachY={reach.y} width={28} height={56} />}
      <span className={styles.text}>
        <b>{name}</b>
        {(words || pose.mirrored) && (
          <span className={styles.tags}>
            {words && <span className={styles.tag}>{words}</span>}
            {pose.mirrored && <span className={styles.tip}>⇆ mirrored: tip view</span>}
          </span>
        )}
        <span className={styles.figures}>
          {about}
          {readingText(most, units)} at most, mean {readingText(mean, units)}, {areaText(areaApart, units)}
        </span>
      </span>
    </div>
  );
}
