import type { AccessTable } from './access-table.ts';

/** A section that the plan asks for. */
export interface PlannedSection {
  readonly name: string;
  /** Ids of the areas whose keyways have it. */
  readonly areas: readonly string[];
}

/** A blank that the plan asks for. */
export interface PlannedBlank {
  /** The same for the same set of sections, whatever their order. */
  readonly id: string;
  readonly name: string;
  /** Places of the sections that it must enter, ascending. */
  readonly sections: readonly number[];
  /** Places of the sections that it may enter or not, ascending. */
  readonly free: readonly number[];
  readonly rank: 'base' | 'group' | 'all-section';
  /** Ids of those who carry it; empty: a base or all-section blank that is only asked for. */
  readonly holders: readonly string[];
}

/** Something in a plan that cannot be meant so, is missing, or is worth knowing. */
export interface AccessFault {
  /** contradiction: nothing can be planned before it is cured. empty: something is still to come. note: worth knowing. */
  readonly kind: 'contradiction' | 'empty' | 'note';
  readonly what: string;
  readonly cure: string;
  /** Ids of the areas and of the holders concerned. */
  readonly areas: readonly string[];
  readonly holders: readonly string[];
}

/** What a plan asks for: sections, blanks, and which must enter which. */
export interface Access {
  readonly sections: readonly PlannedSection[];
  readonly blanks: readonly PlannedBlank[];
  /** `table[section][blank]`: 1 must enter, 0 must not, null either. */
  readonly table: AccessTable;
  readonly faults: readonly AccessFault[];
}
