import { useEffect } from 'react';
import type { Session } from '../../state/session.ts';
import { useSession } from '../use-store.ts';
import { refuseIncoming, takeFiles, takeText } from './import-files.ts';

/** Fields that take a pasted text themselves. */
const OWN_PASTE = 'textarea, select, [contenteditable], input:not([type=range], [type=checkbox], [type=radio])';

/** Ctrl or Cmd with V anywhere but in a field takes in the files or the text of the clipboard. */
export function usePaste(): void {
  const session = useSession();
  useEffect(() => {
    const onPaste = (event: ClipboardEvent) => {
      if (event.defaultPrevented || document.querySelector('dialog[open]')) return;
      if (event.target instanceof Element && event.target.closest(OWN_PASTE)) return;
      const files = [...(event.clipboardData?.files ?? [])];
      const text = textOf(event.clipboardData);
      if (files.length === 0 && text.trim() === '') return;
      event.preventDefault();
      if (text.trim() !== '' && !files.some(isNamedFile)) takeText(session, text);
      else takeFiles(session, files);
    };
    addEventListener('paste', onPaste);
    return () => removeEventListener('paste', onPaste);
  }, [session]);
}

/** Drawing programs put a picture beside the text of what was copied; a file that was copied has its own name. */
function isNamedFile({ name, type }: File): boolean {
  return !type.startsWith('image/') || !/^image\.\w+$/.test(name);
}

function textOf(data: DataTransfer | null): string {
  return data?.getData('image/svg+xml') || data?.getData('text/plain') || '';
}

/** Takes in what the clipboard holds, which the browser may ask the user about; says so where it does not allow it. */
export async function pasteFromClipboard(session: Session): Promise<void> {
  try {
    const text = await navigator.clipboard.readText();
    if (text.trim() !== '') {
      takeText(session, text);
      return;
    }
    const pictures = await picturesInClipboard();
    if (pictures.length > 0) takeFiles(session, pictures);
    else
      refuseIncoming(
        session,
        'The clipboard',
        'holds neither a text nor a picture',
        'Copy an SVG, a table of points or a picture first.',
      );
  } catch {
    refuseIncoming(
      session,
      'The clipboard',
      'may not be read: the browser did not allow it',
      'Press Ctrl+V (Cmd+V) on the wall instead, or allow this page to see the clipboard.',
    );
  }
}

async function picturesInClipboard(): Promise<File[]> {
  const items = await navigator.clipboard.read();
  const found = items.flatMap((item) => {
    const type = item.types.find((one) => one.startsWith('image/'));
    return type ? [{ item, type }] : [];
  });
  return Promise.all(
    found.map(async ({ item, type }) => new File([await item.getType(type)], 'Pasted picture', { type })),
  );
}
