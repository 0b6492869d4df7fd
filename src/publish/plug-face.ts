import type { PlugFace } from '../family/plug-face.ts';
import type { Spot, Stroke } from './page.ts';

/** Chords of each of the two arcs. */
const CHORDS = 40;

/** The boundary of a plug face round a spot. */
export function plugFaceStroke({ radius, half }: PlugFace, [x, y]: Spot, scale: number): Stroke {
  const turn = Math.asin(Math.min(1, half / radius));
  const arc = (middle: number): Spot[] =>
    Array.from({ length: CHORDS + 1 }, (_, i): Spot => {
      const angle = middle - turn + (2 * turn * i) / CHORDS;
      return [x + radius * scale * Math.sin(angle), y - radius * scale * Math.cos(angle)];
    });
  return { closed: true, spots: [...arc(0), ...arc(Math.PI)] };
}
