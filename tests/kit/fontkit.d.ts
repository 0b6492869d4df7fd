// What the tests use of fontkit, which brings no types.
declare module 'fontkit' {
  interface Font {
    readonly unitsPerEm: number;
    layout(
      text: string,
      features: string[],
    ): {
      advanceWidth: number;
      glyphs: { bbox: { minX: number; maxX: number; minY: number; maxY: number } }[];
    };
  }
  export function create(bytes: Uint8Array): Font;
}
