import styles from './kind-glossary.module.css';

/** Common practice, no source. */
const KINDS = [
  ['Keyway', 'the opening in the plug. A blank goes into it or not: only keyways can be asked “what goes into …”.'],
  ['Section', 'the shape of a blade, and of the keyways made for it. It has no length.'],
  ['Blank', 'an uncut key: a section in one length. Its number names the blank, never a keyway.'],
  ['Tool', 'anything else that goes into a keyway.'],
  ['Series', 'one name for several blanks that differ in something else, most often in length.'],
] as const;

/** What the five kinds of things are that a name may stand for. */
export function KindGlossary() {
  return (
    <section className={styles.part} aria-labelledby="kinds-title">
      <h2 id="kinds-title" className={styles.title}>
        What a name can name
      </h2>
      <dl className={styles.kinds}>
        {KINDS.map(([kind, words]) => (
          <div key={kind}>
            <dt>{kind}</dt>
            <dd>{words}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
