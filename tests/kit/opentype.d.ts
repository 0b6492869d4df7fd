// What the tests use of opentype.js, which brings no types.
declare module 'opentype.js' {
  interface Glyph {
    advanceWidth: number;
    getBoundingBox(): { x1: number; x2: number; y1: number; y2: number };
  }
  export function parse(bytes: ArrayBuffer): { unitsPerEm: number; charToGlyph(letter: string): Glyph };
}
