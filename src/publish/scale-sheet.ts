import { entrantsOf, type Family, openingsOf } from '../family/family.ts';
import { bandText, gapText } from '../family/length-text.ts';
import { explainPlacement } from '../fit/explain-placement.ts';
import { fitSentence } from '../fit/fit-sentence.ts';
import type { Profile } from '../profile/profile.ts';
import { type Block, placeBlock } from './block.ts';
import { type FlowItem, flowBlocks } from './flow-blocks.ts';
import { ENLARGE_RANGE } from './order-fault.ts';
import type { Page } from './page.ts';
import { framedPages, frameFor, type PageFrame, type PageRoom, roomIn, SHEET_CAUTION } from './page-frame.ts';
import { layOutParagraph } from './paragraph.ts';
import type { TriedBlank } from './plug-picture.ts';
import { layOutScaleBar } from './scale-bar.ts';
import { type CellStyle, pairCell, scaleText, sectionCell } from './scale-cell.ts';
import { dimensionTable } from './scale-table.ts';
import type { SheetGround } from './sheet-ground.ts';
import type { ScaleOrder } from './sheet-order.ts';
import { tableItems } from './table.ts';

/** Length of the bar that the print is checked by, millimetres. */
const CHECK_BAR = 50;

const CAUTION = `An outline at true size is for laying a part on it, not a pattern to cut keys by. ${SHEET_CAUTION}`;

/**
 * Sections at true size and enlarged, with a bar of 50 mm that prints true, how to check it, and the dimensions of each
 * section: of one keyway and one blank and of both together, or of the whole family.
 *
 * @returns an enlargement that the paper has no room for is made less, and said so.
 * @check tests/unit/publish/scale.test.ts, tests/outside/pdf-pages.test.ts
 */
export function scaleSheet(ground: SheetGround, order: ScaleOrder): Page[] {
  const { family, measure } = ground;
  const frame = frameFor(order, 'Sections at true size and enlarged', family.name, CAUTION);
  const room = roomIn(frame, measure);
  const shown = shownSections(ground, order);
  const enlarge = order.enlarge ?? fittingEnlargement(shown, { frame, room }, order, ground);
  const items = sheetItems(shown, { frame, room }, { ...order, enlarge }, ground);
  const isEnlarged = styleOn({ frame, room }, shown, { ...order, enlarge }, ground).enlarge > 1;
  return framedPages(
    flowBlocks(items, room).map((marks) => ({ marks })),
    isEnlarged ? frame : { ...frame, title: 'Sections at true size' },
    measure,
  );
}

/** The paper of a sheet. */
interface ScalePaper {
  readonly frame: PageFrame;
  readonly room: PageRoom;
}

/** An order that says how much is enlarged. */
type EnlargedOrder = ScaleOrder & { readonly enlarge: number };

/** All that stands on the sheet, from its top; of one pair the table stays on one page. */
function sheetItems(shown: ShownSections, paper: ScalePaper, order: EnlargedOrder, ground: SheetGround): FlowItem[] {
  const { frame, room } = paper;
  const { measure } = ground;
  const intro = checkBlock(room.width, frame, ground);
  const style = styleOn(paper, shown, order, ground);
  const size = 2.8 * frame.zoom;
  const gap = 6 * frame.zoom;
  const words = layOutParagraph(scaleWords(order, style), { width: room.width, size }, measure);
  const items: FlowItem[] = [{ block: intro }, { block: words, gap: gap / 2, keep: true }];
  items.push(...rowsOfCells(cellsOf(shown, style), room.width, gap));
  const told = { width: room.width, size: size * 1.1, bold: true };
  if (shown.sentence !== '') items.push({ block: layOutParagraph(shown.sentence, told, measure), gap });
  const table = tableItems(dimensionTable(shown.sections, order.units, room.width, { size, measure }), gap);
  items.push(...(order.all ? table : table.map((item, i) => ({ ...item, keep: i < table.length - 1 }))));
  return items;
}

/** How cells are drawn under the bar. */
function styleOn(
  { frame, room }: ScalePaper,
  shown: ShownSections,
  order: EnlargedOrder,
  ground: SheetGround,
): CellStyle {
  const intro = checkBlock(room.width, frame, ground);
  return cellStyle(shown, { frame, room: { ...room, height: room.height - intro.height } }, order, ground);
}

/** How much is enlarged where nobody says: as much as one page takes of a pair, or two rows of two of a whole family. */
function fittingEnlargement(shown: ShownSections, paper: ScalePaper, order: ScaleOrder, ground: SheetGround): number {
  const { frame, room } = paper;
  const size = 3 * frame.zoom;
  const fits = (enlarge: number) => {
    const cells = cellsOf(shown, { enlarge, units: order.units, size, measure: ground.measure });
    const [wide, high] = [Math.max(...cells.map(({ width }) => width)), Math.max(...cells.map(({ height }) => height))];
    if (order.all) return wide <= room.width * 0.46 && high <= room.height * 0.42;
    const inRow = wide * cells.length + 6 * frame.zoom * (cells.length - 1) <= room.width;
    return (
      inRow &&
      styleOn(paper, shown, { ...order, enlarge }, ground).enlarge === enlarge &&
      flowBlocks(sheetItems(shown, paper, { ...order, enlarge }, ground), room).length === 1
    );
  };
  let [least, tooMuch]: [number, number] = [ENLARGE_RANGE.least, ENLARGE_RANGE.most + 1];
  while (tooMuch - least > 1) {
    const middle = (least + tooMuch) >> 1;
    if (fits(middle)) least = middle;
    else tooMuch = middle;
  }
  return least;
}

/** What stands on the sheet. */
interface ShownSections {
  readonly sections: readonly Profile[];
  /** The blank in the keyway, where the sheet is of one of each. */
  readonly pair: { readonly opening: Profile; readonly tried: TriedBlank } | null;
  readonly sentence: string;
}

/** The keyway and the blank or tool that a sheet of one pair is of. */
export function scalePair(family: Family, order: Pick<ScaleOrder, 'opening' | 'blank'>) {
  const openings = openingsOf(family);
  const entrants = entrantsOf(family);
  const opening = openings.find(({ id }) => id === order.opening) ?? openings[0];
  const own = entrants.find(({ section }) => section !== undefined && section === opening?.section);
  return { opening, profile: entrants.find(({ id }) => id === order.blank) ?? own ?? entrants[0] };
}

function shownSections({ family, fits }: SheetGround, order: ScaleOrder): ShownSections {
  if (order.all) return { sections: [...openingsOf(family), ...entrantsOf(family)], pair: null, sentence: '' };
  const { opening, profile } = scalePair(family, order);
  const sections = [opening, profile].filter((one) => one !== undefined);
  const fit = fits.fits[fits.profiles.indexOf(profile?.id)]?.[fits.openings.indexOf(opening?.id)];
  if (!fit) return { sections, pair: null, sentence: '' };
  const words = fitSentence(
    profile.name,
    opening.name,
    fit,
    explainPlacement(opening.ring, profile.ring, fit.placement),
    (nm) => gapText(nm, order.units),
    (from, to) => bandText(from, to, order.units),
  );
  const hatched =
    fit.verdict === 'blocked'
      ? ' Hatched: where both would need the same room. Heights are above the floor of the keyway.'
      : '';
  return { sections, pair: { opening, tried: { profile, fit } }, sentence: words + hatched };
}

/** The bar, and how the print is checked by it. */
function checkBlock(width: number, { zoom }: PageFrame, { measure }: SheetGround): Block {
  const size = 2.8 * zoom;
  const bar = layOutScaleBar(CHECK_BAR, 10, '50 mm (1.969 in), from outer edge to outer edge', { size, measure });
  const words =
    'Check the print first: lay a ruler along the bar. If it is not 50 mm long, print again at 100 %, without fitting to the page. A bar of 48 mm means that everything here is 4 % too small.';
  const beside = width - bar.width - 8 * zoom;
  const told = layOutParagraph(words, { width: beside, size }, measure);
  const height = Math.max(bar.height, told.height);
  return { width, height, marks: [...placeBlock(bar, 0, 0.8), ...placeBlock(told, bar.width + 8 * zoom, 0)] };
}

function scaleWords({ enlarge }: EnlargedOrder, style: CellStyle): string {
  const seen = 'Keyways are seen from the front of the plug, blanks from the bow.';
  if (style.enlarge === enlarge) return seen;
  return `${seen} Enlarged ${scaleText(style.enlarge)} times: ${scaleText(enlarge)} times have no room on this paper.`;
}

/** Cells as large as was ordered, or as the page has room for. */
function cellStyle(
  shown: ShownSections,
  { frame, room }: ScalePaper,
  { enlarge, units }: EnlargedOrder,
  { measure }: SheetGround,
): CellStyle {
  const size = 3 * frame.zoom;
  const fits = (tried: number) => {
    const cells = cellsOf(shown, { enlarge: tried, units, size, measure });
    return cells.every(({ width, height }) => width <= room.width && height <= room.height - 12 * frame.zoom);
  };
  let least = enlarge;
  while (least > 1 && !fits(least)) least = least > 4 ? Math.ceil(least - 1) : least - 0.5;
  const enlarged = Math.max(least, 0.1);
  const cells = cellsOf(shown, { enlarge: enlarged, units, size, measure });
  const width = Math.max(0, ...cells.map((cell) => cell.width));
  return { enlarge: enlarged, units, size, measure, width: Math.min(width, room.width) };
}

function cellsOf({ sections, pair }: ShownSections, style: CellStyle): Block[] {
  const cells = sections.map((profile) => sectionCell(profile, style));
  return pair ? [...cells, pairCell(pair.opening, pair.tried, style)] : cells;
}

/** Cells in rows, as many in each as there is room for. */
function rowsOfCells(cells: readonly Block[], width: number, gap: number): FlowItem[] {
  const widest = Math.max(1, ...cells.map((cell) => cell.width));
  const inRow = Math.max(1, Math.floor((width + gap) / (widest + gap)));
  const pitch = inRow > 1 ? Math.min(widest + 3 * gap, (width - widest) / (inRow - 1)) : 0;
  const rows = Array.from({ length: Math.ceil(cells.length / inRow) }, (_, i) =>
    cells.slice(i * inRow, (i + 1) * inRow),
  );
  return rows.map((row): FlowItem => {
    const height = Math.max(...row.map((cell) => cell.height));
    return { block: { width, height, marks: row.flatMap((cell, i) => placeBlock(cell, i * pitch, 0)) }, gap };
  });
}
