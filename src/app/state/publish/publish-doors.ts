import type { Published, PublishInput } from '../../../jobs/publish-sheets.ts';
import type { JobOnItsWay } from '../job-on-its-way.ts';

/** Told how far a job has come. */
export type TellProgress = (done: number, total: number) => void;

/** The operations behind the sheets; main.tsx names the real ones. */
export interface PublishDoors {
  /** Lays a sheet out, and writes it where that is asked for, in another thread. */
  publishSheets(input: PublishInput, onProgress: TellProgress): JobOnItsWay<Published>;
  /** Texts in one archive, by file name. */
  zipTexts(files: Readonly<Record<string, string>>): Uint8Array;
}
