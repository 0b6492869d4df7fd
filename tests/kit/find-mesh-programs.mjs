// Finds the programs that tests ask about solids, and brings them where there are none. Node's own modules only.

import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { installDebianPackages } from './debian-package.mjs';

/** Names the folder with the programs, where they are not on the path. */
const VARIABLE = 'MESH_PROGRAMS_PATH';

/**
 * The programs: Debian's package, a word that makes them say who they are, and what for.
 * @type {Readonly<Record<'assimp' | 'admesh' | 'geosop', { package: string, asked: string, use: string }>>}
 */
const PROGRAMS = {
  assimp: { package: 'assimp-utils', asked: 'version', use: 'Files of solids are read by Assimp' },
  admesh: { package: 'admesh', asked: '--version', use: 'Surfaces of solids are checked by ADMesh' },
  geosop: { package: 'geos-bin', asked: '--help', use: 'Cuts of solids are laid over each other by GEOS' },
};

/** @typedef {keyof typeof PROGRAMS} MeshProgram */

/**
 * How to call a program, or null where it does not start.
 * @param {MeshProgram} name
 * @returns {string | null}
 */
export function findMeshProgram(name) {
  const folder = process.env[VARIABLE];
  const command = folder ? join(folder, name) : name;
  return spawnSync(command, [PROGRAMS[name].asked], { stdio: 'ignore' }).error ? null : command;
}

/** What to do where there is none. @param {MeshProgram} name */
export function howToGetMeshProgram(name) {
  const { package: debian, use } = PROGRAMS[name];
  return (
    `${use}, by the program ${name}. Install it (Debian: apt-get install ${debian}), or set ${VARIABLE} to the folder ` +
    'with it, and run again.'
  );
}

/** Installs what is missing where the user may. Where that fails, the tests that need a program say so. */
export function bringMeshPrograms() {
  if (process.env[VARIABLE]) return;
  const names = /** @type {MeshProgram[]} */ (Object.keys(PROGRAMS));
  const missing = names.filter((name) => !findMeshProgram(name));
  if (missing.length > 0) installDebianPackages(missing.map((name) => PROGRAMS[name].package));
}
