// Installs a package of Debian and its relatives, where the user may do so. Node's own modules only.

import { spawnSync } from 'node:child_process';

/** @param {string[]} args */
function aptGet(args) {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  spawnSync('apt-get', args, { env, stdio: ['ignore', 'ignore', 2] });
}

/**
 * Installs a package and what it needs, nothing more; does nothing where this is not Linux or the user is not root.
 * @param {string} name
 */
export function installDebianPackage(name) {
  if (process.platform !== 'linux' || process.getuid?.() !== 0) return;
  process.stderr.write(`Installing Debian package ${name} ...\n`);
  aptGet(['update', '-q']);
  aptGet(['install', '-y', '-q', '--no-install-recommends', name]);
}
