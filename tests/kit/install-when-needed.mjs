// Brings node_modules to what package-lock.json asks for. Node's own modules only: it runs before anything is installed.

import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Top folder of the project. */
export const PROJECT_ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..');

/** An install that holds the lock for longer than this is taken for dead. */
const STALE_LOCK_MS = 10 * 60 * 1000;

/** @param {string} file */
function packagesIn(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8')).packages ?? {};
  } catch {
    return null;
  }
}

/**
 * True where node_modules holds the packages of package-lock.json, version for version. npm writes the list that is
 * compared (node_modules/.package-lock.json) last, so an install that was cut short counts as missing. Packages that
 * the lock file marks optional (other platforms) may be absent.
 * @param {string} root
 */
export function isInstalled(root) {
  const wanted = packagesIn(join(root, 'package-lock.json'));
  if (!wanted) throw new Error('package-lock.json is missing or is not JSON: restore it from version control.');
  const found = packagesIn(join(root, 'node_modules', '.package-lock.json'));
  if (!found) return false;
  for (const [path, entry] of Object.entries(wanted)) {
    if (path === '') continue;
    const there = found[path];
    if (there ? there.version !== entry.version : !entry.optional) return false;
  }
  return Object.keys(found).every((path) => path in wanted);
}

/** @param {string} root */
function runInstall(root) {
  process.stderr.write('Installing packages (npm ci) ...\n');
  const args = ['ci', '--include=dev', '--no-audit', '--no-fund'];
  const npm = process.env.npm_execpath?.endsWith('.js') ? process.env.npm_execpath : null;
  const [command, rest] = npm ? [process.execPath, [npm, ...args]] : ['npm', args];
  const shell = !npm && process.platform === 'win32';
  const { status, error } = spawnSync(command, rest, { cwd: root, stdio: ['ignore', 2, 2], shell });
  if (error || status !== 0) {
    const why = error ? error.message : `npm ci ended with exit code ${status}`;
    throw new Error(`Could not install the packages: ${why}. Check the network, then run the command again.`);
  }
}

/** @param {string} folder */
function takeLock(folder) {
  mkdirSync(dirname(folder), { recursive: true });
  try {
    mkdirSync(folder);
    return true;
  } catch {
    const age = Date.now() - (statSync(folder, { throwIfNoEntry: false })?.mtimeMs ?? 0);
    if (age > STALE_LOCK_MS) rmSync(folder, { recursive: true, force: true });
    return false;
  }
}

/**
 * Installs the packages if they are missing or the lock file changed; prints to stderr only. Two processes that ask
 * at once do not install over each other: the second waits.
 * @throws when npm fails
 */
export function installWhenNeeded(root = PROJECT_ROOT) {
  const lock = join(root, '.cache', 'installing');
  while (!isInstalled(root)) {
    if (!takeLock(lock)) {
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 500);
      continue;
    }
    try {
      if (!isInstalled(root)) runInstall(root);
      return;
    } finally {
      rmSync(lock, { recursive: true, force: true });
    }
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  try {
    installWhenNeeded();
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : error}\n`);
    process.exitCode = 1;
  }
}
