// Finds the programs that tests ask about files of ours, and brings them where there are none. Node's own modules only.

import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { installDebianPackages } from './debian-package.mjs';

/**
 * @typedef {object} Program
 * @property {string} package Debian's.
 * @property {string} variable Names the folder with it, where it is not on the path.
 * @property {string} asked Makes it say who it is.
 * @property {string} use
 */

const POPPLER = {
  package: 'poppler-utils',
  variable: 'POPPLER_PATH',
  asked: '-v',
  use: 'PDF files are checked by poppler',
};
const MESH = { variable: 'MESH_PROGRAMS_PATH' };

/** @type {Readonly<Record<'pdftotext' | 'pdffonts' | 'pdfinfo' | 'pdftoppm' | 'assimp' | 'admesh' | 'geosop', Program>>} */
const PROGRAMS = {
  pdftotext: POPPLER,
  pdffonts: POPPLER,
  pdfinfo: POPPLER,
  pdftoppm: POPPLER,
  assimp: { ...MESH, package: 'assimp-utils', asked: 'version', use: 'Files of solids are read by Assimp' },
  admesh: { ...MESH, package: 'admesh', asked: '--version', use: 'Surfaces of solids are checked by ADMesh' },
  geosop: { ...MESH, package: 'geos-bin', asked: '--help', use: 'Cuts of solids are laid over each other by GEOS' },
};

/** @typedef {keyof typeof PROGRAMS} ProgramName */

/**
 * How to call a program, or null where it does not start.
 * @param {ProgramName} name
 * @returns {string | null}
 */
export function findProgram(name) {
  const { variable, asked } = PROGRAMS[name];
  const folder = process.env[variable];
  const command = folder ? join(folder, name) : name;
  return spawnSync(command, [asked], { stdio: 'ignore' }).error ? null : command;
}

/** What to do where there is none. @param {ProgramName} name */
export function howToGetProgram(name) {
  const { package: debian, variable, use } = PROGRAMS[name];
  return (
    `${use}, by the program ${name}. Install it (Debian: apt-get install ${debian}), or set ${variable} to the folder ` +
    'with it, and run again.'
  );
}

/** Installs what is missing where the user may. Where that fails, the tests that need a program say so. */
export function bringPrograms() {
  const names = /** @type {ProgramName[]} */ (Object.keys(PROGRAMS));
  const missing = names.filter((name) => !process.env[PROGRAMS[name].variable] && !findProgram(name));
  const packages = new Set(missing.map((name) => PROGRAMS[name].package));
  if (packages.size > 0) installDebianPackages([...packages]);
}
