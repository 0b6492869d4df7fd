/** The part of fontkit 2.0 that `read-face.ts` uses; the package has no declarations of its own. */
declare module 'fontkit' {
  interface PathCommand {
    readonly command: 'moveTo' | 'lineTo' | 'quadraticCurveTo' | 'bezierCurveTo' | 'closePath';
    readonly args: readonly number[];
  }

  export interface GlyphRun {
    readonly advanceWidth: number;
    readonly glyphs: readonly { readonly path: { readonly commands: readonly PathCommand[] } }[];
    readonly positions: readonly { readonly xAdvance: number; readonly xOffset: number; readonly yOffset: number }[];
  }

  export interface Font {
    readonly unitsPerEm: number;
    hasGlyphForCodePoint(codePoint: number): boolean;
    layout(text: string): GlyphRun;
  }

  /** One font; several only from a collection. */
  export function create(bytes: Uint8Array): Font;
}
