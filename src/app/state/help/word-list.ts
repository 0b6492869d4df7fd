/** A word of the trade or of the drawing sheet, and what is meant by it here. */
export type Word = readonly [word: string, meaning: string];

/** Words under the heads that they are sought by. */
export const WORDS: readonly { readonly head: string; readonly words: readonly Word[] }[] = [
  {
    head: 'Parts',
    words: [
      ['keyway', 'The opening in the plug, as seen from the front. As geometry it is called an opening.'],
      ['section', 'The cross-section of a blade, as seen from the bow (the part that is held) towards the tip.'],
      ['blank', 'A key without cuts; here, the section of its blade.'],
      ['tool', 'Anything else that goes into a keyway.'],
      ['strip', 'A tool whose section is a plain rectangle.'],
      ['ward', 'Material of the plug that stands into the keyway.'],
      ['groove', 'What is milled off the blade so that a ward can pass.'],
      ['web', 'What is left of the blade between its grooves.'],
      ['back', 'The edge of the blade without cuts; it lies at the bottom here.'],
      ['chamber', 'One pin position. Blanks of one section come in lengths for several numbers of chambers.'],
      ['paracentric', 'Said of a keyway with a ward that reaches past the upright centre line.'],
      ['line of sight', 'The widest upright strip through a keyway that no ward stands into.'],
    ],
  },
  {
    head: 'Answers',
    words: [
      ['enters', 'In its best placement the gap all round is at least the family’s running clearance.'],
      ['tight', 'It goes in with less than that; touching counts as going in.'],
      ['blocked', 'It does not go in, however it is placed.'],
      ['clearance', 'The uniform gap all round in the best placement.'],
      ['interference', 'The depth by which the best placement still stands in the plug; shown as a margin below zero.'],
      ['running clearance', 'The gap from which on a blank is said to enter. The family sets it.'],
      ['play', 'How far the blank can wander in the keyway, sideways and in height.'],
      ['seat', 'The lowest place, where springs press the key.'],
      ['tolerance', 'How much a part as made may differ from its drawing, to either side.'],
      ['wear', 'What use takes off the blade and off the keyway.'],
      ['guard margin', 'The wear from which on the first blocked blank of the family goes in.'],
      ['spare', 'How much thicker a tool could be and still go in, both sides together.'],
      ['pinch', 'The place in a keyway that holds a strip, and so sets how thick it may be.'],
    ],
  },
  {
    head: 'Families',
    words: [
      ['sectional keying', 'The same bittings used again on keyways of different section.'],
      ['base section', 'A section whose blank enters its own keyway only.'],
      ['in-between section', 'One added later between two others of a family.'],
      ['group blank', 'A blank that enters several keyways of the family, but not all.'],
      ['all-section blank', 'A blank that enters every keyway of the family.'],
      ['tier', 'How high a blank stands in the order of who enters more than whom.'],
      ['common passage', 'What several keyways have in common when they are laid on each other.'],
      ['ward site', 'A place on the blade where a section may have a ward and another may not.'],
      ['claim', 'What a chart or a catalogue says of a pair, to be checked.'],
      ['bitting', 'The depths of the cuts of one key.'],
      ['MACS', 'Maximum adjacent cut specification: how much two neighbouring cuts may differ.'],
      ['key changes', 'How many different keys there are.'],
    ],
  },
  {
    head: 'Drawing',
    words: [
      ['bowed edge', 'An edge drawn as an arc instead of a straight line.'],
      ['loop', 'A closed line of an imported drawing: it can become a section.'],
      ['threshold', 'The grey of a picture from which on it counts as the section, not as its ground.'],
    ],
  },
  {
    head: 'On paper and in the hand',
    words: [
      ['true scale', 'Printed at 100 %, so that a bar of 50 mm measures 50 mm.'],
      ['display block', 'A solid with all keyways side by side, enlarged.'],
      ['coupon', 'A short piece of a blank, enlarged, with a grip.'],
      ['fitting gap', 'What is taken off a printed coupon all round so that it slides.'],
    ],
  },
];

/** The words whose name or meaning holds what is sought; heads without one are left out. @check tests/unit/app/help.test.ts */
export function seekWords(sought: string): typeof WORDS {
  const wanted = sought.trim().toLowerCase();
  return WORDS.flatMap(({ head, words }) => {
    const found = words.filter((word) => word.some((text) => text.toLowerCase().includes(wanted)));
    return found.length > 0 ? [{ head, words: found }] : [];
  });
}
