import { type FileFault, sayText } from '../json/file-fault.ts';

/** One pair of lines of a DXF text: what kind of value it is, the value, and where it stands. */
export interface Group {
  readonly code: number;
  readonly value: string;
  /** Number of the line with the code, from 1. */
  readonly line: number;
}

/** The pairs of a DXF text, or why it is none. */
export type GroupsScan =
  | { readonly ok: true; readonly groups: readonly Group[]; readonly ended: boolean }
  | { readonly ok: false; readonly faults: readonly FileFault[] };

/** Longest text that is read, in characters; drawings of sections have a few hundred thousand at most. */
export const MOST_CHARACTERS = 20_000_000;

const SAVE_AS_DXF = 'Save the drawing as an ASCII DXF file and open that.';

/** How other kinds of files begin, and what they are. */
const OTHER_KINDS: readonly (readonly [RegExp, string, string])[] = [
  [/^AutoCAD Binary DXF/, 'is a binary DXF file', 'Save it as an ASCII (text) DXF file and open that.'],
  [/^AC10\d\d/, 'is a DWG file', SAVE_AS_DXF],
  [/^%PDF/, 'is a PDF file', SAVE_AS_DXF],
  [/^\s*<(\?xml|svg|!DOCTYPE)/i, 'is an SVG or XML file', 'Open it as SVG.'],
  [/^\s*[{[]/, 'is a JSON file', 'Open it as a family file.'],
];

/**
 * Parts a DXF text into its pairs of lines, whatever marks the ends of its lines. Comments (group 999) and empty lines
 * before the first pair are dropped.
 *
 * @returns the pairs up to `EOF`, and whether that was there; or one fault with its line.
 * @source DXF reference, "About the DXF format": a group code on one line, its value on the next (from memory).
 * @check tests/unit/interchange/dxf-hostile.test.ts
 */
export function scanGroups(text: string): GroupsScan {
  const fault = kindFault(text);
  if (fault) return { ok: false, faults: [fault] };
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\r|\n/);
  const groups: Group[] = [];
  const first = Math.max(
    0,
    lines.findIndex((line) => line.trim() !== ''),
  );
  for (let i = first; i < lines.length; i += 2) {
    const code = toCode(lines[i]);
    if (code === null && lines.slice(i).every((line) => line.trim() === '')) break;
    if (code === null) return { ok: false, faults: [codeFault(lines[i], i + 1, groups.length === 0)] };
    if (i + 1 >= lines.length) break;
    const value = lines[i + 1];
    if (code === 0 && value.trim() === 'EOF') return finish(groups, true);
    if (code !== 999) groups.push({ code, value, line: i + 1 });
  }
  return finish(groups, false);
}

function finish(groups: readonly Group[], ended: boolean): GroupsScan {
  const first = groups[0];
  if (first && first.code === 0 && first.value.trim() === 'SECTION') return { ok: true, groups, ended };
  const what = first ? 'does not begin with a section, as a DXF file does' : 'holds nothing';
  return { ok: false, faults: [{ path: first ? `line ${first.line}` : 'file', what, cure: SAVE_AS_DXF }] };
}

function kindFault(text: string): FileFault | undefined {
  if (text.length > MOST_CHARACTERS) {
    const what = `is longer than ${MOST_CHARACTERS / 1e6} million characters`;
    return { path: 'file', what, cure: 'Save only the sections as DXF, without the rest of the drawing.' };
  }
  const kind = OTHER_KINDS.find(([pattern]) => pattern.test(text));
  if (kind) return { path: 'file', what: kind[1], cure: kind[2] };
  const isText = !text.slice(0, 4_000).includes('\0');
  return isText ? undefined : { path: 'file', what: 'is not text', cure: SAVE_AS_DXF };
}

function toCode(line: string): number | null {
  return /^\s*-?\d{1,4}\s*$/.test(line) ? Number(line) : null;
}

function codeFault(line: string, number: number, first: boolean): FileFault {
  const found = line.trim() === '' ? 'an empty line' : sayText(line.trim());
  if (first) return { path: `line ${number}`, what: `is ${found}, a DXF file begins with a 0`, cure: SAVE_AS_DXF };
  return {
    path: `line ${number}`,
    what: `must be a group code, a whole number, and is ${found}: a line is missing or too many before it`,
    cure: 'The file is damaged: save it from the drawing program once more.',
  };
}
