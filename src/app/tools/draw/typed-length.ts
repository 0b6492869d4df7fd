import type { Units } from '../../../family/length-text.ts';
import { MAX_COORDINATE } from '../../../geom/point.ts';
import { NM_OF_UNIT } from '../ruler-steps.ts';

/** A typed length in nanometres, or what is wrong with it. */
export type TypedLength =
  | { readonly ok: true; readonly nm: number; readonly isStep: boolean }
  | { readonly ok: false; readonly words: string };

/** What may follow a number, and how many nanometres one of it is. */
const NM_OF_WORD: Readonly<Record<string, number>> = {
  mm: NM_OF_UNIT.mm,
  in: NM_OF_UNIT.in,
  '"': NM_OF_UNIT.in,
  thou: NM_OF_UNIT.in / 1000,
  um: NM_OF_UNIT.mm / 1000,
  µm: NM_OF_UNIT.mm / 1000,
};

const TOKEN = /\s*(?:(\d+(?:[.,]\d*)?|[.,]\d+)\s*(mm|in|"|thou|um|µm)?|([-+*/()]))/y;

/**
 * A length as it is typed into a field that holds another one: `2.5` is that length, `+0.1` or `-0.05` is a step from
 * the one before, `=-0.05` is minus 0.05, and `2.1-2*0.05` or `(2+0.1)/2` is worked out. Numbers may have a unit behind
 * them (mm, in, ", thou, um); a comma counts as a decimal point.
 *
 * @param units of numbers without one.
 * @param before the length in the field, nanometres; null where signs mean no step.
 * @check tests/unit/app/draw-typed-length.test.ts
 */
export function readLength(text: string, units: Units, before: number | null): TypedLength {
  const plain = text.trim().replaceAll('−', '-').replaceAll('×', '*').replaceAll('·', '*');
  const isStep = before !== null && /^[-+]/.test(plain);
  const value = workOut(plain.replace(/^=/, ''), NM_OF_UNIT[units]);
  if (value === null) return { ok: false, words: 'Not a length: type 2.5, or +0.1 for a step, or a sum.' };
  if (!Number.isFinite(value)) return { ok: false, words: 'That cannot be divided.' };
  const nm = Math.round(isStep ? before + value : value) + 0;
  if (Math.abs(nm) > MAX_COORDINATE) return { ok: false, words: 'Too large: lengths end at 47 mm (1.86 in).' };
  return { ok: true, nm, isStep };
}

/** A sum in nanometres, or null where it is none. */
function workOut(text: string, perUnit: number): number | null {
  const tokens = tokensOf(text, perUnit);
  if (!tokens || tokens.length === 0) return null;
  const reader: Reader = { tokens, at: 0 };
  const value = sum(reader);
  return value && reader.at === tokens.length ? value.nm : null;
}

/** A value and whether it is a bare number, which multiplies and divides as it is. */
interface Value {
  readonly nm: number;
  /** The number as typed, where it has no unit; null where it is surely a length. */
  readonly bare: number | null;
}

interface Reader {
  readonly tokens: readonly (Value | string)[];
  at: number;
}

function tokensOf(text: string, perUnit: number): (Value | string)[] | null {
  const tokens: (Value | string)[] = [];
  TOKEN.lastIndex = 0;
  while (TOKEN.lastIndex < text.trimEnd().length) {
    const found = TOKEN.exec(text);
    if (!found) return null;
    const [, digits, unit, sign] = found;
    if (sign) tokens.push(sign);
    else {
      const number = Number(digits.replace(',', '.'));
      tokens.push({ nm: number * (unit ? NM_OF_WORD[unit] : perUnit), bare: unit ? null : number });
    }
  }
  return tokens;
}

function sum(reader: Reader): Value | null {
  let left = product(reader);
  for (let sign = reader.tokens[reader.at]; left && (sign === '+' || sign === '-'); sign = reader.tokens[reader.at]) {
    reader.at++;
    const right = product(reader);
    if (!right) return null;
    const way = sign === '+' ? 1 : -1;
    const bare = left.bare !== null && right.bare !== null ? left.bare + way * right.bare : null;
    left = { nm: left.nm + way * right.nm, bare };
  }
  return left;
}

function product(reader: Reader): Value | null {
  let left = signed(reader);
  for (let sign = reader.tokens[reader.at]; left && (sign === '*' || sign === '/'); sign = reader.tokens[reader.at]) {
    reader.at++;
    const right = signed(reader);
    if (!right) return null;
    left = sign === '*' ? times(left, right) : over(left, right);
  }
  return left;
}

/** A length times a number, whichever comes first; two lengths make no length. */
function times(left: Value, right: Value): Value | null {
  if (right.bare !== null)
    return { nm: left.nm * right.bare, bare: left.bare === null ? null : left.bare * right.bare };
  return left.bare === null ? null : { nm: right.nm * left.bare, bare: null };
}

function over(left: Value, { bare }: Value): Value | null {
  if (bare === null) return null;
  return { nm: left.nm / bare, bare: left.bare === null ? null : left.bare / bare };
}

function signed(reader: Reader): Value | null {
  const token = reader.tokens[reader.at++];
  if (token === '-' || token === '+') {
    const value = signed(reader);
    if (!value || token === '+') return value;
    return { nm: -value.nm, bare: value.bare === null ? null : -value.bare };
  }
  if (token === '(') {
    const value = sum(reader);
    return reader.tokens[reader.at++] === ')' ? value : null;
  }
  return typeof token === 'object' ? token : null;
}
