import type { Drawing, DrawingOptions, DrawingRead } from '../drawing.ts';
import type { FileFault } from '../json/file-fault.ts';
import { addNote, type DrawingNotes, listNotes } from './drawing-notes.ts';
import { type SvgElement, sayPlace } from './element.ts';
import { noteNeverRun, noteStyleSheet } from './left-out.ts';
import { parseXml } from './parse-xml.ts';
import { type RootFrame, rootFrame } from './root-frame.ts';
import { walkDrawing } from './walk-drawing.ts';

/**
 * The lines of an SVG drawing in nanometres: shapes and paths as they are shown, transforms applied, at true size where
 * the drawing states one. Nothing is run or fetched.
 *
 * @param text the whole file. Any text may be given.
 * @param options `nmPerUnit` scales the drawing so that one user unit of its outermost svg is that long.
 * @returns every line, with notes on what was left out; or faults with place, words and cure.
 * @accuracy straight lines and circular arcs as exact as 64-bit numbers; other curves within 500 nm of their chords,
 *   after all scaling. A closing point within 1 um of the first counts as the first.
 * @source Scalable Vector Graphics (SVG) 1.1, second edition, W3C 2011; SVG 2, W3C Candidate Recommendation 2018.
 * @check tests/unit/interchange/svg-corpus.test.ts, svg-hostile.test.ts; tests/browser/svg-against-browser.test.ts
 */
export function readSvg(text: string, options: DrawingOptions = {}): DrawingRead {
  const parsed = parseXml(text);
  if (!parsed.ok) return parsed;
  const notes: DrawingNotes = new Map();
  if (parsed.styleSheets) noteStyleSheet(notes, 'the lines above <svg>');
  noteNeverRun(notes, parsed.root);
  const frame = rootFrame(parsed.root, options, notes);
  if ('fault' in frame) return { ok: false, faults: [frame.fault] };
  if (!frame.unitsStated && options.nmPerUnit === undefined) noteGuess(notes, parsed.root);
  const walked = walkDrawing(parsed.root, frame, notes);
  if (!walked.ok) return walked;
  if (walked.paths.length === 0) return { ok: false, faults: [nothingDrawn(), ...listNotes(notes)] };
  return { ok: true, drawing: sayDrawing(walked.paths, frame, notes) };
}

function sayDrawing(paths: Drawing['paths'], { nmPerUnit, unitsStated }: RootFrame, notes: DrawingNotes): Drawing {
  return { paths, nmPerUnit, unitsStated, notes: listNotes(notes) };
}

function noteGuess(notes: DrawingNotes, root: SvgElement): void {
  const what = () => 'the drawing does not say its true size; a pixel is read as 1/96 inch';
  addNote(notes, 'guess', sayPlace(root), what, 'Compare a length that you know, and set the scale.');
}

function nothingDrawn(): FileFault {
  return {
    path: 'file',
    what: 'the drawing shows no line that can be read',
    cure: 'Draw the section as a path; a picture can be traced as an underlay, text can be turned into paths.',
  };
}
