import { spawn } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { test as base, expect, type Page } from '@playwright/test';

export interface Host {
  /** Opens the workbench once; `origin` is where it then is. */
  readonly url: string;
  readonly origin: string;
  readonly folder: string;
  /** Ends the host as its window would. */
  close(): Promise<void>;
  /** Ends it as a power cut would. */
  kill(): Promise<void>;
}

/** Starts a loopback host of its own on a store folder; it ends when we do, because its standard input closes. */
export async function startHost(folder: string, ...options: string[]): Promise<Host> {
  const child = spawn(
    process.execPath,
    ['main/hosts/loopback.ts', '--no-open', '--json', '--folder', folder, ...options],
    { stdio: ['pipe', 'pipe', 'inherit'] },
  );
  const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const first = await new Promise<string>((resolve, reject) => {
    let text = '';
    child.stdout.on('data', (part: Buffer) => {
      text += part.toString();
      if (text.includes('\n')) resolve(text);
    });
    child.once('exit', (code) => reject(new Error(`the loopback host ended with code ${code}`)));
  });
  const { url, origin } = JSON.parse(first) as { url: string; origin: string };
  return {
    url,
    origin,
    folder,
    async close() {
      child.stdin.end();
      await ended;
    },
    async kill() {
      child.kill('SIGKILL');
      await ended;
    },
  };
}

export function temporaryFolder(): string {
  return fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-e2e-'));
}

/**
 * `host`: a host on an empty store of its own, so that tests may run side by side. Every test also fails on any error or
 * warning in the browser's console: violations of the content security policy show there.
 */
export const test = base.extend<{ host: Host; quietConsole: undefined }>({
  // Playwright reads the dependencies off the first parameter, which therefore must be a pattern.
  // oxlint-disable-next-line no-empty-pattern
  host: async ({}, use) => {
    const folder = temporaryFolder();
    const host = await startHost(folder);
    await use(host);
    await host.close();
    fs.rmSync(folder, { recursive: true, force: true });
  },
  quietConsole: [
    // Named so that the host outlives the page: an event stream that breaks is an error in the console.
    async ({ host: _host, page }, use) => {
      const said: string[] = [];
      page.on('console', (message) => {
        if (message.type() === 'error' || message.type() === 'warning') said.push(message.text());
      });
      page.on('pageerror', (error) => said.push(String(error)));
      await use(undefined);
      expect(said, 'errors and warnings in the browser’s console').toEqual([]);
    },
    { auto: true },
  ],
});

/** Spends the host's ticket and waits for the workbench. */
export async function open(page: Page, host: Host): Promise<void> {
  await page.goto(host.url);
  await page.waitForURL(`${host.origin}/**`);
  await expect(page.getByRole('main')).toBeVisible();
}

/** Asks the host itself, past the screen. */
export async function ask<T>(page: Page, channel: string, request: object): Promise<T> {
  return page.evaluate(
    async ([name, body]) => {
      const response = await fetch(`/api/${name}`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body,
      });
      return ((await response.json()) as { value: T }).value;
    },
    [channel, JSON.stringify(request)] as const,
  );
}

export { expect };
