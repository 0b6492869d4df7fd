import type { Vertex } from '../geom/vertex.ts';

/** Why an operation on an outline cannot be done, and what to do about it. */
export interface ChangeFault {
  readonly what: string;
  readonly cure: string;
}

/** The vertices that an operation leads to, or why it leads nowhere. Whether they are sound is for `makeDrawn` to say. */
export type OutlineChange =
  | { readonly ok: true; readonly vertices: readonly Vertex[] }
  | { readonly ok: false; readonly fault: ChangeFault };

/** An operation that was done. */
export function changed(vertices: readonly Vertex[]): OutlineChange {
  return { ok: true, vertices };
}

/** An operation that cannot be done. */
export function notChanged(what: string, cure: string): { readonly ok: false; readonly fault: ChangeFault } {
  return { ok: false, fault: { what, cure } };
}
