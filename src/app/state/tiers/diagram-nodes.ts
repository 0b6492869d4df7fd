import type { TierNode, Tiers } from '../../../family/tiers.ts';
import type { Profile } from '../../../profile/profile.ts';
import { LEAST_READABLE, MARGIN, type PixelSize } from './diagram-view.ts';
import { textWidth, wrapWords } from './text-width.ts';

/** How a node is set: words beside the picture, words below it, words upright below it. */
export type NodeForm = 'broad' | 'narrow' | 'upright';

/** One node of the tier diagram with all that is drawn of it. */
export interface DiagramNode {
  readonly id: string;
  readonly tier: number;
  /** The entrant whose picture stands for all: sections that enter the same are drawn once. */
  readonly lead: Profile;
  /** Names of all that are merged in it. */
  readonly names: readonly string[];
  /** The names in short, as they are drawn; more than three are counted. */
  readonly labels: readonly string[];
  /** "group", "base", "all-section", "tool". */
  readonly kind: string;
  /** "3 of 10". */
  readonly count: string;
  readonly form: NodeForm;
  readonly width: number;
  readonly height: number;
}

/** Type sizes in pixels at full scale. */
const NAME_SIZE = 16;
const DETAIL_SIZE = 15;

/** Height of a line of names. */
const LINE = 19;
const PAD = 6;

/** The picture of the section in a node. */
export const PICTURE = { width: 30, height: 46 } as const;

const BROAD_TEXT = 132;
const NARROW_TEXT = 76;
const UPRIGHT_LENGTH = 180;

/** Least room between nodes. */
export const GAP = { x: 12, y: 34 } as const;

/** Room that a line takes which passes a tier. */
const PASSING = 12;

/** The scales for which forms are tried, the largest first; the last is the least that can be read. */
const SCALES = [1.5, 1.35, 1.2, 1.1, 1, 0.94, 0.88, 0.82, 0.785, LEAST_READABLE];

const MOST_NAMES = 3;

const KINDS: Readonly<Record<TierNode['rank'], string>> = {
  nothing: 'enters none',
  base: 'base',
  group: 'group',
  all: 'all-section',
};

/** What is to be shown: an order, and of how many keyways. */
export interface DiagramAsked extends Pick<Tiers, 'nodes' | 'covers'> {
  readonly openings: number;
}

/**
 * The nodes of a diagram, each tier set so that the whole is seen as large as can be in `room`: words beside the picture,
 * below it, or upright below it, like the names over the matrix.
 *
 * @param profiles by id.
 * @param room of the frame, pixels.
 * @returns null where a node has none of the profiles: then the tiers are those of another family.
 * @check tests/unit/app/tiers-diagram.test.ts
 */
export function diagramNodes(
  asked: DiagramAsked,
  profiles: ReadonlyMap<string, Profile>,
  room: PixelSize,
): DiagramNode[] | null {
  const words = asked.nodes.flatMap((node) => wordsOf(node, asked.openings, profiles));
  if (words.length < asked.nodes.length) return null;
  const passing = linesPassing(asked);
  const tiers = [...new Set(words.map(({ tier }) => tier))].map((tier) =>
    tierSizes(words, tier, passing.get(tier) ?? 0),
  );
  const forms = formsFor(tiers, room);
  return words.map((node) => {
    const form = forms.get(node.tier) ?? 'upright';
    return { ...node, form, ...sizeOf(node, form) };
  });
}

/** How large a tier is in each form. */
interface TierSizes {
  readonly tier: number;
  readonly sizes: readonly { readonly form: NodeForm; readonly width: number; readonly height: number }[];
}

function tierSizes(words: readonly Words[], tier: number, passing: number): TierSizes {
  const row = words.filter((node) => node.tier === tier);
  const sizes = (['broad', 'narrow', 'upright'] as const).map((form) => {
    const boxes = row.map((node) => sizeOf(node, form));
    const width = boxes.reduce((sum, box) => sum + box.width + GAP.x, passing * PASSING - GAP.x);
    return { form, width, height: Math.max(...boxes.map(({ height }) => height)) };
  });
  return { tier, sizes };
}

/**
 * The forms with which the whole is seen largest. Where it cannot be read whole, those with which all tiers are seen one
 * above the other and the sheet is moved sideways, else those that take the least room across.
 */
function formsFor(tiers: readonly TierSizes[], room: PixelSize): Map<number, NodeForm> {
  const whole = SCALES.map((scale) => formsAt(tiers, room, scale, null)).find((forms) => forms !== null);
  const lower = whole ?? formsAt(tiers, room, LEAST_READABLE, 1);
  if (lower) return lower;
  const width = Math.max(room.width, ...tiers.map(({ sizes }) => sizes[2].width));
  return new Map(tiers.map(({ tier, sizes }) => [tier, sizes.find((size) => size.width <= width)?.form ?? 'upright']));
}

/** Most room between tiers, pixels. */
const MOST_GAP = 96;

/** Room between tiers that fills the frame where the diagram is broad and low. */
export function tierGap(nodes: readonly DiagramNode[], room: PixelSize): number {
  const tiers = [...new Set(nodes.map(({ tier }) => tier))].map((tier) => nodes.filter((node) => node.tier === tier));
  if (tiers.length < 2) return GAP.y;
  const widest = Math.max(...tiers.map((row) => row.reduce((sum, { width }) => sum + width + GAP.x, -GAP.x)));
  const scale = Math.max(LEAST_READABLE, Math.min(1.5, (room.width - 2 * MARGIN) / widest));
  const boxes = tiers.reduce((sum, row) => sum + Math.max(...row.map(({ height }) => height)), 0);
  const free = (room.height - 2 * MARGIN) / scale - boxes;
  return Math.round(Math.min(MOST_GAP, Math.max(GAP.y, free / (tiers.length - 1))));
}

/** The forms at a scale; null where they do not fit, across only where no form is given for tiers that are too broad. */
function formsAt(
  tiers: readonly TierSizes[],
  room: PixelSize,
  scale: number,
  broadest: number | null,
): Map<number, NodeForm> | null {
  const width = (room.width - 2 * MARGIN) / scale;
  const chosen = tiers.flatMap(({ tier, sizes }) => {
    const fitting = sizes.findIndex((size) => size.width <= width);
    const at = broadest === null ? fitting : Math.min(fitting < 0 ? broadest : fitting, broadest);
    return at < 0 ? [] : [{ tier, size: sizes[at] }];
  });
  const height = chosen.reduce((sum, { size }) => sum + size.height + GAP.y, -GAP.y);
  if (chosen.length < tiers.length || height * scale > room.height - 2 * MARGIN) return null;
  return new Map(chosen.map(({ tier, size }) => [tier, size.form]));
}

/** How many lines pass each tier on their way. */
function linesPassing({ nodes, covers }: DiagramAsked): Map<number, number> {
  const passing = new Map<number, number>();
  for (const [lower, upper] of covers)
    for (let tier = nodes[lower].tier + 1; tier < nodes[upper].tier; tier++)
      passing.set(tier, (passing.get(tier) ?? 0) + 1);
  return passing;
}

type Words = Omit<DiagramNode, 'form' | 'width' | 'height'>;

function wordsOf(node: TierNode, openings: number, profiles: ReadonlyMap<string, Profile>): Words[] {
  const members = node.entrants.flatMap((id) => profiles.get(id) ?? []);
  if (members.length === 0) return [];
  const lead = members.find(({ kind }) => kind === 'blank') ?? members[0];
  const kind = members.every((p) => p.kind === 'tool') ? toolWords(node, members.length) : KINDS[node.rank];
  return [
    {
      id: node.id,
      tier: node.tier,
      lead,
      names: members.map(({ name }) => name),
      labels: labelsOf(members),
      kind,
      count: `${node.openings.length} of ${openings}`,
    },
  ];
}

/**
 * Names as a node has them: the picture says that it is a blank, and blanks of one section are one name with their
 * number: "Heron (2)".
 */
function labelsOf(members: readonly Profile[]): string[] {
  const counts = new Map<string, number>();
  for (const { name, kind } of members) {
    const short = kind === 'blank' ? name.replace(/ blank(?=,|$)/, '') : name;
    const label = members.length > 1 ? short.replace(/,.*$/, '') : short;
    counts.set(label, (counts.get(label) ?? 0) + 1);
  }
  const labels = [...counts].map(([label, count]) => (count > 1 ? `${label} (${count})` : label));
  if (labels.length <= MOST_NAMES) return labels;
  return [...labels.slice(0, MOST_NAMES - 1), `and ${labels.length - MOST_NAMES + 1} more`];
}

function toolWords({ rank }: TierNode, count: number): string {
  if (rank === 'nothing') return KINDS.nothing;
  return count === 1 ? 'tool' : 'tools';
}

function sizeOf(words: Words, form: NodeForm): { width: number; height: number } {
  const lines = words.labels.flatMap((name) => wrapWords(name, NAME_SIZE, textRoom(form)));
  const name = Math.max(...lines.map((line) => textWidth(line, NAME_SIZE)));
  const detail = textWidth(detailOf(words, form), DETAIL_SIZE);
  const stack = lines.length * LINE;
  const text = Math.max(name, detail);
  if (form === 'upright')
    return {
      width: Math.round(Math.max(PICTURE.width, stack) + 2 * PAD),
      height: Math.round(PICTURE.height + 8 + name + 10 + detail + 2 * PAD),
    };
  if (form === 'narrow')
    return {
      width: Math.round(Math.max(PICTURE.width, text) + 2 * PAD + 2),
      height: PICTURE.height + stack + LINE + 2 * PAD + 2,
    };
  return {
    width: Math.round(PICTURE.width + 8 + text + 2 * PAD),
    height: Math.max(PICTURE.height, stack + LINE) + 2 * PAD,
  };
}

/** What stands under the names: where there is little room, only how many keyways it enters. */
export function detailOf({ kind, count }: Pick<DiagramNode, 'kind' | 'count'>, form: NodeForm): string {
  return form === 'broad' ? `${kind} · ${count}` : count;
}

function textRoom(form: NodeForm): number {
  return { broad: BROAD_TEXT, narrow: NARROW_TEXT, upright: UPRIGHT_LENGTH }[form];
}

/** The number of each node's tier in words for those who hear it. */
export function tierWords(tier: number, tiers: Tiers): string {
  const top = tiers.nodes.reduce((most, node) => Math.max(most, node.tier), 0);
  return `tier ${tier + 1} of ${top + 1}`;
}
