/** What kind of thing a name names. `series`: several blanks that differ in something else, their length for example. */
export type NameKind = 'keyway' | 'section' | 'blank' | 'tool' | 'series';

/** One name of the register of a family: what it stands for and who uses it. */
export interface NameEntry {
  /** As it is written. */
  readonly text: string;
  readonly kind: NameKind;
  /** The section that it stands for, as profiles name it. */
  readonly section?: string;
  /** Id of the one profile that it stands for, where the section does not say it. */
  readonly profile?: string;
  /** The naming scheme, list or catalogue that uses the name. */
  readonly scheme?: string;
  readonly chambers?: number;
  /** The name that is used instead now. */
  readonly supersededBy?: string;
  readonly note?: string;
}
