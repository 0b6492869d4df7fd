import { memo, useMemo } from 'react';
import { type Family, openingsOf } from '../../../../family/family.ts';
import { VERDICT_WORDS } from '../../../../family/margin-text.ts';
import type { TierNode } from '../../../../family/tiers.ts';
import type { Passage, PassageEntry, PassageMember } from '../../../../passage/passage.ts';
import type { Profile } from '../../../../profile/profile.ts';
import { pairLine } from '../../../state/pair-words.ts';
import { chooseOpenings, enteredIds, toggleOpening } from '../../../state/tiers/passage-choice.ts';
import { passageStateOf } from '../../../state/tiers/passage-state.ts';
import { shareText } from '../../../state/tiers/passage-words.ts';
import styles from '../../readings.module.css';
import { usePickedPair, usePickedRow } from '../../use-family.ts';
import { useSession, useStore } from '../../use-store.ts';
import { VerdictMark } from '../../verdict-mark.tsx';
import { useLastTiers } from '../use-tiers.ts';
import own from './passage-choice.module.css';
import { useChosenIds } from './use-passage.ts';

interface PassageChoiceProps {
  readonly family: Family;
  /** Null while it is looked for. */
  readonly passage: Passage | null;
}

/** Which keyways the blank has to pass, and how it goes into every one of the family. */
export function PassageChoice({ family, passage }: PassageChoiceProps) {
  const session = useSession();
  const store = passageStateOf(session);
  const ids = useChosenIds(family);
  const chosen = useMemo(() => new Set(ids), [ids]);
  const pinned = useStore(store, (s) => s.pinned);
  const openings = openingsOf(family);
  const entries = new Map(passage?.entries.map((entry) => [entry.id, entry]));
  const members = new Map(passage?.members.map((member) => [member.id, member]));
  return (
    <section className={styles.part} aria-labelledby="reading-chosen">
      <h2 id="reading-chosen" className={styles.title}>
        {ids.length} of {openings.length} keyways
      </h2>
      <ChoiceKeys family={family} />
      <p className={styles.note}>
        Ticked: the blank has to pass it. The share is what it gives up there: that keyway alone would take so much
        more. Point at a name to see where.
      </p>
      <ul
        className={own.list}
        data-passage-list
        onPointerLeave={() => store.setState({ pointed: null })}
        onBlur={() => store.setState({ pointed: null })}
      >
        {openings.map((opening) => (
          <OpeningRow
            key={opening.id}
            opening={opening}
            family={family}
            chosen={chosen.has(opening.id)}
            pinned={pinned === opening.id}
            entry={entries.get(opening.id)}
            member={members.get(opening.id)}
          />
        ))}
      </ul>
    </section>
  );
}

interface OpeningRowProps {
  readonly family: Family;
  readonly opening: Profile;
  readonly chosen: boolean;
  readonly pinned: boolean;
  readonly entry: PassageEntry | undefined;
  readonly member: PassageMember | undefined;
}

const OpeningRow = memo(function OpeningRow({ family, opening, chosen, pinned, entry, member }: OpeningRowProps) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const store = passageStateOf(session);
  const light = () => store.setState({ pointed: opening.id });
  return (
    <li className={own.row} data-opening={opening.id} data-verdict={entry?.fit.verdict} onPointerEnter={light}>
      <input
        type="checkbox"
        checked={chosen}
        aria-label={`Has to pass ${opening.name}`}
        onChange={() => toggleOpening(session, family, opening.id)}
        onFocus={light}
      />
      <button
        type="button"
        className={own.name}
        aria-pressed={pinned}
        title={entry ? pairLine('This blank', opening.name, entry.fit, units) : `Keep ${opening.name} lit`}
        onFocus={light}
        onClick={() => store.setState({ pinned: pinned ? null : opening.id })}
      >
        {opening.name}
      </button>
      {entry && (
        <span className={own.answer}>
          <VerdictMark verdict={entry.fit.verdict} size={18} />
          {member?.loss && entry.fit.verdict === 'enters' ? (
            <span>
              <span className="unseen">enters, gives up </span>−{shareText(member.loss.share)}
            </span>
          ) : (
            VERDICT_WORDS[entry.fit.verdict]
          )}
        </span>
      )}
    </li>
  );
});

/** Quick choices. */
function ChoiceKeys({ family }: { family: Family }) {
  const session = useSession();
  const { entrant } = usePickedPair();
  const row = usePickedRow();
  const entered = enteredIds(row);
  const nodes = useLastTiers()?.tiers.nodes;
  const groups = useMemo(() => groupsOf(family, nodes ?? []), [family, nodes]);
  const choose = (ids: readonly string[]) => chooseOpenings(session, family, ids);
  return (
    <div className={own.keys}>
      <button type="button" className="key" onClick={() => choose(openingsOf(family).map(({ id }) => id))}>
        All
      </button>
      <button type="button" className="key" onClick={() => choose([])}>
        None
      </button>
      {groups.length > 0 && (
        <select
          className={own.tier}
          aria-label="Choose the keyways of a tier"
          value=""
          onChange={(event) => choose(groups.find(({ id }) => id === event.target.value)?.openings ?? [])}
        >
          <option value="" disabled>
            Of a tier …
          </option>
          {groups.map(({ id, label }) => (
            <option key={id} value={id}>
              {label}
            </option>
          ))}
        </select>
      )}
      {entrant && (
        <button
          type="button"
          className={`key ${own.entered}`}
          disabled={entered.length === 0}
          title={`Choose the keyways that ${entrant.name} goes into`}
          onClick={() => choose(entered)}
        >
          What {entrant.name} enters
        </button>
      )}
    </div>
  );
}

/** What blanks enter that stand above the lowest tier, the lowest first. */
function groupsOf(family: Family, nodes: readonly TierNode[]) {
  return nodes
    .filter(({ openings }) => openings.length > 1)
    .sort((a, b) => a.tier - b.tier)
    .map(({ id, tier, openings }) => {
      const name = family.profiles.find((profile) => profile.id === id)?.name ?? id;
      return { id, openings, label: `Tier ${tier + 1}: the ${openings.length} of ${name}` };
    });
}
