import type { Mark, Page } from '../../../publish/page.ts';
import type { SheetOrder } from '../../../publish/sheet-order.ts';

/**
 * What a page says, line by line: as it says it of itself, else its texts and labels in the order in which they stand.
 *
 * @check tests/unit/app/publish-choice.test.ts
 */
export function pageWords({ told, marks }: Page): readonly string[] {
  return (told ?? wordsOf(marks)).filter((line) => line.trim() !== '');
}

/** Smaller type than this is read with a glass: about four points, millimetres. */
const LEAST_READ = 1.45;

/**
 * That the words on a chart are tiny, and what helps; null where they can be read.
 *
 * @check tests/unit/app/publish-choice.test.ts
 */
export function tinyTypeWords(
  pages: readonly Page[],
  { sheet, paper }: Pick<SheetOrder, 'sheet' | 'paper'>,
): string | null {
  if (sheet !== 'chart') return null;
  const least = Math.min(...pages.flatMap(({ marks }) => typeSizes(marks)));
  if (least >= LEAST_READ) return null;
  const cure = paper === 'A1' ? 'let it run over several pages' : 'choose a larger paper';
  return `The smallest words on this chart are only ${least.toFixed(1)} mm high: ${cure}.`;
}

function typeSizes(marks: readonly Mark[]): number[] {
  return marks.flatMap((mark) => {
    if (mark.kind === 'group') return typeSizes(mark.marks);
    return mark.kind === 'text' ? [mark.size] : [];
  });
}

/** A group that has a label is that label; what is in it is only its picture. */
function wordsOf(marks: readonly Mark[]): string[] {
  return marks.flatMap((mark) => {
    if (mark.kind === 'text') return [mark.text];
    if (mark.kind === 'path') return [];
    return mark.label === undefined ? wordsOf(mark.marks) : [mark.label];
  });
}
