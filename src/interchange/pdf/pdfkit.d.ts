/** The part of pdfkit 0.20 that `write.ts` uses; declarations made by others bring Node's globals into the pure core. */
declare module 'pdfkit' {
  interface TextSetting {
    lineBreak: false;
    baseline: 'alphabetic';
    features: string[];
  }

  /** Something that is read, or several of them, in the structure of a tagged document. */
  interface Structure {
    /** A closure draws what the structure holds, at once where the structure has its place in the document. */
    add(child: Structure | (() => void)): this;
    end(): void;
  }

  export default class PDFDocument {
    constructor(options: {
      autoFirstPage: false;
      font: '';
      lang: string;
      displayTitle: boolean;
      tagged: boolean;
      pdfVersion: '1.7';
      info: { Title: string; Producer: string; Creator: string; CreationDate: Date };
    });
    readonly info: { CreationDate?: Date };
    addPage(options?: { size: [number, number]; margin: number }): this;
    /** A font that was read by fontkit. */
    registerFont(name: string, font: object): this;
    transform(a: number, b: number, c: number, d: number, e: number, f: number): this;
    rotate(degrees: number, options: { origin: [number, number] }): this;
    lineJoin(join: 'round'): this;
    lineCap(cap: 'butt'): this;
    lineWidth(width: number): this;
    dash(lengths: number[], options: object): this;
    moveTo(x: number, y: number): this;
    lineTo(x: number, y: number): this;
    closePath(): this;
    fill(colour: string, rule: 'even-odd'): this;
    stroke(colour: string): this;
    clip(rule: 'even-odd'): this;
    fillColor(colour: string): this;
    font(name: string): this;
    fontSize(size: number): this;
    text(text: string, x: number, y: number, setting: TextSetting): this;
    struct(type: string, options?: { alt?: string; title?: string; scope?: 'Row' | 'Column' }): Structure;
    addStructure(structure: Structure): this;
    markContent(tag: 'Artifact', options: { type: 'Layout' }): this;
    endMarkedContent(): this;
    save(): this;
    restore(): this;
    on(event: 'data', listener: (chunk: Uint8Array) => void): this;
    on(event: 'error', listener: (error: Error) => void): this;
    on(event: 'end', listener: () => void): this;
    /** Called by `end`: writes what the document says of itself once more, as XML. */
    endMetadata(): void;
    end(): void;
  }
}
