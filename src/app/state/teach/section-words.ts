import { bandText, readingText, sizeText, type Units } from '../../../family/length-text.ts';
import { boxOf } from '../../../geom/point.ts';
import type { Profile } from '../../../profile/profile.ts';

/**
 * The shape of a section in words, without its name: its size and its grooves or wards from the back up. What a picture
 * shows, for those who cannot see it.
 *
 * @check tests/unit/app/section-words.test.ts
 */
export function sectionWords({ kind, ring, milled }: Profile, units: Units): string {
  const box = boxOf(ring);
  const size = sizeText(box.maxX - box.minX, box.maxY - box.minY, units);
  if (!milled) return `drawn outline with ${ring.length} corners, ${size}`;
  const word = kind === 'opening' ? 'ward' : 'groove';
  if (milled.grooves.length === 0) return `${size}, no ${word}s`;
  const grooves = [...milled.grooves]
    .sort((a, b) => a.bottom - b.bottom)
    .map((g) => `${g.side} at ${bandText(g.bottom, g.bottom + g.width, units)}, ${readingText(g.depth, units)} deep`);
  return `${size}; ${word}s: ${grooves.join('; ')}`;
}
