import type { FamilyFile } from './schema.ts';

/** Longest line that a list or object without inner ones is put on. */
const LINE_LENGTH = 120;

/**
 * The text of a family file. Every field is kept in its place, known to us or not, and every number as it stands in
 * `file`, which is why the file is written from its own values and not from the core's nanometres.
 *
 * A list or object that holds only plain values stands on one line where it fits, so that an outline has one point
 * a line and a groove is read at a glance; everything else is indented by two spaces.
 *
 * @returns JSON with a line feed at its end; reading it gives the same value, writing that gives the same text.
 * @throws RangeError where a number is not finite, since JSON cannot hold it.
 * @check tests/unit/interchange/write.test.ts
 */
export function writeFamily(file: FamilyFile): string {
  return `${layOut(file, '')}\n`;
}

/** A value as JSON; lines after the first start with `indent`. */
function layOut(value: unknown, indent: string): string {
  if (typeof value !== 'object' || value === null) return plain(value);
  const entries = entriesOf(value);
  const [open, close] = Array.isArray(value) ? ['[', ']'] : ['{', '}'];
  if (entries.length === 0) return open + close;
  const inner = entries.map(([name, entry]) => name + layOut(entry, `${indent}  `));
  const pad = Array.isArray(value) ? '' : ' ';
  const line = `${open}${pad}${inner.join(', ')}${pad}${close}`;
  const flat = entries.every(([, entry]) => typeof entry !== 'object' || entry === null);
  if (flat && indent.length + line.length <= LINE_LENGTH) return line;
  return `${open}\n${inner.map((entry) => `${indent}  ${entry}`).join(',\n')}\n${indent}${close}`;
}

/** The entries of a list or object, each with what stands before its value. */
function entriesOf(value: object): [string, unknown][] {
  if (Array.isArray(value)) return value.map((entry: unknown) => ['', entry]);
  return Object.entries(value)
    .filter(([, entry]) => entry !== undefined)
    .map(([name, entry]: [string, unknown]) => [`${JSON.stringify(name)}: `, entry]);
}

/** A text, number, truth value or null as JSON. */
function plain(value: unknown): string {
  if (typeof value === 'number' && !Number.isFinite(value))
    throw new RangeError(`a family file cannot hold the number ${value}`);
  return Object.is(value, -0) ? '-0' : (JSON.stringify(value) ?? 'null');
}
