import { spawnSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';

/** Runs the program as a user does; the first call builds it. */
function cli(...words: string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['tests/kit/run-cli.mjs', ...words], {
    encoding: 'utf8',
  });
  return { status, stdout, stderr };
}

describe('the program', () => {
  test('judges the first lesson, ends with 0 and keeps stderr clean', () => {
    const { status, stdout, stderr } = cli('fit', 'profiles-demo/first-lesson.json', '--json');
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(JSON.parse(stdout).pairs).toHaveLength(15);
  });

  test('ends with 2 and a message on stderr where the input is bad', () => {
    expect(cli('check', 'package.json')).toMatchObject({
      status: 2,
      stdout: '',
      stderr: expect.stringMatching(/^package\.json: format: is missing/),
    });
    expect(cli('check', 'no-such-file.json')).toMatchObject({ status: 2, stdout: '' });
    expect(cli()).toMatchObject({ status: 2, stdout: '' });
  });
});
