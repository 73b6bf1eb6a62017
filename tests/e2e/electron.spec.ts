import fs from 'node:fs';
import path from 'node:path';
import { _electron, expect, test } from '@playwright/test';
import { electronBinary } from '../../scripts/electronBinary.mjs';
import { temporaryFolder } from './fixtures.ts';

const binary = electronBinary();
test.skip(binary === null, 'Electron’s binary is not installed here');

test('the Electron shell shows the shelf in a locked window, and keeps what was entered', async () => {
  const folder = temporaryFolder();
  const start = () =>
    _electron.launch({
      executablePath: binary ?? '',
      args: [path.resolve('.'), '--folder', folder, ...(process.getuid?.() === 0 ? ['--no-sandbox'] : [])],
    });

  const first = await start();
  const page = await first.firstWindow();
  await expect(page.getByRole('main')).toBeVisible();
  expect(page.url()).toBe('app://caseframe/');
  expect(
    await page.evaluate(() => [typeof Reflect.get(globalThis, 'require'), typeof Reflect.get(globalThis, 'process')]),
  ).toEqual(['undefined', 'undefined']);
  const preferences = await first.evaluate(({ BrowserWindow }) => {
    const contents = BrowserWindow.getAllWindows()[0]?.webContents as unknown as { getLastWebPreferences(): unknown };
    return contents.getLastWebPreferences();
  });
  expect(preferences).toMatchObject({ contextIsolation: true, sandbox: true, nodeIntegration: false });
  await page.evaluate(() => {
    location.href = 'https://example.org/';
  });
  expect(page.url()).toBe('app://caseframe/');
  const created = await page.evaluate(() => {
    const bridge = Reflect.get(globalThis, 'caseframe') as {
      invoke(channel: string, request: unknown): Promise<unknown>;
    };
    return bridge.invoke('case.create', { purpose: 'intake', athleteId: null, openedOn: '2026-01-01' });
  });
  expect(created).toMatchObject({ ok: true });
  await first.close();

  const second = await start();
  const again = await second.firstWindow();
  const shelf = await again.evaluate(() => {
    const bridge = Reflect.get(globalThis, 'caseframe') as {
      invoke(channel: string, request: unknown): Promise<unknown>;
    };
    return bridge.invoke('shelf.list', { search: '', archived: false, offset: 0, limit: 10 });
  });
  expect(shelf).toMatchObject({ ok: true, value: { total: 1 } });
  await second.close();
  fs.rmSync(folder, { recursive: true });
});
