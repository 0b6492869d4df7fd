import { MAX_TILT_DEG } from '../interchange/json/schema.ts';
import { numberFault } from './number-fault.ts';

/** What `gauge` is asked for; lengths in nanometres. */
export interface GaugeCommand {
  readonly name: 'gauge';
  readonly file: string;
  readonly json: boolean;
  readonly height: number;
  /** Undefined: no thickness is asked about. */
  readonly thickness?: number;
  /** Greatest tilt of the strip either way, degrees; 0: upright. */
  readonly tiltDeg: number;
}

/** The options of `gauge` that take a length. */
export const GAUGE_OPTIONS = ['height', 'thickness'] as const;

/** Greatest length that is asked about, nanometres: no keyway of a file is taller. */
const MOST_LENGTH = 95e6;

const MOST = `and up to ${MOST_LENGTH / 1e6} mm`;

/** What must follow them. */
export const GAUGE_VALUES: Readonly<Record<(typeof GAUGE_OPTIONS)[number], string>> = {
  height: `a length above 0 ${MOST}, such as 6, 6mm, 0.236in or 236thou`,
  thickness: `a length above 0 ${MOST}, such as 0.55, 0.55mm or 22thou`,
};

/** Nanometres in the units that a length may have; none means millimetres. */
const UNITS: Readonly<Record<string, number>> = { '': 1e6, mm: 1e6, in: 25.4e6, thou: 25_400 };

type Given = { readonly [option in (typeof GAUGE_OPTIONS)[number]]?: readonly string[] } & {
  readonly tilt?: readonly string[];
  readonly json?: boolean;
};

type Parsed = { readonly ok: true; readonly command: GaugeCommand } | { readonly ok: false; readonly fault: string };

/** What the options of `gauge` state, or what is wrong with them. @check tests/unit/cli/run-gauge.test.ts */
export function toGaugeCommand(file: string, given: Given): Parsed {
  const { tilt: [tilt = '0'] = [], json = false } = given;
  const [height, thickness] = GAUGE_OPTIONS.map((option) => given[option]?.[0]);
  if (height === undefined) return { ok: false, fault: '"gauge" needs --height, the height of the strip' };
  const lengths = [lengthOf(height), thickness === undefined ? undefined : lengthOf(thickness)];
  const wrong = lengths.indexOf(null);
  if (wrong >= 0) {
    const option = GAUGE_OPTIONS[wrong];
    return { ok: false, fault: `--${option} is "${given[option]?.[0]}", must be ${GAUGE_VALUES[option]}` };
  }
  const fault = numberFault('tilt', tilt, { most: MAX_TILT_DEG, unit: 'degrees' });
  if (fault) return { ok: false, fault };
  const command = { name: 'gauge', file, json, height: lengths[0] ?? 0, tiltDeg: Number(tilt) } as const;
  return { ok: true, command: typeof lengths[1] === 'number' ? { ...command, thickness: lengths[1] } : command };
}

/** A length in nanometres, null where the text is none or it is 0 or too great. */
function lengthOf(text: string): number | null {
  const [, digits, unit = ''] = /^(\d+\.?\d*|\.\d+) ?(mm|in|thou)?$/.exec(text) ?? [];
  const nm = digits === undefined ? 0 : Math.round(Number(digits) * UNITS[unit]);
  return nm > 0 && nm <= MOST_LENGTH ? nm : null;
}
