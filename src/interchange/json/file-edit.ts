/** A JSON value, as a family file holds it. */
export type FileValue = unknown;

/** Where in a file something changes: names of fields and places in lists, from the outside in. */
export type EditPath = readonly (string | number)[];

/** One change: the value at a place is another one, or a run of a list's entries gives way to others. */
export type FileStep =
  | { readonly kind: 'set'; readonly path: EditPath; readonly before: FileValue; readonly after: FileValue }
  | {
      readonly kind: 'splice';
      readonly path: EditPath;
      readonly at: number;
      readonly removed: readonly FileValue[];
      readonly added: readonly FileValue[];
    };

/** What leads from one file to another, as a value that can be kept, undone and put together; done first to last. */
export type FileEdit = readonly FileStep[];

/**
 * The edit that turns one file into another. Parts that both share are not looked into, so that the edit of a
 * document that was made from the other costs what was changed.
 *
 * An object whose fields differ or stand in another order is set whole, so that the order of fields is exact. In a
 * list the entries that are alike at both ends stay; what lies between is replaced, or looked into where it is as
 * many objects as before.
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
  else if (isRecord(before) && isRecord(after) && sameFields(before, after)) {
    for (const key of Object.keys(after)) diffInto(steps, [...path, key], before[key], after[key]);
  } else steps.push({ kind: 'set', path, before, after });
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
  const { at, removed, added } = step;
  if (!Array.isArray(value) || at + removed.length > value.length) throw notThere(step);
  return [...value.slice(0, at), ...added, ...value.slice(at + removed.length)];
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
    return { ...step, removed: step.added, added: step.removed };
  });
}

/**
 * One edit that does what two do one after the other. Where the second goes on at the place at which the first left
 * off, the two steps become one, so that a long drag is as short as a quick one.
 *
 * @check tests/laws/file-edits.test.ts
 */
export function mergeEdits(first: FileEdit, second: FileEdit): FileEdit {
  const steps = [...first];
  for (const step of second) {
    const last = steps.at(-1);
    const joined = last && joinSteps(last, step);
    if (joined) steps[steps.length - 1] = joined;
    else steps.push(step);
  }
  return steps;
}

/** Two steps as one, or null where they do not meet. */
function joinSteps(first: FileStep, second: FileStep): FileStep | null {
  if (!isSame(first.path, second.path)) return null;
  if (first.kind === 'set' && second.kind === 'set') return { ...first, after: second.after };
  const meet =
    first.kind === 'splice' &&
    second.kind === 'splice' &&
    first.at === second.at &&
    first.added.length === second.removed.length;
  return meet ? { ...first, added: second.added } : null;
}
