/** The part of opentype.js 2.0 that `read-face.ts` uses; declarations made by others bring the DOM into the pure core. */
declare module 'opentype.js' {
  interface Font {
    readonly unitsPerEm: number;
    charToGlyphIndex(letter: string): number;
    getAdvanceWidth(text: string, size: number): number;
    getPath(text: string, x: number, y: number, size: number): { commands: import('./read-face.ts').FaceCommand[] };
  }

  export function parse(bytes: ArrayBuffer): Font;
}
