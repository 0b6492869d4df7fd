// Runs every tests/bench/*.bench.ts, bundled and under plain Node: inside a test runner each call between modules
// goes through a lookup, which would measure the runner. Arguments choose benches by a part of their file name.

import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { buildOnce } from './build-once.mjs';
import { installWhenNeeded, PROJECT_ROOT } from './install-when-needed.mjs';

installWhenNeeded();
const wanted = process.argv.slice(2);
const folder = buildOnce('bench');
const benches = readdirSync(folder).filter((name) => name.endsWith('.bench.js'));
const chosen = benches.filter((name) => wanted.length === 0 || wanted.some((part) => name.includes(part)));
if (chosen.length === 0) {
  process.stderr.write(`No bench matches. There are: ${benches.join(', ') || 'none'}\n`);
  process.exitCode = 2;
}
for (const name of chosen) {
  const env = { ...process.env, NODE_ENV: 'production' };
  const { status } = spawnSync(process.execPath, [join(folder, name)], { cwd: PROJECT_ROOT, env, stdio: 'inherit' });
  if (status !== 0) process.exitCode = 1;
}
