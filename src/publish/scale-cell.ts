import { readingText, type Units } from '../family/length-text.ts';
import { NM_PER_MM, type Point } from '../geom/point.ts';
import type { TextMeasure } from '../lettering/text-measure.ts';
import type { Profile } from '../profile/profile.ts';
import { type Block, placeBlock, stackBlocks } from './block.ts';
import { acrossDimension, upwardDimension } from './dimension-line.ts';
import type { Mark } from './page.ts';
import { layOutLine, layOutParagraph } from './paragraph.ts';
import { pairInMetal, type TriedBlank } from './plug-picture.ts';
import { sectionPicture, sizeOfRing } from './section-picture.ts';

/** How cells of a scale sheet are drawn. */
export interface CellStyle {
  readonly enlarge: number;
  readonly units: Units;
  /** Height of the type, millimetres. */
  readonly size: number;
  /** Width of a cell where it is fixed, millimetres. */
  readonly width?: number;
  readonly measure: TextMeasure;
}

/** Metal round a keyway, millimetres of paper. */
const METAL = { once: 1.6, enlarged: 4 };

/** Between the picture at true size and the enlarged one, in heights of the type. */
const APART = 2.2;

/** A section at true size and enlarged with its dimensions, under its name. */
export function sectionCell(profile: Profile, style: CellStyle): Block {
  const once = sectionPicture(profile, { scale: 1, line: 0.1, metal: METAL.once });
  const enlarged = sectionPicture(profile, { scale: style.enlarge, line: 0.18, metal: METAL.enlarged });
  const metal = profile.kind === 'opening' ? METAL.enlarged : 0;
  const pictures = sideBySide(once, withDimensions(enlarged, profile.ring, metal, style), style);
  return titled(profile.name, pictures, style);
}

/** A blank in a keyway at its best placement, at true size and enlarged. */
export function pairCell(opening: Profile, tried: TriedBlank, style: CellStyle): Block {
  const once = pairInMetal(opening, tried, { scale: 1, line: 0.1, metal: METAL.once });
  const enlarged = pairInMetal(opening, tried, { scale: style.enlarge, line: 0.18, metal: METAL.enlarged });
  const pictures = sideBySide(once, enlarged, style);
  return titled(`${tried.profile.name} in ${opening.name}`, pictures, style);
}

function titled(name: string, pictures: Block, style: CellStyle): Block {
  const { size, measure } = style;
  const width = style.width ?? Math.max(pictures.width, 34 * (size / 3));
  const title = layOutParagraph(name, { width, size, bold: true, most: 3, heading: 2 }, measure);
  const block = stackBlocks([title, pictures], size * 0.6);
  return { ...block, width };
}

function sideBySide(once: Block, enlarged: Block, { enlarge, size, measure }: CellStyle): Block {
  const small = { size: size * 0.85, ink: 'soft' } as const;
  const captions = ['1:1', `${scaleText(enlarge)}:1`].map((text) => layOutLine(text, small, measure));
  const first = Math.max(once.width, captions[0].width);
  const top = captions[0].height + size * 0.3;
  const x = first + APART * size;
  const marks: Mark[] = [
    ...placeBlock(captions[0], 0, 0),
    ...placeBlock(once, 0, top),
    ...placeBlock(captions[1], x, 0),
    ...placeBlock(enlarged, x, top),
  ];
  return {
    width: x + Math.max(enlarged.width, captions[1].width),
    height: top + Math.max(once.height, enlarged.height),
    marks,
  };
}

/** A scale as a number with two decimals at most: "4", "2.5". */
export function scaleText(scale: number): string {
  return String(Number(scale.toFixed(2)));
}

/** A picture with its width below and its height at its right. */
function withDimensions(picture: Block, ring: readonly Point[], metal: number, style: CellStyle): Block {
  const { enlarge, units, size, measure } = style;
  const part = sizeOfRing(ring);
  const figures = { size: size * 0.9, measure };
  const below = acrossDimension(part.width * enlarge, readingText(part.width * NM_PER_MM, units), figures);
  const beside = upwardDimension(part.height * enlarge, readingText(part.height * NM_PER_MM, units), figures);
  const left = Math.max(0, (below.width - picture.width) / 2);
  const up = Math.max(0, (beside.height - picture.height) / 2);
  const gap = size * 0.3;
  const right = Math.max(left + picture.width, left + picture.width / 2 + below.width / 2 - metal);
  const marks = [
    ...placeBlock(picture, left, up),
    ...placeBlock(below, left + picture.width / 2 - below.width / 2, up + picture.height + gap),
    ...placeBlock(beside, left + picture.width + gap, up + picture.height / 2 - beside.height / 2),
  ];
  const bottom = up + picture.height + gap + below.height;
  return {
    width: Math.max(right, left + picture.width + gap + beside.width, left + picture.width / 2 + below.width / 2),
    height: Math.max(bottom, up + picture.height / 2 + beside.height / 2),
    marks,
  };
}
