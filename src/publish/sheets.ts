import { answersSheet } from './answers-sheet.ts';
import { cardSheet } from './card-sheet.ts';
import { chartSheet } from './chart-sheet.ts';
import { matrixSheet } from './matrix-sheet.ts';
import type { Page } from './page.ts';
import { scaleSheet } from './scale-sheet.ts';
import type { SheetGround } from './sheet-ground.ts';
import type { SheetOrder } from './sheet-order.ts';
import { slidesSheet } from './slides-sheet.ts';

/** Lays a sheet out. An order that cannot be met is refused before, by `orderFault`. */
export type LayOutSheet<Order extends SheetOrder = SheetOrder> = (ground: SheetGround, order: Order) => Page[];

/**
 * The pages of a sheet, in the order in which they are printed.
 *
 * @returns at least one page.
 * @check tests/unit/publish/sheets.test.ts
 */
export function layOutSheet(ground: SheetGround, order: SheetOrder): Page[] {
  switch (order.sheet) {
    case 'card':
      return cardSheet(ground, order);
    case 'scale':
      return scaleSheet(ground, order);
    case 'chart':
      return chartSheet(ground, order);
    case 'matrix':
      return matrixSheet(ground, order);
    case 'answers':
      return answersSheet(ground, order);
    case 'slides':
      return slidesSheet(ground, order);
  }
}
