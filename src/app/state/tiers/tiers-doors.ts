import type { EntryTable } from '../../../family/entry-table.ts';
import type { ConceptCount } from '../../../family/tiers.ts';
import type { Diagram, DiagramInput } from '../../../jobs/lay-out-tiers.ts';
import type { JobOnItsWay } from '../job-on-its-way.ts';

/** What the Tiers view has done in other threads. */
export interface TiersDoors {
  /** Places for the nodes of a diagram and ways for its lines. */
  layOut(input: DiagramInput): JobOnItsWay<Diagram>;
  /** How large the concept lattice of a table is, up to `limit` concepts. */
  countConcepts(input: { readonly table: EntryTable; readonly limit: number }): JobOnItsWay<ConceptCount>;
}
