import type { Profile } from '../profile/profile.ts';
import type { Candidate, Identification } from './identify.ts';

/** Writes a length: nanometres to "0.066 mm". */
export type SayLength = (nm: number) => string;

/** Outlines no further apart than this lie on each other as far as a reading tells, nanometres. */
const SAME = 500;

/**
 * What an unknown outline is, in two or three sentences.
 *
 * @param error the drawing error that the answer was made with, nanometres.
 * @param whole what it is like where it is like nothing: `no other of the family` for one that belongs to it.
 * @check tests/unit/identify/say-identity.test.ts
 */
export function sayIdentity(
  { ranked, likeness, count }: Identification,
  profiles: readonly Profile[],
  error: number,
  length: SayLength,
  whole = 'none of the family',
): string[] {
  const [first, second] = ranked;
  if (!first) return ['There is nothing to compare it with.'];
  const name = (candidate: Candidate) => candidateName(candidate, profiles);
  const seen = (candidate: Candidate) =>
    candidate.comparison.pose.mirrored ? `the tip view of ${name(candidate)}` : name(candidate);
  const off = length(first.comparison.most);
  if (likeness === 'none')
    return [
      `This is like ${whole}: it is up to ${off} from the nearest, ${seen(first)}.`,
      `Drawn with an error of ${length(error)} it could be one of them only within ${length(6 * error)}.`,
    ];
  if (likeness === 'either')
    return [
      `This could be either ${orWords(ranked.slice(0, count).map(seen))}.`,
      `Drawn with an error of ${length(error)} they cannot be told apart: it is up to ${off} from the first.`,
      ...sayPose(first),
    ];
  const verb = first.comparison.pose.mirrored ? `looks like ${seen(first)}` : `is ${name(first)}`;
  return [
    likeness === 'certain'
      ? `This ${almost(verb)}: ${first.comparison.most < SAME ? 'it lies on it everywhere' : `nowhere is it more than ${off} from it`}.`
      : `This probably ${verb}: it is up to ${off} from it.`,
    ...(second ? [`The next, ${seen(second)}, is up to ${length(second.comparison.most)} off.`] : []),
    ...sayPose(first),
  ];
}

function almost(verb: string): string {
  return verb.startsWith('is ') ? `is almost certainly ${verb.slice(3)}` : `almost certainly ${verb}`;
}

/** What was done to the outline to lay it there, where that is worth a word. */
export function sayPose({ comparison: { pose } }: Candidate): string[] {
  const mirrored = pose.mirrored ? ['mirrored, as seen from the tip'] : [];
  const done = [...mirrored, ...turnWords(pose.turned)];
  return done.length > 0 ? [`To lie on it, it was ${done.join(' and ')}.`] : [];
}

/** Turns below half a degree are not worth a word. */
function turnWords(turned: number): string[] {
  const degrees = Math.round((turned * 1800) / Math.PI) / 10;
  const size = Math.abs(degrees);
  if (size < 0.5) return [];
  return size > 179 ? ['turned upside down'] : [`turned by ${size}° to the ${degrees > 0 ? 'left' : 'right'}`];
}

/** All profiles of one outline: "Heron blank, five chambers, or Heron blank, six chambers". */
export function candidateName({ ids }: Pick<Candidate, 'ids'>, profiles: readonly Profile[]): string {
  const names = ids.map((id) => profiles.find((profile) => profile.id === id)?.name ?? id);
  if (names.length === 1) return names[0];
  const [start] = names[0].split(',');
  const rests = names.map((name) => name.slice(start.length).replace(/^, */, ''));
  const alike = names.every((name) => name.startsWith(`${start},`));
  return alike ? `${start} (${rests.join(' or ')}: one outline)` : `${names.join(' or ')} (one outline)`;
}

/**
 * What stands beside a candidate in the list: those that cannot be told apart all have the same word; empty for those that
 * are out of the question.
 *
 * @check tests/unit/identify/say-identity.test.ts
 */
export function candidateWords({ likeness, count }: Identification, index: number): string {
  if (likeness === 'none') return index === 0 ? 'nearest, but not alike' : '';
  if (index >= count) return '';
  if (likeness === 'certain') return 'almost certainly';
  return likeness === 'probable' ? 'probably' : 'could be it';
}

function orWords(words: readonly string[]): string {
  const shown = words.length > 4 ? [...words.slice(0, 3), `${words.length - 3} more`] : words;
  return `${shown.slice(0, -1).join(', ')} or ${shown[shown.length - 1]}`;
}
