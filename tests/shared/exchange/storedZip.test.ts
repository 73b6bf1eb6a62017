import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { crc32 } from 'node:zlib';
import { expect, test } from 'vitest';
import { storedZip } from '../../../shared/exchange/storedZip.ts';

const bytes = new TextEncoder().encode('# A study\nwith a figure: μ ± σ\n');
const archive = storedZip([
  { name: 'study.md', bytes },
  { name: 'figures/figure-01.svg', bytes: new Uint8Array(0) },
]);

test('zlib, a general-purpose library: the check of the first entry', () => {
  expect(new DataView(archive.buffer).getUint32(14, true)).toBe(crc32(bytes));
});

test.skipIf(spawnSync('unzip', ['-v']).error !== undefined)(
  'unzip, a general-purpose program, finds the archive sound and the text as it was',
  () => {
    const path = join(mkdtempSync(join(tmpdir(), 'caseframe-zip-')), 'a.zip');
    writeFileSync(path, archive);
    expect(execFileSync('unzip', ['-t', path], { encoding: 'utf8' })).toContain('No errors detected');
    expect(execFileSync('unzip', ['-p', path, 'study.md'])).toEqual(Buffer.from(bytes));
  },
);
