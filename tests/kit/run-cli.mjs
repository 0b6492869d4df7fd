// The command line's launcher: installs and builds when needed, then runs src/cli/main.ts in this process.
// Nothing but the program's own output reaches stdout, and its exit code is the process's.

import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { buildOnce } from './build-once.mjs';
import { installWhenNeeded } from './install-when-needed.mjs';

/** @returns {string | null} the program to run, or null after saying on stderr why there is none */
function prepareProgram() {
  try {
    installWhenNeeded();
    return join(buildOnce('cli'), 'main.js');
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : error}\n`);
    process.exitCode = 1;
    return null;
  }
}

const program = prepareProgram();
if (program) {
  // npm runs scripts in the project's folder: a file name is meant from where the user stands.
  if (process.env.npm_lifecycle_event === 'cli' && process.env.INIT_CWD) process.chdir(process.env.INIT_CWD);
  process.argv[1] = program;
  await import(pathToFileURL(program).href);
}
