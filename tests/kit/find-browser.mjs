// Finds a Chromium or Chrome for the browser tests, and brings one where there is none. Node's own modules only.

import { spawnSync } from 'node:child_process';
import { accessSync, constants, mkdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { installDebianPackages } from './debian-package.mjs';
import { PROJECT_ROOT } from './install-when-needed.mjs';

/** The browser without a window of its own: opening a page costs it about half. */
const HEADLESS = 'chromium-headless-shell';

const COMMANDS = [
  HEADLESS,
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'chrome',
  'microsoft-edge',
];

const WINDOWS_FOLDERS = ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'];

const PACKED_CHROMIUM = '@sparticuz/chromium@147.0.0';

/** @param {string} file */
function isProgram(file) {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function usualPlaces() {
  const folders = (process.env.PATH ?? '').split(delimiter);
  const onPath = COMMANDS.flatMap((command) => folders.map((folder) => join(folder, command)));
  const windows = WINDOWS_FOLDERS.flatMap((name) => process.env[name] ?? []).flatMap((folder) => [
    join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe'),
    join(folder, 'Chromium', 'Application', 'chrome.exe'),
    join(folder, 'Microsoft', 'Edge', 'Application', 'msedge.exe'),
  ]);
  const mac = ['Google Chrome', 'Chromium', 'Microsoft Edge'].map((n) => `/Applications/${n}.app/Contents/MacOS/${n}`);
  return [...onPath, ...windows, ...mac];
}

/**
 * The program named by BROWSER_PATH, else an installed Chrome, Chromium or Edge.
 * @returns {string | null}
 * @throws when BROWSER_PATH names no program
 */
export function findBrowser() {
  const named = process.env.BROWSER_PATH;
  if (named && !isProgram(named))
    throw new Error(`BROWSER_PATH is "${named}", which is not a program on this machine.`);
  return named ?? usualPlaces().find(isProgram) ?? null;
}

/** @param {string} command @param {string[]} args @param {NodeJS.ProcessEnv} [env] */
function runQuietly(command, args, env = {}) {
  const options = { cwd: PROJECT_ROOT, env: { ...process.env, ...env }, encoding: /** @type {const} */ ('utf8') };
  const { status, stdout } = spawnSync(command, args, { ...options, stdio: ['ignore', 'pipe', 2] });
  return status === 0 ? stdout : null;
}

/**
 * A Chromium packed for servers, with the libraries it needs: for Linux on x64 without root.
 * @returns {NodeJS.ProcessEnv | null}
 */
function unpackFromNpm() {
  if (process.platform !== 'linux' || process.arch !== 'x64') return null;
  process.stderr.write(`No browser found: unpacking npm package ${PACKED_CHROMIUM} ...\n`);
  const folder = join(PROJECT_ROOT, '.cache', 'packed-chromium');
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'package.json'), '{ "private": true, "type": "module" }\n');
  const script = "console.log(await (await import('@sparticuz/chromium')).default.executablePath())";
  writeFileSync(join(folder, 'unpack.mjs'), script);
  if (runQuietly('npm', ['install', '--prefix', folder, '--no-audit', '--no-fund', PACKED_CHROMIUM]) === null)
    return null;
  const env = { AWS_LAMBDA_JS_RUNTIME: 'nodejs20.x' };
  const path = runQuietly(process.execPath, [join(folder, 'unpack.mjs')], env)?.trim();
  return path ? { BROWSER_PATH: path, LD_LIBRARY_PATH: join(tmpdir(), 'al2023', 'lib') } : null;
}

/**
 * The environment in which browser tests find a browser; installs one where there is none.
 * @returns {NodeJS.ProcessEnv}
 * @throws with what to do where no way works
 */
export function bringBrowser() {
  const present = findBrowser();
  if (present) return { BROWSER_PATH: present };
  process.stderr.write('No browser found.\n');
  for (const name of [HEADLESS, 'chromium']) {
    installDebianPackages([name]);
    const installed = findBrowser();
    if (installed) return { BROWSER_PATH: installed };
  }
  const unpacked = unpackFromNpm();
  if (unpacked) return unpacked;
  throw new Error(
    'The browser tests need Chrome or Chromium. Install one, or set BROWSER_PATH to its program file, and run again.',
  );
}
