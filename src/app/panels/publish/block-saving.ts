import type { Family } from '../../../family/family.ts';
import { hyphenedName } from '../../../family/plain-name.ts';
import type { DisplayWriting } from '../../../jobs/write-display-set.ts';
import type { DisplaySet } from '../../../print3d/display-set.ts';
import { blockMakingOf } from '../../state/publish/block-building.ts';
import type { Session } from '../../state/session.ts';
import { handOver, ownBytes } from './hand-over.ts';

/** A form for printers, and what each file holds. */
export type BlockFile = Pick<DisplayWriting, 'as' | 'each'>;

/** Saves a set for printers, and says what came of it; written in another thread. */
export function saveBlock(session: Session, family: Family, set: DisplaySet, file: BlockFile): Promise<void> {
  const { as, each } = file;
  const title = `${family.name}, display set ${set.scale}:1`;
  const { parts, bed, beds } = set;
  return blockMakingOf(session).make({
    what: as.toUpperCase(),
    start: (tell) => session.doors.block.writeDisplaySet({ set: { parts, bed, beds }, title, as, each }, tell),
    take: (bytes) =>
      each === 'set'
        ? handOver(ownBytes(bytes), as, nameOf(family, as))
        : handOver(ownBytes(bytes), 'zip', nameOf(family, 'zip', as, `${each}s`)),
  });
}

/**
 * Saves the picture as it stands, and says what came of it.
 *
 * @param still makes the picture; null where there is none.
 */
export function saveBlockPicture(session: Session, family: Family, still: () => Promise<Blob | null>): Promise<void> {
  return blockMakingOf(session).make({
    what: 'picture',
    start: () => ({ result: still(), cancel: () => {} }),
    take: async (picture) =>
      picture
        ? handOver(picture, 'png', nameOf(family, 'png'))
        : 'There is no picture to save: this browser does not draw solids.',
  });
}

function nameOf({ name }: Family, extension: string, ...words: readonly string[]): string {
  return `${[hyphenedName(name) || 'family', 'display-set', ...words].join('-')}.${extension}`;
}
