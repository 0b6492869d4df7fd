import { statSync } from 'node:fs';
import type { TestSequencer, TestSpecification } from 'vitest/node';

/** Folders of tests in the order in which they run, those with the longest files first. */
const FOLDERS = ['browser', 'outside', 'golden', 'laws', 'unit', 'house'];

/** Files that take long for their size, the longest first: begun last, one of them would keep all the others waiting. */
const SLOW = [
  'outside/generated-pairs',
  'outside/near-contact',
  'outside/interference',
  'browser/keep-offline',
  'browser/keep-reload',
  'browser/family-files',
  'browser/telling',
  'browser/claims',
  'laws/passage',
  'unit/identify/noisy-traces',
  'unit/identify/identify',
  'unit/publish/sheets-keep-in-the-page',
  'unit/fit/hostile-outlines',
];

/** Where a file stands among the slow ones; behind all of them when it is none. */
function slowness({ moduleId }: TestSpecification): number {
  const found = SLOW.findIndex((name) => moduleId.endsWith(`/tests/${name}.test.ts`));
  return found < 0 ? SLOW.length : found;
}

/**
 * One folder after the other, so that a lane keeps the modules it has loaded, and the longest files of each first, so
 * that the lanes end together. Large files stand for long ones.
 */
export class SlowFirst implements TestSequencer {
  sort(files: TestSpecification[]): TestSpecification[] {
    const known = files.map((file) => ({
      file,
      folder: FOLDERS.indexOf(file.project.name),
      slowness: slowness(file),
      size: statSync(file.moduleId).size,
    }));
    known.sort((a, b) => a.folder - b.folder || a.slowness - b.slowness || b.size - a.size);
    return known.map(({ file }) => file);
  }

  /** Only asked for where one run is dealt out to several machines. */
  shard(files: TestSpecification[]): TestSpecification[] {
    return files;
  }
}
