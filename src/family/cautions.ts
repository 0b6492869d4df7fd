/** What a caution stands beside: figures of strength, a planned family, numbers of keys, or all of it together. */
export type CautionSubject = 'strength' | 'plan' | 'capacity' | 'everything';

const FIRST =
  'Exits, fire protection, accessibility and the key-control rules of the site come before anything that is planned here.';

const NO_BOUNDARY =
  'Sectioning is organisation and key space, no security boundary: a blank can be thinned with a file.';

const CONFIRM = "Have the cylinder's maker and a licensed locksmith confirm before metal is cut.";

const ESTIMATES =
  'Strength figures are estimates for ideal outlines without cuts, burrs, wear or fatigue: no certificate, no grade.';

const SENTENCES: Readonly<Record<CautionSubject, readonly string[]>> = {
  strength: [ESTIMATES, CONFIRM],
  plan: [FIRST, NO_BOUNDARY, CONFIRM],
  capacity: [
    'Counted bittings are an upper figure: what a system can use is less, by the rules of its maker and its site.',
    NO_BOUNDARY,
    FIRST,
  ],
  everything: [
    'Verdicts and margins are calculations on the outlines as drawn: burrs, plating and cuts are not in them.',
    ESTIMATES,
    NO_BOUNDARY,
    'Follow the duplication rights of the site and the law where you are. A family file can be sensitive: keep it private.',
    FIRST,
    CONFIRM,
  ],
};

/**
 * What must be said beside figures that people could be hurt or misled by, one sentence each.
 *
 * @check tests/unit/family/cautions.test.ts
 */
export function cautionsAbout(subject: CautionSubject): readonly string[] {
  return SENTENCES[subject];
}

/** The same as one line for a shell. */
export function cautionLine(subject: CautionSubject): string {
  return cautionsAbout(subject).join(' ');
}
