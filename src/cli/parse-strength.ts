import { isPlainNumber } from './number-fault.ts';

/** What `strength` is asked for. */
export interface StrengthCommand {
  readonly name: 'strength';
  readonly file: string;
  readonly json: boolean;
  /** Id of a material; undefined: the usual one. */
  readonly material?: string;
  /** The torque that blades are compared with, newton metres; undefined: that of the standard. */
  readonly torqueNm?: number;
}

/** The options of `strength` that take a value. */
export const STRENGTH_OPTIONS = ['material', 'torque'] as const;

/** Greatest torque that is asked for, newton metres. */
const MOST_TORQUE_NM = 1_000;

type Given = { readonly [option in (typeof STRENGTH_OPTIONS)[number]]?: readonly string[] } & {
  readonly json?: boolean;
};

type Parsed = { readonly ok: true; readonly command: StrengthCommand } | { readonly ok: false; readonly fault: string };

/** What the options of `strength` state, or what is wrong with them. @check tests/unit/cli/run-strength.test.ts */
export function toStrengthCommand(file: string, { material = [], torque = [], json = false }: Given): Parsed {
  const [text] = torque;
  const torqueNm = text === undefined ? undefined : Number(text);
  if (torqueNm !== undefined && !(isPlainNumber(text) && torqueNm > 0 && torqueNm <= MOST_TORQUE_NM))
    return { ok: false, fault: `--torque is "${text}", must be newton metres above 0, up to ${MOST_TORQUE_NM}` };
  return { ok: true, command: { name: 'strength', file, json, material: material[0], torqueNm } };
}
