import type { EntryMatrix } from '../../../family/entry-matrix.ts';
import type { Family } from '../../../family/family.ts';
import type { writeMatrix } from '../../../interchange/csv/write-matrix.ts';
import type { Published, PublishInput } from '../../../jobs/publish-sheets.ts';
import type { JobOnItsWay } from '../job-on-its-way.ts';

/** Told how far a job has come. */
export type TellProgress = (done: number, total: number) => void;

/** The operations behind the sheets; main.tsx names the real ones. */
export interface PublishDoors {
  /** Lays a sheet out, and writes it where that is asked for, in another thread. */
  publishSheets(input: PublishInput, onProgress: TellProgress): JobOnItsWay<Published>;
  /** The whole matrix of a family judged new and upright, as it stands on the sheets. */
  fitFamily(family: Family, onProgress: TellProgress): JobOnItsWay<EntryMatrix>;
  writeMatrix: typeof writeMatrix;
  /** Texts in one archive, by file name. */
  zipTexts(files: Readonly<Record<string, string>>): Uint8Array;
}
