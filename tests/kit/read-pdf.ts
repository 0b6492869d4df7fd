import { inflateSync } from 'node:zlib';

/** What a printed page file holds. */
export interface PrintedPages {
  /** The letters of each page in the order in which they are drawn, without spaces: those are not told from kerning. */
  readonly pages: readonly string[];
}

/**
 * Reads the pages of a PDF as Chromium writes it: plain objects, deflated streams, texts as numbers of glyphs with a table
 * that says which letters they stand for. No reader for PDFs of other programs.
 *
 * @source ISO 32000-1, 7.3 (objects), 9.4.3 (text-showing operators), 9.10.3 (ToUnicode tables).
 */
export function readPdf(bytes: Uint8Array): PrintedPages {
  const objects = objectsOf(Buffer.from(bytes));
  const pages = [...objects.values()].filter(({ head }) => /\/Type\s*\/Page\b/.test(head));
  return { pages: pages.map(({ head }) => pageText(head, objects)) };
}

interface PdfObject {
  readonly head: string;
  readonly stream: string | null;
}

type Objects = ReadonlyMap<string, PdfObject>;

function objectsOf(file: Buffer): Objects {
  const text = file.toString('latin1');
  const objects = new Map<string, PdfObject>();
  for (const match of text.matchAll(/(?:^|\n)(\d+) 0 obj\s([\s\S]*?)\sendobj/g)) {
    const [, id, body] = match;
    const at = body.search(/stream\r?\n/);
    const head = at < 0 ? body : body.slice(0, at);
    const raw =
      at < 0
        ? null
        : body
            .slice(at)
            .replace(/^stream\r?\n/, '')
            .replace(/\r?\nendstream[\s\S]*$/, '');
    objects.set(id, { head, stream: raw === null ? null : unpacked(head, raw) });
  }
  return objects;
}

function unpacked(head: string, raw: string): string {
  return /\/FlateDecode/.test(head) ? inflateSync(Buffer.from(raw, 'latin1')).toString('latin1') : raw;
}

function pageText(head: string, objects: Objects): string {
  const fonts = fontsOf(head, objects);
  const contents = /\/Contents\s+(?:\[([^\]]*)\]|(\d+) 0 R)/.exec(head);
  const ids = (contents?.[1] ?? `${contents?.[2] ?? ''} 0 R`).match(/\d+(?= 0 R)/g) ?? [];
  return ids.map((id) => contentText(objects.get(id)?.stream ?? '', fonts)).join('');
}

/** The table of letters of each font that a page names. */
function fontsOf(head: string, objects: Objects): ReadonlyMap<string, ReadonlyMap<number, string>> {
  const resources = /\/Resources\s+(\d+) 0 R/.exec(head);
  const within = resources ? (objects.get(resources[1])?.head ?? '') : head;
  const named = /\/Font\s*<<([\s\S]*?)>>/.exec(within)?.[1] ?? '';
  return new Map(
    [...named.matchAll(/\/(\S+)\s+(\d+) 0 R/g)].map(([, name, id]) => {
      const table = /\/ToUnicode\s+(\d+) 0 R/.exec(objects.get(id)?.head ?? '');
      return [name, lettersOf(table ? (objects.get(table[1])?.stream ?? '') : '')];
    }),
  );
}

function lettersOf(table: string): ReadonlyMap<number, string> {
  const letters = new Map<number, string>();
  for (const [, block] of table.matchAll(/beginbfchar([\s\S]*?)endbfchar/g))
    for (const [, glyph, letter] of block.matchAll(/<([0-9a-f]+)>\s*<([0-9a-f]+)>/gi))
      letters.set(Number.parseInt(glyph, 16), letterOf(letter));
  for (const [, block] of table.matchAll(/beginbfrange([\s\S]*?)endbfrange/g))
    for (const [, from, to, first] of block.matchAll(/<([0-9a-f]+)>\s*<([0-9a-f]+)>\s*<([0-9a-f]+)>/gi))
      for (let glyph = Number.parseInt(from, 16), n = 0; glyph <= Number.parseInt(to, 16); glyph++, n++)
        letters.set(glyph, String.fromCharCode(Number.parseInt(first, 16) + n));
  return letters;
}

function letterOf(hex: string): string {
  return Buffer.from(hex, 'hex').swap16().toString('utf16le');
}

function contentText(stream: string, fonts: ReadonlyMap<string, ReadonlyMap<number, string>>): string {
  let letters: ReadonlyMap<number, string> = new Map();
  let text = '';
  for (const [, font, hex] of stream.matchAll(/\/(\S+)\s+[\d.]+\s+Tf|<([0-9a-fA-F]+)>/g)) {
    if (font) letters = fonts.get(font) ?? letters;
    else text += (hex.match(/.{4}/g) ?? []).map((glyph) => letters.get(Number.parseInt(glyph, 16)) ?? '').join('');
  }
  return text.replace(/\s+/g, '');
}
