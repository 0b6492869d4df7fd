import { type KeyboardEvent, memo, useEffect, useRef } from 'react';
import type { Profile } from '../../profile/profile.ts';
import { EntrantStrip } from './entrant-strip.tsx';
import { SectionThumb } from './section-thumb.tsx';
import styles from './tray.module.css';

interface TrayListProps {
  readonly label: string;
  readonly profiles: readonly Profile[];
  readonly pickedId: string | null;
  readonly reach: { readonly x: number; readonly y: number };
  /** Each row's answers along the block, by profile id; undefined in a list that has none. */
  readonly combs?: ReadonlyMap<string, string>;
  /** Must stay the same from one drawing to the next, or every row is drawn again. */
  onPick(id: string): void;
  onWalk(steps: number): void;
}

const STEPS: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowRight: 1, ArrowUp: -1, ArrowLeft: -1 };

/** A list of sections of which one is picked; the arrow keys walk it, Home and End go to its ends. */
export function TrayList({ label, profiles, pickedId, reach, combs, onPick, onWalk }: TrayListProps) {
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key in STEPS) onWalk(STEPS[event.key]);
    else if (event.key === 'Home') onPick(profiles[0].id);
    else if (event.key === 'End') onPick(profiles[profiles.length - 1].id);
    else return;
    event.preventDefault();
  };
  return (
    <div
      role="listbox"
      aria-label={label}
      tabIndex={0}
      className={styles.list}
      aria-activedescendant={pickedId === null ? undefined : rowId(pickedId)}
      onKeyDown={onKeyDown}
    >
      {profiles.map((p) => (
        <TrayRow
          key={p.id}
          profile={p}
          picked={p.id === pickedId}
          reachX={reach.x}
          reachY={reach.y}
          comb={combs?.get(p.id)}
          onPick={onPick}
        />
      ))}
    </div>
  );
}

interface TrayRowProps {
  readonly profile: Profile;
  readonly picked: boolean;
  readonly reachX: number;
  readonly reachY: number;
  readonly comb: string | undefined;
  onPick(id: string): void;
}

const TrayRow = memo(function TrayRow({ profile, picked, reachX, reachY, comb, onPick }: TrayRowProps) {
  const row = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (picked) row.current?.scrollIntoView({ block: 'nearest' });
  }, [picked]);
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the listbox round it takes the keys, as its pattern asks
    // biome-ignore lint/a11y/useFocusableInteractive: the listbox holds the focus and names the active row
    <div
      ref={row}
      id={rowId(profile.id)}
      role="option"
      aria-selected={picked}
      className={styles.row}
      onClick={() => onPick(profile.id)}
    >
      <SectionThumb profile={profile} reachX={reachX} reachY={reachY} width={30} height={58} />
      <span className={styles.words}>
        <span className={styles.name}>{profile.name}</span>
        {profile.kind !== 'opening' && <EntrantDetail kind={profile.kind} comb={comb} />}
      </span>
    </div>
  );
});

function EntrantDetail({ kind, comb }: { kind: string; comb: string | undefined }) {
  if (!comb || /^\.*$/.test(comb)) return <span className={styles.detail}>{kind}</span>;
  const goesIn = [...comb].filter((letter) => letter === 'e' || letter === 't').length;
  return (
    <span className={styles.detail} title={`Goes into ${goesIn} of ${comb.length} keyways`}>
      <EntrantStrip comb={comb} width={88} />
      {goesIn}
      <span className="unseen"> of {comb.length} keyways</span>
    </span>
  );
}

function rowId(id: string): string {
  return `tray-${id}`;
}
