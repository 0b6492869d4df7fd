// What first-time listeners ask about sectional keying, in their words, and what a right answer holds. Common practice, no
// source: the confusions are those that everybody meets who explains a family to a room. The answers follow from the ward
// sites in profiles-demo/README.md and from the register of profiles-demo/polderwick.json, not from a run of our code.

import type { Answer } from '../../src/names/answer.ts';
import { LENGTHS, LOOSE, ORDER, TRIED, TURNS, TWISTS } from './turned-questions.ts';

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
  {
    question: 'does the hereon blank go into bittern',
    kind: 'choose',
    says: ['mean Heron blank?'],
    saysNot: ['(section)'],
  },
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

/** All of them, by what is asked. */
export const QUESTIONS = {
  ...{ PAIRS, REASONS, THINGS, REACH, NEGATIONS, DIFFERENCES, CONFUSIONS, STUCK },
  ...{ TURNS, LENGTHS, LOOSE, TWISTS, ORDER, TRIED },
} as const;
