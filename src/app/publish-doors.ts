import { writeMatrix } from '../interchange/csv/write-matrix.ts';
import { bytesOf, zipFiles } from '../interchange/link/deflate.ts';
import type { PublishDoors } from './state/publish/publish-doors.ts';

/** The real operations behind the sheets; what runs in another thread is the window's affair. */
export function publishDoors(jobs: Pick<PublishDoors, 'publishSheets' | 'fitFamily'>): PublishDoors {
  return {
    ...jobs,
    writeMatrix,
    zipTexts: (files) =>
      zipFiles(Object.fromEntries(Object.entries(files).map(([name, text]) => [name, bytesOf(text)]))),
  };
}
