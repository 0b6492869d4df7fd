// Each house rule, shown a small project that breaks it: a rule that finds nothing here would find nothing anywhere.

import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import {
  checkBudgets,
  checkDecisions,
  checkDocs,
  checkNamedTests,
  checkNames,
  checkReadmes,
  checkTopLevel,
} from './check-files.ts';
import { checkCycles, checkDependencies, checkLayers } from './check-imports.ts';
import { checkPhrases } from './check-phrases.ts';
import { type Project, readProject, textOf } from './read-project.ts';
import { readDependencyTable, readLayerTable } from './read-tables.ts';

const DEVELOPERS = `# Guide
## Layers
| folder | may import |
|---|---|
| \`geom\` | nothing of ours |
| \`fit\`, \`gauge\` | geom |
| \`jobs\` | all of the above |
| \`cli\` | jobs |
| \`app/state\` | jobs |
| \`app/panels\` | app/state |

## Dependencies
| dependency | enters through | reason |
|---|---|---|
| \`clip\` | \`src/geom/clip.ts\` | clipping |
| \`react\` | \`src/app/panels/\` | forms |
| \`node:*\` | \`src/cli/\` | files |
`;

const GOOD: Record<string, string> = {
  'DEVELOPERS.md': DEVELOPERS,
  'package.json': JSON.stringify({
    dependencies: { clip: '1.2.3', react: '1.0.0' },
    devDependencies: { vite: '8.0.0' },
  }),
  'src/geom/README.md': [
    '# geom',
    '## Semantics',
    'a',
    '## Method',
    'b',
    '## Sources',
    'c',
    'd',
    '## Not here',
    'e',
  ].join('\n'),
  'src/geom/point.ts':
    'export interface Point { x: number }\n/** The point at twice the distance. */\nexport const twice = (p: Point) => ({ x: 2 * p.x });\n',
  'src/geom/clip.ts':
    "import clip from 'clip/lib/core.js';\nimport { twice } from './point.ts';\nexport const cut = clip(twice);\n",
  'src/fit/README.md': '*Semantics* a\n\n*Method* b\n\n*Sources* c\n\n*Not here* d\n\ne\nf\n',
  'src/fit/judge.ts': "import { twice } from '../geom/point.ts';\nexport const answer = twice({ x: 1 });\n",
  'src/cli/main.ts':
    "import { readFileSync } from 'node:fs';\nimport type { Point } from '../geom/point.ts';\nexport const p: Point = JSON.parse(readFileSync('x', 'utf8'));\n",
  'src/app/panels/form.tsx':
    "import { useState } from 'react';\nimport type { answer } from '../../fit/judge.ts';\nexport type A = typeof answer;\nexport const n = useState;\n",
};

let root = '';

/** The good project with some files changed, added, or (null) taken away. */
function projectWith(changes: Record<string, string | null> = {}): Project {
  for (const [path, text] of Object.entries({ ...GOOD, ...changes })) {
    if (text === null) continue;
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), text);
  }
  return readProject(root);
}

const layers = (changes?: Record<string, string | null>) =>
  checkLayers(projectWith(changes), readLayerTable(DEVELOPERS));

const dependencies = (changes?: Record<string, string | null>) => {
  const project = projectWith(changes);
  return checkDependencies(
    project,
    readDependencyTable(textOf(project, 'DEVELOPERS.md')),
    textOf(project, 'package.json'),
  );
};

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'house-rules-'));
});

afterEach(() => rmSync(root, { recursive: true, force: true }));

describe('layers', () => {
  test('a project that keeps the table has no findings', () => expect(layers()).toEqual([]));

  test.each([
    ['a value from above', "import { answer } from '../fit/judge.ts';\nexport const a = answer;"],
    ['a type from above', "import type { answer } from '../fit/judge.ts';\nexport type A = typeof answer;"],
    ['a re-export', "export { answer } from '../fit/judge.ts';"],
    ['a dynamic import', "export const a = () => import('../fit/judge.ts');"],
    ['a worker', "export const w = new Worker(new URL('../fit/judge.ts', import.meta.url));"],
  ])('%s is found', (_, text) => {
    expect(layers({ 'src/geom/bad.ts': text })).toEqual([
      'src/geom/bad.ts:1 geom may not import fit (../fit/judge.ts)',
    ]);
  });

  test('a value is not free where its type is', () => {
    const text = "import { twice } from '../geom/point.ts';\nexport const t = twice;";
    expect(layers({ 'src/cli/bad.ts': text })).toEqual(['src/cli/bad.ts:1 cli may not import geom (../geom/point.ts)']);
    const panel = "import { twice } from '../../geom/point.ts';\nexport const t = twice;";
    expect(layers({ 'src/app/panels/bad.ts': panel })).toContain(
      'src/app/panels/bad.ts:1 app/panels may not import geom (../../geom/point.ts)',
    );
  });

  test('a folder that the table does not know is found, and so is an import from outside src', () => {
    expect(layers({ 'src/elsewhere/a.ts': 'export const a = 1;' })[0]).toMatch(
      /^src\/elsewhere\/a\.ts is in no folder/,
    );
    expect(layers({ 'src/fit/bad.ts': "import '../../tests/kit/a.ts';" })[1]).toMatch(/^src\/fit\/bad\.ts:1 imports/);
  });

  test('a table that names an unknown folder is refused', () => {
    expect(() => readLayerTable(DEVELOPERS.replace('| jobs |', '| jobz |'))).toThrow(/jobz, which has no row/);
    expect(() => readLayerTable('# Guide')).toThrow(/no heading "Layers"/);
  });
});

describe('circles', () => {
  test('none in the good project', () => expect(checkCycles(projectWith())).toEqual([]));

  test('a circle of three is found, once', () => {
    const project = projectWith({
      'src/geom/a.ts': "import './b.ts';",
      'src/geom/b.ts': "import type { X } from './c.ts';\nexport type Y = X;",
      'src/geom/c.ts': "export * from './a.ts';",
    });
    expect(checkCycles(project)).toEqual(['src/geom/a.ts -> src/geom/b.ts -> src/geom/c.ts -> src/geom/a.ts']);
  });
});

describe('dependencies', () => {
  test('none in the good project', () => expect(dependencies()).toEqual([]));

  test('a second importer is found', () => {
    expect(dependencies({ 'src/fit/bad.ts': "import 'clip';" })).toEqual([
      'src/fit/bad.ts imports clip, which enters through src/geom/clip.ts',
    ]);
  });

  test('files are read in the command line only, React is kept to its folder', () => {
    const bad = dependencies({ 'src/fit/bad.ts': "import 'node:fs';\nimport 'react/jsx-runtime';" });
    expect(bad).toEqual([
      'src/fit/bad.ts imports react, which enters through src/app/panels/',
      'src/fit/bad.ts imports node:*, which enters through src/cli/',
    ]);
  });

  test('packages without a row, rows without an import, loose versions and second files are found', () => {
    const manifest = { dependencies: { clip: '^1.2.3', react: '1.0.0', extra: '1.0.0' } };
    expect(dependencies({ 'package.json': JSON.stringify(manifest) })).toEqual([
      'extra has no row in DEVELOPERS.md',
      'clip: version ^1.2.3 is not exact',
    ]);
    const row = DEVELOPERS.replace('`src/geom/clip.ts`', '`src/geom/clip.ts`, `src/fit/clip.ts`');
    expect(dependencies({ 'DEVELOPERS.md': row })[0]).toMatch(/clip enters through 2 files/);
    const unused = `${DEVELOPERS}| \`gone\` | \`src/geom/gone.ts\` | none |\n`;
    expect(dependencies({ 'DEVELOPERS.md': unused })).toEqual([
      'gone has a row in DEVELOPERS.md, and nothing imports it',
    ]);
    expect(dependencies({ 'src/app/panels/a.css': "@import 'stray/a.css';" })[0]).toBe(
      'src imports stray, which has no row',
    );
  });
});

describe('files', () => {
  test('none in the good project', () => {
    const project = projectWith();
    const readmes = checkReadmes(project);
    expect(readmes).toEqual(['src/app/panels/README.md is missing', 'src/cli/README.md is missing']);
    expect([...checkNames(project), ...checkBudgets(project), ...checkTopLevel(project)]).toEqual([]);
    expect(checkDocs(project, ['geom', 'fit'])).toEqual([]);
  });

  test('vague names and barrels are found', () => {
    const files = ['src/geom/index.ts', 'src/fit/pointUtils.ts', 'src/fit/key-helpers.ts', 'src/fit/common/a.ts'];
    const findings = checkNames(projectWith(Object.fromEntries(files.map((file) => [file, 'export {};']))));
    expect(findings.map((finding) => finding.split(' ')[0]).sort()).toEqual(files.sort());
  });

  test('a README that is too short, too long or out of order is found', () => {
    const readmeOf = (text: string) => {
      const findings = checkReadmes(projectWith({ 'src/geom/README.md': text }));
      return findings.filter((finding) => finding.startsWith('src/geom/'));
    };
    const good = GOOD['src/geom/README.md'] ?? '';
    const outOfOrder = 'src/geom/README.md lacks, or has out of order: Semantics, Method, Sources, Not here';
    expect(readmeOf(good)).toEqual([]);
    expect(readmeOf(good.replace('## Method', '## Means'))).toEqual([outOfOrder]);
    expect(readmeOf(good.replace('Sources', 'Method').replace('Method', 'Sources'))).toEqual([outOfOrder]);
    expect(readmeOf(good.replace('a\n', ''))).toEqual(['src/geom/README.md has 9 lines, not 10-40']);
    expect(readmeOf(good + '\n.'.repeat(40))).toEqual(['src/geom/README.md has 50 lines, not 10-40']);
  });

  test('long files and long functions are found', () => {
    const long = `export function long() {\n${'  void 0;\n'.repeat(60)}}\n`;
    const arrow = `export const Part = () => {\n${'  void 0;\n'.repeat(70)}};\n`;
    const project = projectWith({
      'src/geom/long.ts': long,
      'src/app/panels/part.tsx': arrow,
      'tests/unit/long.test.ts': 'void 0;\n'.repeat(501),
    });
    expect(checkBudgets(project)).toEqual([
      'tests/unit/long.test.ts has 501 lines, over 500',
      'src/app/panels/part.tsx:1 Part has 72 lines, over 60',
      'src/geom/long.ts:1 long has 62 lines, over 60',
    ]);
  });

  test('exported functions without a doc comment are found, in pure folders only', () => {
    const text =
      '/** Too short */\nexport function a() {}\n/** A comment about something else. */\n\nconst n = 1;\nexport const b = () => n;\n';
    const project = projectWith({ 'src/geom/bare.ts': text, 'src/cli/bare.ts': text });
    expect(checkDocs(project, ['geom'])).toEqual([
      'src/geom/bare.ts:2 a has no doc comment',
      'src/geom/bare.ts:6 b has no doc comment',
    ]);
  });

  test('a test named in a comment that is not there is found', () => {
    const text = '/** @check tests/unit/a.test.ts, tests/unit/b.test.ts (and more) */\nexport const a = 1;\n';
    const project = projectWith({ 'src/geom/checked.ts': text, 'tests/unit/a.test.ts': 'export {};\n' });
    expect(checkNamedTests(project)).toEqual(['src/geom/checked.ts:1 names tests/unit/b.test.ts, which is not there']);
    expect(checkNamedTests(projectWith({ 'tests/unit/b.test.ts': 'export {};\n' }))).toEqual([]);
  });

  test('strays at the top level are found', () => {
    const project = projectWith({ 'notes.txt': '', '.editorconfig': '', 'docs/a.md': '' });
    expect(checkTopLevel(project)).toEqual([
      'docs has no place at the top level',
      'notes.txt has no place at the top level',
    ]);
  });

  test('phrases are found, in any kind of file', () => {
    const words = [
      'TO' + 'DO later',
      'made by an A' + 'I',
      'see issue' + ' 12',
      'the seed ' + 'document',
      'a todo list, an aim',
    ];
    const project = projectWith({ 'shared/a.json': `"${words[0]}"`, 'src/geom/b.md': words.slice(1).join('\n') });
    expect(checkPhrases(project)).toHaveLength(4);
  });
});

test('decisions that are too long, doubled or missing are found', () => {
  const short = '### 1. Why?\nBecause.\n';
  const long = `### 2. How?\n${'So.\n'.repeat(9)}`;
  expect(checkDecisions(`## Decisions\n${short}\n## Changes\n${long}`)).toEqual([]);
  expect(checkDecisions(`## Decisions\n${short}\n${long}`)).toEqual(['decision 2. How? has more than 8 lines']);
  expect(checkDecisions(`## Decisions\n${short}\n${short}`)).toEqual(['decision 1 is there twice']);
  expect(checkDecisions('## Changes\n')).toEqual(['DEVELOPERS.md records no decision']);
});

test('a file that does not parse is named', () => {
  expect(() => projectWith({ 'src/geom/bad.ts': 'export const = 1;' })).toThrow(/src\/geom\/bad\.ts does not parse/);
});
