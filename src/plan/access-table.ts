/** Which blank must enter which section: `table[section][blank]` is 1 must enter, 0 must not, null either. */
export type AccessTable = readonly (readonly (0 | 1 | null)[])[];
