import { defineConfig } from '@playwright/test';
import { findBrowser } from './main/hosts/findBrowser.ts';

const browser = findBrowser(process.platform, process.env);

export default defineConfig({
  testDir: 'tests/e2e',
  outputDir: 'out/e2e',
  timeout: 180_000,
  // Two cores may run two browsers, two hosts and other work besides.
  expect: { timeout: 20_000 },
  workers: 2,
  fullyParallel: true,
  forbidOnly: process.env['CI'] !== undefined,
  retries: 0,
  reporter: [['list'], ['json', { outputFile: 'out/e2e.json' }]],
  use: {
    viewport: { width: 1280, height: 860 },
    screenshot: 'only-on-failure',
    trace: 'retain-on-failure',
    launchOptions: {
      ...(browser === null ? {} : { executablePath: browser }),
      // Chromium refuses its sandbox to root.
      chromiumSandbox: process.getuid?.() !== 0,
      args: [
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
        '--disable-quic',
        '--no-first-run',
      ],
    },
  },
});
