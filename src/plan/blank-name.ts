import type { Holder } from '../family/plan.ts';
import type { AreaTree } from './area-tree.ts';
import type { PlannedSection } from './planned-access.ts';

/** What a blank is named by. */
interface Named {
  readonly must: readonly number[];
  readonly holders: readonly Holder[];
  readonly allSection: boolean;
}

/**
 * Names for blanks. A base blank has the name of its section. A blank whose sections are those of a group of areas has the
 * group's name, another one that of its holder, and else it says how many keyways it is for. Names of sections are never
 * joined, and no two blanks have one name.
 *
 * @param sets the blanks, each with the places of its sections.
 * @check tests/unit/plan/access.test.ts
 */
export function blankNames(sets: readonly Named[], tree: AreaTree, sections: readonly PlannedSection[]): string[] {
  const groups = groupNames(tree, sections);
  const sectionNames = new Set(sections.map(({ name }) => name.toLowerCase()));
  const taken = new Set<string>();
  const take = (wishes: readonly string[], mayBeSection: boolean) => {
    const isFree = (name: string) =>
      !taken.has(name.toLowerCase()) && (mayBeSection || !sectionNames.has(name.toLowerCase()));
    const last = wishes[wishes.length - 1];
    let name = wishes.find(isFree);
    for (let n = 2; name === undefined; n++) if (isFree(`${last}, no. ${n}`)) name = `${last}, no. ${n}`;
    taken.add(name.toLowerCase());
    return name;
  };
  return sets.map((set) => {
    if (set.must.length === 1 && !set.allSection) return take([sections[set.must[0]].name], true);
    if (set.allSection || set.must.length === sections.length) return take(['All-section blank'], false);
    const plain = `Blank for ${set.must.length} keyways`;
    const group = groups.get(set.must.join());
    const holder = set.holders.length === 1 ? set.holders[0].name.trim() : undefined;
    const wishes = [group, holder && !namesASection(holder, sections) ? holder : undefined];
    return take([...wishes.flatMap((wish) => (wish ? [wish, `${wish} group`] : [])), plain], false);
  });
}

/** The names of the groups by the sections in them; of two groups with the same sections the outer one's. */
function groupNames(tree: AreaTree, sections: readonly PlannedSection[]): ReadonlyMap<string, string> {
  const sectionAt = new Map(sections.flatMap(({ areas }, s) => areas.map((id) => [id, s] as const)));
  const names = new Map<string, string>();
  for (const { area, isGroup, from, to } of tree.rows) {
    if (!isGroup) continue;
    const inside = new Set(tree.leaves.slice(from, to).map(({ id }) => sectionAt.get(id) ?? -1));
    const key = [...inside].sort((a, b) => a - b).join();
    if (!names.has(key)) names.set(key, area.name.trim());
  }
  return names;
}

/** Whether a name has the name of a section in it as whole words: it would read as that section's blank. */
function namesASection(name: string, sections: readonly PlannedSection[]): boolean {
  const words = ` ${plainWords(name)} `;
  return sections.some((section) => words.includes(` ${plainWords(section.name)} `));
}

function plainWords(text: string): string {
  return text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}
