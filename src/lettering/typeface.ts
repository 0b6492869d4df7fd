import type { FaceFile, FacePart, ReadFaceFile } from './face-file.ts';
import type { Face } from './read-face.ts';
import { type SetLine, setLine } from './set-line.ts';
import type { TextMeasure } from './text-measure.ts';
import { type LetterContour, traceLetters } from './trace-letters.ts';

/** The typeface of pages and of raised letters, regular and bold. */
export interface Typeface extends TextMeasure {
  /** One line as it is set: which letters come from which file, and where boxes stand. */
  setLine(text: string, bold?: boolean): SetLine;
  /**
   * The outlines of one line of text, closed, in the unit of `size`, y up from the base line, flattened to within
   * `accuracy` (a hundredth of the em where not given). Filled by the non-zero rule.
   */
  letterOutlines(text: string, size: number, bold?: boolean, accuracy?: number): LetterContour[];
  readonly files: readonly ReadFaceFile[];
}

/** Parts in the order in which they are asked for a letter. */
const PARTS: readonly FacePart[] = ['latin', 'latin-ext'];

/** A typeface that is there, or on its way. */
let loaded: Promise<Typeface> | null = null;

/**
 * Loads the typeface when it is first asked for.
 *
 * @throws Error where its files cannot be loaded; the next call tries again.
 * @check tests/unit/lettering/typeface.test.ts
 */
export function loadTypeface(): Promise<Typeface> {
  loaded ??= readTypeface().catch((error) => {
    loaded = null;
    throw error;
  });
  return loaded;
}

async function readTypeface(): Promise<Typeface> {
  const [{ readFace }, files] = await Promise.all([import('./read-face.ts'), loadFiles()]);
  const read = files.map((file) => ({ file, face: readFace(file.bytes) }));
  const faces = (bold: boolean) =>
    new Map(read.flatMap(({ file, face }) => (file.bold === bold ? [[file.part, face] as const] : [])));
  return typefaceOf(
    read.map(({ file, face }) => ({ ...file, font: face.font })),
    faces(false),
    faces(true),
  );
}

function typefaceOf(
  files: readonly ReadFaceFile[],
  regular: ReadonlyMap<FacePart, Face>,
  heavy: ReadonlyMap<FacePart, Face>,
): Typeface {
  const [setRegular, setHeavy] = [regular, heavy].map(remembering);
  const set = (text: string, bold = false) => (bold ? setHeavy(text) : setRegular(text));
  return {
    files,
    setLine: set,
    width: (text, size, bold) => set(text, bold).width * size,
    missing: (text) => [...new Set(set(text).runs.flatMap((run) => (run.kind === 'box' ? [run.letter] : [])))],
    letterOutlines: (text, size, bold = false, accuracy = size / 100) =>
      traceLetters(set(text, bold), bold ? heavy : regular, size, accuracy),
  };
}

/** Most lines that are remembered in one weight. */
const MOST_LINES = 20_000;

/** Sets lines in some faces, the same line once. */
function remembering(faces: ReadonlyMap<FacePart, Face>): (text: string) => SetLine {
  const known = new Map<string, SetLine>();
  return (text) => {
    const line = known.get(text) ?? setLine(text, faces);
    if (known.size >= MOST_LINES) known.clear();
    known.set(text, line);
    return line;
  };
}

async function loadFiles(): Promise<FaceFile[]> {
  const [latin, latinBold, more, moreBold] = await Promise.all([
    import('@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff?inline'),
    import('@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-700-normal.woff?inline'),
    import('@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-400-normal.woff?inline'),
    import('@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-700-normal.woff?inline'),
  ]);
  const [first, second] = PARTS;
  return [
    faceFile(first, false, latin.default),
    faceFile(first, true, latinBold.default),
    faceFile(second, false, more.default),
    faceFile(second, true, moreBold.default),
  ];
}

function faceFile(part: FacePart, bold: boolean, address: string): FaceFile {
  return { part, bold, address, bytes: bytesOf(address) };
}

/** The bytes in a `data:` address in base 64. */
function bytesOf(address: string): Uint8Array {
  // Every place that runs this has it; the pure core is compiled without saying so.
  const { atob } = globalThis as unknown as { atob(text: string): string };
  return Uint8Array.from(atob(address.slice(address.indexOf(',') + 1)), (letter) => letter.charCodeAt(0));
}
