import type { ExportedFile } from '../../../interchange/export-profiles.ts';
import { isDismissed, savePicker } from './file-pickers.ts';

/** How saving went: saved, put into the downloads, or given up by the user. */
export type Saved = 'saved' | 'downloaded' | 'given up';

/** A file for other programs: a text, or bytes. */
export interface HandedFile {
  readonly body: string | Uint8Array<ArrayBuffer> | Blob;
  /** Its media type. */
  readonly mime: string;
  /** What its name ends with, without the dot. */
  readonly extension: string;
  /** What the browser's dialog calls it. */
  readonly description: string;
}

/** What the browser's dialog calls each form. */
const DESCRIPTIONS: Readonly<Record<ExportedFile['extension'], string>> = {
  svg: 'SVG drawing',
  dxf: 'DXF drawing',
  csv: 'Table',
};

/** The same as {@link saveFile} for an export of sections or a table. */
export function saveExported({ text, mime, extension }: ExportedFile, name: string): Promise<Saved> {
  return saveFile({ body: text, mime, extension, description: DESCRIPTIONS[extension] }, name);
}

/** Saves a file to a place that the user picks, or into the downloads where the browser has no such dialog. */
export async function saveFile(file: HandedFile, name: string): Promise<Saved> {
  const pick = savePicker();
  if (!pick) return download(file, name);
  const media = file.mime.split(';')[0];
  const types = [{ description: file.description, accept: { [media]: [`.${file.extension}`] } }];
  try {
    const handle = await pick({ suggestedName: name, types });
    const stream = await handle.createWritable();
    await stream.write(file.body);
    await stream.close();
    return 'saved';
  } catch (reason) {
    return isDismissed(reason) ? 'given up' : download(file, name);
  }
}

function download({ body, mime }: HandedFile, name: string): Saved {
  const address = URL.createObjectURL(new Blob([body], { type: mime }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
  return 'downloaded';
}

/** Puts a text into the clipboard; false where the browser does not allow it. */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
