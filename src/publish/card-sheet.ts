import { openingsOf } from '../family/family.ts';
import { plugFace } from '../family/plug-face.ts';
import { type Block, placeBlock } from './block.ts';
import { type CardContent, cardContents, doorCount } from './card-content.ts';
import { type CardStyle, cardFaces, cutCard } from './card-face.ts';
import type { Mark, Page } from './page.ts';
import { framedPages, frameFor, type PageBody, type PageRoom, roomIn } from './page-frame.ts';
import type { SheetGround } from './sheet-ground.ts';
import type { CardOrder } from './sheet-order.ts';

/** Room between cards, and round them for the cut marks, millimetres. */
const GAP = 6;
const EDGE = 3;

/** Width of a card at the usual size, millimetres. */
const CARD = 92;

/** Least and most width of several cards side by side at the usual size, millimetres. */
const LEAST = 82;
const MOST = 130;

/**
 * Door-side cards: what a holder's blank enters and what not, to be cut out and hung beside a door or kept with the blank.
 * One card is as large as the page has room for, several stand on a page with cut marks.
 *
 * @check tests/unit/publish/card.test.ts, tests/unit/publish/sheets-keep-in-the-page.test.ts
 */
export function cardSheet(ground: SheetGround, order: CardOrder): Page[] {
  const { family, measure } = ground;
  const contents = cardContents(ground, order);
  const frame = frameFor(order, contents.length === 1 ? 'Door-side card' : 'Door-side cards', family.name);
  const whole = roomIn(frame, measure);
  const room = { x: whole.x + EDGE, y: whole.y + EDGE, width: whole.width - 2 * EDGE, height: whole.height - 2 * EDGE };
  const foot = order.date ? `${family.name}, ${order.date}` : family.name;
  const common = { most: room.height, face: plugFace(openingsOf(family)), foot, measure };
  const bodies = contents.length === 1 ? oneCard(contents[0], common, room) : severalCards(contents, common, room);
  return framedPages(bodies, frame, measure);
}

type CommonStyle = Pick<CardStyle, 'most' | 'face' | 'foot' | 'measure'>;

/** Sizes that are tried for a single card, and how many doors stand side by side on it. */
const TRIED_UNITS = [3.6, 3.2, 2.8, 2.4, 2.1, 1.8, 1.6, 1.4, 1.25, 1.1];

/** Height of plug pictures in units: larger where there are few doors, none where there are many. */
function pictureHeight(doors: number): number {
  if (doors <= 6) return 13;
  return doors <= 24 ? 10 : 0;
}

function oneCard(content: CardContent, common: CommonStyle, room: PageRoom): PageBody[] {
  const picture = pictureHeight(doorCount(content));
  for (const unit of TRIED_UNITS) {
    for (const columns of [2, 3, 4]) {
      const width = (columns / 2) * CARD * unit;
      if (width > room.width + 1e-6) continue;
      const faces = cardFaces(content, { ...common, unit, columns, picture, width });
      if (faces.length === 1 && faces[0].height <= room.height)
        return [{ marks: centred(cutCard(faces[0], faces[0].height), room) }];
    }
  }
  const columns = Math.max(2, Math.floor((2 * room.width) / CARD));
  const faces = cardFaces(content, { ...common, unit: 1, columns, picture, width: room.width });
  return faces.map((face) => ({ marks: centred(cutCard(face, face.height), room) }));
}

function centred(card: Block, room: PageRoom): Mark[] {
  return placeBlock(card, room.x + (room.width - card.width) / 2, room.y);
}

/** Sizes that are tried for several cards, as shares of the usual one. */
const SHARES = [2.4, 2.1, 1.8, 1.6, 1.4, 1.25, 1.12];

/** Cards side by side and one under the other, as large as they can be on as few pages. */
function severalCards(contents: readonly CardContent[], common: CommonStyle, room: PageRoom): PageBody[] {
  const usual = packed(contents, common, room, 1);
  let best = usual;
  for (const unit of SHARES) {
    const larger = packed(contents, common, room, unit);
    if (larger.pages.length > usual.pages.length || larger.count > usual.count) continue;
    best = larger;
    break;
  }
  return best.pages.map((marks) => ({ marks }));
}

/** Those of one row are equally high. */
function packed(contents: readonly CardContent[], common: CommonStyle, room: PageRoom, unit: number) {
  const inRow = Math.max(1, Math.floor((room.width + GAP) / (LEAST * unit + GAP)));
  const width = Math.min((room.width - GAP * (inRow - 1)) / inRow, MOST * unit);
  const picture = pictureHeight(Math.max(...contents.map(doorCount)));
  const faces = contents.flatMap((content) => cardFaces(content, { ...common, unit, columns: 2, picture, width }));
  const pages: Mark[][] = [[]];
  let y = 0;
  for (let i = 0; i < faces.length; i += inRow) {
    const row = faces.slice(i, i + inRow);
    const height = Math.max(...row.map((face) => face.height));
    if (y > 0 && y + height > room.height + 1e-6) {
      pages.push([]);
      y = 0;
    }
    for (const [k, face] of row.entries())
      pages[pages.length - 1].push(...placeBlock(cutCard(face, height), room.x + k * (width + GAP), room.y + y));
    y += height + GAP;
  }
  return { pages, count: faces.length };
}
