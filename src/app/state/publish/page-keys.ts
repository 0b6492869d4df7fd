import type { SheetsLook } from './sheets-look.ts';

/**
 * What a key changes of how pages are looked at: Page Up and Page Down turn them, F shows the whole page and 1 its true
 * size. Null where it is none of these, or leads nowhere: then it is the browser's.
 *
 * @param count of the pages.
 * @check tests/unit/app/publish-choice.test.ts
 */
export function pageKey(key: string, { page }: SheetsLook, count: number): Partial<SheetsLook> | null {
  const at = Math.max(0, Math.min(page, count - 1));
  switch (key) {
    case 'PageUp':
      return count > 1 ? { page: Math.max(0, at - 1) } : null;
    case 'PageDown':
      return count > 1 ? { page: Math.min(count - 1, at + 1) } : null;
    case 'f':
    case 'F':
      return { zoom: 'fit' };
    case '1':
      return { zoom: 'true' };
    default:
      return null;
  }
}
