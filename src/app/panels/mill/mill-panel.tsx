import type { Family } from '../../../family/family.ts';
import type { MillFault } from '../../../profile/check-milled.ts';
import type { BladeField } from '../../../profile/edit-milled.ts';
import type { Milled, Profile } from '../../../profile/profile.ts';
import { draftOf, dropDraft, mirrorBlade, putBladeSize, wantedMilled } from '../../state/draw/mill-editing.ts';
import { millFor, millOf } from '../../state/draw/mill-state.ts';
import { faultAt, grooveWord } from '../../state/draw/mill-words.ts';
import readings from '../readings.module.css';
import { useSession, useStore } from '../use-store.ts';
import { CounterpartKey } from './mill-counterpart.tsx';
import { GrooveList } from './mill-grooves.tsx';
import styles from './mill-panel.module.css';
import { ReadGrooves } from './mill-read.tsx';
import { LengthField } from './mill-size-field.tsx';
import { WebReading } from './mill-web.tsx';

/** A profile as it is milled: the blade, its grooves, its web, its counterpart. A drawn one can be read as grooves. */
export function MillPanel({ family, profile }: { family: Family; profile: Profile }) {
  const session = useSession();
  const state = useStore(millOf(session), (s) => s);
  const milled = wantedMilled(state, profile);
  const { told, letGo } = millFor(state, profile.id);
  return (
    <>
      <p className={letGo ? styles.told : 'unseen'} role="status">
        {letGo}
      </p>
      {milled ? (
        <MilledForm
          key={`form ${profile.id}`}
          family={family}
          profile={profile}
          milled={milled}
          faults={draftOf(state, profile)?.faults ?? []}
        />
      ) : (
        <ReadGrooves key={profile.id} profile={profile} />
      )}
      <CounterpartKey key={`counterpart ${profile.id}`} family={family} profile={profile} />
      <p className={told ? styles.told : 'unseen'} role="status">
        {told}
      </p>
    </>
  );
}

interface MilledFormProps {
  readonly family: Family;
  readonly profile: Profile;
  readonly milled: Milled;
  readonly faults: readonly MillFault[];
}

function MilledForm({ family, profile, milled, faults }: MilledFormProps) {
  const session = useSession();
  const word = grooveWord(profile.kind);
  return (
    <>
      <section className={readings.part} aria-labelledby="mill-blade">
        <h2 id="mill-blade" className={readings.title}>
          {profile.kind === 'opening' ? 'Keyway' : 'Blade'}
        </h2>
        <BladeFields profile={profile} milled={milled} faults={faults} />
        <span className={styles.keys}>
          <button type="button" className="key" onClick={() => mirrorBlade(session, profile)}>
            Mirror left and right
          </button>
        </span>
      </section>
      {faults.length > 0 && <NotMilled profile={profile} />}
      <section className={readings.part} aria-labelledby="mill-grooves">
        <h2 id="mill-grooves" className={readings.title}>
          {word === 'ward' ? 'Wards' : 'Grooves'}
        </h2>
        <GrooveList profile={profile} milled={milled} faults={faults} />
      </section>
      {profile.kind !== 'opening' && <WebReading family={family} profile={profile} />}
    </>
  );
}

const BLADE_FIELDS: readonly [BladeField, string][] = [
  ['thickness', 'Thickness'],
  ['height', 'Height'],
  ['backRadius', 'Back radius'],
];

function BladeFields({ profile, milled, faults }: Omit<MilledFormProps, 'family'>) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  return (
    <div className={styles.sizes} data-units={units}>
      {BLADE_FIELDS.map(([field, name]) => (
        <LengthField
          key={field}
          name={name}
          label={name}
          value={milled[field]}
          units={units}
          fault={faultAt(faults, null, field)}
          onTake={(nm) => putBladeSize(session, profile, field, nm)}
        />
      ))}
      <span className={styles.unit}>Lengths in {units === 'mm' ? 'mm' : 'inches'}.</span>
    </div>
  );
}

/** Says that the sizes in the fields are not those of the profile, and how to go back. */
function NotMilled({ profile }: { profile: Profile }) {
  const session = useSession();
  return (
    <div className={styles.draft}>
      <p>
        <b>Not milled so.</b> The last sound {profile.kind === 'opening' ? 'keyway' : 'blade'} stays until the sizes fit
        together.
      </p>
      <button type="button" className="key" onClick={() => dropDraft(session, profile)}>
        Back to the sound one
      </button>
    </div>
  );
}
