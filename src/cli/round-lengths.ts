/** Nanometres as millimetres, to the whole nanometre. */
export function mm(nm: number): number {
  return Math.round(nm) / 1e6;
}

/** Nanometres as micrometres, to 0.1 um. */
export function um(nm: number): number {
  return Math.round(nm / 100) / 10;
}
