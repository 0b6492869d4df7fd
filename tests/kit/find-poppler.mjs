// Finds the programs of poppler that tests ask about PDF files, and brings them where there are none. Node's own modules only.

import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { installDebianPackages } from './debian-package.mjs';

/** Names the folder with the programs, where they are not on the path. */
const VARIABLE = 'POPPLER_PATH';

/** Debian's package. */
const PACKAGE = 'poppler-utils';

/** @param {string} name */
function command(name) {
  const folder = process.env[VARIABLE];
  return folder ? join(folder, name) : name;
}

/**
 * A program of poppler, or null where it does not start.
 * @param {'pdftotext' | 'pdffonts' | 'pdfinfo' | 'pdftoppm'} name
 * @returns {string | null}
 */
export function findPoppler(name) {
  return spawnSync(command(name), ['-v'], { stdio: 'ignore' }).status === 0 ? command(name) : null;
}

/** What to do where there is none. */
export function howToGetPoppler() {
  return (
    `PDF files are checked by poppler. Install it (Debian: apt-get install ${PACKAGE}; elsewhere: its package poppler), or ` +
    `set ${VARIABLE} to the folder with its programs, and run again.`
  );
}

/** Installs the programs where they are missing and the user may. Where that fails, the tests that need them say so. */
export function bringPoppler() {
  if (!process.env[VARIABLE] && !findPoppler('pdftoppm')) installDebianPackages([PACKAGE]);
}
