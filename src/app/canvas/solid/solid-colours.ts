import type { SolidColours } from './solid-picture.ts';

const NAMES = {
  ground: '--paper',
  edge: '--brass-edge',
  bed: '--rule-strong',
  pick: '--focus',
  clash: '--clash',
  clashGround: '--clash-ground',
  clashEdge: '--clash-edge',
} as const satisfies Record<keyof SolidColours, string>;

/** The colours of a scene, off the page's palette in force. */
export function readSolidColours(): SolidColours {
  const style = getComputedStyle(document.documentElement);
  const entries = Object.entries(NAMES).map(([role, name]) => [role, style.getPropertyValue(name).trim()]);
  return Object.fromEntries(entries) as Record<keyof SolidColours, string>;
}
