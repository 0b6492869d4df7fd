import { countWord } from '../../../family/count-word.ts';
import { nameList } from '../../../family/name-list.ts';
import type { ToolCover } from '../../../gauge/cover-tools.ts';
import { tightPart } from '../../../gauge/gauge-sentence.ts';

/** How the parts of a family are called. */
export interface CoverNames {
  toolName(id: string): string;
  openingName(id: string): string;
}

/** Most keyways that are told by name in a headline. */
const MOST_NAMED = 4;

/**
 * The fewest tools in one line: "Strip 0.55 x 6 alone enters all 10 ticked keyways, one of them tight".
 *
 * @check tests/unit/app/gauge-words.test.ts
 */
export function coverHeadline(cover: ToolCover, { toolName, openingName }: CoverNames): string {
  const { tools, uses, uncovered } = cover;
  const count = uses.length + uncovered.length;
  if (count === 0) return 'Tick the keyways that are to be covered';
  if (tools.length === 0)
    return count === 1
      ? `No tool enters ${openingName(uncovered[0])}`
      : `No tool enters any of the ${count} ticked keyways`;
  const names = nameList(tools.map(toolName));
  const what = whatIsEntered(cover, openingName);
  const tight = tightPart(uses.length, uses.filter((use) => use.tight).length);
  const alone =
    tools.length === 1
      ? `${names} alone enters ${what}${tight}`
      : `${tools.length} tools enter ${what}${tight}: ${names}`;
  if (uncovered.length === 0) return alone;
  return `${alone}; nothing enters ${namedOrCounted(uncovered.map(openingName))}`;
}

/** What stands in the place of the answer until it is there: without tools none comes. */
export function tryingWords(tools: number): string {
  return tools === 0 ? 'No tools to try' : 'Trying the tools …';
}

function whatIsEntered({ uses, uncovered }: ToolCover, openingName: (id: string) => string): string {
  if (uncovered.length > 0) return `${uses.length} of the ${uses.length + uncovered.length} ticked keyways`;
  return uses.length === 1 ? openingName(uses[0].openingId) : `all ${uses.length} ticked keyways`;
}

/** "Heron and Smew"; "9 others" where they are many. */
function namedOrCounted(names: readonly string[]): string {
  return names.length <= MOST_NAMED ? nameList(names) : countWord(names.length, 'other');
}

/** How sure the set is, and how many more there are. */
export function coverNote(cover: ToolCover): string {
  if (cover.tools.length === 0) return '';
  const others = cover.more ? 'many other sets are' : otherSets(cover.sets.length - 1);
  const size = countWord(cover.tools.length, 'tool');
  if (!cover.proved) return `The search was cut short: fewer than ${size} may do.`;
  const fewer = cover.tools.length > 1 ? 'Fewer do not do. ' : '';
  if (others === '') return cover.tools.length === 1 ? 'No other tool alone does.' : `${fewer}No other ${size} do.`;
  return `${fewer}This set has most room in its tightest keyway; ${others} as small.`;
}

function otherSets(count: number): string {
  if (count === 0) return '';
  return count === 1 ? 'one other set is' : `${count} other sets are`;
}
