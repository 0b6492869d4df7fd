import { openingsOf } from '../family/family.ts';
import { readingText } from '../family/length-text.ts';
import { marginText, VERDICT_WORDS } from '../family/margin-text.ts';
import { plugFace } from '../family/plug-face.ts';
import type { Fit } from '../fit/fit.ts';
import type { Profile } from '../profile/profile.ts';
import { apartPicture } from './answers-question.ts';
import { type Block, placeBlock, rowOfBlocks, stackBlocks } from './block.ts';
import type { Mark } from './page.ts';
import { layOutParagraph } from './paragraph.ts';
import { plugPicture } from './plug-picture.ts';
import { middleOfRing, sizeOfRing } from './section-picture.ts';
import { SLIDE_ROOM, type SlideBody, type SlideGround } from './slides-frame.ts';
import { pairMarks } from './slides-marks.ts';
import { fitPieces, type SlidePiece, titleAndWords } from './slides-text.ts';
import { verdictMark } from './verdict-sign.ts';

/** Of a slide's width, what the picture takes. */
const PICTURE = { width: SLIDE_ROOM.width * 0.57, height: SLIDE_ROOM.height } as const;
const BETWEEN = 7;
const COLUMN = { width: SLIDE_ROOM.width - PICTURE.width - BETWEEN, height: SLIDE_ROOM.height } as const;

/** Millimetres: type of titles, of words, of the verdict, and of the marks in the picture. */
const TYPE = { title: 13.2, words: 7.6, verdict: 11.6, marks: 5.6 } as const;

/** What a pair on a slide is made of. */
interface ShownPair {
  readonly entrant: Profile;
  readonly opening: Profile;
  readonly fit: Fit;
}

/** A blank in a keyway, large, at the left; what is said of it, and the verdict, at the right. */
export function pairSlide(slide: SlideGround): SlideBody[] {
  const pair = shownPair(slide);
  if (!pair) return [];
  const { step, words } = slide;
  return [
    beside(slide, togetherPicture(slide, pair), titleAndWords(step.title, words, [TYPE.title, TYPE.words]), pair),
  ];
}

/** A pair apart, for the room to guess; then a slide with both together, the verdict and why. */
export function questionSlides(slide: SlideGround): SlideBody[] {
  const pair = shownPair(slide);
  if (!pair) return [];
  const { step, words, knowledge } = slide;
  const question = titleAndWords(step.title, words, [TYPE.title, TYPE.words]);
  const because = { text: knowledge.sentence(pair.entrant.id, pair.opening.id), size: TYPE.words };
  const answer = [...titleAndWords(step.title, words, [TYPE.title * 0.8, TYPE.words * 0.8]), because];
  return [
    beside(slide, askedPicture(slide, pair), question, null),
    beside(slide, togetherPicture(slide, pair), answer, pair),
  ];
}

function shownPair({ knowledge, parts: { blank, opening } }: SlideGround): ShownPair | null {
  const fit = blank && opening ? knowledge.fitOf(blank.id, opening.id) : undefined;
  return blank && opening && fit ? { entrant: blank, opening, fit } : null;
}

/** Picture at the left, text at the right; the verdict under the words where the pair is told. */
function beside(slide: SlideGround, picture: Block, pieces: readonly SlidePiece[], pair: ShownPair | null): SlideBody {
  const { step, words, knowledge, ground } = slide;
  const verdict: SlidePiece[] = pair ? [(share) => verdictLine(pair.fit, share, slide)] : [];
  const [head, ...rest] = pieces;
  const text = fitPieces([head, ...rest.slice(0, 1), ...verdict, ...rest.slice(1)], COLUMN, ground.measure);
  const { x, y, height } = SLIDE_ROOM;
  const sentence = pair ? [knowledge.sentence(pair.entrant.id, pair.opening.id)] : [];
  return {
    title: step.title,
    told: [step.title, words, ...sentence].filter((line, i, all) => line !== '' && all.indexOf(line) === i),
    marks: [
      ...placeBlock(picture, x + (PICTURE.width - picture.width) / 2, y + (height - picture.height) / 2),
      ...placeBlock(text, x + PICTURE.width + BETWEEN, y + (height - text.height) / 2),
    ],
  };
}

/** The answer for a room: mark and word, the margin under them. */
function verdictLine(fit: Fit, share: number, { ground: { measure }, order }: SlideGround): Block {
  const size = TYPE.verdict * Math.max(0.4, share);
  const width = COLUMN.width - 1.4 * size;
  const word = layOutParagraph(VERDICT_WORDS[fit.verdict], { width, size, bold: true, ink: fit.verdict }, measure);
  const margin = marginText(fit, order.units, 'not measured', readingText);
  return stackBlocks([
    rowOfBlocks([verdictMark(fit.verdict, size * 0.95), word], size * 0.35),
    layOutParagraph(margin, { width: COLUMN.width, size: size * 0.75, bold: true }, measure),
  ]);
}

/** The blank in the keyway, what bites or pinches marked. */
function togetherPicture({ ground, order }: SlideGround, { entrant, opening, fit }: ShownPair): Block {
  const face = plugFace(openingsOf(ground.family));
  const { width, height } = PICTURE;
  const scale = Math.min((width - 2) / (2 * face.half), (height - 2) / (2 * face.radius));
  const plug = plugPicture(opening, { profile: entrant, fit }, { face, scale, line: 0.5 });
  const view = { middle: middleOfRing(opening.ring), at: [width / 2, height / 2] as const, scale };
  const { measure } = ground;
  const marked = { entrant, opening, fit, view, width, height, units: order.units, size: TYPE.marks, measure };
  const marks: Mark[] = [
    ...placeBlock(plug, (width - plug.width) / 2, (height - plug.height) / 2),
    ...pairMarks(marked),
  ];
  return { width, height, marks };
}

/** The two beside each other at one scale. */
function askedPicture({ ground }: SlideGround, { entrant, opening }: ShownPair): Block {
  const face = plugFace(openingsOf(ground.family));
  const blank = sizeOfRing(entrant.ring);
  const scale = Math.min(
    (PICTURE.width - 4) / (blank.width + 2.2 + 2 * face.half),
    (PICTURE.height - 4) / Math.max(2 * face.radius, blank.height),
  );
  const picture = apartPicture(entrant, opening, { face, scale, blankWidth: blank.width * scale });
  const label = `${entrant.name} beside ${opening.name}`;
  return { ...picture, marks: [{ kind: 'group', label, marks: picture.marks }] };
}
