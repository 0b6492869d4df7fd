import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { findPython, howToGet } from './find-python.mjs';

/** What a script is started with. */
export interface PythonQuestion {
  /** The library that it imports, one of those that the test command brings. */
  readonly library: string;
  /** The script's file in this folder. */
  readonly script: string;
  readonly words?: readonly string[];
  /** Standard input. */
  readonly input?: string;
}

/**
 * What a Python script beside this file prints, as JSON.
 *
 * @throws with what to do where its library is missing, and with its own words where it fails.
 */
export function askPython({ library, script, words = [], input = '' }: PythonQuestion): unknown {
  const python = findPython(library);
  if (!python) throw new Error(howToGet(library));
  const file = fileURLToPath(new URL(script, import.meta.url));
  const env = { ...process.env, PYTHONIOENCODING: 'utf-8' };
  const { status, stdout, stderr } = spawnSync(python, [file, ...words], {
    ...{ encoding: 'utf8', maxBuffer: 1 << 28, env, input },
  });
  if (status !== 0) throw new Error(`${library} ended with ${status}: ${stderr}`);
  return JSON.parse(stdout);
}
