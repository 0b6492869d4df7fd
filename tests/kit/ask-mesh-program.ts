import { spawnSync } from 'node:child_process';
import { findMeshProgram, howToGetMeshProgram } from './find-mesh-programs.mjs';

/** What a program prints. @throws with what to do where it is missing, and with its own words where it fails */
export function askMeshProgram(name: Parameters<typeof findMeshProgram>[0], words: readonly string[]): string {
  const program = findMeshProgram(name);
  if (program === null) throw new Error(howToGetMeshProgram(name));
  const { status, stdout, stderr } = spawnSync(program, words, { encoding: 'utf8', maxBuffer: 1 << 28 });
  if (status !== 0) throw new Error(`${name} ended with ${status}: ${stderr}${stdout}`);
  return stdout;
}
