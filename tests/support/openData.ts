import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe } from 'vitest';

const root = resolve(import.meta.dirname, '..', '..', '..', 'shared', 'data');

/** A folder of the open data beside the repository; null where that data is absent. Nothing of it is copied in here. */
export function openData(folder: string): string | null {
  const path = join(root, folder);
  return existsSync(join(path, 'SOURCE.md')) ? path : null;
}

/** A group of tests on one open-data folder, shown as skipped with the reason where the folder is absent. */
export function describeOpenData(folder: string, title: string, tests: (data: OpenData) => void): void {
  const path = openData(folder);
  if (path === null) {
    describe.skip(`${title} (skipped: open data ${folder} is not on this machine)`, () => tests(absent));
    return;
  }
  describe(title, () =>
    tests({
      text: (file) => readFileSync(join(path, file), 'utf8'),
      json: (file) => JSON.parse(readFileSync(join(path, file), 'utf8')) as unknown,
      path: (file) => join(path, file),
    }),
  );
}

export interface OpenData {
  text(file: string): string;
  json(file: string): unknown;
  /** Where a file is, for a program that reads it itself. */
  path(file: string): string;
}

/** Collecting skipped tests must not read files; the bodies never run. */
const absent: OpenData = {
  text: () => '',
  json: () => ({}),
  path: (file) => file,
};
