import type { TextMeasure } from '../lettering/text-measure.ts';
import { type Block, stackBlocks } from './block.ts';
import type { Ink } from './inks.ts';
import type { HeadingRank } from './page.ts';
import { LEADING, layOutParagraph } from './paragraph.ts';
import { type Extent, LEAST_TYPE } from './slides-frame.ts';

/** A piece of text on a slide, or a block whose size follows the type. */
export interface SlidePart {
  readonly text: string;
  /** Height of the em where there is room enough, millimetres. */
  readonly size: number;
  readonly bold?: boolean;
  readonly ink?: Ink;
  readonly heading?: HeadingRank;
}

/** A block in place of a text, made for a share of its usual size. */
export type SlidePiece = SlidePart | ((share: number) => Block);

/** By how much type shrinks from one try to the next, and the share below which it does not go. */
const STEP = 0.94;
const LEAST_SHARE = 0.2;

/**
 * Pieces one under the other, as large as the room lets them be: type shrinks until all fits, no smaller than what the
 * last row can read; only a text that is too long even so is set smaller, and at last shortened.
 *
 * @returns a block no larger than the room.
 * @check tests/unit/publish/class-sheets.test.ts
 */
export function fitPieces(pieces: readonly SlidePiece[], room: Extent, measure: TextMeasure): Block {
  const told = pieces.filter((piece) => typeof piece === 'function' || piece.text.trim() !== '');
  for (let share = 1; share >= LEAST_SHARE; share *= STEP) {
    // Down to half, no type goes below the least; then all of it has to.
    const block = setPieces(told, room.width, share, share > 0.4 ? LEAST_TYPE : 0, measure);
    if (block.height <= room.height && block.width <= room.width + 1e-6) return block;
  }
  return shortened(told, room, measure);
}

function setPieces(pieces: readonly SlidePiece[], width: number, share: number, least: number, measure: TextMeasure) {
  const blocks = pieces.map((piece) => {
    if (typeof piece === 'function') return piece(share);
    const { text, size, ...style } = piece;
    return layOutParagraph(text, { ...style, width, size: Math.max(least, size * share) }, measure);
  });
  return stackBlocks(blocks, 7 * share);
}

/** The smallest type; of each text only as many lines as there is room for. */
function shortened(pieces: readonly SlidePiece[], room: Extent, measure: TextMeasure): Block {
  const texts = pieces.filter((piece) => typeof piece !== 'function');
  const others = pieces.flatMap((piece) => (typeof piece === 'function' ? [piece(LEAST_SHARE)] : []));
  const taken = others.reduce((sum, { height }) => sum + height + 7 * LEAST_SHARE, 0);
  const each = Math.max(1, (room.height - taken) / Math.max(1, texts.length) - 7 * LEAST_SHARE);
  const blocks = texts.map(({ text, size, ...style }) => {
    const small = Math.min(each / LEADING, size * LEAST_SHARE * 1.6);
    const most = Math.max(1, Math.floor(each / (small * LEADING)));
    return layOutParagraph(text, { ...style, width: room.width, size: small, most }, measure);
  });
  return stackBlocks([...blocks, ...others], 7 * LEAST_SHARE);
}

/** The title and what is said under it. */
export function titleAndWords(title: string, words: string, sizes: readonly [title: number, words: number]) {
  const parts: SlidePart[] = [
    { text: title, size: sizes[0], bold: true, heading: 1 },
    { text: words, size: sizes[1] },
  ];
  return parts;
}
