import type { Family } from '../../../../family/family.ts';
import { gapText } from '../../../../family/length-text.ts';
import type { Passage } from '../../../../passage/passage.ts';
import styles from '../../readings.module.css';
import { useSession, useStore } from '../../use-store.ts';

/** Which keyways that were not chosen the blank would enter too, and by how much; nothing where all are chosen. */
export function AlsoEntered({ family, passage }: { family: Family; passage: Passage }) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const others = passage.entries.filter(({ chosen }) => !chosen);
  if (others.length === 0) return null;
  const also = others.filter(({ fit }) => fit.verdict !== 'blocked');
  const nameOf = (id: string) => family.profiles.find((profile) => profile.id === id)?.name ?? id;
  return (
    <section className={styles.part} aria-labelledby="reading-also" data-also={also.length}>
      <h2 id="reading-also" className={styles.title}>
        Would also enter
      </h2>
      {also.length === 0 ? (
        <p>No keyway but the chosen ones.</p>
      ) : (
        <ul className={styles.places}>
          {also.map(({ id, fit }) => (
            <li key={id} className={styles.setting}>
              <span className={styles.grow}>{nameOf(id)}</span>
              <span>
                {fit.verdict}, {gapText(fit.clearance, units)} all round
              </span>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
