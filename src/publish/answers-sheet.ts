import { openingsOf } from '../family/family.ts';
import { plugFace } from '../family/plug-face.ts';
import type { Profile } from '../profile/profile.ts';
import { makeQuiz } from '../teach/quiz.ts';
import { type QuestionStyle, questionBlock, questionHeight } from './answers-question.ts';
import { type Reply, type ReplyStyle, replyBlock } from './answers-reply.ts';
import { type Block, emptyBlock, placeBlock, stackBlocks } from './block.ts';
import { type FlowItem, flowBlocks } from './flow-blocks.ts';
import type { Page } from './page.ts';
import { framedPages, frameFor, type PageBody, type PageFrame, type PageRoom, roomIn } from './page-frame.ts';
import { ASCENT, layOutParagraph } from './paragraph.ts';
import { sizeOfRing } from './section-picture.ts';
import type { SheetGround } from './sheet-ground.ts';
import type { AnswersOrder } from './sheet-order.ts';
import { drawn, polyline } from './strokes.ts';
import { taughtGround } from './taught-ground.ts';

/** Millimetres on A4: type, room between columns, the least width of a question and the greatest height of its picture. */
const TYPE = 3.2;
const APART = 7;
const LEAST_WIDTH = 84;
const PICTURE = { wide: 0.42, high: 37, most: 3.5 };
/** Height of the picture of an answer. */
const REPLY_HIGH = 22;

/**
 * An answer sheet for a class: the questions of a quiz, each with its two parts apart and without names, boxes to tick and
 * lines to write on; then, on pages of their own, the answers with their pictures and reasons.
 *
 * @returns the same questions for the same seed, as long as the outlines stay as they are; fewer where the family has
 *   fewer different pairs.
 * @check tests/unit/publish/class-sheets.test.ts
 */
export function answersSheet(ground: SheetGround, order: AnswersOrder): Page[] {
  const replies = repliesOf(ground, order);
  const frame = frameFor(order, 'Does it go in?', ground.family.name);
  const room = roomIn(frame, ground.measure);
  const questions = questionPages(ground, order, replies, frame, room);
  const answers = replies.length === 0 ? [] : answerPages(ground, order, replies, frame, room);
  return framedPages([...questions, ...answers], frame, ground.measure).map((page, i) => ({
    ...page,
    told: i < questions.length ? toldQuestions(page.title) : [page.title, ...replies.map(toldReply)],
  }));
}

function repliesOf(ground: SheetGround, { questions, seed, units }: AnswersOrder): Reply[] {
  const knowledge = taughtGround(ground, units);
  const profiles = new Map(ground.family.profiles.map((profile) => [profile.id, profile]));
  return makeQuiz(knowledge, seed, questions).flatMap(({ entrantId, openingId }, i) => {
    const [entrant, opening] = [profiles.get(entrantId), profiles.get(openingId)];
    const fit = knowledge.fitOf(entrantId, openingId);
    if (!entrant || !opening || !fit) return [];
    return [{ number: i + 1, entrant, opening, fit, sentence: knowledge.sentence(entrantId, openingId) }];
  });
}

/** Columns of a page and their width. */
function columnsIn(room: PageRoom, zoom: number): { readonly count: number; readonly width: number } {
  const count = Math.max(1, Math.floor((room.width + APART * zoom) / ((LEAST_WIDTH + APART) * zoom)));
  return { count, width: (room.width - (count - 1) * APART * zoom) / count };
}

function questionPages(
  ground: SheetGround,
  order: AnswersOrder,
  replies: readonly Reply[],
  frame: PageFrame,
  room: PageRoom,
): PageBody[] {
  const { zoom } = frame;
  const size = TYPE * zoom;
  const { count, width } = columnsIn(room, zoom);
  const face = plugFace(openingsOf(ground.family));
  const widest = Math.max(0, ...replies.map(({ entrant }) => sizeOfRing(entrant.ring).width));
  const tallest = Math.max(2 * face.radius, ...replies.map(({ entrant }) => sizeOfRing(entrant.ring).height));
  const rows = Math.ceil(replies.length / count);
  const tried = SMALLER.map((share) => {
    const fitting = Math.min(
      PICTURE.most * zoom,
      (PICTURE.high * share * zoom) / tallest,
      (width * PICTURE.wide) / (widest + 2 * face.half + 2.2),
    );
    const scale = Math.max(0.1, Math.floor(fitting * 10) / 10);
    const top = introBlock(ground, order, replies, { width: room.width, size, scale });
    const least = questionHeight(size, tallest * scale, LINES * share);
    return { scale, top, ...rowsOnPages(rows, least, { zoom, room, top }) };
  });
  const fewest = Math.min(...tried.map(({ pages }) => pages));
  const { scale, top, height } = tried.find(({ pages }) => pages === fewest) ?? tried[0];
  const blankWidth = widest * scale;
  const style: QuestionStyle = { width, height, size, scale, blankWidth, face, measure: ground.measure };
  const blocks = replies.map(({ number, entrant, opening }) => questionBlock(number, entrant, opening, style));
  const items = rowItems(blocks, count, width, zoom);
  return flowBlocks([{ block: top, keep: true }, ...items], room).map((marks) => ({ marks }));
}

/** Shares of the usual size that pictures and lines are tried in: a question or two alone on a page is worth smaller ones. */
const SMALLER = [1, 0.92, 0.84, 0.76];

/** Lines to write on, at the usual size. */
const LINES = 3;

interface RowRoom {
  readonly zoom: number;
  readonly room: PageRoom;
  readonly top: Block;
}

/** How high rows of questions are that need so much at least, and how many pages they take. */
function rowsOnPages(rows: number, least: number, { zoom, room, top }: RowRoom) {
  const below = room.height - top.height - 2 * zoom;
  const fitting = (free: number) => Math.max(1, Math.floor(free / (least + 2 * zoom)));
  const onFirst = Math.min(rows, fitting(below));
  const later = fitting(room.height);
  // Rows are made higher until they fill the first page, within reason and without a page more: more room to write.
  const high = [
    1.4 * least,
    below / Math.max(1, onFirst) - 2 * zoom,
    rows > onFirst ? room.height / later - 2 * zoom : Infinity,
  ];
  return { pages: 1 + Math.ceil((rows - onFirst) / later), height: Math.max(least, Math.min(...high)) };
}

/** Lines for name and date, and what is to be done. */
function introBlock(
  { measure, family }: SheetGround,
  { questions, seed }: AnswersOrder,
  replies: readonly Reply[],
  { width, size, scale }: { readonly width: number; readonly size: number; readonly scale: number },
): Block {
  const kinds = replies.some(({ entrant }) => entrant.kind === 'tool') ? 'blank or tool' : 'blank';
  const asked =
    `Each picture shows a ${kinds} and a keyway, both seen the same way round and ${scale} times as large as they are. ` +
    'Would it go in? Tick a box, and write what decides it.';
  const few =
    replies.length < questions
      ? ` There are ${replies.length} questions: ${family.name} has no more pairs that differ.`
      : '';
  const words = replies.length === 0 ? 'There is nothing to ask: the family needs a keyway and a blank.' : asked + few;
  const round = replies.length === 0 ? '' : `Set ${seed}`;
  return stackBlocks(
    [
      writeIn(['Name', 'Date', `Right answers, of ${replies.length}`], width, size, measure),
      layOutParagraph(words, { width, size }, measure),
      ...(round === '' ? [] : [layOutParagraph(round, { width, size: size * 0.8, ink: 'soft' }, measure)]),
    ],
    size * 0.5,
  );
}

/** Words with a line to write on after each: the first the longest. */
function writeIn(words: readonly string[], width: number, size: number, measure: SheetGround['measure']): Block {
  const taken = words.reduce((sum, word) => sum + measure.width(word, size) + 1.6 * size, 0);
  const rest = width - taken + size;
  const shares = [0.5, 0.3, 0.2];
  const base = size * (ASCENT + 0.9);
  let x = 0;
  const marks = words.flatMap((text, i) => {
    const from = x + measure.width(text, size) + 0.6 * size;
    const to = from + rest * (shares[i] ?? 0);
    const word = { kind: 'text', spot: [x, base], text, size } as const;
    x = to + size;
    return [word, drawn([polyline([from, base + 0.15 * size], [to, base + 0.15 * size])], 'rule', 0.25)];
  });
  return { width, height: base + 0.6 * size, marks };
}

/** Blocks beside each other in rows, a fine rule over each row. */
function rowItems(blocks: readonly Block[], count: number, width: number, zoom: number): FlowItem[] {
  return Array.from({ length: Math.ceil(blocks.length / count) }, (_, r) => {
    const row = blocks.slice(r * count, (r + 1) * count);
    const height = Math.max(...row.map((block) => block.height));
    const all = count * width + (count - 1) * APART * zoom;
    const marks = row.flatMap((block, i) => placeBlock(block, i * (width + APART * zoom), zoom));
    const rule = drawn([polyline([0, 0], [all, 0])], 'faint', 0.3 * zoom);
    return { block: { width: all, height: height + zoom, marks: [rule, ...marks] }, gap: zoom };
  });
}

function answerPages(
  ground: SheetGround,
  order: AnswersOrder,
  replies: readonly Reply[],
  { zoom }: PageFrame,
  room: PageRoom,
): PageBody[] {
  const laid = (share: number) => flowBlocks(answerItems(ground, order, replies, zoom, share, room), room);
  const least = laid(1);
  let pages = least;
  // As large as takes no more pages.
  for (const share of LARGER) {
    const larger = laid(share);
    if (larger.length > least.length) continue;
    pages = larger;
    break;
  }
  return pages.map((marks) => ({ marks, title: 'Answers: does it go in?' }));
}

/** Shares of the usual size that answers are tried in. */
const LARGER = [1.6, 1.4, 1.2];

function answerItems(
  ground: SheetGround,
  { seed }: AnswersOrder,
  replies: readonly Reply[],
  zoom: number,
  share: number,
  room: PageRoom,
): FlowItem[] {
  const size = TYPE * zoom * 0.94 * Math.min(1.2, share);
  const { count, width } = columnsIn(room, zoom);
  const face = plugFace(openingsOf(ground.family));
  const scale = Math.min((REPLY_HIGH * zoom * share) / (2 * face.radius), (width * 0.3) / (2 * face.half));
  const style: ReplyStyle = { width, size, scale, face, measure: ground.measure };
  const note = `Set ${seed}: the same number brings the same questions, as long as the sections stay as they are. Tight goes in too.`;
  const head = layOutParagraph(note, { width: room.width, size: TYPE * zoom, ink: 'soft' }, ground.measure);
  const blocks = replies.map((reply) => replyBlock(reply, style));
  return [{ block: stackBlocks([head, emptyBlock(0, size)]), keep: true }, ...rowItems(blocks, count, width, zoom)];
}

function toldQuestions(title: string): string[] {
  return [
    title,
    'Each question shows a blank or tool and a keyway beside each other, without names, with boxes to tick and lines to write on.',
  ];
}

function toldReply({ number, sentence, entrant, opening }: Reply): string {
  return `${number}: ${sentence || nameOf(entrant, opening)}`;
}

function nameOf(entrant: Profile, opening: Profile): string {
  return `${entrant.name} in ${opening.name}`;
}
