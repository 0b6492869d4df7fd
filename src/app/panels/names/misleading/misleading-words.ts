import type { MisleadingKind } from '../../../../names/misleading-name.ts';

/** A kind of misleading name: its heading, and what is meant by it. Common practice, no source. */
interface KindWords {
  readonly title: string;
  /** The heading in a narrow list. */
  readonly short: string;
  readonly meaning: string;
}

/** Each way in which a name misleads, the gravest first. */
export const MISLEADING_WORDS: Readonly<Record<MisleadingKind, KindWords>> = {
  joined: {
    title: 'Joined from two sections',
    short: 'Joined',
    meaning: 'It is put together from the names of two sections, so people take it for one that goes into both.',
  },
  'foreign keyway': {
    title: 'Called like another keyway',
    short: 'Another keyway',
    meaning: 'A blank has the name of a keyway that it does not belong to.',
  },
  'two schemes': {
    title: 'One name, different things',
    short: 'Two meanings',
    meaning: 'Two lists use the same name, and do not mean the same by it.',
  },
  'same section name': {
    title: 'Two sections under one name',
    short: 'One for two',
    meaning: 'Blanks of one name have different outlines: what goes for one does not go for the other.',
  },
  lengths: {
    title: 'Only the length differs',
    short: 'Length only',
    meaning: 'Two names of one section look like two sections.',
  },
  order: {
    title: 'Numbers against lengths',
    short: 'Numbers',
    meaning: 'The higher number is the shorter blank.',
  },
  'look-alike': {
    title: 'Look-alikes',
    short: 'Look-alikes',
    meaning: 'O and 0, or I, l and 1, are easily read for each other.',
  },
};

/** The kinds in that order. */
export const MISLEADING_KINDS = Object.keys(MISLEADING_WORDS) as MisleadingKind[];
