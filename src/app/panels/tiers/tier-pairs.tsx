import { useMemo } from 'react';
import { type Family, openingsOf } from '../../../family/family.ts';
import { readingText } from '../../../family/length-text.ts';
import { MEASURING, marginText } from '../../../family/margin-text.ts';
import type { Fit } from '../../../fit/fit.ts';
import type { Profile } from '../../../profile/profile.ts';
import { conditionsFor } from '../../state/conditions-state.ts';
import { NOT_MEASURED } from '../../state/pair-words.ts';
import { columnNames } from '../../state/tiers/matrix-order.ts';
import { blockingPart } from '../../state/tiers/told-blocks.ts';
import readings from '../readings.module.css';
import { useHalted, usePickedRow } from '../use-family.ts';
import { useSession, useStore } from '../use-store.ts';
import { VerdictMark } from '../verdict-mark.tsx';

/** Most blocked keyways that are listed with what blocks; the others are in the matrix. */
const MOST_LISTED = 24;

/** All that the picked blank goes into and is blocked in, each a way to the keyway. */
export function TierPairs({ family, entrant }: { family: Family; entrant: Profile }) {
  const row = usePickedRow();
  const openings = useMemo(() => openingsOf(family), [family]);
  const judged = openings.flatMap((opening) => {
    const fit = row.get(opening.id);
    return fit ? [{ opening, fit }] : [];
  });
  const inside = judged.filter(({ fit }) => fit.verdict !== 'blocked');
  const blocked = judged.filter(({ fit }) => fit.verdict === 'blocked');
  const more = blocked.length - MOST_LISTED;
  return (
    <>
      {inside.length > 0 && (
        <PairList title={`Goes into ${inside.length}`} pairs={inside} entrant={entrant} family={family} />
      )}
      {blocked.length > 0 && (
        <PairList
          title={`Blocked in ${blocked.length}`}
          pairs={blocked.slice(0, MOST_LISTED)}
          entrant={entrant}
          family={family}
          note={more > 0 ? `and ${more} more: see the matrix` : undefined}
        />
      )}
    </>
  );
}

interface PairListProps {
  readonly title: string;
  readonly pairs: readonly { readonly opening: Profile; readonly fit: Fit }[];
  readonly entrant: Profile;
  readonly family: Family;
  readonly note?: string;
}

function PairList({ title, pairs, entrant, family, note }: PairListProps) {
  const { selection, settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const names = useMemo(() => columnNames(openingsOf(family)), [family]);
  const pending = useHalted() ? NOT_MEASURED : MEASURING;
  return (
    <section className={readings.part}>
      <h2 className={readings.title}>{title}</h2>
      <ul className={readings.pairs}>
        {pairs.map(({ opening, fit }) => (
          <li key={opening.id}>
            <button
              type="button"
              className={readings.setting}
              title={`Pick the ${opening.name}`}
              onClick={() => selection.setState({ openingId: opening.id })}
            >
              <VerdictMark verdict={fit.verdict} size={18} />
              <span className={readings.grow}>{names.get(opening.id)}</span>
              <span>{marginText(fit, units, pending, readingText)}</span>
              <BlockedBy family={family} entrant={entrant} opening={opening} fit={fit} />
            </button>
          </li>
        ))}
      </ul>
      {note && <p className={readings.note}>{note}</p>}
    </section>
  );
}

function BlockedBy({
  family,
  entrant,
  opening,
  fit,
}: {
  family: Family;
  entrant: Profile;
  opening: Profile;
  fit: Fit;
}) {
  const { doors, conditions } = useSession();
  const state = useStore(conditions, (s) => s);
  const part = useMemo(
    () => blockingPart(doors, entrant, opening, fit, conditionsFor(state, family)),
    [doors, entrant, opening, fit, state, family],
  );
  return part === '' ? null : <span className={readings.by}>by the {part}</span>;
}
