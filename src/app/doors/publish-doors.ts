import { bytesOf, zipFiles } from '../../interchange/link/deflate.ts';
import type { PublishDoors } from '../state/publish/publish-doors.ts';

/** The real operations behind the sheets; what runs in another thread is the window's affair. */
export function publishDoors(publishSheets: PublishDoors['publishSheets']): PublishDoors {
  const zipTexts: PublishDoors['zipTexts'] = (files) =>
    zipFiles(Object.fromEntries(Object.entries(files).map(([name, text]) => [name, bytesOf(text)])));
  return { publishSheets, zipTexts };
}
