/** What letters take on paper, in the typeface of the app. */
export interface TextMeasure {
  /** Width of one line of text, in the unit of `size` (the height of the em). */
  width(text: string, size: number, bold?: boolean): number;
  /** The letters of a text that the typeface has not; they are shown as a box. */
  missing(text: string): readonly string[];
}
