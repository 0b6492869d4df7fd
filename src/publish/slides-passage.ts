import { openingsOf } from '../family/family.ts';
import { sizeText } from '../family/length-text.ts';
import { nameList } from '../family/name-list.ts';
import { type Box, boxOf, NM_PER_MM, type Point } from '../geom/point.ts';
import { boundariesOf } from '../geom/region.ts';
import { commonPassage } from '../passage/find-passage.ts';
import type { Passage, PassageGroove } from '../passage/passage.ts';
import { keepApart } from '../teach/keep-apart.ts';
import { shortNameOf } from '../teach/teaching-knowledge.ts';
import { type Block, placeBlock, rowOfBlocks, stackBlocks } from './block.ts';
import type { Mark } from './page.ts';
import { layOutParagraph } from './paragraph.ts';
import { onPaper, outlineStroke, type PartView } from './section-picture.ts';
import type { SheetGround } from './sheet-ground.ts';
import { type Extent, LEAST_TYPE, type SlideGround } from './slides-frame.ts';
import { drawn, filled, polyline, rectangle } from './strokes.ts';

/** Millimetres: type, the column of the legend, and the line from a groove to its words. */
const SIZE = 5.6;
const LEGEND = 96;
const LEADER = 9;

/** Under which key a ground keeps the passage of some keyways. */
export function passageKey(ids: readonly string[]): string {
  return ids.join('\n');
}

/** What the chosen keyways have in common, as the ground has it, else found now. */
export function passageOf(ground: SheetGround, chosen: readonly string[]): Passage {
  const known = ground.passages?.get(passageKey(chosen));
  if (known) return known;
  const { family } = ground;
  const openings = openingsOf(family).map(({ id, ring }) => ({ id, ring }));
  const finding = commonPassage({ openings, chosen, runningClearance: family.runningClearance });
  for (;;) {
    const step = finding.next();
    if (step.done) return step.value;
  }
}

/** Keyways laid over each other, what they share filled, the widest blank in it, and whose wards made its grooves. */
export function passagePicture(slide: SlideGround, passage: Passage, room: Extent): Block {
  const { ground } = slide;
  const { measure } = ground;
  const legend = legendBlock(slide, passage);
  const wide = room.width - LEGEND - 8;
  const box = boxRound(slide, passage);
  if (!box) return legend;
  const scale = Math.min((room.height - 2) / (box.maxY - box.minY), (wide * 0.5) / (box.maxX - box.minX)) * NM_PER_MM;
  const middle = { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
  const view: PartView = { middle, at: [wide / 2, room.height / 2], scale };
  const label = 'Keyways laid over each other, what they have in common, and the widest blank in it';
  const marks: Mark[] = [
    { kind: 'group', label, marks: layers(slide, passage, view) },
    ...callouts(
      slide,
      passage,
      view,
      {
        left: onPaper({ x: box.minX, y: 0 }, view)[0],
        right: onPaper({ x: box.maxX, y: 0 }, view)[0],
        wide,
        high: room.height,
      },
      measure,
    ),
    ...placeBlock(legend, wide + 8, (room.height - legend.height) / 2),
  ];
  return { ...room, marks };
}

function layers(slide: SlideGround, passage: Passage, view: PartView): Mark[] {
  const outlines = movedOutlines(slide, passage).map((ring) => outlineStroke(ring, view));
  const common = boundariesOf(passage.common).map((ring) => outlineStroke(ring, view));
  const marks: Mark[] = outlines.map((outline) => filled([outline], 'plug'));
  if (common.length > 0) marks.push(filled(common, 'paper'));
  if (passage.blank) marks.push(filled([outlineStroke(passage.blank.ring, view)], 'blade'));
  marks.push(drawn(outlines, 'soft', 0.25));
  if (common.length > 0) marks.push(drawn(common, 'ink', 0.6));
  return marks;
}

function movedOutlines({ ground: { family } }: SlideGround, { members }: Passage): Point[][] {
  const openings = new Map(openingsOf(family).map((opening) => [opening.id, opening]));
  return members.flatMap(({ id, move }) => {
    const opening = openings.get(id);
    return opening ? [opening.ring.map(({ x, y }) => ({ x: x + move.x, y: y + move.y }))] : [];
  });
}

function boxRound(slide: SlideGround, passage: Passage): Box | null {
  const points = [...movedOutlines(slide, passage).flat(), ...(passage.blank?.ring ?? [])];
  return points.length > 0 ? boxOf(points) : null;
}

interface CalloutRoom {
  /** Where the drawing ends. */
  readonly left: number;
  readonly right: number;
  readonly wide: number;
  readonly high: number;
}

/** Beside each groove of the blank the keyways that have a ward there. */
function callouts(
  { parts }: SlideGround,
  passage: Passage,
  view: PartView,
  { left, right, wide, high }: CalloutRoom,
  measure: SheetGround['measure'],
): Mark[] {
  const names = new Map(parts.openings.map((opening) => [opening.id, shortNameOf(opening)]));
  const grooves = passage.blank?.grooves ?? [];
  return (['left', 'right'] as const).flatMap((side) => {
    const edge = side === 'left' ? left : right;
    const style = { width: Math.min(edge, wide - right) - LEADER - 3, size: LEAST_TYPE, most: 2 } as const;
    const align = side === 'left' ? 'end' : 'start';
    const blocks = grooves
      .filter((groove) => groove.side === side)
      .map((groove) => {
        const text = calloutText(groove, names, passage.members.length);
        const block = layOutParagraph(text, { ...style, align }, measure);
        const y = onPaper({ x: 0, y: (groove.from + groove.to) / 2 }, view)[1];
        return { block, y };
      })
      .sort((a, b) => a.y - b.y);
    const middles = keepApart(
      blocks.map(({ y }) => y),
      blocks.map(({ block }) => block.height),
      high,
    );
    return blocks.flatMap(({ block, y }, i) => {
      const far = side === 'left' ? edge - LEADER : edge + LEADER;
      const x = side === 'left' ? far - 1.5 - block.width : far + 1.5;
      return [
        drawn([polyline([edge, y], [far, middles[i]])], 'soft', 0.4),
        ...placeBlock(block, x, middles[i] - block.height / 2),
      ];
    });
  });
}

function calloutText({ ids }: PassageGroove, names: ReadonlyMap<string, string>, total: number): string {
  if (ids.length === total && total > 1) return total === 2 ? 'both' : `all ${total}`;
  return nameList([...new Set(ids.flatMap((id) => names.get(id) ?? []))], 4);
}

/** What the layers are, and the size of the widest blank. */
function legendBlock(slide: SlideGround, passage: Passage): Block {
  const { measure } = slide.ground;
  const line = (swatch: Mark[], text: string) => {
    const words = layOutParagraph(text, { width: LEGEND - 14, size: SIZE }, measure);
    return rowOfBlocks([{ width: 10, height: 7, marks: swatch }, words], 4);
  };
  const swatch = rectangle(0.4, 0.4, 9.2, 6.2);
  const count = passage.members.length;
  return stackBlocks(
    [
      line([filled([swatch], 'plug', { ink: 'soft', width: 0.25 })], `${count} keyways, laid over each other`),
      line([filled([swatch], 'paper', { ink: 'ink', width: 0.6 })], 'what all of them leave free'),
      ...(passage.blank ? [line([filled([swatch], 'blade')], blankWords(slide, passage))] : []),
    ],
    5,
  );
}

function blankWords({ order }: SlideGround, { blank }: Passage): string {
  return blank ? `the widest blank that passes all of them: ${sizeText(blank.width, blank.height, order.units)}` : '';
}

/** What the picture shows, in a sentence or two. */
export function toldPassage(slide: SlideGround, passage: Passage): string {
  const { members, blank } = passage;
  if (members.length === 0) return 'This step shows no keyway.';
  if (!blank) return `No blank passes all ${members.length} keyways.`;
  return `${members.length} keyways, laid over each other, and ${blankWords(slide, passage)}.`;
}
