import { posix } from 'node:path';
import { type Project, textOf } from './read-project.ts';

const MOST_LINES = 500;
const MOST_FUNCTION_LINES = 60;
const README_LINES = { least: 10, most: 40 };
const MOST_DECISION_LINES = 8;
const README_PARTS = ['Semantics', 'Method', 'Sources', 'Not here'];

/** Names that say nothing about what is inside. */
const VAGUE_WORDS = new Set(
  'util utils utility utilities helper helpers common misc manager managers service services type types stuff'.split(
    ' ',
  ),
);

/** At a sign, and before a capital after a small letter. */
const WORD_BREAK = /[/.\-_]|(?<=[a-z])(?=[A-Z])/;

const TOP_LEVEL = new Set([
  ...['README.md', 'DEVELOPERS.md', 'LICENSE', 'package.json', 'package-lock.json', 'tsconfig.json'],
  ...['vite.config.ts', 'index.html', 'src', 'tests', 'profiles-demo', 'shared', 'node_modules', 'dist'],
]);

/** Entries at the top level that have no place there; names with a leading dot are free. */
export function checkTopLevel(project: Project): string[] {
  const strays = project.topLevel.filter((name) => !name.startsWith('.') && !TOP_LEVEL.has(name));
  return strays.map((name) => `${name} has no place at the top level`);
}

/** Files and folders with a vague name, and barrels. */
export function checkNames(project: Project): string[] {
  const ours = [...project.texts.keys()].filter((path) => /^(src|tests)\//.test(path));
  return ours.flatMap((path) => {
    if (/(^|\/)index\.tsx?$/.test(path)) return [`${path} is a barrel: import from the file itself`];
    const words = path.split(WORD_BREAK).map((word) => word.toLowerCase());
    const vague = words.filter((word) => VAGUE_WORDS.has(word));
    return vague.length > 0 ? [`${path} has a vague name: ${vague.join(', ')}`] : [];
  });
}

function checkReadme(path: string, text: string): string[] {
  const lines = text.trimEnd().split('\n');
  const { least, most } = README_LINES;
  const length =
    lines.length < least || lines.length > most ? [`${path} has ${lines.length} lines, not ${least}-${most}`] : [];
  const starts = README_PARTS.map((part) => lines.findIndex((line) => new RegExp(`^[#*\\s]*${part}\\b`).test(line)));
  const inOrder = starts.every((start, i) => start >= 0 && start > (starts[i - 1] ?? -1));
  return inOrder ? length : [...length, `${path} lacks, or has out of order: ${README_PARTS.join(', ')}`];
}

/** Folders of `src`, two levels down, without a README.md that says what the folder is. */
export function checkReadmes(project: Project): string[] {
  const code = project.sources.filter(({ path }) => !path.endsWith('.css'));
  const folders = new Set(
    code.map(({ path }) => posix.dirname(path).split('/').slice(0, 3).join('/')).filter((f) => f !== 'src'),
  );
  return [...folders].flatMap((folder) => {
    const path = `${folder}/README.md`;
    return project.texts.has(path) ? checkReadme(path, textOf(project, path)) : [`${path} is missing`];
  });
}

/** Files and functions that are too long to read. */
export function checkBudgets(project: Project): string[] {
  const code = [...project.texts].filter(([path]) => /^(src|tests)\/.*\.(ts|tsx|mjs|css)$/.test(path));
  const files = code.map(([path, text]) => ({ path, lineCount: text.trimEnd().split('\n').length }));
  const functions = project.sources.flatMap(({ path, functions }) => functions.map((f) => ({ path, ...f })));
  return [
    ...files
      .filter((f) => f.lineCount > MOST_LINES)
      .map((f) => `${f.path} has ${f.lineCount} lines, over ${MOST_LINES}`),
    ...functions
      .filter((f) => f.lineCount > MOST_FUNCTION_LINES)
      .map((f) => `${f.path}:${f.line} ${f.name} has ${f.lineCount} lines, over ${MOST_FUNCTION_LINES}`),
  ];
}

/** Exported functions of the pure folders without a doc comment. */
export function checkDocs(project: Project, pureFolders: readonly string[]): string[] {
  const pure = project.sources.filter(({ path }) => pureFolders.some((folder) => path.startsWith(`src/${folder}/`)));
  return pure.flatMap(({ path, undocumented }) =>
    undocumented.map(({ name, line }) => `${path}:${line} ${name} has no doc comment`),
  );
}

/** A test that a doc comment points to, beside which nothing else is said in the path. */
const TEST_PATH = /tests\/[\w./-]+\.(?:ts|tsx|mjs)\b/g;

/** Tests named in the comments of `src` that are not there. */
export function checkNamedTests(project: Project): string[] {
  const code = [...project.texts].filter(([path]) => /^src\/.*\.(ts|tsx)$/.test(path));
  return code.flatMap(([path, text]) =>
    text.split('\n').flatMap((line, i) => {
      const missing = (line.match(TEST_PATH) ?? []).filter((test) => !project.texts.has(test));
      return missing.map((test) => `${path}:${i + 1} names ${test}, which is not there`);
    }),
  );
}

/** Numbered decisions of the contributor guide that are too long, or whose number is used twice. */
export function checkDecisions(developers: string): string[] {
  const section = /^## Decisions\n([\s\S]*?)(?=^## |$(?![\s\S]))/m.exec(developers)?.[1] ?? '';
  const decisions = section.split(/^### /m).slice(1);
  if (decisions.length === 0) return ['DEVELOPERS.md records no decision'];
  const numbers = decisions.map((text) => text.split(/[. ]/)[0] ?? '');
  const twice = numbers.filter((number, i) => numbers.indexOf(number) !== i);
  const long = decisions.filter((text) => text.trim().split('\n').length - 1 > MOST_DECISION_LINES);
  return [
    ...twice.map((number) => `decision ${number} is there twice`),
    ...long.map((text) => `decision ${text.split('\n')[0]} has more than ${MOST_DECISION_LINES} lines`),
  ];
}
