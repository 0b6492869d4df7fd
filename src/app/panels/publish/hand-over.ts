import type { HandedFile, Saved } from '../exchange/export-file.ts';
import { saveFile } from '../exchange/export-file.ts';

/** The forms in which pages and solids leave the window. */
export type FileForm = 'pdf' | 'svg' | 'png' | 'zip' | 'csv' | 'html' | '3mf' | 'stl';

/** @source IANA media types; RFC 4180 for CSV. */
const FORMS: Readonly<Record<FileForm, { readonly mime: string; readonly description: string }>> = {
  pdf: { mime: 'application/pdf', description: 'PDF document' },
  svg: { mime: 'image/svg+xml', description: 'SVG drawing' },
  png: { mime: 'image/png', description: 'PNG picture' },
  zip: { mime: 'application/zip', description: 'ZIP archive' },
  csv: { mime: 'text/csv;charset=utf-8', description: 'Table' },
  '3mf': { mime: 'model/3mf', description: '3MF model' },
  stl: { mime: 'model/stl', description: 'STL model' },
  html: { mime: 'text/html;charset=utf-8', description: 'Web page' },
};

/** Saves a file where the user says, and tells what came of it. */
export async function handOver(body: HandedFile['body'], form: FileForm, name: string): Promise<string> {
  const saved = await saveFile({ body, extension: form, ...FORMS[form] }, name);
  return savedWords(saved, name);
}

/** What came of saving, in a sentence; nothing where the user gave it up. */
function savedWords(saved: Saved, name: string): string {
  return { saved: `${name} is saved.`, downloaded: `${name} is in your downloads.`, 'given up': '' }[saved];
}

/** Bytes from another thread as the browser's files want them. */
export function ownBytes(bytes: Uint8Array): Uint8Array<ArrayBuffer> {
  return bytes.buffer instanceof ArrayBuffer ? (bytes as Uint8Array<ArrayBuffer>) : new Uint8Array(bytes);
}
