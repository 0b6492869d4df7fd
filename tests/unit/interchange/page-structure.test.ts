import { expect, test } from 'vitest';
import { type PagePart, pageStructure } from '../../../src/interchange/pdf/page-structure.ts';
import type { GroupMark, Mark, TextMark } from '../../../src/publish/page.ts';

const text = (words: string, y: number, more: Partial<TextMark> = {}): TextMark => ({
  kind: 'text',
  spot: [10, y],
  text: words,
  size: 4,
  ...more,
});
const rule: Mark = {
  kind: 'path',
  strokes: [
    {
      closed: false,
      spots: [
        [0, 0],
        [9, 0],
      ],
    },
  ],
  line: { ink: 'ink', width: 1 },
};
const group = (marks: readonly Mark[], more: Partial<GroupMark> = {}): GroupMark => ({ kind: 'group', marks, ...more });

/** Tags with what they hold, in short. */
function told(part: PagePart): unknown {
  if (part.kind === 'unread') return 'unread';
  if (part.kind === 'clipped') return { clipped: part.parts.map(told) };
  if (part.kind === 'together') return { [part.tag]: part.parts.map(told) };
  const words = part.marks.map((mark) => (mark.kind === 'text' ? mark.text : ''));
  const tag = part.scope ? `${part.tag} ${part.scope}` : part.tag;
  return part.alt === undefined ? `${tag}: ${words.join(' / ')}` : `${part.tag} of ${part.alt}`;
}

const read = (marks: readonly Mark[]) => pageStructure({ title: 'A page', marks }).parts.map(told);

test('lines of one paragraph are one, another look or a distance is another; rules are not read; the heading leads', () => {
  expect(
    read([
      rule,
      text('a blank goes', 20),
      text('into a keyway', 25),
      text('Second', 32),
      text('bold', 37, { bold: true }),
      rule,
      rule,
      text('Title', 5, { heading: 1 }),
    ]),
  ).toEqual(['H1: Title', 'unread', 'P: a blank goes / into a keyway', 'P: Second', 'P: bold', 'unread']);
});

test('a picture is told by its label; a sign is not where its word stands behind it; a label over pictures gives way to them', () => {
  const picture = group([rule], { label: 'Heron blank' });
  const sign = group([rule], { label: 'enters' });
  expect(read([picture, sign, text('enters', 20)])).toEqual(['Figure of Heron blank', 'unread', 'P: enters']);
  expect(read([group([picture, text('why', 20)], { label: 'Answer 1' })])).toEqual(['Figure of Heron blank', 'P: why']);
});

test('rows that follow each other are one table, with heads of columns and of rows', () => {
  const cell = (words: string) => group([text(words, 20)], { part: 'cell' });
  const head = (words: string) => group([text(words, 20)], { part: 'head' });
  const row = (marks: readonly Mark[]) => group(marks, { part: 'row' });
  expect(
    read([row([group([], { part: 'head' }), head('Heron')]), row([head('Heron blank'), cell('enters'), rule])]),
  ).toEqual([
    {
      Table: [{ TR: ['TH Column: ', 'TH Column: Heron'] }, { TR: ['TH Row: Heron blank', 'TD: enters', 'unread'] }],
    },
  ]);
});

test('what is cut off by an area stays cut off, and is read where it has words', () => {
  const clip = [
    {
      closed: true,
      spots: [
        [0, 0],
        [9, 0],
        [9, 9],
      ] as const,
    },
  ];
  expect(read([group([rule], { clip }), group([text('in', 20)], { clip })])).toEqual([
    'unread',
    { clipped: ['P: in'] },
  ]);
});
