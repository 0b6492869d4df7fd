import type { MeasuredPairs } from '../family/entry-matrix.ts';
import type { Family } from '../family/family.ts';
import { scalePair } from './scale-sheet.ts';
import type { SheetOrder } from './sheet-order.ts';

/**
 * Of which blocked pairs a sheet tells or draws how far they are from going in. A chart only tells what goes in, so that
 * it need not wait for what takes longest to judge.
 *
 * @check tests/unit/jobs/publish-sheets.test.ts
 */
export function marginsNeeded(family: Family, order: SheetOrder): MeasuredPairs {
  if (order.sheet === 'chart' || (order.sheet === 'scale' && order.all)) return () => false;
  if (order.sheet !== 'scale') return () => true;
  const { opening, profile } = scalePair(family, order);
  return (entrantId, openingId) => entrantId === profile.id && openingId === opening.id;
}
