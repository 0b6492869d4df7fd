/** The words of the trade in plain words, by how they may be written. */
const TERMS: readonly (readonly [words: RegExp, meaning: string])[] = [
  [
    /^(keyway|opening|keyhole)s?$/,
    'A keyway is the opening in the plug of a lock that the key goes into, as seen from the front.',
  ],
  [/^(key )?sections?$/, 'A section is the shape of a blade seen along it; a keyway and its blanks share it.'],
  [/^(key )?blanks?$/, 'A blank is a key that is not cut yet; here only the shape of its blade counts.'],
  [/^blank numbers?$/, 'A blank number is what a list calls a blank of one section and one length. It is no keyway.'],
  [/^tools?$/, 'A tool is anything else that goes into a keyway.'],
  [/^series$/, 'A series is one name for several blanks that differ in something else, their length for example.'],
  [/^wards?$/, 'A ward is a rib of the plug that stands into the keyway; a blade passes it only with a groove there.'],
  [/^(groove|milling)s?$/, 'A groove is milled into the blade so that a ward of the lock can pass.'],
  [/^webs?$/, 'The web is what is left of the blade between its grooves.'],
  [/^backs?( of (the )?blade)?$/, 'The back of a blade is its edge without cuts.'],
  [
    /^paracentric( keyways?| sections?)?$/,
    'A paracentric keyway has a ward that reaches past its vertical centre line.',
  ],
  [
    /^bittings?$/,
    'The bitting of a key is the row of its cuts. It is no part of the section and is not looked at here.',
  ],
  [/^interferences?$/, 'The interference is how deep a blank that does not go in still collides where it stands best.'],
  [/^sectional keying$/, 'Sectional keying uses the same cuts again on several sections, which keep their keys apart.'],
  [/^plugs?$/, 'The plug is the part of a lock that turns; the keyway is its opening.'],
  [/^chambers?$/, 'A chamber is the place of one pin; blanks come in lengths for five, six or seven chambers.'],
  [/^clearances?$/, 'The clearance is the gap left all round a blank that stands at its best in a keyway.'],
  [/^base sections?$/, "A base section's blank goes into its own keyway only."],
  [/^group (blank|key)s?$/, 'A group blank goes into several keyways, but not into all.'],
  [/^all ?section (blank|key)s?$/, 'An all-section blank goes into every keyway of the family.'],
  [
    /^in ?between sections?$/,
    'An in-between section was squeezed in later between two others; it is a section of its own.',
  ],
];

/**
 * What a word of the trade means, or null where it is none that is explained.
 *
 * @param phrase in small letters, words parted by one space.
 */
export function meaningOfTerm(phrase: string): string | null {
  return TERMS.find(([words]) => words.test(phrase))?.[1] ?? null;
}
