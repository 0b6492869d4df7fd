/** A JSON value, as a family file holds it. */
export type FileValue = unknown;

/** Where in a file something changes: names of fields and places in lists, from the outside in. */
export type EditPath = readonly (string | number)[];

/**
 * One change: the value at a place is another one, an object has other fields or has them in another order (those that
 * stay keep their values), or a run of a list's entries gives way to others.
 */
export type FileStep =
  | { readonly kind: 'set'; readonly path: EditPath; readonly before: FileValue; readonly after: FileValue }
  | {
      readonly kind: 'fields';
      readonly path: EditPath;
      /** The names of all fields in their order, before and after. */
      readonly before: readonly string[];
      readonly after: readonly string[];
      /** The fields that go and those that come, with their values. */
      readonly removed: FieldValues;
      readonly added: FieldValues;
    }
  | {
      readonly kind: 'splice';
      readonly path: EditPath;
      readonly at: number;
      readonly removed: readonly FileValue[];
      readonly added: readonly FileValue[];
    };

/** Values of fields as pairs of name and value, so that no name has a meaning of its own. */
type FieldValues = readonly (readonly [name: string, value: FileValue])[];

/** What leads from one file to another, as a value that can be kept and undone; done first to last. */
export type FileEdit = readonly FileStep[];

/**
 * The edit that turns one file into another. Parts that both share are not looked into, so that the edit of a
 * document that was made from the other costs what was changed.
 *
 * Of an object with other fields, or with fields in another order, those that stay are looked into and only the others
 * are written down: a mark that is set on a picture does not cost the picture. The order of fields is exact. In a list
 * the entries that are alike at both ends stay; what lies between is replaced, or looked into where it is as many
 * objects as before.
 *
 * @returns steps in the order to do them; none where both files are written the same.
 * @check tests/laws/file-edits.test.ts
 */
export function diffFiles(before: FileValue, after: FileValue): FileEdit {
  const steps: FileStep[] = [];
  diffInto(steps, [], before, after);
  return steps;
}

function diffInto(steps: FileStep[], path: EditPath, before: FileValue, after: FileValue): void {
  if (Object.is(before, after)) return;
  if (Array.isArray(before) && Array.isArray(after)) diffLists(steps, path, before, after);
  else if (isRecord(before) && isRecord(after) && shareFields(before, after)) {
    if (!sameFields(before, after)) steps.push(fieldsStep(path, before, after));
    for (const key of Object.keys(after))
      if (Object.hasOwn(before, key)) diffInto(steps, [...path, key], before[key], after[key]);
  } else steps.push({ kind: 'set', path, before, after });
}

function fieldsStep(path: EditPath, before: Record<string, FileValue>, after: Record<string, FileValue>): FileStep {
  const only = (one: Record<string, FileValue>, other: Record<string, FileValue>) =>
    Object.entries(one).filter(([name]) => !Object.hasOwn(other, name));
  const names = { before: Object.keys(before), after: Object.keys(after) };
  return { kind: 'fields', path, ...names, removed: only(before, after), added: only(after, before) };
}

/** Whether two objects have a field in common, or none has any. */
function shareFields(a: Record<string, FileValue>, b: Record<string, FileValue>): boolean {
  return sameFields(a, b) || Object.keys(a).some((name) => Object.hasOwn(b, name));
}

function diffLists(steps: FileStep[], path: EditPath, before: readonly FileValue[], after: readonly FileValue[]): void {
  const shorter = Math.min(before.length, after.length);
  let at = 0;
  while (at < shorter && isSame(before[at], after[at])) at++;
  let tail = 0;
  while (tail < shorter - at && isSame(before[before.length - 1 - tail], after[after.length - 1 - tail])) tail++;
  const removed = before.slice(at, before.length - tail);
  const added = after.slice(at, after.length - tail);
  if (removed.length === added.length && [...removed, ...added].every(isRecord)) {
    for (const [i, entry] of added.entries()) diffInto(steps, [...path, at + i], removed[i], entry);
  } else if (removed.length + added.length > 0) steps.push({ kind: 'splice', path, at, removed, added });
}

/** Whether two values are written the same, fields in the same order. */
function isSame(a: FileValue, b: FileValue): boolean {
  if (Object.is(a, b)) return true;
  if (Array.isArray(a)) return Array.isArray(b) && a.length === b.length && a.every((entry, i) => isSame(entry, b[i]));
  return isRecord(a) && isRecord(b) && sameFields(a, b) && Object.keys(a).every((key) => isSame(a[key], b[key]));
}

function sameFields(a: Record<string, FileValue>, b: Record<string, FileValue>): boolean {
  const [names, others] = [Object.keys(a), Object.keys(b)];
  return names.length === others.length && names.every((name, i) => name === others[i]);
}

function isRecord(value: FileValue): value is Record<string, FileValue> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/**
 * The file after an edit: a new value that shares what is not touched; the given one stays as it is.
 *
 * @throws RangeError where the edit was made for another file: it names a place that this one has not.
 * @check tests/laws/file-edits.test.ts
 */
export function applyEdit<T>(file: T, edit: FileEdit): T {
  return edit.reduce<FileValue>((value, step) => stepInto(value, step.path, step), file) as T;
}

function stepInto(value: FileValue, path: EditPath, step: FileStep): FileValue {
  if (path.length === 0) return doStep(value, step);
  const [key, ...rest] = path;
  if (Array.isArray(value) && typeof key === 'number' && key >= 0 && key < value.length)
    return value.with(key, stepInto(value[key], rest, step));
  if (isRecord(value) && typeof key === 'string' && Object.hasOwn(value, key))
    return { ...value, [key]: stepInto(value[key], rest, step) };
  throw notThere(step);
}

function doStep(value: FileValue, step: FileStep): FileValue {
  if (step.kind === 'set') return step.after;
  if (step.kind === 'fields') return giveFields(value, step);
  const { at, removed, added } = step;
  if (!Array.isArray(value) || at + removed.length > value.length) throw notThere(step);
  return [...value.slice(0, at), ...added, ...value.slice(at + removed.length)];
}

/** An object with the fields that it has after a step; they are made anew in their order. */
function giveFields(value: FileValue, step: FileStep & { kind: 'fields' }): FileValue {
  const { before, after, added } = step;
  if (!isRecord(value) || !isSame(Object.keys(value), before)) throw notThere(step);
  const come = new Map(added);
  return Object.fromEntries(after.map((name) => [name, come.has(name) ? come.get(name) : value[name]]));
}

function notThere({ path }: FileStep): RangeError {
  return new RangeError(`applyEdit: the file has no place ${JSON.stringify(path)} for this edit`);
}

/**
 * The edit that takes an edit back, exactly: to the order of fields and the sign of a zero.
 *
 * @check tests/laws/file-edits.test.ts
 */
export function invertEdit(edit: FileEdit): FileEdit {
  return edit.toReversed().map((step) => {
    if (step.kind === 'set') return { ...step, before: step.after, after: step.before };
    if (step.kind === 'fields') {
      const { before, after, removed, added } = step;
      return { ...step, before: after, after: before, removed: added, added: removed };
    }
    return { ...step, removed: step.added, added: step.removed };
  });
}
