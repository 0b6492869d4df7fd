import { countWord } from '../family/count-word.ts';
import { nameList } from '../family/name-list.ts';
import type { TextMeasure } from '../lettering/text-measure.ts';
import { type Block, placeBlock, rowOfBlocks, stackBlocks } from './block.ts';
import { type ChartPart, type ChartPlan, planChart } from './chart-parts.ts';
import { chartPicture } from './chart-picture.ts';
import { type ChartContent, type ChartRow, chartContent } from './chart-rows.ts';
import { chartWordsPages, leavesWordsOut } from './chart-words.ts';
import type { Page } from './page.ts';
import { framedPages, frameFor, type PageBody, type PageRoom, roomIn } from './page-frame.ts';
import { layOutLine, layOutParagraph } from './paragraph.ts';
import type { SheetGround } from './sheet-ground.ts';
import type { ChartOrder } from './sheet-order.ts';
import { verdictSign } from './verdict-sign.ts';

/**
 * The section chart: keyways side by side at the foot, over each the blank that enters it alone, above them tier by tier
 * a line for each blank that enters several, what enters all on top. A mark where a line meets the post of a keyway says
 * that it enters; the words beside the line say the same.
 *
 * @returns one page where there is room, or one page is ordered; else runs of keyways with all lines over them, and where
 * words were left out, all of them on pages at the end.
 * @check tests/unit/publish/chart.test.ts, tests/unit/publish/sheets-keep-in-the-page.test.ts
 */
export function chartSheet(ground: SheetGround, order: ChartOrder): Page[] {
  const { family, measure } = ground;
  const frame = frameFor(order, 'Section chart', family.name);
  const room = roomIn(frame, measure);
  const content = chartContent(ground, order);
  const intro = (unit: number) => introBlock(content, null, { width: room.width, unit, measure });
  const plan = planChart(
    content,
    {
      width: room.width,
      height: (unit) => room.height - intro(unit).height - INTRO_GAP * unit,
      zoom: frame.zoom,
      onePage: order.onePage ?? false,
    },
    measure,
  );
  const bodies = plan.parts.map((part) => partBody(part, plan, content, room, measure));
  const words =
    !order.onePage && leavesWordsOut(content, plan.sizes, measure)
      ? chartWordsPages(content, room, frame.zoom, measure)
      : [];
  return framedPages([...bodies, ...words], frame, measure);
}

/** Between the words at the top and the chart, in units. */
const INTRO_GAP = 3;

function partBody(
  part: ChartPart,
  plan: ChartPlan,
  content: ChartContent,
  room: PageRoom,
  measure: TextMeasure,
): PageBody {
  const { unit } = plan.sizes;
  const intro = introBlock(content, { part, plan }, { width: room.width, unit, measure });
  const top = intro.height + INTRO_GAP * unit;
  const height = room.height - top;
  const picture = chartPicture({
    part,
    sizes: plan.sizes,
    goesOn: (row) => goesOnWords(row, part, plan),
    measure,
    height,
  });
  const marks = [
    ...placeBlock(intro, room.x, room.y),
    ...placeBlock(picture, room.x + Math.max(0, (room.width - picture.width) / 2), room.y + top),
  ];
  if (plan.parts.length === 1) return { marks };
  const names = [part.columns[0], part.columns[part.columns.length - 1]].map(({ name }) => name);
  return {
    marks,
    title: part.columns.length === 1 ? `Section chart, ${names[0]}` : `Section chart, ${names.join(' to ')}`,
  };
}

/** "page 2", "pages 1 and 3": where else a line has marks. */
function goesOnWords(row: ChartRow, part: ChartPart, { parts }: ChartPlan): string {
  const pages = parts.flatMap((other, i) =>
    other.from !== part.from && other.rows.includes(row) ? [String(i + 1)] : [],
  );
  if (pages.length === 0) return '';
  const shown = pages.length > 4 ? [...pages.slice(0, 3), '…'] : pages;
  return pages.length === 1 ? `also on\npage ${pages[0]}` : `also on pages\n${shown.join(', ')}`;
}

interface IntroStyle {
  readonly width: number;
  readonly unit: number;
  readonly measure: TextMeasure;
}

/** How the chart is read, what the marks mean, at which scale it is drawn, what enters nothing, and where lines go on. */
function introBlock(
  content: ChartContent,
  at: { readonly part: ChartPart; readonly plan: ChartPlan } | null,
  { width, unit, measure }: IntroStyle,
): Block {
  const size = 2.8 * unit;
  const style = { width, size };
  const blocks = [layOutParagraph(introWords(content), style, measure)];
  const note = at ? partNote(at.part, at.plan) : ' ';
  blocks.push(legend(at?.plan.sizes.scale ?? 1, { width, unit, measure }));
  if (content.outside.length > 0)
    blocks.push(layOutParagraph(`Enters no keyway: ${nameList(content.outside, 12)}.`, style, measure));
  if (!at || at.plan.parts.length > 1) blocks.push(layOutParagraph(note, { ...style, bold: true, most: 2 }, measure));
  return stackBlocks(blocks, 0.8 * unit);
}

function introWords({ columns, rows }: ChartContent): string {
  const keyways = countWord(columns.length, 'keyway');
  if (rows.length === 0) return `${keyways}, seen from the front. Over each stands what enters it, and no other.`;
  return `${keyways}, seen from the front. Over each stands what enters it alone; above, tier by tier, what enters several. Follow a line to the right: it enters each keyway on whose post it bears a mark.`;
}

/** The marks with their words, and the scale. */
function legend(scale: number, { width, unit, measure }: IntroStyle): Block {
  const size = 2.6 * unit;
  const line = (text: string) => layOutLine(text, { size, ink: 'soft' }, measure);
  const drawn = `Sections drawn ${scaleWords(scale)} their true size.`;
  const signs = [
    verdictSign('enters', size, measure),
    verdictSign('tight', size, measure),
    line('no mark: stays out'),
    line(drawn),
  ];
  const row = rowOfBlocks(signs, 4 * unit);
  if (row.width <= width) return row;
  return stackBlocks([rowOfBlocks(signs.slice(0, 3), 4 * unit), signs[3]], 0.5 * unit);
}

function scaleWords(scale: number): string {
  return `${scale >= 1.95 ? scale.toFixed(1) : scale.toFixed(2)} times`;
}

/** What of the chart a page shows, and where the rest is. */
function partNote({ goesOnAbove, goesOnBelow, columns, from, to }: ChartPart, { parts }: ChartPlan): string {
  const here = parts.findIndex(
    (part) => part.from === from && part.goesOnBelow === goesOnBelow && part.columns === columns,
  );
  const words = [`Keyways ${from + 1} to ${to}.`];
  if (goesOnBelow) words.push(`What enters one of them alone, and lower tiers, stand on page ${here}.`);
  if (goesOnAbove) words.push(`Their posts go on upwards on page ${here + 2}.`);
  return words.join(' ');
}
