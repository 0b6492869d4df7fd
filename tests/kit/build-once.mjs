// Keeps what was built, under a hash of everything it was built from. Node's own modules only.

import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';
import { PROJECT_ROOT } from './install-when-needed.mjs';

const EVERY_BUILD = ['package.json', 'package-lock.json', 'vite.config.ts', 'tests/kit/build-target.mjs', 'shared'];

/** What each build reads; a change in any of these files makes a new build. */
const SOURCES = {
  app: ['index.html', 'src', 'profiles-demo'],
  cli: ['src'],
  bench: ['src', 'profiles-demo', 'tests/bench', 'tests/cases', 'tests/kit'],
};

/** Folders of src that a build cannot reach, so that a change there costs nobody a rebuild. */
const LEFT_OUT = { app: ['src/cli'], cli: ['src/app', 'src/workers'], bench: ['src/app', 'src/workers', 'src/cli'] };

const KEEP_OLD_BUILDS_MS = 24 * 60 * 60 * 1000;

/** @param {string} path @param {string[]} leftOut @returns {string[]} */
function filesUnder(path, leftOut) {
  if (leftOut.includes(relative(PROJECT_ROOT, path).replaceAll('\\', '/'))) return [];
  const stat = statSync(path, { throwIfNoEntry: false });
  if (!stat) return [];
  if (!stat.isDirectory()) return [path];
  const names = readdirSync(path).sort();
  return names.flatMap((name) => filesUnder(join(path, name), leftOut));
}

/** @param {keyof typeof SOURCES} target */
function hashSources(target) {
  const hash = createHash('sha256').update(process.version);
  for (const source of [...EVERY_BUILD, ...SOURCES[target]]) {
    for (const file of filesUnder(join(PROJECT_ROOT, source), LEFT_OUT[target])) {
      hash.update(relative(PROJECT_ROOT, file)).update('\0').update(readFileSync(file)).update('\0');
    }
  }
  return hash.digest('hex').slice(0, 16);
}

/** @param {string} shelf @param {string} keep */
function sweep(shelf, keep) {
  for (const name of readdirSync(shelf)) {
    const folder = join(shelf, name);
    const age = Date.now() - (statSync(folder, { throwIfNoEntry: false })?.mtimeMs ?? 0);
    if (name !== keep && age > KEEP_OLD_BUILDS_MS) rmSync(folder, { recursive: true, force: true });
  }
}

/** @param {string} target @param {string} folder */
function runBuild(target, folder) {
  const script = join(PROJECT_ROOT, 'tests', 'kit', 'build-target.mjs');
  const { status, stdout, stderr } = spawnSync(process.execPath, [script, target, folder], {
    cwd: PROJECT_ROOT,
    env: { ...process.env, NODE_ENV: 'production', VITEST: '' },
    stdio: ['ignore', 'pipe', 'pipe'],
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`The build of "${target}" failed:\n${stdout}${stderr}`);
}

/**
 * The folder with the present sources built: kept from an earlier call, or made now (nothing goes to stdout).
 * Two processes may ask at once: each builds aside, and the first to finish puts its folder in place.
 * @param {keyof typeof SOURCES} target
 * @returns {string}
 * @throws with the build's own output when it fails
 */
export function buildOnce(target) {
  const shelf = join(PROJECT_ROOT, '.cache', target);
  const hash = hashSources(target);
  const place = join(shelf, hash);
  if (existsSync(place)) return place;
  mkdirSync(shelf, { recursive: true });
  const aside = mkdtempSync(join(shelf, 'building-'));
  try {
    runBuild(target, aside);
    renameSync(aside, place);
  } catch (error) {
    rmSync(aside, { recursive: true, force: true });
    if (!existsSync(place)) throw error;
  }
  sweep(shelf, hash);
  return place;
}
