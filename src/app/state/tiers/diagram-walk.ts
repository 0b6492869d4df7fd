import { neighboursOf } from '../../../family/tiers.ts';
import type { LaidOut } from './laying-out.ts';

/**
 * The node that an arrow key leads to: up and down along the lines to the nearest one, left and right along the tier,
 * Home and End to the ends of the tier. Where a node has no line that way, the nearest of the next tier.
 *
 * @returns its number; null where the key leads nowhere.
 * @check tests/unit/app/tiers-diagram.test.ts
 */
export function nodeAfter(drawn: LaidOut, from: number, key: string): number | null {
  const { tiers, nodes, layout } = drawn;
  const x = (node: number) => layout.at[node].x;
  const nearest = (found: readonly number[]) =>
    found.length === 0
      ? null
      : found.reduce((best, n) => (Math.abs(x(n) - x(from)) < Math.abs(x(best) - x(from)) ? n : best));
  const inTier = (tier: number) =>
    nodes.flatMap((node, at) => (node.tier === tier ? [at] : [])).sort((a, b) => x(a) - x(b));
  const row = inTier(nodes[from].tier);
  const place = row.indexOf(from);
  const { above, below } = neighboursOf(tiers)[from];
  switch (key) {
    case 'ArrowUp':
      return nearest(above) ?? nearest(inTier(nodes[from].tier + 1));
    case 'ArrowDown':
      return nearest(below) ?? nearest(inTier(nodes[from].tier - 1));
    case 'ArrowLeft':
      return row[place - 1] ?? null;
    case 'ArrowRight':
      return row[place + 1] ?? null;
    case 'Home':
      return row[0];
    case 'End':
      return row[row.length - 1];
    default:
      return null;
  }
}
