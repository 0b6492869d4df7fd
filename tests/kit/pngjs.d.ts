// What the tests use of pngjs, which brings no types.
declare module 'pngjs' {
  interface PngOptions {
    width?: number;
    height?: number;
    colorType?: number;
    inputColorType?: number;
    inputHasAlpha?: boolean;
    bitDepth?: number;
    deflateLevel?: number;
  }

  export class PNG {
    constructor(options?: PngOptions);
    width: number;
    height: number;
    data: Buffer;
    static sync: { read(file: Buffer): PNG; write(png: PNG, options?: PngOptions): Buffer };
  }
}
