import { useEffect } from 'react';
import { entrantsOf, type Family } from '../../../family/family.ts';
import type { Profile } from '../../../profile/profile.ts';
import type { Fact } from '../../state/profile-facts.ts';
import { conceptWords } from '../../state/tiers/counting-concepts.ts';
import { tierFacts, tierNeighbours } from '../../state/tiers/tier-facts.ts';
import { FactList } from '../fact-list.tsx';
import readings from '../readings.module.css';
import { usePickedPair } from '../use-family.ts';
import { useSession, useStore } from '../use-store.ts';
import { TierPairs } from './tier-pairs.tsx';
import styles from './tiers-readings.module.css';
import { useLastShownTiers, useLastTiers, useProfiles, useShownTiers } from './use-tiers.ts';

/** What can be read off matrix and diagram: the picked blank, its place among the others, what it goes into. */
export function TiersReadings({ family }: { family: Family }) {
  const { entrant } = usePickedPair();
  return (
    <>
      {entrant && <EntrantReading family={family} entrant={entrant} />}
      {entrant && <TierPairs family={family} entrant={entrant} />}
      <LatticeReading family={family} />
    </>
  );
}

function EntrantReading({ family, entrant }: { family: Family; entrant: Profile }) {
  const { selection, tiers: store } = useSession();
  const shown = useLastShownTiers(family);
  const all = useLastTiers();
  const isShown = shown?.table.entrants.includes(entrant.id) ?? false;
  const known = isShown ? shown : all;
  const openingId = useStore(selection, (s) => s.openingId);
  const node = known?.tiers.nodes.find(({ entrants }) => entrants.includes(entrant.id));
  const facts: Fact[] = known ? tierFacts(known, entrant.id) : [];
  const toPassage = () => store.setState({ chosenOpenings: node?.openings ?? null, sheet: 'passage' });
  return (
    <section className={readings.part} aria-labelledby="reading-tier">
      <h2 id="reading-tier" className={readings.title}>
        {entrant.name}
      </h2>
      <div className={styles.keys}>
        {openingId !== null && (
          <button type="button" className="key" onClick={() => selection.setState({ view: 'compare' })}>
            Compare
          </button>
        )}
        {node && node.openings.length > 1 && (
          <button
            type="button"
            className="key"
            title="What the keyways that it enters have in common"
            onClick={toPassage}
          >
            Common passage
          </button>
        )}
      </div>
      <FactList facts={isShown ? facts : facts.filter(({ term }) => term === 'Enters')} />
      {shown && !isShown && entrant.kind === 'tool' && (
        <p className={readings.note}>It is not in the diagram, which shows blanks only.</p>
      )}
      <Neighbours family={family} entrant={entrant} />
    </section>
  );
}

/** What stands directly above and below, each a way to it. */
function Neighbours({ family, entrant }: { family: Family; entrant: Profile }) {
  const { selection } = useSession();
  const known = useLastShownTiers(family);
  const profiles = useProfiles(family);
  if (!known) return null;
  const { above, below, same } = tierNeighbours(known.tiers, entrant.id);
  const lists = [
    { title: 'Directly above', ids: above },
    { title: 'Enters the same', ids: same },
    { title: 'Directly below', ids: below },
  ];
  return lists
    .filter(({ ids }) => ids.length > 0)
    .map(({ title, ids }) => (
      <div key={title}>
        <h3 className={readings.note}>{title}</h3>
        <ul className={readings.pairs}>
          {ids.flatMap((id) => {
            const profile = profiles.get(id);
            return profile ? (
              <li key={id}>
                <button
                  type="button"
                  className={readings.pair}
                  title={`Pick the ${profile.name}`}
                  onClick={() => selection.setState({ entrantId: id, part: 'entrant' })}
                >
                  <span className={readings.grow}>{profile.name}</span>
                </button>
              </li>
            ) : (
              []
            );
          })}
        </ul>
      </div>
    ));
}

/** How large the concept lattice is that the diagram is a part of. */
function LatticeReading({ family }: { family: Family }) {
  const { countingConcepts } = useSession();
  const known = useShownTiers(family);
  const state = useStore(countingConcepts.store, (s) => s);
  useEffect(() => {
    countingConcepts.follow(known);
    return () => countingConcepts.follow(null);
  }, [countingConcepts, known]);
  if (!known) return null;
  const { nodes, covers } = known.tiers;
  const hidden = entrantsOf(family).filter(
    ({ id, kind }) => kind === 'tool' && !known.table.entrants.includes(id),
  ).length;
  return (
    <section className={readings.part} aria-labelledby="reading-lattice">
      <h2 id="reading-lattice" className={readings.title}>
        The order as a whole
      </h2>
      <FactList
        facts={[
          { term: 'Nodes', value: String(nodes.length) },
          { term: 'Lines', value: String(covers.length) },
        ]}
      />
      <p className={readings.note} data-lattice={state.phase}>
        {conceptWords(state)}
        {hidden > 0 && ` Counted without the ${hidden === 1 ? 'tool' : `${hidden} tools`}, as the diagram is.`}
      </p>
    </section>
  );
}
