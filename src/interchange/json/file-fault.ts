/** One thing wrong with a file: where, what, and what to do about it. */
export interface FileFault {
  /** Place in the file, like `profiles[3].outline[2]`, `line 4, column 7`, or `file` for the whole. */
  readonly path: string;
  /** What is wrong there, in words. */
  readonly what: string;
  /** What to do about it. */
  readonly cure: string;
}

/** A place in a JSON value: field names and positions in lists, from the outside in. */
export type FilePath = readonly (string | number)[];

/** Writes a place the way a person reads it: `profiles[3].outline[2]`; `file` for the whole. */
export function sayPath(path: FilePath): string {
  if (path.length === 0) return 'file';
  return path.map(sayKey).join('').replace(/^\./, '');
}

/** The value at a place, or undefined where there is none. Reads own fields only. */
export function valueAt(root: unknown, path: FilePath): unknown {
  return path.reduce<unknown>((value, key) => {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    return (value as Record<string | number, unknown>)[key];
  }, root);
}

/** A value in few words for a message: `"cm"`, `12`, `a list`, `nothing`. */
export function sayValue(value: unknown): string {
  if (value === undefined) return 'missing';
  if (value === null) return 'null';
  if (Array.isArray(value)) return `a list with ${value.length} ${value.length === 1 ? 'entry' : 'entries'}`;
  if (typeof value === 'object') return 'an object';
  if (typeof value === 'string') return `the text ${sayText(value)}`;
  return String(value);
}

/** A text in quotes, shortened, with control characters made visible. */
export function sayText(text: string): string {
  return JSON.stringify(text.length > 40 ? `${text.slice(0, 39)}…` : text);
}

function sayKey(key: string | number): string {
  if (typeof key === 'number') return `[${key}]`;
  return /^[\p{L}_$][\p{L}\p{N}_$]*$/u.test(key) ? `.${key}` : `[${sayText(key)}]`;
}
