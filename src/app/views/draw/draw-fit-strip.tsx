import { type RefObject, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { entrantsOf, type Family, openingsOf } from '../../../family/family.ts';
import type { KnownFits } from '../../../family/known-fits.ts';
import { marginText } from '../../../family/margin-text.ts';
import type { Fit } from '../../../fit/fit.ts';
import type { Profile } from '../../../profile/profile.ts';
import { AnswerMark } from '../../panels/answer-mark.tsx';
import { useSession, useStore } from '../../panels/use-store.ts';
import { pairLine } from '../../state/pair-words.ts';
import { goingFirst, type PairNow } from '../../state/pairs-in-order.ts';
import type { Session } from '../../state/session.ts';
import styles from './draw.module.css';

/**
 * What the edited outline goes into, or what goes into it, while it is edited: a count, a mark for each of the others,
 * and the margin in the one that lies under it. A mark picks its section as the counterpart.
 */
export function DrawFitStrip({ family, profile }: { family: Family; profile: Profile }) {
  const session = useSession();
  const pairs = usePairs(family, profile);
  const units = useStore(session.settings, (s) => s.units);
  const otherId = useStore(session.selection, (s) => (profile.kind === 'opening' ? s.entrantId : s.openingId));
  if (pairs.length === 0)
    return <p className={styles.count}>No {profile.kind === 'opening' ? 'blanks' : 'keyways'} to try it with.</p>;
  const picked = pairs.find(({ other }) => other.id === otherId);
  return (
    <div className={styles.strip}>
      <p className={styles.count} role="status">
        {countText(profile, pairs)}
      </p>
      {picked?.fit && (
        <p className={styles.pair} data-verdict={picked.fit.verdict} title={picked.other.name}>
          <AnswerMark mark={picked.fit.verdict} size={20} />
          <span className={styles.pairName}>{picked.other.name}:</span>
          <span className={styles.pairWords}>
            {picked.fit.verdict} {marginText(picked.fit, units)}
          </span>
        </p>
      )}
      <PairMarks key={profile.id} profile={profile} pairs={pairs} otherId={otherId} units={units} />
    </div>
  );
}

interface PairMarksProps {
  readonly profile: Profile;
  readonly pairs: readonly PairNow[];
  readonly otherId: string | null;
  readonly units: 'mm' | 'in';
}

/** A mark for each of the others, those that go together first; what has no room comes up by a key. */
function PairMarks({ profile, pairs, otherId, units }: PairMarksProps) {
  const session = useSession();
  const editing = useStore(session.documents, (s) => s.editedFrom !== null);
  const [isOpen, setOpen] = useState(false);
  const sorted = useOrder(pairs, editing);
  const list = useRef<HTMLUListElement>(null);
  const hidden = useHiddenCount(list, sorted.length);
  return (
    <div className={styles.markRows}>
      <ul
        ref={list}
        className={styles.marks}
        data-open={isOpen}
        aria-label={profile.kind === 'opening' ? 'Blanks that were tried in it' : 'Keyways that it was tried in'}
      >
        {sorted.map(({ other, fit, settled }) => (
          <li key={other.id}>
            <button
              type="button"
              className={styles.mark}
              aria-pressed={other.id === otherId}
              data-settled={settled}
              title={lineOf(profile, other, fit, units)}
              onClick={() => pickCounterpart(session, profile, other)}
            >
              <AnswerMark mark={fit?.verdict ?? null} size={18} />
              <span aria-hidden="true">{shortName(other)}</span>
              <span className="unseen">{lineOf(profile, other, fit, units)}</span>
            </button>
          </li>
        ))}
      </ul>
      {(hidden > 0 || isOpen) && (
        <button
          type="button"
          className={`key ${styles.more}`}
          aria-expanded={isOpen}
          title={isOpen ? 'Two rows only' : 'Show all'}
          onClick={() => setOpen(!isOpen)}
        >
          {isOpen ? 'Fewer' : `+${hidden} more`}
        </button>
      )}
    </div>
  );
}

/** Those that go together first. While something is edited each keeps its place, or a mark would run from the pointer. */
function useOrder(pairs: readonly PairNow[], editing: boolean): readonly PairNow[] {
  const order = useRef<readonly string[]>([]);
  const known = pairs.every(({ settled }) => settled);
  const ids = pairs.map(({ other }) => other.id);
  const isKept = (editing || !known) && order.current.length > 0;
  const now = isKept ? inOrder(ids, order.current) : goingFirst(pairs).map(({ other }) => other.id);
  useEffect(() => {
    order.current = now;
  });
  return now.flatMap((id) => pairs.find(({ other }) => other.id === id) ?? []);
}

function inOrder(ids: readonly string[], order: readonly string[]): string[] {
  const left = order.filter((id) => ids.includes(id));
  return [...left, ...ids.filter((id) => !left.includes(id))];
}

/** How many entries of a list lie below what is seen of it. */
function useHiddenCount(list: RefObject<HTMLUListElement | null>, count: number): number {
  const [hidden, setHidden] = useState(0);
  useLayoutEffect(() => {
    const element = list.current;
    if (!element || count === 0) return;
    const look = () => {
      const foot = element.getBoundingClientRect().top + element.clientHeight;
      setHidden([...element.children].filter((entry) => entry.getBoundingClientRect().bottom > foot + 4).length);
    };
    const observer = new ResizeObserver(look);
    observer.observe(element);
    for (const entry of element.children) observer.observe(entry);
    look();
    return () => observer.disconnect();
  }, [list, count]);
  return hidden;
}

/** The pairs of the edited profile in chart order; what is being judged anew keeps its last answer meanwhile. */
function usePairs(family: Family, profile: Profile): readonly PairNow[] {
  const { results, documents } = useSession();
  const fits = useStore(results, (s) => s.fits);
  // Another family may have profiles of the same ids.
  const subject = `${useStore(documents, (s) => s.opened)} ${profile.id}`;
  const last = useRef<{ subject: string; known: ReadonlyMap<string, Fit> }>({ subject, known: new Map() });
  const pairs = useMemo(() => {
    const others = profile.kind === 'opening' ? entrantsOf(family) : openingsOf(family);
    const before = last.current.subject === subject ? last.current.known : new Map<string, Fit>();
    return others.map((other): PairNow => {
      const fit = fits ? fitOf(fits, profile, other) : undefined;
      return { other, fit: fit ?? before.get(other.id), settled: fit !== undefined };
    });
  }, [family, profile, fits, subject]);
  useEffect(() => {
    const known = new Map(pairs.flatMap(({ other, fit }) => (fit ? [[other.id, fit] as const] : [])));
    last.current = { subject, known };
  }, [pairs, subject]);
  return pairs;
}

function fitOf({ profiles, openings, fits }: KnownFits, profile: Profile, other: Profile): Fit | undefined {
  const [blade, keyway] = profile.kind === 'opening' ? [other, profile] : [profile, other];
  return fits[profiles.indexOf(blade.id)]?.[openings.indexOf(keyway.id)];
}

function countText({ kind }: Profile, pairs: readonly PairNow[]): string {
  const goesIn = pairs.filter(({ fit }) => fit && fit.verdict !== 'blocked').length;
  if (kind === 'opening')
    return `Takes ${goesIn} of ${pairs.length} ${pairs.length === 1 ? 'blank' : 'blanks and tools'}`;
  return `Goes into ${goesIn} of ${pairs.length} ${pairs.length === 1 ? 'keyway' : 'keyways'}`;
}

function lineOf(profile: Profile, other: Profile, fit: Fit | undefined, units: 'mm' | 'in'): string {
  const [blade, keyway] = profile.kind === 'opening' ? [other, profile] : [profile, other];
  return pairLine(blade.name, keyway.name, fit, units);
}

/** A name without the word for what all in the strip are. */
function shortName({ name, section, kind }: Profile): string {
  return kind === 'opening' && section ? section : name.replace(/ (keyway|blank)$/i, '');
}

function pickCounterpart({ selection }: Session, profile: Profile, other: Profile): void {
  selection.setState(profile.kind === 'opening' ? { entrantId: other.id } : { openingId: other.id });
}
