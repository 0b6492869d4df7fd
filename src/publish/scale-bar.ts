import type { TextMeasure } from '../lettering/text-measure.ts';
import type { Block } from './block.ts';
import type { Mark } from './page.ts';
import { ASCENT, LEADING } from './paragraph.ts';
import { filled, rectangle } from './strokes.ts';

/** Height of the bar, millimetres. */
const TALL = 2.4;

/**
 * A bar of a stated length on paper, in parts by turns dark and light, with a thin stroke at either end: the outer edges of
 * the bar are the length. `words` stand under it.
 *
 * @param length millimetres on paper.
 * @param parts into how many it is parted.
 * @returns a block as wide as the bar or as its words.
 * @check tests/unit/publish/page-parts.test.ts, tests/outside/pdf-pages.test.ts
 */
export function layOutScaleBar(
  length: number,
  parts: number,
  words: string,
  { size, measure }: { readonly size: number; readonly measure: TextMeasure },
): Block {
  const part = length / parts;
  const light = Array.from({ length: parts }, (_, i) => i).filter((i) => i % 2 === 1);
  const marks: Mark[] = [
    filled([rectangle(0, 0, length, TALL)], 'ink'),
    filled(
      light.map((i) => rectangle(i * part, 0.25, part - (i === parts - 1 ? 0.25 : 0), TALL - 0.5)),
      'paper',
    ),
  ];
  const width = measure.width(words, size);
  marks.push({ kind: 'text', spot: [0, TALL + 0.8 + size * ASCENT], text: words, size });
  return {
    width: Math.max(length, width),
    height: TALL + 0.8 + size * LEADING,
    marks: [{ kind: 'group', label: words, marks }],
  };
}
