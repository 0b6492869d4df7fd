// Finds a Python that has a library which tests ask, and brings the libraries where there are none. Node's own modules only.

import { spawnSync } from 'node:child_process';
import { installDebianPackages } from './debian-package.mjs';

/** Debian's own Python first: that is where its packages go. */
const PYTHONS = ['/usr/bin/python3', 'python3', 'python'];

/**
 * The libraries by the name that they are imported by: which of Debian's packages has it, and what it is for.
 * @type {Readonly<Record<string, { package: string, use: string }>>}
 */
export const PYTHON_LIBRARIES = {
  ezdxf: { package: 'python3-ezdxf', use: 'The drawings are checked by ezdxf' },
  networkx: { package: 'python3-networkx', use: 'Orders are checked by networkx' },
  xml: { package: 'python3', use: 'What a 3MF file says of its parts is read by xml' },
};

/** The variable that names a Python which has the library. @param {string} library */
function variableOf(library) {
  return `${library.toUpperCase()}_PYTHON`;
}

/** @param {string} python @param {string} library */
function hasLibrary(python, library) {
  return spawnSync(python, ['-c', `import ${library}`], { stdio: 'ignore' }).status === 0;
}

/**
 * The Python that a variable names, EZDXF_PYTHON for ezdxf, else the first that has the library.
 * @param {string} library
 * @returns {string | null}
 */
export function findPython(library) {
  const named = process.env[variableOf(library)];
  return (named ? [named] : PYTHONS).find((python) => hasLibrary(python, library)) ?? null;
}

/** What to do where there is none. @param {string} library */
export function howToGet(library) {
  const { package: name, use } = PYTHON_LIBRARIES[library];
  return (
    `${use}, a Python library. Install it (Debian: apt-get install ${name}), or set ${variableOf(library)} to a Python ` +
    'that has it, and run again.'
  );
}

/**
 * The environment in which tests find all libraries; installs those that are missing where the user may. Where that
 * fails it says nothing: the tests that need one do.
 * @returns {NodeJS.ProcessEnv}
 */
export function bringPythons() {
  const libraries = Object.keys(PYTHON_LIBRARIES);
  const missing = libraries.filter((library) => !findPython(library) && !process.env[variableOf(library)]);
  if (missing.length > 0) installDebianPackages(missing.map((library) => PYTHON_LIBRARIES[library].package));
  /** @type {NodeJS.ProcessEnv} */
  const found = {};
  for (const library of libraries) {
    const python = findPython(library);
    if (python) found[variableOf(library)] = python;
  }
  return found;
}
