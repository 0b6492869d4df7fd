import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { closeSync, existsSync, openSync } from 'node:fs';
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

  // The device of Linux that is always full.
  test.runIf(existsSync('/dev/full'))('says in a line that its output cannot be written, and ends with 2', () => {
    const full = openSync('/dev/full', 'w');
    const words = ['tests/kit/run-cli.mjs', 'check', 'profiles-demo/first-lesson.json'];
    const told = (stdio: (number | 'ignore' | 'pipe')[]) => {
      const { status, stderr } = spawnSync(process.execPath, words, { encoding: 'utf8', stdio });
      return { status, stderr };
    };
    expect(told(['ignore', full, 'pipe'])).toEqual({
      status: 2,
      stderr: 'The output cannot be written: the disk is full.\n',
    });
    expect(told(['ignore', full, full]).status).toBe(2);
    closeSync(full);
  });

  test('ends quietly where nobody reads on', async () => {
    const program = spawn(process.execPath, ['tests/kit/run-cli.mjs', 'schema']);
    let said = '';
    program.stderr.on('data', (data) => {
      said += data;
    });
    program.stdout.destroy();
    const [status] = await once(program, 'close');
    expect({ status, said }).toEqual({ status: 0, said: '' });
  });
});
