import type { TierNode, Tiers } from '../../../family/tiers.ts';
import type { Profile } from '../../../profile/profile.ts';
import { textWidth, wrapWords } from './text-width.ts';

/** How a node is set: words beside the picture, words below it, words upright below it. */
export type NodeForm = 'broad' | 'narrow' | 'upright';

/** One node of the tier diagram with all that is drawn of it. */
export interface DiagramNode {
  readonly id: string;
  readonly tier: number;
  /** The entrant whose picture stands for all: sections that enter the same are drawn once. */
  readonly lead: Profile;
  /** Names of all that are merged in it; more than three are counted. */
  readonly names: readonly string[];
  /** "group", "base", "all-section", "tool". */
  readonly kind: string;
  /** "3 of 10". */
  readonly count: string;
  readonly form: NodeForm;
  readonly width: number;
  readonly height: number;
}

/** Type sizes in pixels at full scale. */
export const NAME_SIZE = 16;
export const DETAIL_SIZE = 14;

/** Height of a line of names. */
const LINE = 19;
const PAD = 7;

/** The picture of the section in a node. */
export const PICTURE = { width: 34, height: 54 } as const;

const BROAD_TEXT = 132;
const NARROW_TEXT = 66;
const UPRIGHT_LENGTH = 216;

/** Room between nodes that the forms reckon with. */
export const GAP = { x: 12, y: 50 } as const;

const MOST_NAMES = 3;

const KINDS: Readonly<Record<TierNode['rank'], string>> = {
  nothing: 'enters none',
  base: 'base',
  group: 'group',
  all: 'all-section',
};

/**
 * The nodes of a diagram, set as broad as their tier lets them: words beside the picture where that fits into `room`
 * pixels, else below it, else upright, like the names over the matrix.
 *
 * @param profiles by id.
 * @returns null where a node has none of the profiles: then the tiers are those of another family.
 * @check tests/unit/app/tiers-diagram.test.ts
 */
export function diagramNodes(
  { nodes, openings }: { readonly nodes: readonly TierNode[]; readonly openings: number },
  profiles: ReadonlyMap<string, Profile>,
  room: number,
): DiagramNode[] | null {
  const words = nodes.flatMap((node) => wordsOf(node, openings, profiles));
  if (words.length < nodes.length) return null;
  const tiers = new Map<number, typeof words>();
  for (const node of words) tiers.set(node.tier, [...(tiers.get(node.tier) ?? []), node]);
  const total = (tier: typeof words, form: NodeForm) => tier.reduce((sum, n) => sum + sizeOf(n, form).width + GAP.x, 0);
  const widest = Math.max(room, ...[...tiers.values()].map((tier) => total(tier, 'upright')));
  const forms = new Map<number, NodeForm>();
  for (const [number, tier] of tiers)
    forms.set(number, (['broad', 'narrow'] as const).find((form) => total(tier, form) <= widest) ?? 'upright');
  return words.map((node) => {
    const form = forms.get(node.tier) ?? 'upright';
    return { ...node, form, ...sizeOf(node, form) };
  });
}

type Words = Omit<DiagramNode, 'form' | 'width' | 'height'>;

function wordsOf(node: TierNode, openings: number, profiles: ReadonlyMap<string, Profile>): Words[] {
  const members = node.entrants.flatMap((id) => profiles.get(id) ?? []);
  if (members.length === 0) return [];
  const lead = members.find(({ kind }) => kind === 'blank') ?? members[0];
  const shown = members.slice(0, members.length > MOST_NAMES ? MOST_NAMES - 1 : MOST_NAMES).map(({ name }) => name);
  const names = members.length > shown.length ? [...shown, `and ${members.length - shown.length} more`] : shown;
  const kind = members.every((p) => p.kind === 'tool') ? toolWords(node, members.length) : KINDS[node.rank];
  return [{ id: node.id, tier: node.tier, lead, names, kind, count: `${node.openings.length} of ${openings}` }];
}

function toolWords({ rank }: TierNode, count: number): string {
  if (rank === 'nothing') return KINDS.nothing;
  return count === 1 ? 'tool' : 'tools';
}

function sizeOf({ names, kind, count }: Words, form: NodeForm): { width: number; height: number } {
  const lines = names.flatMap((name) => wrapWords(name, NAME_SIZE, textRoom(form)));
  const name = Math.max(...lines.map((line) => textWidth(line, NAME_SIZE)));
  const detail = form === 'narrow' ? [kind, count] : [`${kind} · ${count}`];
  const details = Math.max(...detail.map((text) => textWidth(text, DETAIL_SIZE)));
  const stack = lines.length * LINE;
  if (form === 'upright')
    return {
      width: Math.round(Math.max(PICTURE.width, stack + LINE) + 2 * PAD + 2),
      height: Math.round(PICTURE.height + 16 + Math.max(name, details) + 2 * PAD),
    };
  const text = Math.max(name, details);
  if (form === 'narrow')
    return {
      width: Math.round(Math.max(PICTURE.width, text) + 2 * PAD),
      height: PICTURE.height + stack + 2 * LINE + 2 * PAD + 4,
    };
  return {
    width: Math.round(PICTURE.width + 8 + text + 2 * PAD),
    height: Math.max(PICTURE.height, stack + LINE) + 2 * PAD,
  };
}

function textRoom(form: NodeForm): number {
  return { broad: BROAD_TEXT, narrow: NARROW_TEXT, upright: UPRIGHT_LENGTH }[form];
}

/** The number of each node's tier in words for those who hear it. */
export function tierWords(tier: number, tiers: Tiers): string {
  const top = tiers.nodes.reduce((most, node) => Math.max(most, node.tier), 0);
  return `tier ${tier + 1} of ${top + 1}`;
}
