import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { findBrowser } from '../../../main/hosts/findBrowser.ts';
import { storeFolder } from '../../../main/hosts/storeFolder.ts';

test('the browser named in CASEFRAME_BROWSER, and no other', () => {
  expect(findBrowser('linux', { CASEFRAME_BROWSER: process.execPath })).toBe(process.execPath);
  expect(findBrowser('linux', { CASEFRAME_BROWSER: '/no/such/browser', PATH: process.env['PATH'] })).toBeNull();
});

test('on Linux the first on the path', () => {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-test-'));
  fs.writeFileSync(path.join(folder, 'chromium'), '');
  expect(findBrowser('linux', { PATH: `/no/such/folder:${folder}` })).toBe(path.join(folder, 'chromium'));
  expect(findBrowser('linux', { PATH: '' })).toBeNull();
  fs.rmSync(folder, { recursive: true });
});

test('each system keeps the store where its users’ data go (XDG base directory specification; vendors’ custom)', () => {
  expect(storeFolder({}, 'linux', {}, '/home/a')).toBe('/home/a/.local/share/caseframe/store');
  expect(storeFolder({}, 'linux', { XDG_DATA_HOME: '/data' }, '/home/a')).toBe('/data/caseframe/store');
  expect(storeFolder({}, 'darwin', {}, '/Users/a')).toBe('/Users/a/Library/Application Support/caseframe/store');
  expect(storeFolder({ demo: true }, 'linux', {}, '/home/a')).toBe('/home/a/.local/share/caseframe/demo');
  expect(storeFolder({ folder: '/x/y', demo: true }, 'linux', {}, '/home/a')).toBe('/x/y');
});
