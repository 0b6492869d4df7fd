import type { FamilyLabel } from '../../keep/work-records.ts';

const AT = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' });

/** A moment as people write it. */
export function momentWords(ms: number): string {
  return AT.format(ms);
}

/** How large a family is, in few words. */
export function sizeWords({ sections, profiles }: FamilyLabel): string {
  const shapes = profiles === 1 ? '1 profile' : `${profiles} profiles`;
  if (sections === 0) return shapes;
  return `${sections === 1 ? '1 section' : `${sections} sections`}, ${shapes}`;
}
