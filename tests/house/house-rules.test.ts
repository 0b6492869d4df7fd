import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { PROJECT_ROOT } from '../kit/install-when-needed.mjs';
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
import { readProject, textOf } from './read-project.ts';
import { readDependencyTable, readLayerTable } from './read-tables.ts';

const project = readProject(PROJECT_ROOT);
const developers = textOf(project, 'DEVELOPERS.md');
const pureFolders: string[] = JSON.parse(readFileSync(join(PROJECT_ROOT, 'src/tsconfig.pure.json'), 'utf8')).include;

const RULES: Record<string, () => string[]> = {
  'imports follow the layer table of DEVELOPERS.md': () => checkLayers(project, readLayerTable(developers)),
  'no files import each other in a circle': () => checkCycles(project),
  'every dependency enters where DEVELOPERS.md says': () =>
    checkDependencies(project, readDependencyTable(developers), textOf(project, 'package.json')),
  'names say what is inside': () => checkNames(project),
  'every folder of src says what it is': () => checkReadmes(project),
  'files and functions can be read in one go': () => checkBudgets(project),
  'exported functions of the pure folders are documented': () => checkDocs(project, pureFolders),
  'tests that comments point to are there': () => checkNamedTests(project),
  'decisions are short and numbered once': () => checkDecisions(developers),
  'nothing is left unfinished or talks about its own making': () => checkPhrases(project),
  'the top level holds what it should': () => checkTopLevel(project),
};

test('the rules look at the whole project', () => {
  expect(project.sources.length).toBeGreaterThan(20);
  expect(project.texts.has('README.md')).toBe(true);
  expect(pureFolders).toContain('geom');
});

for (const [rule, check] of Object.entries(RULES)) {
  test(rule, () => expect(check()).toEqual([]));
}
