// What first-time listeners ask about sectional keying, in their words, and what a right answer holds. Common practice, no
// source: the confusions are those that everybody meets who explains a family to a room. The answers follow from the ward
// sites in profiles-demo/README.md and from the register of profiles-demo/polderwick.json, not from a run of our code.

import type { Answer } from '../../src/names/answer.ts';

/** A question about the demo family and facts that its answer must hold. */
export interface Question {
  readonly question: string;
  /** answer where not given. */
  readonly kind?: Answer['kind'];
  readonly verdict?: 'enters' | 'tight' | 'blocked';
  /** Ids of the blank or tool and of the keyway that were judged. */
  readonly pair?: readonly [entrant: string, opening: string];
  /** Ids that the answer must name, in any order. */
  readonly names?: readonly string[];
  /** Ids that it must not name. */
  readonly notNames?: readonly string[];
  /** What its words must hold, whatever the capitals. */
  readonly says?: readonly string[];
  readonly saysNot?: readonly string[];
  /** Ready-made questions that it must offer. */
  readonly offers?: readonly string[];
}

const HERON: readonly [string, string] = ['heron-blank-5', 'heron-keyway'];
const HERON_IN_BITTERN: readonly [string, string] = ['heron-blank-5', 'bittern-keyway'];

/** Does X go into Y, in every way that people say it. */
const PAIRS: readonly Question[] = [
  {
    question: 'Does Heron go into Bittern?',
    verdict: 'blocked',
    pair: HERON_IN_BITTERN,
    says: ['No:', 'blocked by the right ward', 'too deep'],
  },
  { question: 'does heron go into heron', verdict: 'enters', pair: HERON, says: ['Yes:', '0.055 mm all round'] },
  {
    question: 'Does the Heron blank enter the Heron keyway?',
    verdict: 'enters',
    pair: HERON,
    says: ['it differs in length only'],
  },
  { question: 'Will a five-chamber Heron blank fit the Heron lock?', verdict: 'enters', pair: HERON },
  {
    question: 'Would the Heron blank in six chambers fit into the Heron cylinder',
    verdict: 'enters',
    pair: ['heron-blank-6', 'heron-keyway'],
  },
  { question: 'Can I open the Bittern door with the Heron key?', verdict: 'blocked', pair: HERON_IN_BITTERN },
  {
    question: 'Will the Bittern door open with the Reed blank?',
    verdict: 'enters',
    pair: ['reed-group-blank', 'bittern-keyway'],
    says: ['Going in is not opening'],
  },
  {
    question: "Doesn't Smew work in Heron?",
    verdict: 'blocked',
    pair: ['smew-blank', 'heron-keyway'],
    saysNot: ['No:', 'Yes:'],
  },
  {
    question: 'Could you please tell me whether a Ruff key would open the Bittern lock, thanks',
    verdict: 'blocked',
    pair: ['ruff-blank', 'bittern-keyway'],
  },
  { question: 'Is the Shore blank suitable for Rail?', verdict: 'enters', pair: ['shore-group-blank', 'rail-keyway'] },
  { question: 'Can Bittern be opened by Heron?', verdict: 'blocked', pair: HERON_IN_BITTERN },
  {
    question: 'Does the Plover lock take the Dyke blank?',
    verdict: 'enters',
    pair: ['dyke-group-blank', 'plover-keyway'],
  },
  { question: "Isn't Causeway accepted by Rail?", verdict: 'blocked', pair: ['causeway-group-blank', 'rail-keyway'] },
  { question: 'Can the nose feeler be used in Plover?', verdict: 'enters', pair: ['nose-feeler', 'plover-keyway'] },
  { question: 'What if I put the nose feeler into Heron?', verdict: 'blocked', pair: ['nose-feeler', 'heron-keyway'] },
  {
    question: 'Strip 1.31 x 6 in Dunlin?',
    verdict: 'tight',
    pair: ['strip-131', 'dunlin-keyway'],
    says: ['tightly', 'may rub', 'depends on the parts'],
  },
  { question: 'strip 1.75x6 into Avocet', verdict: 'blocked', pair: ['strip-175', 'avocet-keyway'] },
  {
    question: 'I was told that Ruff goes into Ruff. Does Ruff go into Ruff?',
    verdict: 'enters',
    pair: ['ruff-blank', 'ruff-keyway'],
    says: ['depends on the parts'],
  },
];

/** Why, and how much room. */
const REASONS: readonly Question[] = [
  {
    question: "Why doesn't Smew go into Heron?",
    verdict: 'blocked',
    pair: ['smew-blank', 'heron-keyway'],
    says: ['blocked by the right ward', 'A ward is a rib'],
  },
  {
    question: 'Why does Causeway not go into the Avocet keyway?',
    verdict: 'blocked',
    pair: ['causeway-group-blank', 'avocet-keyway'],
    says: ['ward'],
  },
  { question: 'What stops Heron in Bittern?', verdict: 'blocked', pair: HERON_IN_BITTERN },
  {
    question: 'How much clearance has Polder in Ruff?',
    verdict: 'enters',
    pair: ['polder-all-section-blank', 'ruff-keyway'],
    says: ['0.045 mm all round'],
  },
  {
    question: 'How much room is there for the Knot blank in the Knot keyway?',
    verdict: 'enters',
    pair: ['knot-blank', 'knot-keyway'],
    says: ['0.04'],
  },
  {
    question: 'How tight is Avocet in Avocet?',
    verdict: 'enters',
    pair: ['avocet-blank', 'avocet-keyway'],
    says: ['0.050 mm'],
  },
];

/** What is X. */
const THINGS: readonly Question[] = [
  {
    question: 'What is PC 105?',
    says: [
      'blank number',
      'not a keyway',
      'Heron section in six chambers',
      'five-chamber blank of the same section is PC 106',
    ],
    names: ['heron-blank-6'],
  },
  {
    question: "what's pc-106",
    says: ['not a keyway', 'Heron section in five chambers', 'six-chamber blank of the same section is PC 105'],
  },
  { question: 'Is PC 110 a keyway?', says: ['blank number', 'not a keyway', 'Bittern section'] },
  {
    question: 'What is Heron?',
    says: ['section', 'keyway is Heron keyway'],
    names: ['heron-keyway', 'heron-blank-5', 'heron-blank-6'],
  },
  { question: 'Tell me about the Polder blank', names: ['polder-all-section-blank'], says: ['all-section'] },
  { question: 'What does HB mean?', says: ['Smew section', 'joins the names of Heron and Bittern', 'neither'] },
  { question: 'What is PC 100?', says: ['series', 'Heron blank, five chambers and Heron blank, six chambers'] },
  { question: 'What is Wigeon?', says: ['old name', 'Smew'] },
  { question: 'What is Feeler no. 2?', says: ['tool'], names: ['nose-feeler'] },
  { question: 'what is w-12', says: ['Knot section', 'Stores list', 'Dunlin section', "Porter's book"] },
  { question: 'What is a ward?', says: ['rib'] },
  { question: 'What is a keyway, please?', says: ['opening'] },
];

/** What goes into Y, where does X go, what goes into all. */
const REACH: readonly Question[] = [
  {
    question: 'What goes into Bittern?',
    names: ['bittern-blank', 'reed-group-blank', 'causeway-group-blank', 'polder-all-section-blank', 'strip-055'],
    notNames: ['heron-blank-5', 'smew-blank', 'ruff-blank'],
  },
  {
    question: 'Which blanks enter the Dunlin keyway?',
    names: ['dunlin-blank', 'shore-group-blank', 'polder-all-section-blank'],
    notNames: ['strip-055', 'rail-blank'],
  },
  { question: 'Which tools fit the Smew lock?', names: ['strip-055', 'smew-keyway'], notNames: ['smew-blank'] },
  {
    question: 'Who can open Curlew?',
    names: ['curlew-blank', 'dyke-group-blank', 'causeway-group-blank', 'polder-all-section-blank'],
    notNames: ['strip-055', 'knot-blank'],
  },
  {
    question: 'What does the Avocet lock accept?',
    names: ['avocet-blank', 'shore-group-blank'],
    notNames: ['rail-blank', 'dunlin-blank'],
  },
  {
    question: 'Is there a blank for the Rail keyway?',
    names: ['rail-blank', 'shore-group-blank'],
    notNames: ['strip-055'],
  },
  {
    question: 'Who goes into Heron and Bittern?',
    names: ['reed-group-blank', 'causeway-group-blank', 'polder-all-section-blank'],
    notNames: ['heron-blank-5', 'smew-blank', 'bittern-blank'],
  },
  {
    question: 'Which key opens both the Rail and the Dunlin doors?',
    names: ['shore-group-blank', 'polder-all-section-blank'],
    notNames: ['rail-blank', 'causeway-group-blank'],
  },
  {
    question: 'Does any blank go into both Curlew and Rail?',
    names: ['polder-all-section-blank'],
    notNames: ['causeway-group-blank', 'dyke-group-blank', 'curlew-blank'],
  },
  {
    question: 'What does Reed go into?',
    says: ['3 of 10 keyways'],
    names: ['heron-keyway', 'smew-keyway', 'bittern-keyway'],
    notNames: ['ruff-keyway'],
  },
  {
    question: 'Into which keyways does the Causeway blank go?',
    says: ['7 of 10'],
    names: ['curlew-keyway', 'ruff-keyway'],
    notNames: ['rail-keyway'],
  },
  {
    question: 'Where does Dyke fit?',
    says: ['3 of 10'],
    names: ['plover-keyway', 'knot-keyway', 'curlew-keyway'],
    notNames: ['ruff-keyway'],
  },
  {
    question: 'What can I open with the Shore key?',
    says: ['3 of 10'],
    names: ['rail-keyway', 'avocet-keyway', 'dunlin-keyway'],
  },
  { question: 'Which doors will Heron open?', says: ['1 of 10'], names: ['heron-keyway'], notNames: ['smew-keyway'] },
  { question: 'Does Polder go everywhere?', says: ['all 10 keyways'], names: ['dunlin-keyway'] },
  {
    question: 'Which blank enters all?',
    names: ['polder-all-section-blank'],
    notNames: ['causeway-group-blank', 'strip-055'],
    says: ['all 10 keyways'],
  },
  { question: 'Is there one key for every door?', names: ['polder-all-section-blank'] },
  { question: 'what opens everything', names: ['polder-all-section-blank', 'strip-055'] },
];

/** Turned round: what does not go in, and what goes into one but not into another. */
const NEGATIONS: readonly Question[] = [
  { question: 'Can I use PC 106 in place of PC 105?', says: ['length only'] },
  { question: 'Which ward stops Heron in Bittern?', verdict: 'blocked', pair: HERON_IN_BITTERN, says: ['right ward'] },
  { question: 'Does Reed fit Smew better than Heron does?', saysNot: ['no name'] },
  {
    question: "What doesn't go into Heron?",
    names: ['bittern-blank', 'smew-blank', 'nose-feeler'],
    notNames: ['heron-blank-5', 'reed-group-blank'],
  },
  {
    question: 'Which blank goes into Heron but not into Bittern?',
    names: ['heron-blank-5', 'heron-blank-6'],
    notNames: ['reed-group-blank', 'polder-all-section-blank', 'bittern-blank'],
  },
  { question: "How come Knot won't go in Plover", verdict: 'blocked', pair: ['knot-blank', 'plover-keyway'] },
  { question: 'Can PC 105 be used instead of PC 106?', says: ['length only', 'same keyways'] },
  {
    question: 'I have the Reed key. Which doors can I open?',
    names: ['heron-keyway', 'smew-keyway', 'bittern-keyway'],
    notNames: ['ruff-keyway'],
  },
  { question: 'how many blanks go into Heron', says: ['5 blanks'], notNames: ['strip-055'] },
  { question: "Will Heron's key open Bittern's door?", verdict: 'blocked', pair: HERON_IN_BITTERN },
  { question: 'Can I put Polder in everything?', says: ['all 10 keyways'] },
];

/** What differs, and what is the same. */
const DIFFERENCES: readonly Question[] = [
  {
    question: 'What differs between PC 105 and PC 106?',
    says: ['one and the same section', 'length only', 'same keyways'],
  },
  {
    question: "What's the difference between the Heron and the Bittern keyway?",
    says: ['different keyways', 'Into both'],
    names: ['heron-keyway', 'bittern-keyway'],
  },
  {
    question: 'How does Heron differ from Smew?',
    says: ['does not go into Smew keyway', 'does not go into Heron keyway'],
  },
  { question: 'Is PC 110 the same as the Bittern blank?', says: ['Yes:', 'two names of one thing'] },
  { question: 'Is Heron the same as Smew?', says: ['No:', 'different shape'] },
  { question: 'PC 105 vs PC 106', says: ['length only'] },
  { question: 'Is Wigeon the same as Smew?', says: ['Yes:'] },
];

/** The confusions: blank numbers taken for keyways, joined names, parts swapped, old names. */
const CONFUSIONS: readonly Question[] = [
  {
    question: 'Does the nose feeler go into PC 105 and PC 106?',
    verdict: 'blocked',
    pair: ['nose-feeler', 'heron-keyway'],
    says: [
      'PC 105 is a blank number',
      'not a keyway',
      'Heron section in six chambers',
      'PC 106',
      'answer is for the keyway of that section, Heron keyway',
    ],
  },
  {
    question: 'does strip 0.55 x 6 enter PC 110',
    verdict: 'enters',
    pair: ['strip-055', 'bittern-keyway'],
    says: ['not a keyway', 'Bittern section'],
  },
  { question: 'Does PC 106 go into PC 105?', verdict: 'enters', pair: HERON, says: ['not a keyway'] },
  {
    question: 'Does HB fit both Heron and Bittern?',
    says: ['neither Heron keyway nor Bittern keyway', 'HB is the Smew section', 'Beware'],
    names: ['smew-blank'],
  },
  { question: 'So is Bit-Plo for Bittern and Plover?', says: ['Ruff blank', 'neither'], names: ['ruff-blank'] },
  {
    question: 'Does Knot go into Plover and Curlew, since it is between them?',
    says: ['neither Plover keyway nor Curlew keyway'],
    names: ['knot-blank'],
  },
  {
    question: 'Does the Heron keyway go into the Bittern keyway?',
    verdict: 'blocked',
    pair: HERON_IN_BITTERN,
    says: ['is a keyway', 'not a blank', 'blanks of that section'],
  },
  {
    question: 'Does the Heron keyway go into PC 105?',
    verdict: 'enters',
    pair: ['heron-blank-6', 'heron-keyway'],
    says: ['not the other way round'],
  },
  { question: 'Does PC 99 still go into Heron?', verdict: 'enters', pair: HERON, says: ['old name', 'PC 106'] },
  {
    question: 'Does PC 100 go into the gatehouse lock?',
    verdict: 'enters',
    pair: HERON,
    says: ['series', 'length only'],
  },
  { question: 'Does Reed go into the Reed keyway?', says: ['no keyway of the Reed section', '3 of 10'] },
  {
    question: 'Does the seven-chamber Heron blank go into Heron?',
    says: ['no blank of the Heron section in seven chambers'],
  },
  {
    question: "Does Polder go into W-12 of the Porter's book?",
    verdict: 'enters',
    pair: ['polder-all-section-blank', 'dunlin-keyway'],
  },
];

/** Names that are not there, and what is no question. */
const STUCK: readonly Question[] = [
  { question: 'does hereon go into bittern', kind: 'choose', offers: ['does Heron go into bittern'] },
  { question: 'Does Heron go into Bitern?', kind: 'choose', offers: ['Does Heron go into Bittern?'] },
  {
    question: 'Does PC 140 go into Avocet?',
    kind: 'choose',
    says: ['looks much the same', 'O and 0'],
    offers: ['Does PC 14O go into Avocet?'],
  },
  { question: 'Does PC 104 go into Heron?', kind: 'unknown', says: ['no name "PC 104"'], saysNot: ['PC 105'] },
  { question: 'Does Heron 7 go into Bittern?', kind: 'unknown', says: ['no name "Heron 7"'] },
  { question: 'Does the strip go into Heron?', kind: 'unknown', offers: ['Does the Strip 0.55 x 6 go into Heron?'] },
  { question: 'What is Woodpigeon?', kind: 'unknown', says: ['Woodpigeon'] },
  { question: 'good morning', kind: 'not understood' },
  { question: '', kind: 'not understood' },
];

/** Words that turn a question: only, except, instead of, more than, upside down, filed, two things at once. */
const TURNS: readonly Question[] = [
  {
    question: 'Is Heron the only blank that enters the Heron keyway?',
    says: ['No:', 'Reed group blank'],
    names: ['reed-group-blank', 'causeway-group-blank', 'polder-all-section-blank'],
  },
  { question: 'only Heron goes into Heron?', says: ['No:'], names: ['reed-group-blank'] },
  {
    question: 'Does the Heron blank go only into the Heron keyway?',
    says: ['Yes:', 'into no other keyway'],
    names: ['heron-blank-5', 'heron-keyway'],
  },
  { question: 'Does Reed enter only Heron?', says: ['No:'], names: ['smew-keyway', 'bittern-keyway'] },
  {
    question: 'Which blanks go only into the Heron keyway?',
    names: ['heron-blank-5', 'heron-blank-6'],
    notNames: ['reed-group-blank', 'polder-all-section-blank'],
  },
  { question: 'Is Heron the only keyway that the Heron blank enters?', says: ['Yes:'] },
  {
    question: 'does the Heron blank go into the Heron keyway upside down?',
    kind: 'not understood',
    says: ['the right way up'],
    saysNot: ['Yes:'],
  },
  { question: 'Does a mirrored Heron blank enter Smew?', kind: 'not understood', says: ['mirrored'] },
  { question: 'Can I put Heron into Heron the wrong way round?', kind: 'not understood' },
  { question: 'Does Heron enter Heron tip first?', kind: 'not understood' },
  {
    question: 'If I file down a Heron blank will it enter Smew?',
    verdict: 'blocked',
    pair: ['heron-blank-5', 'smew-keyway'],
    says: ['as drawn', 'filed'],
    saysNot: ['No:'],
  },
  { question: 'Does a worn Heron key enter Smew?', says: ['as drawn'], saysNot: ['No:'] },
  { question: 'Where does a thinned Heron blank go?', says: ['as drawn'] },
  {
    question: 'Can I use a Reed group blank instead of a Heron blank?',
    says: ['Yes:', 'every keyway that'],
    saysNot: ['No:'],
    names: ['reed-group-blank', 'heron-blank-5'],
  },
  { question: 'Can Reed replace Heron?', says: ['Yes:'] },
  { question: 'Can Heron be replaced by Reed?', says: ['Yes:'] },
  { question: 'Can Heron replace Reed?', says: ['No:', 'Smew keyway and Bittern keyway'] },
  { question: 'Will Reed do for Heron?', says: ['Yes:'] },
  { question: 'I lost my Heron key; will a Reed key do?', says: ['Yes:'] },
  { question: 'Does Reed go everywhere Heron goes?', says: ['Yes:'] },
  {
    question: 'Is there a blank that enters all keyways except Dunlin?',
    names: ['polder-all-section-blank'],
    notNames: ['dunlin-blank', 'shore-group-blank'],
    says: ['but Dunlin keyway', 'goes into Dunlin keyway too'],
  },
  { question: 'What enters everything but Rail, Avocet and Dunlin?', names: ['causeway-group-blank'] },
  {
    question: 'Does Causeway go into every keyway except Rail?',
    says: ['No:', 'Avocet keyway'],
  },
  {
    question: 'Does Causeway enter all keyways apart from Rail, Avocet and Dunlin?',
    says: ['Yes:'],
  },
  { question: 'which blanks enter all but two keyways', kind: 'not understood' },
  {
    question: 'What goes into Heron apart from Reed?',
    names: ['heron-blank-5', 'causeway-group-blank'],
    notNames: ['reed-group-blank'],
  },
  {
    question: 'does the blank for Heron enter the keyway for Smew',
    verdict: 'blocked',
    pair: ['heron-blank-5', 'smew-keyway'],
    says: ['No:'],
  },
  {
    question: 'Does the key of Reed open the lock of Bittern?',
    verdict: 'enters',
    pair: ['reed-group-blank', 'bittern-keyway'],
  },
  {
    question: 'Does Smew enter Heron and does Heron enter Smew?',
    kind: 'not understood',
    says: ['one at a time'],
    offers: ['Does Smew go into Heron?', 'Does Heron go into Smew?'],
  },
  {
    question: 'Does the Reed blank enter more keyways than the Dyke blank?',
    says: ['No:', '3 of 10'],
    names: ['reed-group-blank', 'dyke-group-blank'],
  },
  { question: 'Does Causeway open more doors than Reed?', says: ['Yes:', '7 of 10', '3 of 10'] },
  { question: 'Does Heron go into fewer keyways than Reed?', says: ['Yes:'] },
  { question: 'Is Heron thicker than Smew?', kind: 'not understood' },
  { question: 'Do the Shore blank and the Causeway blank enter the same keyways?', says: ['No:'] },
  { question: 'which blanks do not enter every keyway', kind: 'not understood' },
  { question: 'how many blanks go into Avocet and Rail', says: ['2 blanks'] },
];

/** Lengths: no part of the section, but asked about all the same. */
const LENGTHS: readonly Question[] = [
  {
    question: 'Can a five chamber Heron blank go into a six chamber cylinder?',
    says: ['1 of 10', 'length is no part of the section'],
  },
  {
    question: 'Does the five-chamber Heron blank go into the six-chamber Heron lock?',
    verdict: 'enters',
    pair: ['heron-blank-5', 'heron-keyway'],
    says: ['length is no part of the section'],
  },
  {
    question: 'which blank for the gatehouse lock, six chambers?',
    names: ['heron-blank-6', 'reed-group-blank'],
    notNames: ['heron-blank-5'],
  },
  { question: 'Which five-chamber blanks enter Heron?', names: ['heron-blank-5'], notNames: ['heron-blank-6'] },
  {
    question: 'which is longer, the five or six chamber heron blank?',
    says: ['Heron blank, six chambers is the longest'],
    names: ['heron-blank-6', 'heron-blank-5'],
  },
  { question: 'Is PC 106 longer than PC 105?', says: ['PC 105 is the longest'] },
  { question: 'Which of PC 105 and PC 106 is the shorter?', says: ['PC 106 is the shortest'] },
  { question: 'Are the Smew blank and the Reed blank the same length?', says: ['Yes:', 'six chambers'] },
  { question: 'are the two heron blanks the same?', says: ['one and the same section', 'length only'] },
  { question: 'how do the Heron blanks differ?', says: ['length only'] },
];

/** Names by their ids, names without a verb, words in another order, and what cannot be told. */
const LOOSE: readonly Question[] = [
  {
    question: 'does the nose feeler go into heron-blank-6 and heron-blank-5',
    verdict: 'blocked',
    pair: ['nose-feeler', 'heron-keyway'],
  },
  { question: 'What is strip-055?', names: ['strip-055'] },
  { question: 'Heron-blank-6', names: ['heron-blank-6'] },
  { question: 'nose feeler, heron?', verdict: 'blocked', pair: ['nose-feeler', 'heron-keyway'], says: ['read as'] },
  { question: 'Heron / Heron', verdict: 'enters', pair: HERON },
  { question: 'PC 105 PC 106', kind: 'not understood' },
  { question: 'Can dyke do plover, knot and curlew?', says: ['Yes:', 'all of'], names: ['curlew-keyway'] },
  { question: 'does 0.55 strip fit', kind: 'unknown', offers: ['does Strip 0.55 x 6 fit'] },
  { question: 'is ruff between bittern and plover', says: ['in-between', 'neither'], names: ['ruff-blank'] },
  { question: 'which is the thinnest blank', kind: 'not understood', saysNot: ['no name'] },
  {
    question: 'which blank is tightest in Heron',
    names: ['heron-blank-5', 'reed-group-blank'],
    says: ['tightest first'],
  },
  { question: 'what is paracentric', says: ['centre line'] },
  { question: 'What does bitting mean?', says: ['cuts'] },
  { question: 'Does nothing go into Dunlin?', names: ['dunlin-blank'] },
  { question: 'Does a frobnicated Heron blank enter Smew?', says: ['not taken into account', 'frobnicated'] },
];

/** Said the other way: neither, nothing else, kept out, each other, false, a name before a colon. */
const TWISTS: readonly Question[] = [
  {
    question: 'which blanks go into neither Heron nor Smew',
    says: ['Into neither'],
    names: ['bittern-blank', 'dyke-group-blank'],
    notNames: ['heron-blank-5', 'smew-blank', 'reed-group-blank'],
  },
  { question: 'Does nothing but Heron go into Heron?', says: ['No:'], names: ['reed-group-blank'] },
  { question: 'Does Polder enter anything else than Heron?', says: ['Yes:', 'Smew keyway'] },
  { question: 'Does Heron go into any keyway except Heron?', says: ['No:', 'no keyway but Heron keyway'] },
  { question: 'Which keyways does Reed enter besides Heron?', says: ['Smew keyway and Bittern keyway'] },
  {
    question: 'Does anything else than Reed go into Heron?',
    names: ['heron-blank-5'],
    notNames: ['reed-group-blank'],
  },
  { question: 'If Reed enters Heron, does Heron enter Reed?', kind: 'not understood', says: ['one at a time'] },
  { question: 'Is it false that Heron goes into Smew?', verdict: 'blocked', saysNot: ['No:', 'Yes:'] },
  { question: 'Is it impossible for Reed to enter Smew?', verdict: 'enters', saysNot: ['No:', 'Yes:'] },
  { question: 'Can Heron be made to enter Smew?', says: ['as drawn'], saysNot: ['No:'] },
  { question: 'Can I squeeze Heron into Smew?', says: ['as drawn'], saysNot: ['No:'] },
  { question: 'Does a Heron blank fit Heron if I turn it around?', kind: 'not understood' },
  { question: 'Do all blanks go into Heron?', says: ['No:', '11 of 16'] },
  { question: 'Does every blank enter Dunlin?', says: ['No:'] },
  { question: 'Does no blank go into Dunlin?', names: ['dunlin-blank'], notNames: ['heron-blank-5'] },
  { question: 'list all keyways', kind: 'not understood' },
  { question: 'the 0.55 mm strip', kind: 'unknown', offers: ['the Strip 0.55 x 6'] },
  {
    question: 'Does HB go into Bittern, since it is called HB?',
    verdict: 'blocked',
    pair: ['smew-blank', 'bittern-keyway'],
  },
  { question: 'Dunlin: does Polder go in?', verdict: 'enters', pair: ['polder-all-section-blank', 'dunlin-keyway'] },
  {
    question: 'which keyway is the tightest for Polder',
    says: ['tightest first', 'Knot keyway with 0.042 mm'],
    saysNot: ['no keyway of the Polder'],
  },
  { question: 'which doors stay shut for Reed', says: ['3 of 10'], saysNot: ['no keyway of the Reed'] },
  { question: 'what keeps Reed out of Knot', verdict: 'blocked', pair: ['reed-group-blank', 'knot-keyway'] },
  {
    question: 'who is kept out of Knot',
    names: ['heron-blank-5', 'reed-group-blank'],
    notNames: ['knot-blank', 'dyke-group-blank'],
  },
  {
    question: 'Do Heron and Smew exclude each other?',
    says: ['neither goes into the other', 'does not go into Smew keyway', 'does not go into Heron keyway'],
  },
  { question: 'Are Heron and Smew kept apart?', says: ['neither goes into the other'] },
  { question: 'Heron key, Dunlin lock', verdict: 'blocked', pair: ['heron-blank-5', 'dunlin-keyway'] },
  { question: 'Dunlin lock, Heron key', verdict: 'blocked', pair: ['heron-blank-5', 'dunlin-keyway'] },
  { question: 'Reed -> Smew', verdict: 'enters', pair: ['reed-group-blank', 'smew-keyway'] },
  { question: "Can Reed do Heron's job?", says: ['Yes:', 'every keyway that'] },
  { question: 'who enters more keyways, Reed or Causeway?', says: ['3 of 10', '7 of 10'], saysNot: ['No:', 'Yes:'] },
  { question: 'Does only Polder enter all keyways?', says: ['Polder all-section blank goes into all 10'] },
  { question: 'how long is PC 105', says: ['six chambers'], saysNot: ['longest'] },
];

/** Heard from people who tried it. */
const TRIED: readonly Question[] = [
  {
    question: 'what fits the Dunlin keyway but not the Rail one',
    names: ['dunlin-blank'],
    notNames: ['shore-group-blank', 'polder-all-section-blank', 'rail-blank'],
  },
  { question: 'which blanks fit the Dunlin keyway but not Rail', names: ['dunlin-blank'], notNames: ['rail-blank'] },
  {
    question: 'does the five chamber heron blank fit a six chamber heron cylinder?',
    verdict: 'enters',
    says: ['length is no part of the section'],
  },
  { question: 'is heron safe against the dyke holders', kind: 'not understood' },
  { question: 'which blanks go nowhere', kind: 'not understood' },
  { question: 'what is the top key?', kind: 'not understood' },
  { question: 'who has more keys, Heron or Smew?', kind: 'not understood' },
  {
    question: 'Which group blanks enter Heron?',
    names: ['reed-group-blank', 'causeway-group-blank'],
    notNames: ['heron-blank-5', 'polder-all-section-blank'],
  },
];

/** The order of blanks: groups, above and below, and what several go into together. */
const ORDER: readonly Question[] = [
  { question: 'Is Smew in the Reed group?', verdict: 'enters', pair: ['reed-group-blank', 'smew-keyway'] },
  { question: 'does the Reed group include Knot?', verdict: 'blocked', pair: ['reed-group-blank', 'knot-keyway'] },
  { question: 'Which keyways are in the Dyke group?', says: ['3 of 10'], names: ['knot-keyway'] },
  {
    question: 'which group does Heron belong to',
    names: ['reed-group-blank', 'causeway-group-blank'],
    notNames: ['dyke-group-blank', 'strip-055'],
  },
  {
    question: 'who stands above Heron',
    names: ['reed-group-blank', 'causeway-group-blank', 'polder-all-section-blank'],
    notNames: ['dyke-group-blank', 'smew-blank'],
  },
  {
    question: 'What is below Reed?',
    names: ['heron-blank-5', 'smew-blank', 'bittern-blank'],
    notNames: ['ruff-blank'],
  },
  { question: 'Is Causeway above Reed?', says: ['Yes:'] },
  { question: 'Is Reed above Causeway?', says: ['No:'] },
  { question: 'Is Reed below Causeway?', says: ['Yes:'] },
  { question: 'does Causeway enter everything Reed enters?', says: ['Yes:', 'every keyway that'] },
  {
    question: 'Which keyways does neither Heron nor Smew enter?',
    says: ['neither of them goes into Bittern keyway'],
  },
  {
    question: 'Which keyways do both Reed and Causeway enter?',
    says: ['both go into Heron keyway, Smew keyway and Bittern keyway'],
  },
  { question: 'Is there a keyway that Reed and Dyke both enter?', says: ['no keyway takes both'] },
  {
    question: 'Does anything but Polder enter Heron and Dunlin?',
    names: ['strip-055'],
    notNames: ['polder-all-section-blank', 'heron-blank-5'],
  },
];

/** All of them, by what is asked. */
export const QUESTIONS = {
  ...{ PAIRS, REASONS, THINGS, REACH, NEGATIONS, DIFFERENCES, CONFUSIONS, STUCK },
  ...{ TURNS, LENGTHS, LOOSE, TWISTS, ORDER, TRIED },
} as const;
