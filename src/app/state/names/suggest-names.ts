import type { Register } from '../../../names/register.ts';

/** Names that may be meant by what is being typed, and the stretch of the text that one of them would replace. */
export interface Suggested {
  readonly from: number;
  readonly to: number;
  readonly names: readonly string[];
}

/** Most names offered at once. */
const MOST_OFFERED = 8;

/** A name is rarely longer than so many words. */
const MOST_WORDS = 8;

/** Words of a question by themselves: nobody begins a name with them only. */
const QUESTION_WORDS = new Set(
  [
    'a an and any are be between by can could difference differs different do does enter enters fit fits for from go goes',
    'how i if in into is it of on or take takes tell the there to what which will with work works would',
  ].flatMap((line) => line.split(' ')),
);

/**
 * The names that begin with the last words before the caret: with as many of them as some name begins with. Capitals do
 * not count. Nothing is offered once the one name that is left stands there in full.
 *
 * @check tests/unit/app/suggest-names.test.ts
 */
export function suggestNames(register: Register, text: string, caret: number): Suggested | null {
  const before = text.slice(0, caret);
  const starts = [...before.matchAll(/[^\s?"“”]+/g)].map(({ index }) => index).slice(-MOST_WORDS);
  for (const from of starts) {
    const typed = before.slice(from).toLowerCase();
    if (typed.trim().length < 2 && !/\d/.test(typed)) continue;
    if (QUESTION_WORDS.has(typed.trim())) continue;
    const names = namesBeginning(register, typed);
    const [only] = names;
    if (names.length === 1 && only.toLowerCase() === typed) return null;
    if (names.length > 0) return { from, to: caret, names };
  }
  return null;
}

/** Names that begin so, each once, in the order of the register. */
function namesBeginning({ senses }: Register, typed: string): string[] {
  const names = new Set<string>();
  for (const { text } of senses) {
    if (names.size >= MOST_OFFERED) break;
    if (text.toLowerCase().startsWith(typed)) names.add(text);
  }
  return [...names];
}

/** The text with the suggested stretch replaced by a name, and where the caret stands then. */
export function takeName(text: string, { from, to }: Suggested, name: string): { text: string; caret: number } {
  const rest = text.slice(to);
  const gap = rest === '' || /^[\s?.,]/.test(rest) ? '' : ' ';
  return { text: `${text.slice(0, from)}${name}${gap}${rest}`, caret: from + name.length + gap.length };
}
