/** An object of a family file. */
export type Json = Record<string, unknown>;

/** A plain outline. */
export const SQUARE = [
  [0, 0],
  [2, 0],
  [2, 8],
  [0, 8],
];

/** A plain outline in inches. */
export const SMALL_SQUARE = [
  [0, 0],
  [0.08, 0],
  [0.08, 0.32],
  [0, 0.32],
];

/** A plain groove. */
export const GROOVE = { side: 'left', bottom: 1.2, width: 0.9, depth: 0.6 };

/** An opening with this outline. */
export const outlineProfile = (outline: unknown, more: Json = {}): Json => ({
  id: 'heron-keyway',
  kind: 'opening',
  name: 'Heron keyway',
  outline,
  ...more,
});

/** A blank milled 2 x 8.4 with sizes replaced. */
export const milledProfile = (more: Json = {}, grooves: unknown = [GROOVE]): Json => ({
  id: 'heron-blank',
  kind: 'blank',
  name: 'Heron blank',
  milled: { thickness: 2, height: 8.4, grooves, ...more },
});

/** A sound family of two profiles with parts replaced. */
export function familyValue(more: Json = {}): Json {
  return {
    format: 'sectionary-family',
    version: 1,
    name: 'Two herons',
    units: 'mm',
    runningClearance: 0.04,
    profiles: [outlineProfile(SQUARE), milledProfile()],
    ...more,
  };
}

/** The text of that family. */
export const family = (more: Json = {}): string => JSON.stringify(familyValue(more));
/** A family whose second profile is this one. */
export const withProfile = (profile: unknown): string =>
  family({ profiles: [outlineProfile(SQUARE, { id: 'first' }), profile] });
/** A family whose second profile has this outline. */
export const withOutline = (outline: unknown): string => withProfile(outlineProfile(outline));
/** The family without these fields. */
export const without = (...fields: string[]): string =>
  family(Object.fromEntries(fields.map((field) => [field, undefined])));
