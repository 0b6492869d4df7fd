import type { Ink } from './inks.ts';

/** A place on a page: millimetres, x right, y down from the upper left corner. */
export type Spot = readonly [x: number, y: number];

/** A line through places, or the boundary of an area where it is closed. */
export interface Stroke {
  readonly spots: readonly Spot[];
  readonly closed: boolean;
}

/** Lines and areas; an area is filled by the even-odd rule over all its strokes. */
export interface PathMark {
  readonly kind: 'path';
  readonly strokes: readonly Stroke[];
  readonly fill?: Ink;
  /** Width and dashes in millimetres. */
  readonly line?: { readonly ink: Ink; readonly width: number; readonly dashes?: readonly number[] };
}

/** One line of text, `spot` on its base line. */
export interface TextMark {
  readonly kind: 'text';
  readonly spot: Spot;
  readonly text: string;
  /** Height of the type (its em), millimetres. */
  readonly size: number;
  readonly bold?: boolean;
  readonly align?: 'start' | 'middle' | 'end';
  readonly ink?: Ink;
  /** Degrees, clockwise as seen, about the spot. */
  readonly turned?: number;
  /** Of which rank it is among the headings; part of a paragraph where it is none. */
  readonly heading?: HeadingRank;
}

/** 1: what the page is about. */
export type HeadingRank = 1 | 2 | 3;

/** Marks that belong together; what lies outside `clip` (even-odd) is not drawn. `label` is for whoever cannot see them. */
export interface GroupMark {
  readonly kind: 'group';
  readonly label?: string;
  /** What it is of a table; rows that follow each other are one table. */
  readonly part?: 'row' | 'head' | 'cell';
  readonly clip?: readonly Stroke[];
  readonly marks: readonly Mark[];
}

/** What is drawn on a page, in order: later ones lie over earlier ones. */
export type Mark = PathMark | TextMark | GroupMark;

/** One page of a publication. Lengths in millimetres, at true scale. */
export interface Page {
  /** What the page is, in a few words. */
  readonly title: string;
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
  /** What the page says in reading order, for whoever cannot see it; where not given, its texts and labels as they come. */
  readonly told?: readonly string[];
}
