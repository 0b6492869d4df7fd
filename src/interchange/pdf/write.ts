import type { FacePart } from '../../lettering/face-file.ts';
import type { Typeface } from '../../lettering/typeface.ts';
import { inkColour, type Palette } from '../../publish/inks.ts';
import type { GroupMark, Mark, Page, PathMark, Stroke, TextMark } from '../../publish/page.ts';
import { SHARE_BEFORE } from '../../publish/paragraph.ts';
import { type PagePart, pageStructure } from './page-structure.ts';

/** What a document says of itself. */
export interface PdfTelling {
  readonly title: string;
  /** Language of its words, as in `en-GB`. */
  readonly language: string;
  /** When it was made; not told where not given. */
  readonly date?: Date;
}

/** A document that grows page by page. */
export interface PdfDraft {
  add(page: Page): void;
  /** Closes the document. @returns the bytes of the file; without pages, of one empty page */
  finish(): Promise<Uint8Array>;
}

/** Points of PDF in a millimetre. */
const POINTS_PER_MM = 72 / 25.4;

/** Stands for a date where none is told. */
const NO_DATE = new Date(0);

type Drawing = import('pdfkit').default;
type Structure = ReturnType<Drawing['struct']>;

/** What marks are drawn with. */
interface Pen {
  readonly pdf: Drawing;
  readonly typeface: Typeface;
  readonly palette: Palette;
}

/**
 * Begins a PDF document.
 *
 * @param palette the colours of its inks.
 * @returns a draft that takes pages in millimetres and keeps their true scale.
 * @throws Error where the writer cannot be loaded.
 * @accuracy lengths within 0.000001 mm of the page's.
 * @source ISO 32000-1:2008, 8.3.2.3: user space of 1/72 inch.
 * @check tests/outside/pdf-pages.test.ts, by poppler
 */
export async function startPdf(telling: PdfTelling, typeface: Typeface, palette: Palette): Promise<PdfDraft> {
  const { default: PDFDocument } = await import('pdfkit');
  /** Without the second telling in XML, which always has a date. */
  class PlainDocument extends PDFDocument {
    override endMetadata(): void {}
  }
  const pdf = new PlainDocument({
    autoFirstPage: false,
    // Kept from loading a standard font, which would not be embedded.
    font: '',
    lang: telling.language,
    displayTitle: true,
    tagged: true,
    pdfVersion: '1.7',
    info: {
      Title: telling.title,
      Producer: 'Sectionary',
      Creator: 'Sectionary',
      CreationDate: telling.date ?? NO_DATE,
    },
  });
  if (!telling.date) delete pdf.info.CreationDate;
  for (const { part, bold, font } of typeface.files) pdf.registerFont(fontName(part, bold), font);
  const written = collect(pdf);
  const pen: Pen = { pdf, typeface, palette };
  const whole = pdf.struct('Document');
  pdf.addStructure(whole);
  let count = 0;
  return {
    add(page) {
      count++;
      addPage(page, whole, pen);
    },
    finish() {
      if (count === 0) pdf.addPage();
      pdf.end();
      return written;
    },
  };
}

function fontName(part: FacePart, bold: boolean): string {
  return `${part} ${bold ? 'bold' : 'regular'}`;
}

function collect(pdf: Drawing): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  return new Promise((resolve, reject) => {
    pdf.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    pdf.on('error', reject);
    pdf.on('end', () => resolve(joined(chunks)));
  });
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, at);
    at += chunk.length;
  }
  return bytes;
}

function addPage(page: Page, whole: Structure, pen: Pen): void {
  const { pdf } = pen;
  pdf.addPage({ size: [page.width * POINTS_PER_MM, page.height * POINTS_PER_MM], margin: 0 });
  pdf.transform(POINTS_PER_MM, 0, 0, POINTS_PER_MM, 0, 0);
  pdf.lineJoin('round').lineCap('butt');
  drawParts([pageStructure(page)], whole, pen);
}

/** Draws what is read into the structure that it belongs to, the rest as what is not read. */
function drawParts(parts: readonly PagePart[], into: Structure, pen: Pen): void {
  for (const part of parts) drawPart(part, into, pen);
}

function drawPart(part: PagePart, into: Structure, pen: Pen): void {
  const { pdf } = pen;
  switch (part.kind) {
    case 'unread':
      pdf.markContent('Artifact', { type: 'Layout' });
      drawMarks(part.marks, pen);
      pdf.endMarkedContent();
      return;
    case 'read': {
      const { tag, alt, scope, marks } = part;
      const read = pdf.struct(tag, { ...(alt !== undefined && { alt }), ...(scope && { scope }) });
      into.add(read);
      read.add(() => drawRead(marks, pen)).end();
      return;
    }
    case 'together': {
      const { tag, title, parts } = part;
      const held = pdf.struct(tag, title ? { title } : {});
      into.add(held);
      drawParts(parts, held, pen);
      held.end();
      return;
    }
    case 'clipped':
      pdf.save();
      trace(part.clip, pdf);
      pdf.clip('even-odd');
      drawParts(part.parts, into, pen);
      pdf.restore();
  }
}

function drawMarks(marks: readonly Mark[], pen: Pen): void {
  for (const mark of marks) {
    if (mark.kind === 'path') drawPath(mark, pen);
    else if (mark.kind === 'text') drawText(mark, pen);
    else drawGroup(mark, pen);
  }
}

/** Marks that are read as one: a line that another follows ends with a space, else their words would be read as one. */
function drawRead(marks: readonly Mark[], pen: Pen): void {
  for (const [i, mark] of marks.entries())
    if (mark.kind === 'text') drawText(mark, pen, i < marks.length - 1 ? ' ' : '');
    else drawMarks([mark], pen);
}

function drawGroup({ clip, marks }: GroupMark, pen: Pen): void {
  if (!clip) {
    drawMarks(marks, pen);
    return;
  }
  pen.pdf.save();
  trace(clip, pen.pdf);
  pen.pdf.clip('even-odd');
  drawMarks(marks, pen);
  pen.pdf.restore();
}

function drawPath({ strokes, fill, line }: PathMark, { pdf, palette }: Pen): void {
  const shown = strokes.filter(({ spots }) => spots.length > 1);
  if (shown.length === 0) return;
  if (fill) {
    trace(shown, pdf);
    pdf.fill(inkColour(fill, palette), 'even-odd');
  }
  if (!line) return;
  pdf.save();
  trace(shown, pdf);
  pdf.lineWidth(line.width);
  if (line.dashes?.length) pdf.dash([...line.dashes], {});
  pdf.stroke(inkColour(line.ink, palette));
  pdf.restore();
}

function trace(strokes: readonly Stroke[], pdf: Drawing): void {
  for (const { spots, closed } of strokes) {
    for (const [i, [x, y]] of spots.entries()) {
      if (i === 0) pdf.moveTo(x, y);
      else pdf.lineTo(x, y);
    }
    if (closed && spots.length > 0) pdf.closePath();
  }
}

function drawText(mark: TextMark, { pdf, typeface, palette }: Pen, after = ''): void {
  const { spot, text, size, bold = false, align = 'start', ink = 'ink', turned = 0 } = mark;
  const line = typeface.setLine(text, bold);
  const [x, y] = spot;
  const start = x - SHARE_BEFORE[align] * line.width * size;
  pdf.save();
  if (turned !== 0) pdf.rotate(turned, { origin: [x, y] });
  pdf.fillColor(inkColour(ink, palette)).fontSize(size);
  for (const [i, run] of line.runs.entries()) {
    if (run.kind === 'box') continue;
    const words = i === line.runs.length - 1 ? run.text + after : run.text;
    pdf.font(fontName(run.part, bold));
    pdf.text(words, start + run.at * size, y, { lineBreak: false, baseline: 'alphabetic', features: ['kern'] });
  }
  pdf.restore();
}
