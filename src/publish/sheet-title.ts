import type { Family } from '../family/family.ts';
import type { SheetName, SheetOrder } from './sheet-order.ts';

/** What a sheet is called where its name stands beside others. */
export const SHEET_TITLES: Readonly<Record<SheetName, string>> = {
  chart: 'Section chart',
  matrix: 'Verdict matrix',
  scale: 'Opening and blank at true size',
  card: 'Door-side card',
  answers: 'Answer sheet',
  slides: 'Slides',
};

/** The title of a publication, as it stands in its file. */
export function sheetTitle(family: Family, { sheet }: SheetOrder): string {
  return `${SHEET_TITLES[sheet]}: ${family.name}`;
}
