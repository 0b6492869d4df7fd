/** The colours that the canvas takes from the page's palette. */
const NAMES = {
  ink: '--ink',
  inkSoft: '--ink-soft',
  paperLit: '--paper-lit',
  face: '--face',
  plug: '--plug',
  plugEdge: '--plug-edge',
  voidFill: '--void',
  voidEdge: '--void-edge',
  brass: '--brass',
  brassEdge: '--brass-edge',
  steel: '--steel',
  clash: '--clash',
  clashGround: '--clash-ground',
  clashEdge: '--clash-edge',
  blocked: '--blocked',
} as const;

/** Colours by their role in a drawing, as CSS colours. */
export type Palette = Readonly<Record<keyof typeof NAMES, string>>;

/** The typeface of all lettering on a canvas. */
export const TYPE = "'Atkinson Hyperlegible Next', Verdana, sans-serif";

/** Reads the palette in force off the page. */
export function readPalette(): Palette {
  const style = getComputedStyle(document.documentElement);
  const entries = Object.entries(NAMES).map(([role, name]) => [role, style.getPropertyValue(name).trim()]);
  return Object.fromEntries(entries) as Palette;
}
