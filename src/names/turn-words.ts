/** What some words do to a question: with them it asks something else, and must not be answered as if they were not there. */
export type Turn =
  /** How the blade is held: upside down, mirrored. */
  | 'posture'
  /** That a part is not as drawn: filed, worn. */
  | 'changed'
  | 'only'
  | 'except'
  /** X instead of Y. */
  | 'replace'
  /** Into more keyways than. */
  | 'more keyways'
  | 'same keyways'
  /** Longer, of the same length. */
  | 'length'
  /** Any other comparison: thicker than. */
  | 'comparison'
  | 'safety'
  | 'tightest'
  /** Any other most: the thinnest. */
  | 'most'
  /** That it is doubted: "is it false that". */
  | 'denied'
  | 'each other'
  /** Do all blanks, not which. */
  | 'every blank'
  /** Who stands above X in the order of blanks. */
  | 'above'
  | 'below'
  /** A group of keyways: those that a group blank goes into. */
  | 'group'
  | 'how many'
  | 'between';

const KEYWAYS = '(keyway|lock|door|cylinder|opening|plug|keyhole|place)s?';

const PHRASES: Readonly<Record<Turn, readonly string[]>> = {
  posture: [
    'upside ?down|mirror(ed|ing|wise)?|back ?wards?|back to front|invert(ed)?|flip(ped)?|revers(e|ed)|rotated?|sideways',
    'inside out|(wrong|other|opposite) (way|side|end)|(tip|bow|head|back) first|on its (head|back|side)',
    'turn(ed)? (it |NAME |them )?(round|around|over)',
  ],
  changed: [
    'fil(e|es|ed|ing)|thin (it|down|a|the|NAME)|thin(ned|ning)|grind(ing)?|ground|cut(ting)? (it )?(down|away)',
    'worn|wear|forc(e|ed|ing)|hammer(ed|ing)?|sand(ed|ing)|shav(e|ed|ing)|trim(med|ming)?|bend(ing)?|bent|tilt(ed)?',
    'squeez(e|ed|ing)|jam(med)?|(be|it) made (to|fit)|make (it|NAME)( to)? (fit|go|enter)|push(ed)? hard|with force',
    'modif(y|ied)|alter(ed)?|deepen(ed)?|damaged|bevell?ed|polish(ed)?|oil(ed)?|plated|dirty|rust(y|ed)|machined?|shorten(ed)?',
  ],
  only: ['only|solely|exclusively|alone|nothing (else|but)|no other|just (the )?(NAME|one)'],
  except: [
    'else (than|but)|except(ing)?|excluding|(?<!\\btell NAME )apart from|other than|besides|save for',
    '(all|every|everything|everywhere|any|anything|each)( \\w+)? but(?! (not|also))',
  ],
  replace: [
    'instead|rather than|in (place|lieu) of|replac(e|es|ed|ing|ement)|substitut(e|es|ed|ing)|stand(s|ing)? in for',
    'do for|do the (job|work) of|do NAME (job|work)|as good as|(will|would|can|could|does) NAME do$|(every)?where(ver)?( that)? NAME (go|goes|fits?|enters?|works?)$|everything( that)? NAME (go|goes|fits?|enters?|opens?|works?)',
  ],
  'more keyways': [`(more|most|fewer|fewest|less|as many) ${KEYWAYS}`],
  'same keyways': [`same (number of )?${KEYWAYS}`],
  length: [
    '(?<!no |any )longer|longest|shorter|shortest|(same|equal|different) lengths?|equally (long|short)|as (long|short) as NAME',
  ],
  comparison: ['than|(more|fewer|fewest|less) (blank|key|tool)s?'],
  safety: ['safe|secure|security|protected|protects?'],
  tightest: [
    'tightest|loosest|closest|snuggest|(most|least) (room|clearance|play)|(smallest|largest|greatest) (gap|clearance)',
  ],
  most: [
    'thinnest|thickest|widest|narrowest|biggest|largest|smallest|heaviest|lightest|deepest|shallowest|highest|lowest|tallest',
    'newest|oldest|cheapest|strongest|weakest|simplest|fewest|greatest|half|twice|thinner|thicker|wider|narrower',
  ],
  denied: ['false|untrue|wrong|lie|myth|mistaken?|incorrect|nonsense|impossible|unable|unlikely|fail(s|ed|ing)?'],
  'each other': ['each other|one another|mutual(ly)?|(kept|keeps?|keeping)( NAME)?( and)?( NAME)? apart'],
  'every blank': ['(all|every|each)( of the| the)? (blank|key|tool|blade)s?'],
  above: ['above|outranks?'],
  below: ['below|beneath'],
  group: ['groups?(?! (blank|key)s?)'],
  'how many': ['how many|number of|count'],
  between: ['between|among'],
};

const PATTERNS = (Object.entries(PHRASES) as [Turn, readonly string[]][]).map(
  ([turn, phrases]) => [turn, new RegExp(`\\b(?:${phrases.join('|')})\\b`)] as const,
);

/** A turn and where its words stand. */
export interface TurnFound {
  readonly turn: Turn;
  /** In the outline of the question, in characters. */
  readonly from: number;
  readonly to: number;
}

/**
 * The turns of a question, each once.
 *
 * @param outline the words in small letters, one space apart, with NAME for each name. No pattern repeats without end, so
 *   none takes long.
 * @check tests/unit/names/ask.test.ts
 */
export function turnsIn(outline: string): TurnFound[] {
  return PATTERNS.flatMap(([turn, pattern]) => {
    const match = pattern.exec(outline);
    return match ? [{ turn, from: match.index, to: match.index + match[0].length }] : [];
  });
}
