/** The values that an option may have, and the unit that they are in. */
export interface NumberRange {
  /** 0 where not given. */
  readonly least?: number;
  readonly most: number;
  /** Told in brackets where given. */
  readonly unit?: string;
  /** Whether fractions are refused. */
  readonly whole?: boolean;
}

/** Whether a text is a number of digits and a point, without a sign or an exponent. */
export function isPlainNumber(text: string): boolean {
  return /^(\d+\.?\d*|\.\d+)$/.test(text);
}

/**
 * What is wrong with the text given for an option that takes a number; undefined where nothing is, or none is given.
 *
 * @check tests/unit/cli/parse-command.test.ts
 */
export function numberFault(
  option: string,
  text: string | undefined,
  { least = 0, most, unit, whole = false }: NumberRange,
): string | undefined {
  if (text === undefined) return undefined;
  const read = whole ? /^\d+$/.test(text) : isPlainNumber(text);
  if (read && Number(text) >= least && Number(text) <= most) return undefined;
  const range = `${whole ? 'whole ' : ''}number from ${least} to ${most}${unit === undefined ? '' : ` (${unit})`}`;
  return `--${option} is "${text}", must be a ${range}`;
}
