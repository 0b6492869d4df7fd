import type { Point } from '../../src/geom/point.ts';
import type { FitCase } from './fit-case.ts';

/*
 * The same shape written in other ways: what a drawing program or a hand may deliver. Every way must give the
 * same fit.
 */

/** A way of writing an outline down that does not change the shape. */
export interface Rewriting {
  readonly name: string;
  readonly write: (outline: readonly Point[]) => Point[];
  /** The result still keeps the promise of a ring: no repeats, counter-clockwise. */
  readonly keepsRing: boolean;
}

/** All the ways. */
export const rewritings: readonly Rewriting[] = [
  { name: 'starting elsewhere', write: (o) => [...o.slice(2), ...o.slice(0, 2)], keepsRing: true },
  { name: 'with collinear vertices', write: withMiddles, keepsRing: true },
  { name: 'clockwise', write: (o) => [...o].reverse(), keepsRing: false },
  { name: 'with the first vertex again at the end', write: (o) => [...o, o[0]], keepsRing: false },
  {
    name: 'with repeated vertices',
    write: (o) => o.flatMap((p, i) => (i % 2 === 0 ? [p, p, p] : [p])),
    keepsRing: false,
  },
  {
    name: 'clockwise, closed, repeated',
    write: (o) => [...o, o[0]].reverse().flatMap((p) => [p, p]),
    keepsRing: false,
  },
];

/** The case with opening and blank both written that way. */
export function rewritten(fitCase: FitCase, rewriting: Rewriting): FitCase {
  return {
    ...fitCase,
    name: `${fitCase.name}, ${rewriting.name}`,
    opening: { outer: rewriting.write(fitCase.opening.outer), islands: fitCase.opening.islands },
    blank: rewriting.write(fitCase.blank),
  };
}

/** A vertex in the middle of every edge whose middle is a whole nanometre, so that the shape stays the same. */
function withMiddles(outline: readonly Point[]): Point[] {
  return outline.flatMap((p, i) => {
    const next = outline[(i + 1) % outline.length];
    const middle = { x: (p.x + next.x) / 2, y: (p.y + next.y) / 2 };
    return Number.isInteger(middle.x) && Number.isInteger(middle.y) ? [p, middle] : [p];
  });
}
