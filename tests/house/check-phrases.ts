import type { Project } from './read-project.ts';

/**
 * What no file of the project may say: unfinished work, and talk about how the text came to be. Each pattern is put
 * together from pieces, so that this file does not hold what it forbids.
 */
const FORBIDDEN: readonly RegExp[] = [
  ['seed', '[- ]doc', 'ument'],
  ['/', 'work', '/'],
  ['shared/', 'design'],
  ['\\bissues?', ' #?\\d'],
  ['\\bA', 'I\\b'],
  ['\\bLL', 'M\\b'],
  ['\\b[Aa]', 'gents?\\b'],
  ['\\bTO', 'DO\\b'],
  ['\\bFIX', 'ME\\b'],
  ['\\b[Nn]ot ', 'implemented\\b'],
  ['\\b[Ll]orem ', 'ipsum\\b'],
].map((pieces) => new RegExp(pieces.join('')));

/** Lines of any kept file that say what no file may say. */
export function checkPhrases(project: Project): string[] {
  return [...project.texts].flatMap(([path, text]) =>
    text.split('\n').flatMap((line, i) => {
      const hit = FORBIDDEN.map((pattern) => pattern.exec(line)?.[0]).find((found) => found !== undefined);
      return hit === undefined ? [] : [`${path}:${i + 1} says "${hit}"`];
    }),
  );
}
