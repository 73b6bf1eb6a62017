import { chromium } from '@playwright/test';
import fs from 'node:fs';
import path from 'node:path';
import { findBrowser } from '../../main/hosts/findBrowser.ts';
import { startHost, temporaryFolder } from '../e2e/fixtures.ts';
import { openSixCurves, workFor } from '../e2e/longTrial.ts';

/** From an act to the picture that has it: half of them and 95 of 100 within, ms. */
interface Within {
  readonly medianMs: number;
  readonly p95Ms: number;
}

/** Six curves of 2000 samples, each filtered and not, in a real browser. Needs the built renderer (`npm run build`). */
export async function curveFigures(): Promise<{ readonly playhead: Within; readonly axis: Within }> {
  const folder = temporaryFolder();
  const host = await startHost(path.join(folder, 'store'));
  const executablePath = findBrowser(process.platform, process.env);
  const browser = await chromium.launch({
    ...(executablePath === null ? {} : { executablePath }),
    chromiumSandbox: process.getuid?.() !== 0,
    args: ['--disable-background-networking', '--disable-gpu', '--no-first-run'],
  });
  try {
    const page = await (await browser.newContext({ viewport: { width: 1280, height: 860 } })).newPage();
    await page.goto(host.url);
    await page.waitForURL(`${host.origin}/**`);
    await openSixCurves(page, 2000);
    const frames = Array.from({ length: 100 }, (_, i) => 100 + 15 * i);
    const keys = Array.from({ length: 10 }, () => ['+', '+', ']', ']', '[', '[', '-', '-']).flat();
    return { playhead: within(await workFor(page, frames)), axis: within(await workFor(page, keys)) };
  } finally {
    await browser.close();
    await host.close();
    fs.rmSync(folder, { recursive: true, force: true });
  }
}

function within({ ms }: { readonly ms: readonly number[] }): Within {
  const at = (share: number) => ms[Math.floor(share * (ms.length - 1))] ?? Number.NaN;
  return { medianMs: at(0.5), p95Ms: at(0.95) };
}
