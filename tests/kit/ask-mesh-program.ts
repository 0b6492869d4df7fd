import { spawnSync } from 'node:child_process';
import { findProgram, howToGetProgram } from './find-programs.mjs';

/** What a program prints. @throws with what to do where it is missing, and with its own words where it fails */
export function askMeshProgram(name: Parameters<typeof findProgram>[0], words: readonly string[]): string {
  const program = findProgram(name);
  if (program === null) throw new Error(howToGetProgram(name));
  const { status, stdout, stderr } = spawnSync(program, words, { encoding: 'utf8', maxBuffer: 1 << 28 });
  if (status !== 0) throw new Error(`${name} ended with ${status}: ${stderr}${stdout}`);
  return stdout;
}
