import { idName } from '../family/plain-name.ts';
import type { Holder, Plan } from '../family/plan.ts';
import { type AreaTree, FREE, MUST } from './area-tree.ts';
import { blankNames } from './blank-name.ts';
import type { AccessFault, PlannedBlank, PlannedSection } from './planned-access.ts';

/** A set of sections that somebody must be able to enter with one blank. */
interface Wanted {
  must: readonly number[];
  free: readonly number[];
  readonly holders: Holder[];
  readonly allSection: boolean;
}

/** The blanks of a plan, and what is worth knowing of who carries which. */
export interface NeededBlanks {
  readonly blanks: readonly PlannedBlank[];
  readonly notes: readonly AccessFault[];
}

/**
 * The blanks of a plan: one for each different set of sections that somebody must enter, and the base and all-section
 * blanks that are asked for. A holder with free areas carries the blank of another set where exactly one such blank does.
 *
 * @param wanted what each holder has to do with each section.
 * @returns base blanks in the order of the sections, then group blanks from small to large, then the all-section blank.
 */
export function neededBlanks(
  plan: Plan,
  tree: AreaTree,
  sections: readonly PlannedSection[],
  wanted: readonly Uint8Array[],
): NeededBlanks {
  const sets = askedFor(plan, sections.length);
  const open: Wanted[] = [];
  for (const one of byMust(plan.holders, wanted)) {
    const same = sets.find(({ must }) => sameSet(must, one.must));
    if (same) same.holders.push(...one.holders);
    else if (one.free.length === 0) sets.push(one);
    else open.push(one);
  }
  const told: ((nameOf: (set: Wanted) => string) => AccessFault)[] = [];
  for (const one of open.sort((a, b) => b.must.length - a.must.length)) {
    const others = sets.filter((set) => does(set, one));
    if (others.length === 1) {
      others[0].holders.push(...one.holders);
      told.push((nameOf) => sharing(one.holders, nameOf(others[0])));
    } else {
      sets.push(one);
      if (others.length > 1) told.push((nameOf) => undecided(one.holders, others.map(nameOf)));
    }
  }
  const ordered = sets.sort((a, b) => inOrder(a, b, sections.length));
  const names = blankNames(ordered, tree, sections);
  const ids = blankIds(ordered, sections);
  const blanks = ordered.map(({ must, free, holders, allSection }, i) => ({
    id: ids[i],
    name: names[i],
    sections: must,
    free,
    rank: rankOf(must, sections.length, allSection),
    holders: holders.map(({ id }) => id),
  }));
  return { blanks, notes: told.map((tell) => tell((set) => names[ordered.indexOf(set)])) };
}

/** The blanks that the plan asks for whoever carries them. */
function askedFor({ baseBlanks, allSection, reserve }: Plan, count: number): Wanted[] {
  const all = Array.from({ length: count }, (_, i) => i);
  const sets: Wanted[] = baseBlanks ? all.map((i) => ({ must: [i], free: [], holders: [], allSection: false })) : [];
  if (allSection && count > 0 && count + reserve > 1) sets.push({ must: all, free: [], holders: [], allSection: true });
  return sets;
}

/** The sets of the holders, those with one set together; what only some of them leave free is shut to all. */
function byMust(holders: readonly Holder[], wanted: readonly Uint8Array[]): Wanted[] {
  const sets = new Map<string, Wanted>();
  for (const [h, ticks] of wanted.entries()) {
    const must = placesOf(ticks, MUST);
    if (must.length === 0) continue;
    const free = placesOf(ticks, FREE);
    const key = must.join();
    const same = sets.get(key);
    if (same) {
      same.holders.push(holders[h]);
      same.free = same.free.filter((s) => free.includes(s));
    } else sets.set(key, { must, free, holders: [holders[h]], allSection: false });
  }
  return [...sets.values()];
}

function placesOf(ticks: Uint8Array, tick: number): number[] {
  const places: number[] = [];
  for (const [s, own] of ticks.entries()) if (own === tick) places.push(s);
  return places;
}

function sameSet(a: readonly number[], b: readonly number[]): boolean {
  return a.length === b.length && a.every((s, i) => s === b[i]);
}

/** Whether a blank for one set does for another: enters all of it, and nothing that is neither in it nor free. */
function does(blank: Wanted, { must, free }: Wanted): boolean {
  const own = new Set(blank.must);
  const may = new Set([...must, ...free]);
  return must.every((s) => own.has(s)) && [...blank.must, ...blank.free].every((s) => may.has(s));
}

function inOrder(a: Wanted, b: Wanted, count: number): number {
  const step = ({ must, allSection }: Wanted) =>
    ['base', 'group', 'all-section'].indexOf(rankOf(must, count, allSection));
  if (step(a) !== step(b)) return step(a) - step(b);
  if (a.must.length !== b.must.length) return a.must.length - b.must.length;
  for (const [i, s] of a.must.entries()) if (s !== b.must[i]) return s - b.must[i];
  return 0;
}

function rankOf(must: readonly number[], count: number, allSection: boolean): PlannedBlank['rank'] {
  if (allSection || (must.length === count && count > 1)) return 'all-section';
  return must.length === 1 ? 'base' : 'group';
}

/** Ids made of the names of the sections, so that they stay when sections are added, moved or put in another order. */
function blankIds(sets: readonly Wanted[], sections: readonly PlannedSection[]): string[] {
  const taken = new Set<string>();
  return sets.map(({ must, allSection }) => {
    const names = must.map((s) => sections[s].name).sort();
    const hash = shortHash(names.join('\n'));
    const ids = {
      base: `blank-${idName(names[0]) || hash}`,
      group: `blank-group-${hash}`,
      'all-section': 'blank-all-sections',
    };
    const id = ids[rankOf(must, sections.length, allSection)];
    const own = taken.has(id) ? `${id}-${hash}` : id;
    taken.add(own);
    return own;
  });
}

/** 32 bits of a text by the FNV-1a rule, in base 36. */
function shortHash(text: string): string {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return (hash >>> 0).toString(36);
}

function sayHolders(holders: readonly Holder[]): string {
  const [first, ...more] = holders.map(({ name }) => name);
  if (more.length === 0) return first;
  return more.length === 1 ? `${first} and ${more[0]}` : `${first} and ${more.length} more`;
}

function sharing(holders: readonly Holder[], blank: string): AccessFault {
  return {
    kind: 'note',
    what: `${sayHolders(holders)}: with what is free, the blank ${blank} does.`,
    cure: 'Nothing; for a blank of its own, tick what is free as must or not.',
    areas: [],
    holders: holders.map(({ id }) => id),
  };
}

function undecided(holders: readonly Holder[], blanks: readonly string[]): AccessFault {
  const named = blanks.slice(0, 3).join(' or ');
  return {
    kind: 'note',
    what: `${sayHolders(holders)}: with what is free, ${named} would do; as it is left open, another blank is made.`,
    cure: 'To share one of them, tick what it enters as must, the rest as not.',
    areas: [],
    holders: holders.map(({ id }) => id),
  };
}
