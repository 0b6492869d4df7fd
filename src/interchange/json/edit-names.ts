import type { FamilyFile, NameFile } from './schema.ts';

/** The fields of a name that the format knows; others are kept when an entry is changed. */
const FIELDS = ['text', 'kind', 'section', 'profile', 'scheme', 'chambers', 'supersededBy', 'note'] as const;

/**
 * The family with more names behind those of its register.
 *
 * @check tests/unit/interchange/edit-names.test.ts
 */
export function addNames(file: FamilyFile, names: readonly NameFile[]): FamilyFile {
  return names.length === 0 ? file : { ...file, names: [...(file.names ?? []), ...names] };
}

/**
 * The family with another value for one entry of its register. Fields that the format does not know stay.
 *
 * @param index place in the register of the file; the same file where it has no such entry.
 * @check tests/unit/interchange/edit-names.test.ts
 */
export function replaceName(file: FamilyFile, index: number, name: NameFile): FamilyFile {
  const before = file.names?.[index];
  if (!file.names || !before) return file;
  const rest = Object.entries(before).filter(([key]) => !FIELDS.some((field) => field === key));
  return { ...file, names: file.names.with(index, { ...Object.fromEntries(rest), ...name }) };
}

/**
 * The family without some entries of its register; without a register where none is left.
 *
 * @param indexes places in the register of the file.
 * @check tests/unit/interchange/edit-names.test.ts
 */
export function removeNames(file: FamilyFile, indexes: readonly number[]): FamilyFile {
  const { names = [], ...rest } = file;
  const gone = new Set(indexes);
  const left = names.filter((_, index) => !gone.has(index));
  if (left.length === names.length) return file;
  return left.length > 0 ? { ...file, names: left } : rest;
}
