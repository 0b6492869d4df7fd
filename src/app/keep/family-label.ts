import type { FamilyFile } from '../../interchange/json/schema.ts';
import type { FamilyLabel } from './work-records.ts';

/** What is told of a family without opening it: its name, how many sections its profiles belong to, how many profiles. */
export function familyLabel({ name, profiles }: FamilyFile): FamilyLabel {
  const sections = new Set(profiles.flatMap(({ section }) => section ?? []));
  return { name, sections: sections.size, profiles: profiles.length };
}
