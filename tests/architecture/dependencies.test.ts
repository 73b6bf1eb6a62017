import fs from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';

const root = path.resolve(import.meta.dirname, '../..');
const manifest = JSON.parse(fs.readFileSync(path.join(root, 'package.json'), 'utf8')) as Record<
  'dependencies' | 'devDependencies' | 'optionalDependencies',
  Record<string, string>
>;
const all = { ...manifest.dependencies, ...manifest.devDependencies, ...manifest.optionalDependencies };

test('every package has its reason in DEVELOPERS.md', () => {
  const reasons = fs.readFileSync(path.join(root, 'DEVELOPERS.md'), 'utf8').split('## Dependencies, and why')[1] ?? '';
  const words = new Set(reasons.split(/[\s`|,()]+/).map((word) => word.replace(/[.;:]$/, '')));
  const without = Object.keys(all).filter((name) => !name.startsWith('@types/') && !words.has(name));
  expect(without, 'a package nobody can give a reason for is one to remove').toEqual([]);
});

test('every package is pinned to one version', () => {
  const loose = Object.entries(all).filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version));
  expect(loose, 'the same commit must build the same program').toEqual([]);
});
