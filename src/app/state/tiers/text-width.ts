const NARROW = new Set("ijl.,:;'|!· ");
const SLIM = new Set('ftrI()-[]’–');
const WIDE = new Set('mwMW%@');

/** Widths in parts of the type size, measured from the app's typeface, bold; the regular one is slightly narrower. */
const EMS = { narrow: 0.31, slim: 0.38, wide: 0.87, capital: 0.68, digit: 0.62, other: 0.57 } as const;

/**
 * About how wide a text is set in the app's typeface, in pixels, rather too wide than too narrow: nodes and heads are
 * measured before they are drawn.
 *
 * @param size of the type, pixels.
 * @check tests/unit/app/tiers-diagram.test.ts
 */
export function textWidth(text: string, size: number): number {
  let ems = 0;
  for (const letter of text) ems += emsOf(letter);
  return ems * size;
}

function emsOf(letter: string): number {
  if (NARROW.has(letter)) return EMS.narrow;
  if (SLIM.has(letter)) return EMS.slim;
  if (WIDE.has(letter)) return EMS.wide;
  if (letter >= '0' && letter <= '9') return EMS.digit;
  return letter >= 'A' && letter <= 'Z' ? EMS.capital : EMS.other;
}

/** The lines that a text takes when it is broken between words, none wider than `width` unless one word is. */
export function wrapWords(text: string, size: number, width: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/)) {
    const longer = lines.length > 0 ? `${lines[lines.length - 1]} ${word}` : word;
    if (lines.length > 0 && textWidth(longer, size) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
