// The one test command. Installs what is missing, runs every check, and closes with "N passed, N failed".
// --fast leaves out what is slow: outside truth, golden pictures and the browser.

import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { bringBrowser } from './find-browser.mjs';
import { bringPrograms } from './find-programs.mjs';
import { bringPythons } from './find-python.mjs';
import { installWhenNeeded, PROJECT_ROOT } from './install-when-needed.mjs';

/** @typedef {{ passed: number, failed: number, skipped: number }} Count */

const FAST_FOLDERS = ['house', 'unit', 'laws'];
const SLOW_FOLDERS = ['outside', 'golden'];
const BIN = join(PROJECT_ROOT, 'node_modules');
const TSC = join(BIN, 'typescript', 'bin', 'tsc');
const BIOME = join(BIN, '@biomejs', 'biome', 'bin', 'biome');
const VITEST = join(BIN, 'vitest', 'vitest.mjs');

const PROGRAMS = [
  { name: 'types', args: [TSC, '--noEmit', '-p', 'tsconfig.json'] },
  { name: 'types of the pure folders', args: [TSC, '--noEmit', '-p', 'src/tsconfig.pure.json'] },
  { name: 'lint and format', args: [BIOME, 'check', '--max-diagnostics=50'] },
];

/**
 * @param {string[]} args @param {'pipe' | 'inherit'} out where it prints: kept as `output`, or shown as it comes
 * @param {NodeJS.ProcessEnv} [env]
 * @returns {Promise<{ status: number, output: string }>}
 */
function runNode(args, out, env = {}) {
  return new Promise((resolve) => {
    const options = { cwd: PROJECT_ROOT, env: { ...process.env, ...env } };
    const child = spawn(process.execPath, args, { ...options, stdio: ['ignore', out, out] });
    let output = '';
    for (const stream of [child.stdout, child.stderr]) {
      stream?.setEncoding('utf8').on('data', (text) => {
        output += text;
      });
    }
    child.on('close', (status) => resolve({ status: status ?? 1, output }));
  });
}

/** @param {{ name: string, args: string[] }} program @returns {Promise<Count>} */
async function runProgram({ name, args }) {
  const { status, output } = await runNode(args, 'pipe');
  const ok = status === 0;
  process.stdout.write(ok ? `ok      ${name}\n` : `FAILED  ${name}\n${output}\n`);
  return { passed: ok ? 1 : 0, failed: ok ? 0 : 1, skipped: 0 };
}

/**
 * What a vitest run counted. A run that broke off, or a file that could not be loaded, counts as a failure.
 * @param {string} reportFile @param {number} status @returns {Count}
 */
function readReport(reportFile, status) {
  try {
    const report = JSON.parse(readFileSync(reportFile, 'utf8'));
    /** @type {{ status: string, assertionResults: unknown[] }[]} */
    const files = report.testResults;
    const brokenFiles = files.filter((file) => file.status === 'failed' && file.assertionResults.length === 0).length;
    const failed = report.numFailedTests + brokenFiles;
    const silent = status !== 0 && failed === 0 ? 1 : 0;
    return { passed: report.numPassedTests, failed: failed + silent, skipped: report.numPendingTests };
  } catch {
    return { passed: 0, failed: 1, skipped: 0 };
  }
}

/** @param {string[]} projects @param {NodeJS.ProcessEnv} [env] @returns {Promise<Count>} */
async function runVitest(projects, env = {}) {
  const folder = mkdtempSync(join(tmpdir(), 'test-report-'));
  const report = join(folder, 'report.json');
  const chosen = projects.flatMap((name) => ['--project', name]);
  const args = [VITEST, 'run', ...chosen, '--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  const { status } = await runNode(args, 'inherit', env);
  const count = readReport(report, status);
  rmSync(folder, { recursive: true, force: true });
  return count;
}

/** @returns {Promise<Count>} */
async function runBrowserTests() {
  try {
    return await runVitest(['browser'], bringBrowser());
  } catch (error) {
    process.stdout.write(`FAILED  browser tests: ${error instanceof Error ? error.message : error}\n`);
    return { passed: 0, failed: 1, skipped: 0 };
  }
}

/** @param {boolean} fast @returns {Promise<Count[]>} */
async function runAll(fast) {
  const programs = await Promise.all(PROGRAMS.map(runProgram));
  if (!fast) bringPrograms();
  const folders = fast ? FAST_FOLDERS : [...FAST_FOLDERS, ...SLOW_FOLDERS];
  const counts = [...programs, await runVitest(folders, fast ? {} : bringPythons())];
  if (!fast) counts.push(await runBrowserTests());
  return counts;
}

/** @param {Count[]} counts */
function closeWith(counts) {
  const sum = (/** @type {keyof Count} */ key) => counts.reduce((total, count) => total + count[key], 0);
  const skipped = sum('skipped') > 0 ? `, ${sum('skipped')} skipped` : '';
  process.stdout.write(`\n${sum('passed')} passed, ${sum('failed')} failed${skipped}\n`);
  process.exitCode = sum('failed') > 0 ? 1 : 0;
}

try {
  installWhenNeeded();
  closeWith(await runAll(process.argv.includes('--fast')));
} catch (error) {
  process.stdout.write(`${error instanceof Error ? error.message : error}\n`);
  closeWith([{ passed: 0, failed: 1, skipped: 0 }]);
}
