// The launcher as a user's shell and other programs see it; what the commands answer is tested in other folders.

import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { PROJECT_ROOT } from '../kit/install-when-needed.mjs';

const BUILD_TIME_MS = 60_000;

const FAMILY = {
  format: 'sectionary-family',
  version: 1,
  name: 'A family of one',
  units: 'mm',
  runningClearance: 0.04,
  profiles: [
    {
      id: 'slot',
      kind: 'opening',
      section: 'Reed',
      name: 'Slot',
      outline: [
        [0, 0],
        [2.1, 0],
        [2.1, 8.5],
        [0, 8.5],
      ],
    },
    {
      id: 'strip',
      kind: 'tool',
      name: 'Strip',
      outline: [
        [0, 0],
        [2, 0],
        [2, 8.4],
        [0, 8.4],
      ],
    },
  ],
};

let folder = '';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'launch-cli-'));
  writeFileSync(join(folder, 'one.json'), JSON.stringify(FAMILY));
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Runs the command as the README writes it, from a folder that is not the project's. */
function runCli(...args: string[]) {
  const npm = ['run', '-s', '--prefix', PROJECT_ROOT, 'cli', '--', ...args];
  return spawnSync('npm', npm, { cwd: folder, encoding: 'utf8', shell: process.platform === 'win32' });
}

test('standard output holds the program’s own output and nothing else', { timeout: BUILD_TIME_MS }, () => {
  const { status, stdout, stderr } = runCli('fit', 'one.json', '--json');
  expect(stderr).toBe('');
  expect(JSON.parse(stdout)).toMatchObject({ openings: ['slot'], profiles: ['strip'] });
  expect(status).toBe(0);
});

test('the program’s exit code passes through, and file names are meant from where the user stands', {
  timeout: BUILD_TIME_MS,
}, () => {
  const missing = runCli('check', 'no-such-family.json');
  expect(missing.status).toBe(2);
  expect(missing.stdout).toBe('');
  expect(missing.stderr).toContain('no-such-family.json');
  expect(runCli('check', 'one.json').status).toBe(0);
});

test('the family file shown in the README is a sound one', { timeout: BUILD_TIME_MS }, () => {
  const readme = readFileSync(join(PROJECT_ROOT, 'README.md'), 'utf8');
  const shown = /```json\n([\s\S]*?)```/.exec(readme)?.[1] ?? '';
  writeFileSync(join(folder, 'shown.json'), shown);
  expect(runCli('check', 'shown.json')).toMatchObject({ status: 0, stderr: '' });
});
