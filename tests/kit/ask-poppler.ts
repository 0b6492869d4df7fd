import { spawnSync } from 'node:child_process';
import { PNG } from 'pngjs';
import { findProgram, howToGetProgram } from './find-programs.mjs';

type Program = Extract<Parameters<typeof findProgram>[0], `pdf${string}`>;

/** What a program of poppler prints about a PDF file. @throws with what to do where it is missing, or with its own words */
function ask(name: Program, words: readonly string[], pdf: Uint8Array): Buffer {
  const program = findProgram(name);
  if (program === null) throw new Error(howToGetProgram(name));
  const { status, stdout, stderr } = spawnSync(program, words, { input: pdf, maxBuffer: 1 << 28 });
  const complaint = stderr.toString();
  if (status !== 0 || complaint !== '') throw new Error(`${name} ended with ${status}: ${complaint}`);
  return stdout;
}

/** The text of a PDF in the order in which it is drawn, a form feed after each page. */
export function pdfText(pdf: Uint8Array): string {
  return ask('pdftotext', ['-raw', '-enc', 'UTF-8', '-', '-'], pdf).toString('utf8');
}

/** A font as pdffonts lists it. */
export interface PdfFont {
  readonly name: string;
  readonly type: string;
  readonly embedded: boolean;
  readonly subset: boolean;
  /** Whether it says which letters its glyphs stand for. */
  readonly unicode: boolean;
}

/** The fonts that a PDF uses. */
export function pdfFonts(pdf: Uint8Array): PdfFont[] {
  const [, , ...lines] = ask('pdffonts', ['-'], pdf).toString('utf8').trimEnd().split('\n');
  return lines.map((line) => {
    const found = /^(\S+)\s+(.+?)\s+\S+\s+(yes|no)\s+(yes|no)\s+(yes|no)\s+\d+\s+\d+$/.exec(line);
    if (!found) throw new Error(`pdffonts says: ${line}`);
    const [, name, type, ...flags] = found;
    const [embedded, subset, unicode] = flags.map((flag) => flag === 'yes');
    return { name, type, embedded, subset, unicode };
  });
}

/** What a PDF says of itself, by pdfinfo's names, and the size of each page in points. */
export function pdfInfo(pdf: Uint8Array): { facts: ReadonlyMap<string, string>; sizes: [number, number][] } {
  const lines = ask('pdfinfo', ['-f', '1', '-l', '-1', '-'], pdf).toString('utf8').split('\n');
  const facts = new Map(lines.map((line) => [line.split(':')[0].replace(/\s+/g, ' '), line.replace(/^[^:]*:\s*/, '')]));
  const sizes = [...facts].flatMap(([name, value]): [number, number][] => {
    const size = /^Page \d+ size$/.test(name.trim()) ? /^([\d.]+) x ([\d.]+) pts/.exec(value) : null;
    return size ? [[Number(size[1]), Number(size[2])]] : [];
  });
  return { facts, sizes };
}

/** The tags and texts of a PDF as pdfinfo tells them, a line each. */
export function pdfStructure(pdf: Uint8Array): string[] {
  return ask('pdfinfo', ['-struct-text', '-'], pdf).toString('utf8').trimEnd().split('\n');
}

/** A part of a page, millimetres from its upper left corner. */
export interface PagePart {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** A page, or a part of it, as poppler draws it at so many points a millimetre. */
export function drawPdf(pdf: Uint8Array, pageNumber: number, perMm: number, part?: PagePart): PNG {
  const cut = part
    ? [part.left, part.top, part.width, part.height].flatMap((mm, i) => [
        `-${'xyWH'[i]}`,
        String(Math.round(mm * perMm)),
      ])
    : [];
  const which = ['-f', String(pageNumber), '-l', String(pageNumber), '-r', String(perMm * 25.4)];
  return PNG.sync.read(ask('pdftoppm', ['-png', '-singlefile', ...which, ...cut, '-'], pdf));
}
