// Installs packages of Debian and its relatives, where the user may do so. Node's own modules only.

import { spawnSync } from 'node:child_process';

/** Whether the list of packages was fetched; once a run is enough. */
let listed = false;

/** @param {string[]} args */
function aptGet(args) {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  spawnSync('apt-get', args, { env, stdio: ['ignore', 'ignore', 2] });
}

/**
 * Installs packages and what they need, nothing more; does nothing where this is not Linux or the user is not root.
 * @param {readonly string[]} names
 */
export function installDebianPackages(names) {
  if (process.platform !== 'linux' || process.getuid?.() !== 0) return;
  process.stderr.write(`Installing from Debian: ${names.join(', ')} ...\n`);
  if (!listed) aptGet(['update', '-q']);
  listed = true;
  aptGet(['install', '-y', '-q', '--no-install-recommends', ...names]);
}
