import type { Family } from '../../../../family/family.ts';
import type { BladeLimits } from '../../../../family/plan.ts';
import type { LimitField } from '../../../../plan/limit-word.ts';
import {
  beginBladeAnew,
  changeDepths,
  changeGap,
  changeLimit,
  type GapField,
} from '../../../state/plan/blade/blade-editing.ts';
import { bladeLookOf } from '../../../state/plan/blade/blade-state.ts';
import { ChoiceField } from '../../form-fields.tsx';
import { AngleField, LengthField } from '../../mill/mill-size-field.tsx';
import { useSession, useStore } from '../../use-store.ts';
import styles from './blade-form.module.css';
import type { BladeNow } from './use-blade-layout.ts';

type Length = Exclude<keyof BladeLimits, 'flank' | 'sides'>;

/** The lengths of the form: heading, then field, short name and whole name. */
const GROUPS: readonly (readonly [string, readonly (readonly [Length, string, string])[]])[] = [
  [
    'Blade',
    [
      ['thickness', 'Thickness', 'Thickness of the blade'],
      ['height', 'Height', 'Height of the blade'],
      ['backRadius', 'Back radius', 'Radius of the back'],
    ],
  ],
  [
    'Kept free of wards',
    [
      ['cutZone', 'For the cuts', 'Height kept free for the cuts'],
      ['backZone', 'At the back', 'Height kept free at the back'],
    ],
  ],
  [
    'Grooves',
    [
      ['grooveWidth', 'Width', 'Width of a groove'],
      ['heightStep', 'Height step', 'From one groove to the next'],
      ['grooveDepth', 'Depth', 'Greatest depth of a groove'],
      ['depthStep', 'Depth step', 'From one depth to the next'],
      ['rootRadius', 'Root radius', 'Radius at the root of a groove'],
    ],
  ],
];

const GAPS: readonly (readonly [GapField, string, string])[] = [
  ['runningClearance', 'Running clearance', 'Running clearance of the family'],
  ['tolerance', 'Tolerance, ±', 'Tolerance of the family, to either side'],
  ['leastWeb', 'Least web (0: none)', 'Least web of the family, 0 for none'],
];

/** Every limit of the blades of a plan, each edit one step of undo; faults stand at their fields. */
export function BladeForm({ family, now }: { family: Family; now: BladeNow }) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const refused = useStore(bladeLookOf(session), (s) => s.refused);
  const faultOf = (field: LimitField) => {
    if (refused?.field === field) return refused.words;
    const word = now.layout.limits.find((limit) => limit.kind === 'fault' && limit.field === field);
    return word ? `${word.words}. ${word.cure}` : '';
  };
  const { blade } = now;
  return (
    <form className={styles.form} aria-label="Limits of the blade" onSubmit={(event) => event.preventDefault()}>
      {GROUPS.map(([heading, fields]) => (
        <fieldset key={heading} className={styles.group}>
          <legend>{`${heading}, ${units}`}</legend>
          <div className={styles.fields} data-units={units}>
            {fields.map(([field, name, label]) => (
              <LengthField
                key={field}
                {...{ name, label, units }}
                value={blade[field]}
                fault={faultOf(field)}
                onTake={(nm) => changeLimit(session, { [field]: nm })}
              />
            ))}
            {heading === 'Grooves' && (
              <AngleField
                name="Flank, degrees"
                label="Lean of a flank from square"
                value={blade.flank}
                units={units}
                fault={faultOf('flank')}
                onTake={(flank) => changeLimit(session, { flank })}
              />
            )}
          </div>
          {heading === 'Grooves' && <GrooveChoices now={now} fault={faultOf('depths') || faultOf('sides')} />}
        </fieldset>
      ))}
      <fieldset className={styles.group}>
        <legend>Gap, of the whole family, {units}</legend>
        <div className={styles.fields} data-units={units}>
          {GAPS.map(([field, name, label]) => (
            <LengthField
              key={field}
              {...{ name, label, units }}
              value={family[field] ?? 0}
              fault={faultOf(field)}
              onTake={(nm) => changeGap(session, field, nm)}
            />
          ))}
        </div>
      </fieldset>
      <button type="button" className="key" onClick={() => beginBladeAnew(session)}>
        Common small blade
      </button>
    </form>
  );
}

const FACES = [
  ['both', 'Both faces'],
  ['left', 'Left only'],
  ['right', 'Right only'],
] as const;

const DEPTHS = [
  ['1', '1: there or not'],
  ['2', '2 depths'],
  ['3', '3 depths'],
  ['4', '4 depths'],
] as const;

/** Which faces may be milled, and how many depths a ward may have at one site. */
function GrooveChoices({ now, fault }: { now: BladeNow; fault: string }) {
  const session = useSession();
  return (
    <div className={styles.choices}>
      <ChoiceField
        label="Faces"
        value={now.blade.sides}
        choices={FACES}
        onChange={(sides) => changeLimit(session, { sides })}
      />
      <ChoiceField
        label="Depths at a site"
        value={String(now.plan.depths) as (typeof DEPTHS)[number][0]}
        choices={DEPTHS}
        onChange={(depths) => changeDepths(session, Number(depths))}
      />
      {fault && (
        <p role="alert" className={styles.fault}>
          {fault}
        </p>
      )}
    </div>
  );
}
