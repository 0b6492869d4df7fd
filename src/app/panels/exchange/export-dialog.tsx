import { useMemo, useState } from 'react';
import type { Family } from '../../../family/family.ts';
import type { Units } from '../../../family/length-text.ts';
import type { ExportFormat } from '../../../interchange/export-profiles.ts';
import type { Profile } from '../../../profile/profile.ts';
import {
  chooseExport,
  chosenProfiles,
  type ExportChoice,
  endExport,
  exportFileName,
  exportOf,
} from '../../state/exchange/export-state.ts';
import { profileFacts } from '../../state/profile-facts.ts';
import { trayReach } from '../../state/tray-reach.ts';
import { ModalSheet } from '../modal-sheet.tsx';
import { SectionThumb } from '../section-thumb.tsx';
import { useFamily } from '../use-family.ts';
import { useSession, useStore } from '../use-store.ts';
import styles from './export-dialog.module.css';
import { copyText, saveExported } from './export-file.ts';
import { countWords } from './import-words.ts';

const FORMATS: readonly { readonly format: ExportFormat; readonly label: string; readonly what: string }[] = [
  {
    format: 'svg',
    label: 'SVG',
    what: 'For vector drawing programs, documents and laser cutters. True size; arcs stay arcs.',
  },
  {
    format: 'dxf',
    label: 'DXF',
    what: 'For CAD and machines. One closed polyline a section on a layer of its own; arcs stay arcs.',
  },
  {
    format: 'csv',
    label: 'CSV points',
    what: 'For spreadsheets and programs of your own. One row a corner, with the bulge of the arc that follows it.',
  },
];

/** Hands sections on to other programs: which, in what form, in what unit. */
export function ExportDialog() {
  const session = useSession();
  const choice = useStore(exportOf(session), (s) => s.choice);
  const family = useFamily();
  return choice && family ? <ExportSheet choice={choice} family={family} /> : null;
}

interface ExportProps {
  readonly choice: ExportChoice;
  readonly family: Family;
}

function ExportSheet({ choice, family }: ExportProps) {
  const session = useSession();
  const close = () => endExport(session);
  return (
    <ModalSheet large title="Export sections" onClose={close} foot={<ExportKeys choice={choice} family={family} />}>
      <div className={styles.sheet}>
        <ProfileList choice={choice} family={family} />
        <div className={styles.side}>
          <FormatQuestion choice={choice} />
          <UnitsQuestion choice={choice} />
          <p className={styles.note}>
            Each section stands in its own frame, side by side in a row, as seen from the bow. Nothing of the fit, the
            tolerances or the notes goes along: a family file keeps all of it.
          </p>
        </div>
      </div>
    </ModalSheet>
  );
}

function ProfileList({ choice, family }: ExportProps) {
  const session = useSession();
  const first = (chosenProfiles(family, choice)[0] ?? family.profiles[0])?.id;
  const { x, y } = useMemo(() => trayReach(family), [family]);
  const tick = (id: string, on: boolean) => {
    const ids = new Set(choice.ids);
    if (on) ids.add(id);
    else ids.delete(id);
    chooseExport(session, { ids });
  };
  return (
    <section className={styles.list} aria-label="What to export">
      <div className={styles.head}>
        <p>
          <b>{choice.ids.size}</b> of {countWords(family.profiles.length, 'section')} ticked
        </p>
        <span className="key-row">
          <button
            type="button"
            className="key"
            onClick={() => chooseExport(session, { ids: new Set(family.profiles.map(({ id }) => id)) })}
          >
            Tick all
          </button>
          <button type="button" className="key" onClick={() => chooseExport(session, { ids: new Set() })}>
            Tick none
          </button>
        </span>
      </div>
      <ul className={styles.profiles}>
        {family.profiles.map((profile) => (
          <li key={profile.id}>
            <label className={styles.profile}>
              <input
                type="checkbox"
                data-first={profile.id === first || undefined}
                checked={choice.ids.has(profile.id)}
                onChange={(event) => tick(profile.id, event.target.checked)}
              />
              <SectionThumb profile={profile} reachX={x} reachY={y} width={34} height={52} />
              <span className={styles.name}>
                {profile.name}
                <small>
                  {factLine(profile, choice.units)}, {shapeOf(profile)}
                </small>
              </span>
            </label>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Its kind and its size. */
function factLine(profile: Profile, units: Units): string {
  const [{ term, value }] = profileFacts(profile, units);
  return `${term}, ${value}`;
}

function shapeOf({ drawn, ring }: Profile): string {
  const arcs = drawn?.filter(({ bulge = 0 }) => bulge !== 0).length ?? 0;
  const corners = countWords((drawn ?? ring).length, 'corner');
  return arcs === 0 ? corners : `${corners}, ${countWords(arcs, 'arc')}`;
}

function FormatQuestion({ choice }: { choice: ExportChoice }) {
  const session = useSession();
  return (
    <fieldset className={`bare ${styles.formats}`}>
      <legend>As</legend>
      {FORMATS.map(({ format, label, what }) => (
        <label key={format} className={styles.format} data-chosen={choice.format === format}>
          <input
            type="radio"
            name="export-format"
            checked={choice.format === format}
            onChange={() => chooseExport(session, { format })}
          />
          <span>
            <b>{label}</b>
            <small>{what}</small>
          </span>
        </label>
      ))}
    </fieldset>
  );
}

function UnitsQuestion({ choice }: { choice: ExportChoice }) {
  const session = useSession();
  const key = (units: Units, label: string) => (
    <button
      type="button"
      className="key"
      aria-pressed={choice.units === units}
      onClick={() => chooseExport(session, { units })}
    >
      {label}
    </button>
  );
  return (
    <fieldset className={`bare ${styles.units}`}>
      <legend>Lengths in</legend>
      <span className="key-row">
        {key('mm', 'Millimetres')}
        {key('in', 'Inches')}
      </span>
    </fieldset>
  );
}

function ExportKeys({ choice, family }: ExportProps) {
  const session = useSession();
  // What was said of one choice says nothing of the next.
  const [said, setSaid] = useState({ choice, words: '' });
  const say = (words: string) => setSaid({ choice, words });
  const words = said.choice === choice ? said.words : '';
  const profiles = chosenProfiles(family, choice);
  const none = profiles.length === 0;
  const make = () => session.doors.interchange.exportProfiles(profiles, choice.format, choice.units);
  const name = exportFileName(family, profiles, choice.format);
  const save = async () => {
    const saved = await saveExported(make(), name);
    say({ saved: `${name} is saved.`, downloaded: `${name} is in your downloads.`, 'given up': '' }[saved]);
  };
  const copy = async () => {
    const copied = await copyText(make().text);
    say(copied ? 'It is in the clipboard.' : 'The browser did not allow it; save it as a file instead.');
  };
  const label = choice.format.toUpperCase();
  return (
    <>
      <p role="status" className={styles.said}>
        {words || (none ? 'Nothing is ticked.' : `${name}: ${countWords(profiles.length, 'section')}`)}
      </p>
      <button type="button" className="key" onClick={() => endExport(session)}>
        Close
      </button>
      {choice.format !== 'dxf' && (
        <button type="button" className="key" disabled={none} onClick={copy}>
          Copy {label}
        </button>
      )}
      <button type="button" className={`key ${styles.main}`} disabled={none} onClick={save}>
        Save {label}
      </button>
    </>
  );
}
