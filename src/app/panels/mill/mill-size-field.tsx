import type { Units } from '../../../family/length-text.ts';
import { degreesNumber, lengthNumber } from '../../state/draw/mill-words.ts';
import { millStep } from '../../tools/draw/dragging-groove.ts';
import { readLength } from '../../tools/draw/typed-length.ts';
import { MillField, type TypedValue } from './mill-field.tsx';

interface SizeFieldProps {
  readonly name: string;
  readonly label: string;
  /** Nanometres, or radians where it is an angle. */
  readonly value: number;
  readonly units: Units;
  readonly fault: string;
  onTake(value: number): void;
}

/** A length of a blade or groove, in the user's units; steps are those of a drag. */
export function LengthField({ name, label, value, units, fault, onTake }: SizeFieldProps) {
  const read = (text: string): TypedValue => {
    const typed = readLength(text, units, value);
    return typed.ok ? { ok: true, value: typed.nm } : typed;
  };
  return (
    <MillField
      name={name}
      label={label}
      unit={units}
      text={lengthNumber(value, units)}
      fault={fault}
      read={read}
      stepped={(steps) => Math.max(0, Math.round(value + steps * millStep(units, false)))}
      onTake={onTake}
    />
  );
}

const DEGREE = Math.PI / 180;

/** The lean of a groove's flanks, in degrees. */
export function AngleField({ name, label, value, fault, onTake }: SizeFieldProps) {
  return (
    <MillField
      name={name}
      label={label}
      unit="degrees"
      text={degreesNumber(value)}
      fault={fault}
      read={readDegrees}
      stepped={(steps) => Math.max(0, Number((value / DEGREE + steps).toFixed(3)) * DEGREE)}
      onTake={onTake}
    />
  );
}

function readDegrees(text: string): TypedValue {
  const plain = text
    .trim()
    .replace(/(°|deg)$/, '')
    .trim()
    .replace(',', '.');
  const degrees = Number(plain);
  if (plain === '' || !Number.isFinite(degrees)) return { ok: false, words: 'Not an angle: type 15 for 15 degrees.' };
  return { ok: true, value: degrees * DEGREE };
}
