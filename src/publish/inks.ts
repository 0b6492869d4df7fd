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
  | 'enters'
  | 'tight'
  | 'blocked'
  | 'overlap';

/** Colours for screens and colour printers, or greys that stay apart on any printer. */
export type Palette = 'colour' | 'grey';

/** The colour of an ink, `#rrggbb`. In both palettes every two inks of neighbouring meaning differ in lightness too. */
export function inkColour(ink: Ink, palette: Palette): string {
  return INKS[ink][palette];
}

const INKS: Readonly<Record<Ink, Readonly<Record<Palette, string>>>> = {
  ink: { colour: '#182030', grey: '#111111' },
  soft: { colour: '#4a5266', grey: '#484848' },
  rule: { colour: '#8a8f9c', grey: '#8a8a8a' },
  faint: { colour: '#d9d6cd', grey: '#d6d6d6' },
  paper: { colour: '#ffffff', grey: '#ffffff' },
  plug: { colour: '#d8cfae', grey: '#d2d2d2' },
  keyway: { colour: '#ffffff', grey: '#ffffff' },
  blade: { colour: '#5f7fa6', grey: '#8c8c8c' },
  enters: { colour: '#0b6e4f', grey: '#2b2b2b' },
  tight: { colour: '#9a6500', grey: '#5c5c5c' },
  blocked: { colour: '#a8231c', grey: '#111111' },
  overlap: { colour: '#a8231c', grey: '#111111' },
};
