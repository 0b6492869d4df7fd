import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { isInstalled } from '../kit/install-when-needed.mjs';

type Packages = Record<string, { version: string; optional?: boolean }>;

let root = '';

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'installed-'));
});

afterEach(() => rmSync(root, { recursive: true, force: true }));

function projectWith(wanted: Packages, installed: Packages | null): string {
  const lock = { packages: { '': { version: '0.0.0' }, ...wanted } };
  writeFileSync(join(root, 'package-lock.json'), JSON.stringify(lock));
  mkdirSync(join(root, 'node_modules'), { recursive: true });
  const list = join(root, 'node_modules', '.package-lock.json');
  if (installed) writeFileSync(list, JSON.stringify({ packages: installed }));
  return root;
}

const wanted: Packages = {
  'node_modules/a': { version: '1.0.0' },
  'node_modules/b': { version: '2.0.0' },
  'node_modules/other-platform': { version: '1.0.0', optional: true },
};
const { 'node_modules/other-platform': _, ...here } = wanted;

test('packages as the lock file has them are installed, those of other platforms or not', () => {
  expect(isInstalled(projectWith(wanted, wanted))).toBe(true);
  expect(isInstalled(projectWith(wanted, here))).toBe(true);
});

test.each<[string, Packages | null]>([
  ['an install cut short', null],
  ['a missing package', { 'node_modules/a': { version: '1.0.0' } }],
  ['another version', { ...here, 'node_modules/b': { version: '2.0.1' } }],
  ['a package the lock file dropped', { ...here, 'node_modules/c': { version: '1.0.0' } }],
])('%s asks for an install', (_what, installed) => {
  expect(isInstalled(projectWith(wanted, installed))).toBe(false);
});

test('a project without a lock file is refused, with what to do', () => {
  expect(() => isInstalled(root)).toThrow(/package-lock\.json is missing.*restore it/);
});
