import type { FamilyFile, NameFile } from './schema.ts';

/**
 * The family with further names in its register, behind the others.
 *
 * @check tests/unit/interchange/edit-names.test.ts
 */
export function addNames(file: FamilyFile, entries: readonly NameFile[]): FamilyFile {
  return entries.length === 0 ? file : { ...file, names: [...(file.names ?? []), ...entries] };
}

/**
 * The family with another entry in one place of its register. Fields of the entry before that the format does not know
 * stay.
 *
 * @throws RangeError where the register has no such place.
 */
export function replaceName(file: FamilyFile, index: number, entry: NameFile): FamilyFile {
  const before = entryAt(file, index);
  const names = (file.names ?? []).with(index, { ...unknownFields(before), ...entry });
  return { ...file, names };
}

/**
 * The family without the entries in some places of its register; without a register where none is left.
 *
 * @throws RangeError where the register has no such place.
 */
export function removeNames(file: FamilyFile, indexes: readonly number[]): FamilyFile {
  for (const index of indexes) entryAt(file, index);
  const { names = [], ...rest } = file;
  const left = names.filter((_, i) => !indexes.includes(i));
  return left.length > 0 ? { ...file, names: left } : rest;
}

const KNOWN_FIELDS = ['text', 'kind', 'section', 'profile', 'scheme', 'chambers', 'supersededBy', 'note'];

function unknownFields(entry: NameFile): Record<string, unknown> {
  return Object.fromEntries(Object.entries(entry).filter(([field]) => !KNOWN_FIELDS.includes(field)));
}

function entryAt({ names = [] }: FamilyFile, index: number): NameFile {
  const entry = names[index];
  if (!entry) throw new RangeError(`the register has no place ${index}`);
  return entry;
}
