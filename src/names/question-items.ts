import type { Mention } from './mention.ts';
import type { Word } from './name-phrase.ts';
import { classOf, type WordClass } from './question-words.ts';

/** A word of a question with a use; words of names, and those without a use, are left out. */
export interface Item {
  readonly at: number;
  readonly word: Word;
  readonly use: WordClass;
}

/** The words of a question that are no part of a name and have a use, in order. */
export function itemsOf(words: readonly Word[], mentions: readonly Mention[]): Item[] {
  return words.flatMap((word, at): Item[] => {
    const use = isNamed(mentions, at) ? null : wordUse(words, mentions, at);
    return use === null ? [] : [{ at, word, use }];
  });
}

function isNamed(mentions: readonly Mention[], at: number): boolean {
  return mentions.some(({ from, to }) => at >= from && at < to);
}

/** What a word does where it stands: "come" in "how come" asks why, "do" in "can X do Y" is the verb. */
function wordUse(words: readonly Word[], mentions: readonly Mention[], at: number): WordClass | null {
  const { plain } = words[at];
  if (plain === 'come' && words[at - 1]?.plain === 'how') return 'why';
  if (plain === 'do' && mentions.some(({ to }) => to === at) && mentions.some(({ from }) => from === at + 1))
    return 'enters';
  if (plain === 'no' && classOf(words[at + 1]?.plain ?? '') === 'kind') return 'any';
  return classOf(plain);
}

/** Whether a word is one of going in, letting in, keeping out or handling. */
export function isVerb({ use }: Item): boolean {
  return use === 'enters' || use === 'takes' || use === 'stops' || use === 'handles';
}

/**
 * The words in small letters with NAME for each name and its article: "does NAME go only into NAME". A group of a name
 * stays one: "is NAME in NAME group".
 */
export function outlineOf(words: readonly Word[], mentions: readonly Mention[]): string {
  const texts = words.flatMap(({ plain }, at) => {
    if (mentions.some(({ from }) => from === at)) return ['NAME'];
    if (mentions.some((mention) => isGroup(words, mention) && mention.to - 1 === at)) return [plain];
    return isNamed(mentions, at) ? [] : [plain];
  });
  return texts.join(' ').replace(/\b(?:an?|the|my|our|your|his|her|their) NAME\b/g, 'NAME');
}

/** Whether the group of a name is meant, "the Reed group", and not its blank. */
export function isGroup(words: readonly Word[], { from, to }: Mention): boolean {
  return to - from > 1 && /^groups?$/.test(words[to - 1].plain);
}
