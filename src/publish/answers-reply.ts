import { VERDICT_WORDS } from '../family/margin-text.ts';
import type { PlugFace } from '../family/plug-face.ts';
import type { Fit } from '../fit/fit.ts';
import type { TextMeasure } from '../lettering/text-measure.ts';
import type { Profile } from '../profile/profile.ts';
import { type Block, labelledBlock, placeBlock, rowOfBlocks, stackBlocks } from './block.ts';
import { layOutLine, layOutParagraph } from './paragraph.ts';
import { plugPicture } from './plug-picture.ts';
import { verdictMark } from './verdict-sign.ts';

/** An answer with its reason. */
export interface Reply {
  readonly number: number;
  readonly entrant: Profile;
  readonly opening: Profile;
  readonly fit: Fit;
  readonly sentence: string;
}

/** How answers are set; millimetres. */
export interface ReplyStyle {
  readonly width: number;
  readonly size: number;
  readonly scale: number;
  readonly face: PlugFace;
  readonly measure: TextMeasure;
}

/** The blank in the keyway, the verdict, and why in a sentence. As high as its words. */
export function replyBlock({ number, entrant, opening, fit, sentence }: Reply, style: ReplyStyle): Block {
  const { width, size, scale, face, measure } = style;
  const picture = plugPicture(opening, { profile: entrant, fit }, { face, scale, line: 0.16 });
  const left = 2.2 * size;
  const right = left + picture.width + 1.2 * size;
  const room = width - right;
  const goesIn = fit.verdict === 'blocked' ? 'does not go in' : 'goes in';
  const tight = fit.verdict === 'tight' ? `, ${VERDICT_WORDS.tight}` : '';
  const verdict = rowOfBlocks(
    [verdictMark(fit.verdict, size * 1.2), layOutLine(`${goesIn}${tight}`, { size: size * 1.1, bold: true }, measure)],
    size * 0.5,
  );
  const words = stackBlocks([verdict, layOutParagraph(sentence, { width: room, size }, measure)], size * 0.15);
  const height = Math.max(picture.height, words.height) + 1.2 * size;
  const marks = [
    ...placeBlock(layOutLine(`${number}`, { size: size * 1.25, bold: true }, measure), 0, 0.4 * size),
    ...placeBlock(picture, left, 0.6 * size),
    ...placeBlock(words, right, 0.6 * size),
  ];
  return labelledBlock({ width, height, marks }, `Answer ${number}: ${entrant.name}, ${opening.name}`);
}
