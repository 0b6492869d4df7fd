import type { Page, Spot, Stroke } from '../../src/publish/page.ts';

const area = (...spots: Spot[]): Stroke => ({ closed: true, spots });
const line = (...spots: Spot[]): Stroke => ({ closed: false, spots });

/** A rectangle from its upper left corner. */
const box = (x: number, y: number, width: number, height: number) =>
  area([x, y], [x + width, y], [x + width, y + height], [x, y + height]);

/** Where a bar of 50 mm stands, millimetres. */
export const BAR = { left: 20, top: 20, width: 50, height: 4 } as const;

/** The lines of text of the page, as they are drawn. */
export const LINES = {
  plain: 'The Bittern blank enters 7 of 10 keyways, 0.055 mm free all round',
  kerned: 'AVATAR, To Wave, Yarrow',
  more: 'Łódź, Győr, Besançon, Zürich',
  signs: '“½ × 4” – 20 °C ± 1 <&> ‘it’s’',
  turned: 'turned by thirty degrees',
} as const;

/** A page with every kind of mark and every way of drawing it. */
export const EVERY_MARK: Page = {
  title: 'Every kind of mark <&>',
  width: 150,
  height: 110,
  marks: [
    { kind: 'path', strokes: [box(BAR.left, BAR.top, BAR.width, BAR.height)], fill: 'ink' },
    // A hole by the even-odd rule, filled and drawn round.
    {
      kind: 'path',
      strokes: [box(10, 30, 30, 20), box(15, 35, 20, 10)],
      fill: 'plug',
      line: { ink: 'ink', width: 0.6 },
    },
    // Open and dashed, with a sharp corner.
    {
      kind: 'path',
      strokes: [line([50, 32], [58, 48], [66, 32])],
      line: { ink: 'blocked', width: 1, dashes: [3, 1.5] },
    },
    { kind: 'path', strokes: [line([72, 48], [80, 32], [88, 48])], line: { ink: 'enters', width: 1.4 } },
    // Clipped by a triangle with a hole.
    {
      kind: 'group',
      label: 'A clipped bar',
      clip: [area([95, 50], [135, 50], [115, 28]), box(110, 42, 10, 4)],
      marks: [{ kind: 'path', strokes: [box(90, 36, 50, 12)], fill: 'blade' }],
    },
    { kind: 'text', spot: [10, 60], text: LINES.plain, size: 4 },
    { kind: 'text', spot: [75, 68], text: LINES.kerned, size: 6, bold: true, align: 'middle' },
    { kind: 'text', spot: [140, 76], text: LINES.more, size: 4, align: 'end', ink: 'enters' },
    { kind: 'text', spot: [10, 84], text: LINES.signs, size: 5 },
    { kind: 'text', spot: [90, 85], text: LINES.turned, size: 4, turned: 30 },
  ],
};
