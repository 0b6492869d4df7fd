import type { ViewName } from '../state/selection-state.ts';

/** The views in the order of the top bar. */
export const VIEWS: readonly { name: ViewName; label: string; title: string }[] = [
  { name: 'wall', label: 'Wall', title: 'One blank tried in every keyway' },
  { name: 'compare', label: 'Compare', title: 'One blank in one keyway, large' },
  { name: 'draw', label: 'Draw', title: 'One outline: its corners, its grooves, a picture under it' },
  { name: 'tiers', label: 'Tiers', title: 'The whole family: who enters what, what keyways share, what is claimed' },
  { name: 'plan', label: 'Plan', title: 'A family from areas and holders; room to grow, strength, capacity' },
  { name: 'gauge', label: 'Gauge', title: 'How thick a tool may be, and which tool is for which keyways' },
  { name: 'names', label: 'Names', title: 'What a name stands for, and what an unknown section is' },
  { name: 'teach', label: 'Teach', title: 'A lesson for a room, and a quiz' },
  { name: 'publish', label: 'Publish', title: 'Sheets to print, slides, and a display block in 3D' },
];
