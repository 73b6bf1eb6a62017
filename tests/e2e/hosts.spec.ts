import { execFileSync, spawn } from 'node:child_process';
import fs from 'node:fs';
import http from 'node:http';
import path from 'node:path';
import { SECTIONS } from '../../shared/assess/assessment.ts';
import { expect, open, startHost, temporaryFolder, test } from './fixtures.ts';

test('the page is served under the strict policy and runs with no violation', async ({ page, host }) => {
  const response = await page.goto(host.url);
  expect(response?.headers()['content-security-policy']).toContain("default-src 'none'");
  await page.waitForURL(`${host.origin}/**`);
  await expect(page.getByRole('main')).toBeVisible();
  const policies = await page.evaluate(async () => {
    const answer = await fetch('/');
    return answer.headers.get('content-security-policy');
  });
  expect(policies).toContain("require-trusted-types-for 'script'");
});

test('a reload stays signed in, a second window without the ticket does not get in', async ({
  page,
  host,
  browser,
}) => {
  await open(page, host);
  await page.reload();
  await expect(page.getByRole('main')).toBeVisible();
  const stranger = await browser.newContext();
  const other = await stranger.newPage();
  expect((await other.goto(`${host.origin}/`))?.status()).toBe(401);
  expect((await other.goto(host.url))?.status()).toBe(403);
  await stranger.close();
});

test('a live page on another port of this machine can read and write nothing', async ({ page, host, context }) => {
  await open(page, host);
  // Same browser, same cookies: what any other local program's page would be.
  const server = http.createServer((_request, response) => {
    response.writeHead(200, { 'content-type': 'text/html' });
    response.end('<!doctype html><link rel="icon" href="data:,"><title>other</title>');
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as { port: number };
  const foreign = await context.newPage();
  await foreign.goto(`http://127.0.0.1:${port}/`);
  const outcome = await foreign.evaluate(async (origin) => {
    // Runs in the page, so it cannot stand outside.
    // oxlint-disable-next-line unicorn/consistent-function-scoping
    const attempt = (work: Promise<unknown>) =>
      work.then(
        () => 'answered',
        () => 'refused',
      );
    const create = JSON.stringify({ purpose: 'intake', athleteId: null, openedOn: '2026-01-01' });
    const image = new Image();
    const loaded = new Promise((resolve, reject) => {
      image.addEventListener('load', resolve);
      image.addEventListener('error', reject);
    });
    image.src = `${origin}/index.html`;
    return {
      read: await attempt(fetch(`${origin}/api/app.info`, { method: 'POST', body: '{}', credentials: 'include' })),
      json: await attempt(
        fetch(`${origin}/api/case.create`, {
          method: 'POST',
          body: create,
          credentials: 'include',
          headers: { 'content-type': 'application/json' },
        }),
      ),
      image: await attempt(loaded),
      // A request without CORS is sent, but answered with a refusal that cannot be read; the store shows nothing came of it.
      blind: await attempt(
        fetch(`${origin}/api/case.create`, { method: 'POST', mode: 'no-cors', body: create, credentials: 'include' }),
      ),
    };
  }, host.origin);
  expect(outcome).toMatchObject({ read: 'refused', json: 'refused', image: 'refused' });
  server.close();
  await foreign.close();
  const shelf = await page.evaluate(async () => {
    const answer = await fetch('/api/shelf.list', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ search: '', archived: false, offset: 0, limit: 10 }),
    });
    return (await answer.json()) as unknown;
  });
  expect(shelf).toMatchObject({ ok: true, value: { total: 0 } });
});

test('a second host on the same store is refused with a sentence', async ({ host }) => {
  const child = spawn(process.execPath, ['main/hosts/loopback.ts', '--no-open', '--json', '--folder', host.folder], {
    stdio: ['pipe', 'ignore', 'pipe'],
  });
  let said = '';
  child.stderr.on('data', (part: Buffer) => {
    said += part.toString();
  });
  const code = await new Promise((resolve) => child.once('exit', resolve));
  expect(code).toBe(4);
  expect(said).toMatch(/open|use|lock/i);
  expect(said.trim().split('\n')).toHaveLength(1);
});

test('the host ends when the program that drives it closes its input, and frees the store', async ({ host: _host }) => {
  const folder = temporaryFolder();
  const first = await startHost(folder);
  await first.close();
  const second = await startHost(folder);
  await second.close();
  fs.rmSync(folder, { recursive: true });
});

test('the window’s command line does not carry the ticket, and the launch page is private and goes once spent', async ({
  host: _host,
}) => {
  const folder = temporaryFolder();
  // A stand-in browser writes down its arguments and what the launch page says, then opens that address itself.
  const browser = path.join(folder, 'browser.mjs');
  const report = path.join(folder, 'report.json');
  fs.writeFileSync(
    browser,
    `#!${process.execPath}
import fs from 'node:fs';
import { fileURLToPath } from 'node:url';
const launch = fileURLToPath(process.argv.find((word) => word.startsWith('--app=')).slice('--app='.length));
const mode = (fs.statSync(launch).mode & 0o777).toString(8);
const url = /url=([^"]+)"/.exec(fs.readFileSync(launch, 'utf8'))[1];
const { status } = await fetch(url);
for (let tries = 0; fs.existsSync(launch) && tries < 100; tries += 1) await new Promise((resolve) => setTimeout(resolve, 20));
fs.writeFileSync(${JSON.stringify(report)}, JSON.stringify({ args: process.argv, mode, status, isGone: !fs.existsSync(launch), ticket: new URL(url).searchParams.get('ticket') }));
`,
    { mode: 0o700 },
  );
  const output = execFileSync(process.execPath, ['main/hosts/loopback.ts', '--folder', path.join(folder, 'store')], {
    env: { ...process.env, CASEFRAME_BROWSER: browser },
    encoding: 'utf8',
    timeout: 30_000,
  });
  const seen = JSON.parse(fs.readFileSync(report, 'utf8')) as Record<string, unknown> & {
    args: string[];
    ticket: string;
  };
  expect(seen).toMatchObject({ mode: '600', status: 200, isGone: true });
  expect(seen.args.join(' ')).not.toContain(seen.ticket);
  expect(output).not.toContain(seen.ticket);
  fs.rmSync(folder, { recursive: true });
});

test('the demo opens on the invented case, and each of its sections opens', async ({ page, host: _host }) => {
  const folder = temporaryFolder();
  const demo = await startHost(path.join(folder, 'demo'), '--demo');
  await open(page, demo);
  await expect(page).toHaveURL(/#\/case\/[0-9a-f-]{36}\/athlete$/);
  await expect(page.getByText('Player Sorrel').first()).toBeVisible();
  for (const section of SECTIONS) {
    await page.goto(page.url().replace(/[^/]+$/, section));
    await expect(page.getByRole('main').getByRole('heading').first()).toBeVisible();
  }
  await page.goto('about:blank');
  await demo.close();
  fs.rmSync(folder, { recursive: true });
});
