import { zipFiles } from '../../interchange/link/deflate.ts';
import type { SolidPart } from '../../print3d/display-set.ts';
import { joinParts } from '../../print3d/join-parts.ts';
import type { BlockDoors } from '../state/publish/block-doors.ts';

/**
 * The real operations behind the display block; what runs in another thread is the window's affair. What writes its files
 * is loaded when the first is saved.
 */
export function blockDoors(jobs: Pick<BlockDoors, 'buildDisplaySet'>): BlockDoors {
  return {
    ...jobs,
    write3mf: async (parts, title) => {
      const { write3mf } = await import('../../interchange/print3d/write-3mf.ts');
      return new Uint8Array(write3mf(parts, title));
    },
    writeStl: async (parts) => {
      const { writeStl } = await import('../../interchange/print3d/write-stl.ts');
      return new Uint8Array(writeStl(joinParts(parts)));
    },
    writeStlArchive: async (parts) => {
      const { writeStl } = await import('../../interchange/print3d/write-stl.ts');
      return new Uint8Array(zipFiles(Object.fromEntries(parts.map((part) => [fileName(part), writeStl(part)]))));
    },
  };
}

/** A part's name as the name of a file on any system. */
function fileName({ name }: SolidPart): string {
  return `${name.replace(/[^\p{L}\p{N} ._-]+/gu, '-').trim()}.stl`;
}
