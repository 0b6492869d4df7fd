import { useMemo } from 'react';
import { entrantsOf, type Family, openingsOf } from '../../../family/family.ts';
import { readingText } from '../../../family/length-text.ts';
import { MEASURING, marginText, VERDICT_WORDS } from '../../../family/margin-text.ts';
import type { Fit } from '../../../fit/fit.ts';
import type { Profile } from '../../../profile/profile.ts';
import { NOT_MEASURED } from '../../state/pair-words.ts';
import styles from '../readings.module.css';
import { useHalted } from '../use-family.ts';
import { useSession, useStore } from '../use-store.ts';
import { VerdictMark } from '../verdict-mark.tsx';
import own from './draw-readings.module.css';

/**
 * What the edited outline goes into, or for a keyway what goes into it, with the margins, while it is edited. A row
 * picks the counterpart that lies under it on the sheet and beside it in Compare.
 */
export function DrawFitList({ family, profile }: { family: Family; profile: Profile }) {
  const { settings, selection, results } = useSession();
  const units = useStore(settings, (s) => s.units);
  const fits = useStore(results, (s) => s.fits);
  const otherId = useStore(selection, (s) => (profile.kind === 'opening' ? s.entrantId : s.openingId));
  const pending = useHalted() ? NOT_MEASURED : MEASURING;
  const isOpening = profile.kind === 'opening';
  const pairs = useMemo(() => {
    const others = isOpening ? entrantsOf(family) : openingsOf(family);
    const row = (blade: string, keyway: string): Fit | undefined =>
      fits?.fits[fits.profiles.indexOf(blade)]?.[fits.openings.indexOf(keyway)];
    return others.map((other) => ({ other, fit: isOpening ? row(other.id, profile.id) : row(profile.id, other.id) }));
  }, [family, fits, isOpening, profile.id]);
  if (pairs.length === 0) return null;
  return (
    <section className={styles.part} aria-labelledby="draw-fits">
      <h3 id="draw-fits" className={styles.title}>
        {isOpening ? 'What goes in' : 'What it goes into'}
      </h3>
      <ul className={styles.pairs}>
        {pairs.map(({ other, fit }) => (
          <li key={other.id}>
            <button
              type="button"
              className={`${styles.pair} ${own.pair}`}
              aria-pressed={other.id === otherId}
              title={`Lay ${other.name} under it`}
              onClick={() => selection.setState(isOpening ? { entrantId: other.id } : { openingId: other.id })}
            >
              <VerdictMark verdict={fit?.verdict ?? null} size={18} />
              <span className={styles.grow}>{isOpening ? other.name : (other.section ?? other.name)}</span>
              <span>{fit ? `${VERDICT_WORDS[fit.verdict]} ${marginText(fit, units, pending, readingText)}` : '…'}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
