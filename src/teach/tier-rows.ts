import { entryTable, withEntrants } from '../family/entry-table.ts';
import type { Family } from '../family/family.ts';
import type { KnownFits } from '../family/known-fits.ts';
import { nodeOf, reachOf } from '../family/tier-reach.ts';
import { type TierNode, tiersOf } from '../family/tiers.ts';
import type { Profile } from '../profile/profile.ts';
import { blanksOf, shortNameOf } from './teaching-knowledge.ts';

/** One place in a row: blanks that go into the very same keyways. */
export interface TierPlate {
  readonly id: string;
  /** The first of them, whose picture is shown. */
  readonly profile: Profile;
  /** "Heron", or "Heron and 2 more". */
  readonly name: string;
  readonly count: number;
  /** Places of the row below that stand under this one, by their ids; of rows further down too. */
  readonly onto: readonly string[];
}

/** The blanks of a family in rows: the lowest first, each with the number of keyways it goes into. */
export interface TierRows {
  readonly rows: readonly { readonly plates: readonly TierPlate[]; readonly words: string }[];
  /** Keyways of the family. */
  readonly of: number;
}

/**
 * The tiers as a room is shown them, row by row from the lowest: blanks without tools, those that enter nothing left
 * out. A blank stands over the middle of what it stands on.
 *
 * @param upTo id of a blank: only what stands at or below it; all where it is not given or not in the family.
 * @returns no rows where nothing is known.
 * @check tests/unit/teach/tier-rows.test.ts
 */
export function tierRows(family: Family, fits: KnownFits | null, upTo?: string): TierRows {
  if (!fits) return { rows: [], of: 0 };
  const blanks = new Map(blanksOf(family).map((profile) => [profile.id, profile]));
  const tiers = tiersOf(withEntrants(entryTable(fits), (id) => blanks.has(id)));
  const top = nodeOf(tiers, upTo ?? null);
  const wanted = top < 0 ? null : new Set([top, ...reachOf(tiers, top).below]);
  const order = new Map<string, number>();
  const rows: TierRows['rows'][number][] = [];
  const highest = Math.max(0, ...tiers.nodes.map(({ tier }) => tier));
  for (let tier = 0; tier <= highest; tier++) {
    const inRow = tiers.nodes.flatMap((node, i) =>
      node.tier === tier && node.rank !== 'nothing' && (!wanted || wanted.has(i)) ? [{ node, i }] : [],
    );
    if (inRow.length === 0) continue;
    const plates = inRow.map(({ node, i }) => {
      const onto = tiers.covers.filter(([, upper]) => upper === i).map(([lower]) => tiers.nodes[lower].id);
      return plateOf(node, blanks, onto);
    });
    plates.sort((a, b) => middleUnder(a, order) - middleUnder(b, order));
    for (const [k, { id }] of plates.entries()) order.set(id, (k + 0.5) / plates.length);
    rows.push({ plates, words: countWords(plates, fits.openings.length) });
  }
  return { rows, of: fits.openings.length };
}

function plateOf(
  { id, entrants, openings }: TierNode,
  blanks: ReadonlyMap<string, Profile>,
  onto: string[],
): TierPlate {
  const profiles = entrants.flatMap((entrant) => blanks.get(entrant) ?? []);
  const names = [...new Set(profiles.map(shortNameOf))];
  const name = names.length > 2 ? `${names[0]} and ${names.length - 1} more` : names.join(' and ');
  return { id, profile: profiles[0], name, count: openings.length, onto };
}

/** Mean place of what a blank stands on; in chart order (equal) where it stands on nothing. */
function middleUnder({ onto }: TierPlate, order: ReadonlyMap<string, number>): number {
  const places = onto.flatMap((id) => order.get(id) ?? []);
  return places.length === 0 ? 0 : places.reduce((sum, x) => sum + x, 0) / places.length;
}

/** "1 keyway", "3 to 5 keyways", "all 10 keyways". */
function countWords(plates: readonly TierPlate[], of: number): string {
  const counts = plates.map(({ count }) => count);
  const [least, most] = [Math.min(...counts), Math.max(...counts)];
  if (least === of && of > 1) return `all ${of} keyways`;
  if (least !== most) return `${least} to ${most} keyways`;
  return most === 1 ? '1 keyway' : `${most} keyways`;
}
