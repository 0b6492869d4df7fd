// Finds a Python that has ezdxf, and brings one where there is none. Node's own modules only.

import { spawnSync } from 'node:child_process';
import { installDebianPackage } from './debian-package.mjs';

/** Debian's own Python first: that is where its package goes. */
const PYTHONS = ['/usr/bin/python3', 'python3', 'python'];

/** What to do where there is none. */
export const GET_EZDXF =
  'The drawings are checked by ezdxf, a Python library. Install it (Debian: apt-get install python3-ezdxf; elsewhere: ' +
  'python3 -m pip install ezdxf), or set EZDXF_PYTHON to a Python that has it, and run again.';

/** @param {string} python */
function hasEzdxf(python) {
  return spawnSync(python, ['-c', 'import ezdxf'], { stdio: 'ignore' }).status === 0;
}

/**
 * The Python named by EZDXF_PYTHON, else the first with ezdxf.
 * @returns {string | null}
 */
export function findEzdxf() {
  const named = process.env.EZDXF_PYTHON;
  return (named ? [named] : PYTHONS).find(hasEzdxf) ?? null;
}

/**
 * The environment in which tests find ezdxf; installs it where there is none and the user may. Where that fails it says
 * nothing: the tests that need it do.
 * @returns {NodeJS.ProcessEnv}
 */
export function bringEzdxf() {
  let python = findEzdxf();
  if (!python && !process.env.EZDXF_PYTHON) {
    installDebianPackage('python3-ezdxf');
    python = findEzdxf();
  }
  return python ? { EZDXF_PYTHON: python } : {};
}
