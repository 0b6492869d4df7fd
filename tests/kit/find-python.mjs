// Finds a Python that has a library which tests ask, and brings the libraries where there are none. Node's own modules only.

import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { installDebianPackages } from './debian-package.mjs';
import { PROJECT_ROOT } from './install-when-needed.mjs';

/** Debian's own Python first: that is where its packages go. */
const PYTHONS = ['/usr/bin/python3', 'python3', 'python'];

/**
 * The libraries by the name that they are imported by: what it is for, and which of Debian's packages has it, or, where
 * Debian has none, what the Python Package Index calls it and what it needs.
 * @type {Readonly<Record<string, { use: string, package?: string, index?: readonly string[] }>>}
 */
export const PYTHON_LIBRARIES = {
  ezdxf: { package: 'python3-ezdxf', use: 'The drawings are checked by ezdxf' },
  networkx: { package: 'python3-networkx', use: 'Orders are checked by networkx' },
  trimesh: { index: ['trimesh', 'numpy', 'lxml', 'networkx', 'shapely'], use: 'The solids are checked by trimesh' },
};

/** The variable that names a Python which has the library. @param {string} library */
function variableOf(library) {
  return `${library.toUpperCase()}_PYTHON`;
}

/** The folder of a Python of our own for a library that Debian has not. @param {string} library */
function ownFolder(library) {
  return join(PROJECT_ROOT, '.cache', `python-${library}`);
}

/** The program in such a folder. @param {string} library */
function ownPython(library) {
  const [folder, name] = process.platform === 'win32' ? ['Scripts', 'python.exe'] : ['bin', 'python'];
  return join(ownFolder(library), folder, name);
}

/** What is imported to know that a library and what it needs are there. @param {string} library */
function importedBy(library) {
  return PYTHON_LIBRARIES[library].index ?? [library];
}

/** @param {string} python @param {string} library */
function hasLibrary(python, library) {
  return spawnSync(python, ['-c', `import ${importedBy(library).join(', ')}`], { stdio: 'ignore' }).status === 0;
}

/**
 * The Python that a variable names, EZDXF_PYTHON for ezdxf, else the first that has the library.
 * @param {string} library
 * @returns {string | null}
 */
export function findPython(library) {
  const named = process.env[variableOf(library)];
  const pythons = PYTHON_LIBRARIES[library].index ? [ownPython(library), ...PYTHONS] : PYTHONS;
  return (named ? [named] : pythons).find((python) => hasLibrary(python, library)) ?? null;
}

/** What to do where there is none. @param {string} library */
export function howToGet(library) {
  const { package: debian, index = [library], use } = PYTHON_LIBRARIES[library];
  const here = debian ? `Debian: apt-get install ${debian}; elsewhere: ` : '';
  return (
    `${use}, a Python library. Install it (${here}python3 -m pip install ${index.join(' ')}), or set ` +
    `${variableOf(library)} to a Python that has it, and run again.`
  );
}

/**
 * Installs a library from the Python Package Index into a Python of its own, which leaves the system's as it is.
 * @param {string} library
 */
function installFromIndex(library) {
  const hasPip = () => PYTHONS.find((python) => spawnSync(python, ['-m', 'pip', '--version']).status === 0);
  if (!hasPip()) installDebianPackages(['python3-pip']);
  const python = hasPip();
  if (!python) return;
  const names = PYTHON_LIBRARIES[library].index ?? [];
  process.stderr.write(`Installing from the Python Package Index: ${names.join(', ')} ...\n`);
  const folder = ownFolder(library);
  spawnSync(python, ['-m', 'venv', '--without-pip', folder], { stdio: ['ignore', 2, 2] });
  const where = ['-c', 'import sysconfig; print(sysconfig.get_path("purelib"))'];
  const { status, stdout } = spawnSync(ownPython(library), where, { encoding: 'utf8' });
  if (status !== 0) return;
  const args = [
    '-m',
    'pip',
    'install',
    '--quiet',
    '--no-input',
    '--disable-pip-version-check',
    '--retries=1',
    '--target',
    stdout.trim(),
  ];
  spawnSync(python, [...args, ...names], { stdio: ['ignore', 2, 2] });
}

/**
 * The environment in which tests find all libraries; installs those that are missing where the user may. Where that
 * fails it says nothing: the tests that need one do.
 * @returns {NodeJS.ProcessEnv}
 */
export function bringPythons() {
  const libraries = Object.keys(PYTHON_LIBRARIES);
  const missing = libraries.filter((library) => !findPython(library) && !process.env[variableOf(library)]);
  const packages = missing.flatMap((library) => PYTHON_LIBRARIES[library].package ?? []);
  if (packages.length > 0) installDebianPackages(packages);
  for (const library of missing) if (PYTHON_LIBRARIES[library].index) installFromIndex(library);
  /** @type {NodeJS.ProcessEnv} */
  const found = {};
  for (const library of libraries) {
    const python = findPython(library);
    if (python) found[variableOf(library)] = python;
  }
  return found;
}
