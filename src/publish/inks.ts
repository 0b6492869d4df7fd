/** What a mark is drawn with, by what it means; a palette gives the colour. */
export type Ink =
  | 'ink'
  | 'soft'
  | 'rule'
  | 'faint'
  | 'paper'
  | 'plug'
  | 'keyway'
  | 'blade'
  | 'tool'
  | 'enters'
  | 'tight'
  | 'blocked'
  | 'overlap';

/** Colours for screens and colour printers, or greys that stay apart on any printer. */
export type Palette = 'colour' | 'grey';

/**
 * The colour of an ink, `#rrggbb`. Greys of neighbouring parts differ in lightness; colours may differ by hue alone, as
 * those of tool and blade do. Those of parts and verdicts are the window's by day: what a class saw there
 * is what it holds. Only keyways stay white, since a dark one takes much ink and hides the gap.
 *
 * @check tests/unit/app/palette-contrast.test.ts
 */
export function inkColour(ink: Ink, palette: Palette): string {
  return INKS[ink][palette];
}

const INKS: Readonly<Record<Ink, Readonly<Record<Palette, string>>>> = {
  ink: { colour: '#182030', grey: '#111111' },
  soft: { colour: '#4a5266', grey: '#484848' },
  rule: { colour: '#8a8f9c', grey: '#8a8a8a' },
  faint: { colour: '#d9d6cd', grey: '#d6d6d6' },
  paper: { colour: '#ffffff', grey: '#ffffff' },
  plug: { colour: '#ebe6da', grey: '#d2d2d2' },
  keyway: { colour: '#ffffff', grey: '#ffffff' },
  blade: { colour: '#dfae45', grey: '#8c8c8c' },
  tool: { colour: '#9fb0bd', grey: '#adadad' },
  enters: { colour: '#005c42', grey: '#2b2b2b' },
  tight: { colour: '#005a94', grey: '#5c5c5c' },
  blocked: { colour: '#953600', grey: '#111111' },
  overlap: { colour: '#d55e00', grey: '#111111' },
};
