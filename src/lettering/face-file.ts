/** Which part of the typeface a file holds: plain Latin letters, or those of more languages. */
export type FacePart = 'latin' | 'latin-ext';

/** One file of the typeface, WOFF. */
export interface FaceFile {
  readonly part: FacePart;
  readonly bold: boolean;
  readonly bytes: Uint8Array;
  /** The same as a `data:` address. */
  readonly address: string;
}

/** A file that has been read. */
export interface ReadFaceFile extends FaceFile {
  /** As the writer of PDF files takes it. */
  readonly font: object;
}

/** Name of the typeface, as style sheets know it. */
export const FACE_NAME = 'Atkinson Hyperlegible Next';
