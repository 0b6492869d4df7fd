import { entrantsOf, type Family, openingsOf } from '../../../family/family.ts';
import { BED_RANGE, type DisplaySetup, SETTING_RANGES, setupFaults } from '../../../print3d/display-setup.ts';
import type { BlockSettings } from '../../state/publish/block-settings.ts';
import { ChoiceField, TickField, WholeNumberField } from '../form-fields.tsx';
import { useSession } from '../use-store.ts';
import { BlockChoice } from './block-choice.tsx';
import { MmField, type NumberFieldOf, ScaleField } from './block-number-field.tsx';
import styles from './block-settings-form.module.css';
import { useBlockLook, useBlockSetup } from './use-block.ts';

const BLOCK_FIELDS: readonly NumberFieldOf[] = [
  { setting: 'blockDepth', label: 'Depth of the block' },
  { setting: 'wall', label: 'Wall', hint: 'Least between openings.' },
];

const PRINTER_FIELDS: readonly NumberFieldOf[] = [
  { setting: 'gap', label: 'Fitting gap', hint: 'Off each coupon, all round.' },
  { setting: 'nozzle', label: 'Nozzle', hint: 'Width of its line.' },
];

const TIPS = [
  ['flat', 'Flat'],
  ['chamfered', 'Chamfered'],
  ['pointed', 'Pointed'],
] as const;

/** How the set is made and printed, and what is in it; taken at once, and kept in this browser. */
export function BlockSettingsForm({ family }: { family: Family }) {
  const { blockSettings } = useSession();
  const [, look] = useBlockLook();
  const setup = useBlockSetup(family);
  const set = (next: BlockSettings) => blockSettings.setState(next);
  const asUsual = () => {
    blockSettings.setState({}, true);
    look.setState({ openings: null, blanks: null, columns: null });
  };
  return (
    <form
      className={styles.form}
      aria-label="Settings of the display block"
      onSubmit={(event) => event.preventDefault()}
    >
      <Choices family={family} setup={setup} />
      <h2 className={styles.title}>Block</h2>
      <div className={styles.fields}>
        <ScaleField value={setup.scale} onChange={(scale) => set({ scale })} />
        <WholeNumberField
          label="Openings in a row"
          value={setup.columns}
          least={SETTING_RANGES.columns.least}
          most={SETTING_RANGES.columns.most}
          onChange={(columns) => look.setState({ columns })}
        />
        <NumberFields of={BLOCK_FIELDS} setup={setup} set={set} />
      </div>
      <h2 className={styles.title}>Printer</h2>
      <div className={styles.fields}>
        <NumberFields of={PRINTER_FIELDS} setup={setup} set={set} />
        <BedFields bed={setup.bed} set={set} />
      </div>
      <h2 className={styles.title}>Coupons and board</h2>
      <div className={styles.fields}>
        <ChoiceField label="Tip of a coupon" value={setup.tip} choices={TIPS} onChange={(tip) => set({ tip })} />
        {setup.letters && (
          <NumberFields of={[{ setting: 'letterSize', label: 'Size of letters' }]} setup={setup} set={set} />
        )}
      </div>
      <TickField label="Names in raised letters" value={setup.letters} onChange={(letters) => set({ letters })} />
      <TickField label="A board that holds them" value={setup.board} onChange={(board) => set({ board })} />
      <button type="button" className="key" onClick={asUsual}>
        All as usual
      </button>
    </form>
  );
}

interface FieldsProps {
  readonly of: readonly NumberFieldOf[];
  readonly setup: DisplaySetup;
  set(next: BlockSettings): void;
}

function NumberFields({ of, setup, set }: FieldsProps) {
  return of.map(({ setting, label, hint }) => (
    <MmField
      key={setting}
      label={label}
      value={setup[setting]}
      range={SETTING_RANGES[setting]}
      hint={hint}
      onChange={(mm) => set({ [setting]: mm })}
    />
  ));
}

function BedFields({ bed: [wide, deep], set }: { readonly bed: DisplaySetup['bed']; set(next: BlockSettings): void }) {
  return (
    <>
      <MmField label="Bed, width" value={wide} range={BED_RANGE} onChange={(mm) => set({ bed: [mm, deep] })} />
      <MmField label="Bed, depth" value={deep} range={BED_RANGE} onChange={(mm) => set({ bed: [wide, mm] })} />
    </>
  );
}

/** Which sections are in the set; that none is left is told here. */
function Choices({ family, setup }: { readonly family: Family; readonly setup: DisplaySetup }) {
  const [, look] = useBlockLook();
  const faults = setupFaults(family, setup);
  const [openings, entrants] = [openingsOf(family), entrantsOf(family)];
  return (
    <>
      {faults.map(({ setting, message }) => (
        <p key={`${setting} ${message}`} role="alert" className={styles.fault}>
          {message[0].toUpperCase() + message.slice(1)}.
        </p>
      ))}
      {openings.length > 0 && (
        <BlockChoice
          title="Openings"
          profiles={openings}
          chosen={setup.openings}
          onChoose={(ids) => look.setState({ openings: ids })}
        />
      )}
      {entrants.length > 0 && (
        <BlockChoice
          title="Coupons"
          profiles={entrants}
          chosen={setup.blanks}
          onChoose={(ids) => look.setState({ blanks: ids })}
        />
      )}
    </>
  );
}
