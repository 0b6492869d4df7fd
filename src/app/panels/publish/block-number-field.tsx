import { SETTING_RANGES, type SettingRange } from '../../../print3d/display-setup.ts';
import { readNumber, readSetting, settingText } from '../../state/publish/block-length.ts';
import type { NumberSetting } from '../../state/publish/block-settings.ts';
import { LengthField } from '../form-fields.tsx';
import { useSession, useStore } from '../use-store.ts';
import { useTyped } from '../use-typed.ts';

interface MmFieldProps {
  readonly label: string;
  /** Millimetres as printed. */
  readonly value: number;
  readonly range: SettingRange;
  readonly hint?: string;
  onChange(mm: number): void;
}

/** A length of the printed set: taken as soon as it is sound, else it stays in the field with what is wrong. */
export function MmField({ label, value, range, hint, onChange }: MmFieldProps) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const shown = settingText(value, units);
  const [typed, setTyped] = useTyped(shown);
  const read = typed === null ? null : readSetting(typed, units, range);
  const type = (text: string) => {
    setTyped(text);
    const next = readSetting(text, units, range);
    if (next.ok && text !== shown) onChange(next.value);
  };
  return (
    <LengthField
      label={label}
      text={typed ?? shown}
      units={units}
      fault={read && !read.ok ? read.words : undefined}
      hint={hint}
      onChange={type}
    />
  );
}

interface ScaleFieldProps {
  readonly value: number;
  onChange(scale: number): void;
}

/** How many times as large the set is printed. */
export function ScaleField({ value, onChange }: ScaleFieldProps) {
  const range: SettingRange = SETTING_RANGES.scale;
  const shown = String(value);
  const [typed, setTyped] = useTyped(shown);
  const read = typed === null ? null : readNumber(typed, range);
  const type = (text: string) => {
    setTyped(text);
    const next = readNumber(text, range);
    if (next.ok) onChange(next.value);
  };
  return (
    <LengthField
      label="Scale"
      text={typed ?? shown}
      units="mm"
      unit=": 1"
      fault={read && !read.ok ? read.words : undefined}
      hint={value < 2 ? 'So near to true size a coupon could be taken for a key.' : undefined}
      onChange={type}
    />
  );
}

/** A setting with a range of its own. */
export interface NumberFieldOf {
  readonly setting: Exclude<NumberSetting, 'scale'>;
  readonly label: string;
  readonly hint?: string;
}
