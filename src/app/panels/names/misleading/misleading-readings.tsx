import type { Family } from '../../../../family/family.ts';
import { FactList } from '../../fact-list.tsx';
import styles from '../../readings.module.css';
import { useMisleading } from '../register/use-rename-ground.ts';
import { MISLEADING_KINDS, MISLEADING_WORDS } from './misleading-words.ts';

/** How many names mislead in which way, and what a rename does. */
export function MisleadingReadings({ family }: { family: Family }) {
  const found = useMisleading(family);
  const facts = MISLEADING_KINDS.map((kind) => ({
    term: MISLEADING_WORDS[kind].short,
    value: String(found.filter((one) => one.kind === kind).length),
  }));
  return (
    <>
      <section className={styles.part} aria-labelledby="reading-found">
        <h2 id="reading-found" className={styles.title}>
          {found.length === 0 ? 'Nothing found' : `${found.length} found`}
        </h2>
        <FactList facts={facts} />
      </section>
      <section className={styles.part}>
        <h2 className={styles.title}>What a rename does</h2>
        <p>
          The thing gets the new name. The old one stays in the register, superseded by the new one, so that a question
          or a list that uses it still leads there.
        </p>
        <p>It is one step: Undo takes it back.</p>
      </section>
      <section className={styles.part}>
        <h2 className={styles.title}>Why it matters</h2>
        <p>
          People read a blank's number for a keyway, a name of two letters for “fits both”, two numbers for two
          sections. The wrong blank is then ordered, or a door believed safe.
        </p>
        <p className={styles.note}>
          A name says nothing of what goes in: only the outlines do. Numbers of makers cannot be changed; note them in
          the register as a scheme of their own.
        </p>
      </section>
    </>
  );
}
