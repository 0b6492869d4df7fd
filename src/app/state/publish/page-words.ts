import type { Mark, Page } from '../../../publish/page.ts';

/**
 * What a page says, line by line: as it says it of itself, else its texts and labels in the order in which they stand.
 *
 * @check tests/unit/app/publish-choice.test.ts
 */
export function pageWords({ told, marks }: Page): readonly string[] {
  return (told ?? wordsOf(marks)).filter((line) => line.trim() !== '');
}

/** A group that has a label is that label; what is in it is only its picture. */
function wordsOf(marks: readonly Mark[]): string[] {
  return marks.flatMap((mark) => {
    if (mark.kind === 'text') return [mark.text];
    if (mark.kind === 'path') return [];
    return mark.label === undefined ? wordsOf(mark.marks) : [mark.label];
  });
}
