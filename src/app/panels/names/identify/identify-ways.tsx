import { type ReactNode, useState } from 'react';
import type { Family } from '../../../../family/family.ts';
import { readingText } from '../../../../family/length-text.ts';
import { USUAL_ERROR } from '../../../../identify/judge-likeness.ts';
import { goToPicture } from '../../../state/draw/underlay-state.ts';
import { identifyProfile } from '../../../state/names/identifying.ts';
import { editedProfile } from '../../../state/selection-state.ts';
import { pickImports } from '../../exchange/import-files.ts';
import { pasteFromClipboard } from '../../exchange/import-paste.ts';
import { useSession, useStore } from '../../use-store.ts';
import styles from './identify-ways.module.css';

/** Every way to bring an unknown outline to the sheet. */
export function IdentifyWays({ family }: { family: Family }) {
  const session = useSession();
  const picked = editedProfile(
    family,
    useStore(session.selection, (s) => s),
  );
  const units = useStore(session.settings, (s) => s.units);
  const [fault, setFault] = useState<string | null>(null);
  return (
    <section className={styles.ways} aria-labelledby="identify-ways">
      <h2 id="identify-ways">What is this section?</h2>
      <p>
        Bring an outline. It is laid on every section of {family.name}, also mirrored and turned, and they are ranked by
        how close they lie. It is not added to the family.
      </p>
      <p>
        How sure that is depends on how exactly it was drawn: what comes from outside is taken to be up to{' '}
        {readingText(USUAL_ERROR.outside, units)} wrong at any place, a section of the family{' '}
        {readingText(USUAL_ERROR.family, units)}. Drawing error, beside the answer, changes that.
      </p>
      <ul>
        <Way
          title="A file or the clipboard"
          hint="SVG, DXF, or a table of points. Then press Identify in the import sheet."
        >
          <button type="button" className="key" onClick={() => pickImports(session)}>
            Pick a file…
          </button>
          <button type="button" className="key" onClick={() => void pasteFromClipboard(session)}>
            Paste
          </button>
        </Way>
        <Way title="A picture" hint="Trace a photograph or a scan in Draw; its step 4 has a key Identify.">
          <button type="button" className="key" onClick={() => goToPicture(session)}>
            Go to Draw
          </button>
        </Way>
        {picked && (
          <Way title="The outline in hand in Draw" hint="It is compared with all others of the family.">
            <button type="button" className="key" onClick={() => setFault(identifyProfile(session, picked))}>
              Identify {picked.name}
            </button>
          </Way>
        )}
        <SectionWay family={family} bring={setFault} />
      </ul>
      {fault && (
        <p role="alert" className={styles.fault}>
          {fault}
        </p>
      )}
    </section>
  );
}

function Way({ title, hint, children }: { title: string; hint: string; children: ReactNode }) {
  return (
    <li className={styles.way}>
      <div>
        <h3>{title}</h3>
        <p>{hint}</p>
      </div>
      <span className={styles.keys}>{children}</span>
    </li>
  );
}

/** Any profile of the family, compared with all others. */
function SectionWay({ family, bring }: { family: Family; bring(answer: string | null): void }) {
  const session = useSession();
  const [id, setId] = useState(family.profiles[0]?.id ?? '');
  const chosen = family.profiles.find((profile) => profile.id === id) ?? family.profiles[0];
  if (!chosen) return null;
  return (
    <Way title="Any section of the family" hint="Which other one is it most like?">
      <select
        className={styles.select}
        aria-label="Section to be compared with all others"
        value={chosen.id}
        onChange={(event) => setId(event.target.value)}
      >
        {family.profiles.map((profile) => (
          <option key={profile.id} value={profile.id}>
            {profile.name}
          </option>
        ))}
      </select>
      <button type="button" className="key" onClick={() => bring(identifyProfile(session, chosen))}>
        Compare it
      </button>
    </Way>
  );
}
