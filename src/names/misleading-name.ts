/** What a name is written on: one profile, a section (all its profiles), or one entry of the register by its place. */
export type NameTarget =
  | { readonly of: 'profile'; readonly id: string }
  | { readonly of: 'section'; readonly section: string }
  | { readonly of: 'register'; readonly index: number };

/** A new name for a thing. */
export interface Rename {
  readonly target: NameTarget;
  readonly to: string;
}

/**
 * How names mislead. joined: it joins the names of two sections and does not enter both. lengths: names of one section
 * that look like sections. order: the higher number is the shorter blank. two schemes: one text for different things.
 * look-alike: only look-alike signs differ, or may be misread. same section name: two sections under one name. foreign
 * keyway: a blank named like the keyway of another section.
 */
export type MisleadingKind =
  | 'joined'
  | 'lengths'
  | 'order'
  | 'two schemes'
  | 'look-alike'
  | 'same section name'
  | 'foreign keyway';

/** A name, or some names together, that mislead, and what to call the things instead. */
export interface MisleadingName {
  readonly kind: MisleadingKind;
  readonly texts: readonly string[];
  /** What is wrong, in a sentence. */
  readonly words: string;
  /** What comes of it. */
  readonly why: string;
  /** Renames that take the fault away; empty where none can be suggested. */
  readonly renames: readonly Rename[];
}
