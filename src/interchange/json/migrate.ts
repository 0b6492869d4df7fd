import { type FileFault, sayValue } from './file-fault.ts';
import { VERSION } from './schema.ts';

/** A file's top object, before anything is known about its fields. */
export type RawFile = Readonly<Record<string, unknown>>;

/** One step from a version of the format to the next. */
export interface Migration {
  /** The version it starts from; it leads to `from + 1`. */
  readonly from: number;
  /** Returns a new object; keeps every field it does not know; need not set `version`. */
  readonly step: (file: RawFile) => RawFile;
}

/** The steps from every older version, oldest first and without gaps; version 1 is the first, so there is none yet. */
export const MIGRATIONS: readonly Migration[] = [];

/** The file in the newest version, or why it cannot be brought there. */
export type Migrated =
  | { readonly ok: true; readonly file: RawFile }
  | { readonly ok: false; readonly fault: FileFault };

/**
 * Brings a file to the newest version.
 *
 * @param file the file as read; not changed.
 * @param migrations the steps known, oldest first, without gaps, the last leading to `newest`.
 * @param newest the newest version known.
 * @returns the same object where its version is the newest, else a new one with `version` set; a fault where the
 *   version is not a whole number that the steps start from, is newer than known, or a step fails on the file.
 * @check tests/unit/interchange/migrate.test.ts
 */
export function migrate(
  file: RawFile,
  migrations: readonly Migration[] = MIGRATIONS,
  newest: number = VERSION,
): Migrated {
  const { version } = file;
  const oldest = migrations.length > 0 ? migrations[0].from : newest;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < oldest)
    return refuse(
      `is ${sayValue(version)}, must be a whole number${oldest < newest ? ` from ${oldest} to ${newest}` : `, ${newest}`}`,
      `Write "version": ${newest}.`,
    );
  if (version > newest)
    return refuse(
      `is ${version}, newer than the version ${newest} that this program knows`,
      'Open the file with a newer Sectionary, or save it there in the older version.',
    );
  if (version === newest) return { ok: true, file };
  try {
    const moved = migrations.filter(({ from }) => from >= version).reduce((older, { step }) => step(older), file);
    return { ok: true, file: { ...moved, version: newest } };
  } catch {
    return refuse(
      `is ${version}, and the file could not be brought from there to version ${newest}`,
      'Open and save it with the Sectionary that wrote it, or correct its fields.',
    );
  }
}

function refuse(what: string, cure: string): Migrated {
  return { ok: false, fault: { path: 'version', what, cure } };
}
