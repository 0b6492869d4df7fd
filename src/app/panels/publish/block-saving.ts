import type { Family } from '../../../family/family.ts';
import type { DisplaySet } from '../../../print3d/display-set.ts';
import { blockLookOf } from '../../state/publish/block-state.ts';
import type { Session } from '../../state/session.ts';
import { troubleText } from '../../state/trouble-text.ts';
import { type HandedFile, saveFile } from '../exchange/export-file.ts';

/** What a display set can be saved as. */
export type BlockFile = '3mf' | 'stl' | 'stl-parts' | 'png';

type FileForm = Omit<HandedFile, 'body'> & { readonly ending: string };

const FORMS: Readonly<Record<BlockFile, FileForm>> = {
  '3mf': { mime: 'model/3mf', extension: '3mf', description: '3MF model', ending: 'display-set.3mf' },
  stl: { mime: 'model/stl', extension: 'stl', description: 'STL model', ending: 'display-set.stl' },
  'stl-parts': { mime: 'application/zip', extension: 'zip', description: 'STL models', ending: 'display-set-stl.zip' },
  png: { mime: 'image/png', extension: 'png', description: 'Picture', ending: 'display-set.png' },
};

/**
 * Saves a set, and says what came of it.
 *
 * @param still makes the picture; null where there is none.
 */
export async function saveBlock(
  session: Session,
  family: Family,
  set: DisplaySet,
  file: BlockFile,
  still: () => Promise<Blob | null>,
): Promise<void> {
  const look = blockLookOf(session);
  const say = (said: string) => look.setState({ said });
  const { ending, ...form } = FORMS[file];
  const name = `${fileStem(family.name)}-${ending}`;
  say(`Writing ${name} …`);
  try {
    const body = await bodyOf(session, family, set, file, still);
    if (body === null) return say('There is no picture to save: this browser does not draw solids.');
    const saved = await saveFile({ body, ...form }, name);
    say(
      saved === 'given up' ? 'Not saved.' : `${name} was saved${saved === 'downloaded' ? ' into your downloads' : ''}.`,
    );
  } catch (reason) {
    say(`${name} could not be written: ${troubleText(reason)}. Try again, or save in another form.`);
  }
}

function bodyOf(
  { doors: { block } }: Session,
  family: Family,
  { parts, scale }: DisplaySet,
  file: BlockFile,
  still: () => Promise<Blob | null>,
): Promise<HandedFile['body'] | null> {
  if (file === '3mf') return block.write3mf(parts, `${family.name}, display set ${scale}:1`);
  if (file === 'stl') return block.writeStl(parts);
  return file === 'stl-parts' ? block.writeStlArchive(parts) : still();
}

/** A family's name as the beginning of a file's. */
export function fileStem(name: string): string {
  const plain = name.normalize('NFKD').toLowerCase();
  return (
    plain
      .replace(/\p{M}/gu, '')
      .replace(/[^\p{L}\p{N}]+/gu, '-')
      .replace(/^-+|-+$/g, '') || 'family'
  );
}
