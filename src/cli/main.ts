// The program behind `npm run -s cli --`: runs a job from a shell.

import { setImmediate } from 'node:timers/promises';
import { readText } from './read-text.ts';
import { runCommand } from './run-command.ts';
import { EXIT, type Shell } from './shell.ts';
import { isSameFile, writeText, writeTrouble } from './write-text.ts';

/** Widest table where the output is not a terminal. */
const FILE_WIDTH = 160;

// Ctrl-C is left to the system: it ends the program at once, even in the middle of a pair, and since results are
// printed when all of them are there, nothing half is left behind.

// Whoever reads the output may stop early, as `head` does: that is no fault. A full disk is one.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') return;
  process.stderr.write(`The output cannot be written: ${writeTrouble(error)}.\n`);
  process.exit(EXIT.badInput);
});

// Where faults cannot be told there is nobody to tell it to; the exit code says it.
process.stderr.on('error', () => undefined);

/** Progress on one line that is written over, on a terminal only. */
function showProgress(done: number, total: number): void {
  if (process.stderr.isTTY) process.stderr.write(done < total ? `\r${done} of ${total}` : '\r\x1b[K');
}

/** Takes the line of progress away before something else is said. */
function clearProgress(): void {
  if (process.stderr.isTTY) process.stderr.write('\r\x1b[K');
}

const shell: Shell = {
  readText,
  writeText,
  isSameFile,
  print: (text) => {
    clearProgress();
    process.stdout.write(text);
  },
  warn: (text) => {
    clearProgress();
    process.stderr.write(text);
  },
  width: process.stdout.columns ?? FILE_WIDTH,
  jobs: {
    progress: showProgress,
    cancelled: () => false,
    pause: () => setImmediate(),
    now: () => performance.now(),
  },
};

process.exitCode = await runCommand(process.argv.slice(2), shell);
