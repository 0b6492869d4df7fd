import { useEffect, useState } from 'react';
import type { Share } from '../../../fit/monte-carlo.ts';
import readings from '../readings.module.css';
import type { ShownPair } from '../use-pair.ts';
import { useSession, useStore } from '../use-store.ts';
import { drawnSentence } from './compare-words.ts';

/** How long the sliders must rest before parts are drawn, milliseconds. */
const REST_MS = 300;
const DRAWS = 10_000;
const SEED = 1;

/**
 * Where it depends on the parts: how many drawn pairs go together. Only for new parts held upright. It stands last, so
 * that nothing moves under the hand when it comes.
 */
export function DrawnParts({ pair }: { pair: ShownPair }) {
  const { conditions } = useSession();
  const altered = useStore(conditions, (s) => s.tiltLimit > 0 || s.wear > 0);
  const share = useDrawnShare(pair, pair.threeWay === 'depends' && !altered);
  return (
    share && (
      <section className={readings.part} aria-label="Drawn parts">
        <p>{drawnSentence(share, DRAWS)}</p>
      </section>
    )
  );
}

function useDrawnShare({ opening, entrant, bands }: ShownPair, wanted: boolean): Share | null {
  const { doors } = useSession();
  const [share, setShare] = useState<Share | null>(null);
  const { blank, opening: keyway } = bands;
  useEffect(() => {
    setShare(null);
    if (!wanted) return;
    let cancel = () => {};
    const timer = setTimeout(() => {
      const job = doors.drawParts(opening.ring, entrant.ring, { blank, opening: keyway }, DRAWS, SEED);
      cancel = job.cancel;
      job.result.then(setShare, () => {});
    }, REST_MS);
    return () => {
      clearTimeout(timer);
      cancel();
    };
  }, [doors, opening.ring, entrant.ring, blank, keyway, wanted]);
  return wanted ? share : null;
}
