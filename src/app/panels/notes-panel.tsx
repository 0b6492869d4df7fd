import { HangingPanel } from './hanging-panel.tsx';
import styles from './notes-panel.module.css';

/** Words of the trade and of the drawing sheet that the app uses. */
const WORDS: readonly (readonly [word: string, meaning: string])[] = [
  ['keyway', 'The opening in the plug, as seen from the front.'],
  ['section', 'The cross-section of a blade, as seen from the bow (the part that is held) towards the tip.'],
  ['ward', 'Material of the plug that stands into the keyway.'],
  ['groove', 'What is milled off the blade so that a ward can pass.'],
  ['web', 'What is left of the blade between its grooves.'],
  ['back', 'The edge of the blade without cuts; it lies at the bottom here.'],
  ['chamber', 'One pin position. Blanks of one section come in lengths for several numbers of chambers.'],
  ['base section', 'A section whose blank enters its own keyway only.'],
  ['group blank', 'A blank that enters several keyways of the family, but not all.'],
  ['all-section blank', 'A blank that enters every keyway of the family.'],
  ['play', 'How far the blank can wander in the keyway, sideways and in height.'],
  ['bowed edge', 'An edge drawn as an arc instead of a straight line.'],
  ['loop', 'A closed line of an imported drawing: it can become a section.'],
  ['threshold', 'The grey of a picture from which on it counts as the section, not as its ground.'],
];

/** What the answers mean and what they do not; hangs below its key and is in nobody's way. */
export function NotesPanel() {
  return (
    <HangingPanel label="Notes" title="What the answers mean, and cautions">
      {(close) => (
        <div className={styles.notes}>
          <header className={styles.head}>
            <h2>Notes</h2>
            <button type="button" className="key" onClick={close}>
              Close notes
            </button>
          </header>
          <p>
            A keyway is seen from the front of the plug and a section from the bow towards the tip, so a blank lies on
            its keyway unmirrored. <b>Enters</b>: in its best placement the gap all round is at least the family’s
            running clearance. <b>Tight</b>: it goes in with less. <b>Blocked</b>: it does not go in however it is
            placed; the figure is how deep it would then stand in the plug.
          </p>
          <h3>Before cutting metal</h3>
          <ul>
            <li>
              These are calculations on ideal shapes: no certificate, no grade. Burrs, wear, plating and cuts are not in
              them.
            </li>
            <li>
              Sectional keying is organisation and key space. By itself it is no security boundary: a blank can be
              thinned with a file.
            </li>
            <li>
              Follow the key-control rules and duplication rights of the site. A family file can be sensitive: keep it
              private.
            </li>
            <li>Exits, fire and accessibility rules come first; nothing a key system does may defeat them.</li>
            <li>
              Have a licensed locksmith and the cylinder’s maker confirm before anything is broached, ordered or cut.
            </li>
          </ul>
          <p>
            Families stay on this computer: nothing is sent anywhere. Polderwick College and its sections are invented.
          </p>
          <h3>Words</h3>
          <dl className={styles.words}>
            {WORDS.map(([word, meaning]) => (
              <div key={word}>
                <dt>{word}</dt>
                <dd>{meaning}</dd>
              </div>
            ))}
          </dl>
        </div>
      )}
    </HangingPanel>
  );
}
