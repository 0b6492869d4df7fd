import { firstFree } from '../family/first-free.ts';
import { idName } from '../family/plain-name.ts';
import type { Access, PlannedBlank } from './planned-access.ts';

/** What the profiles of a plan are called. */
export interface PlannedNames {
  readonly sections: readonly string[];
  /** `id` of each opening and of each blank: the same for the same section or set of sections. */
  readonly openings: readonly { readonly id: string; readonly name: string }[];
  readonly blanks: readonly { readonly id: string; readonly name: string; readonly section?: string }[];
}

/**
 * Names and ids of planned profiles: a keyway has the name of its section, a base blank too, so that nobody takes the one for
 * the other without noticing.
 *
 * @param names in place of the sections' own; undefined keeps one.
 * @check tests/unit/plan/planned-names.test.ts
 */
export function plannedNames(access: Access, names: readonly (string | undefined)[] = []): PlannedNames {
  const sections = access.sections.map(({ name }, i) => names[i]?.trim() || name);
  const taken = new Set<string>();
  const fresh = (wanted: string) => {
    const stem = wanted || 'section';
    const id = firstFree(taken, (n) => (n === 1 ? stem : `${stem}-${n}`));
    taken.add(id);
    return id;
  };
  const openings = access.sections.map((own, i) => ({
    id: fresh(`${idName(own.name) || 'section'}-keyway`),
    name: `${sections[i]} keyway`,
  }));
  const blanks = access.blanks.map((blank) => {
    const section = blank.rank === 'base' ? sections[blank.sections[0]] : undefined;
    const id = fresh(idName(blank.id));
    return { id, name: blankName(blank, section), ...(section === undefined ? {} : { section }) };
  });
  return { sections, openings, blanks };
}

function blankName({ name, rank }: PlannedBlank, section: string | undefined): string {
  if (section !== undefined) return `${section} blank`;
  if (/\bblanks?\b/i.test(name)) return name;
  return rank === 'group' && !/\bgroup\b/i.test(name) ? `${name} group blank` : `${name} blank`;
}
