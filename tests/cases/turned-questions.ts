// Questions of first-time listeners that say more than one plain thing: turned, twisted, loose, about order. As in
// questions.ts the right answers follow from the ward sites and the register of the demo, not from a run of our code.
import type { Question } from './questions.ts';

const HERON: readonly [string, string] = ['heron-blank-5', 'heron-keyway'];

/** Words that turn a question: only, except, instead of, more than, upside down, filed, two things at once. */
export const TURNS: readonly Question[] = [
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
export const LENGTHS: readonly Question[] = [
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
export const LOOSE: readonly Question[] = [
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
export const TWISTS: readonly Question[] = [
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
export const TRIED: readonly Question[] = [
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
export const ORDER: readonly Question[] = [
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
