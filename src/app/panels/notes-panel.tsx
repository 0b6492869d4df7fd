import { HangingPanel } from './hanging-panel.tsx';
import styles from './notes-panel.module.css';

/** What the answers mean and what they do not; hangs below its key and is in nobody's way. */
export function NotesPanel() {
  return (
    <HangingPanel label="Notes" title="What the answers mean, and cautions">
      {(close) => (
        <div className={styles.notes}>
          <h2>Notes</h2>
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
          <button type="button" className="key" onClick={close}>
            Close notes
          </button>
        </div>
      )}
    </HangingPanel>
  );
}
