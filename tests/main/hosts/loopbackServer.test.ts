import fs from 'node:fs';
import http from 'node:http';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { type Loopback, startLoopback } from '../../../main/hosts/loopbackServer.ts';
import { createWeb } from '../../../main/hosts/web.ts';
import { fakeService } from './fakeService.ts';

// Refusals are laws of this host, stated in DEVELOPERS.md under "The loopback host": no published source.

const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-test-'));
const fake = fakeService();
let loopback: Loopback;
let host: string;
let cookie: string;

interface Answer {
  readonly status: number;
  readonly headers: http.IncomingHttpHeaders;
  readonly body: string;
}

/** node:http rather than fetch: fetch would correct the very headers and paths that are to be refused. */
function send(options: {
  method?: string;
  path?: string;
  headers?: Record<string, string>;
  body?: string | Buffer;
}): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const request = http.request(
      {
        host: '127.0.0.1',
        port: new URL(loopback.origin).port,
        method: options.method ?? 'GET',
        path: options.path ?? '/',
        headers: { host, ...options.headers },
        agent: false,
      },
      (response) => {
        const parts: Buffer[] = [];
        response.on('data', (part: Buffer) => parts.push(part));
        response.on('end', () =>
          resolve({
            status: response.statusCode ?? 0,
            headers: response.headers,
            body: Buffer.concat(parts).toString(),
          }),
        );
      },
    );
    request.on('error', reject);
    request.end(options.body);
  });
}

const enter = (url: string, headers: Record<string, string> = {}, method = 'GET') =>
  send({ method, path: url.slice(loopback.origin.length), headers });

const call = (channel: string, headers: Record<string, string> = {}, body: string | Buffer = '{}') =>
  send({
    method: 'POST',
    path: `/api/${channel}`,
    headers: { cookie, origin: loopback.origin, 'content-type': 'application/json', ...headers },
    body,
  });

beforeAll(async () => {
  fs.mkdirSync(path.join(folder, 'page'));
  fs.writeFileSync(path.join(folder, 'page/index.html'), '<!doctype html><title>page</title>');
  fs.writeFileSync(path.join(folder, 'secret.txt'), 'secret');
  loopback = await startLoopback(
    fake.service,
    createWeb({ rendererFolder: path.join(folder, 'page'), mediaFile: () => null }),
  );
  host = loopback.origin.slice('http://'.length);
  const entered = await enter(loopback.issueTicket().url);
  cookie = entered.headers['set-cookie']?.[0]?.split(';')[0] ?? '';
});
beforeEach(() => {
  fake.dispatched.length = 0;
});
afterAll(async () => {
  await loopback.close();
  fs.rmSync(folder, { recursive: true });
});

describe('what our own window may do', () => {
  test('the page, with the security headers', async () => {
    const { status, headers, body } = await send({ headers: { cookie } });
    expect(status).toBe(200);
    expect(body).toContain('<title>page</title>');
    expect(headers['content-security-policy']).toContain("default-src 'none'");
    expect(headers['content-security-policy']).toContain('trusted-types default');
    expect(headers['x-content-type-options']).toBe('nosniff');
  });

  test('a channel of the contract reaches the service with its request', async () => {
    const { status, body } = await call('case.undo', {}, '{"caseId":"x"}');
    expect(status).toBe(200);
    expect(JSON.parse(body)).toEqual({ ok: true, value: { channel: 'case.undo' } });
    expect(fake.dispatched).toEqual([{ channel: 'case.undo', request: { caseId: 'x' } }]);
  });

  test('a request of 24 million characters, the largest file the contract allows', async () => {
    const { status } = await call('jump.previewForce', {}, JSON.stringify({ text: 'x'.repeat(24_000_000) }));
    expect(status).toBe(200);
    expect(fake.dispatched).toHaveLength(1);
  });

  test('events arrive, and listening ends with the connection', async () => {
    const heard = await new Promise<string>((resolve, reject) => {
      const request = http.get(`${loopback.origin}/api/events`, { headers: { cookie, host } }, (response) => {
        let text = '';
        response.on('data', (part: Buffer) => {
          text += part.toString();
          if (text.includes('event: ')) {
            request.destroy();
            resolve(text);
          } else fake.emit({ caseId: 'a', revision: 3 });
        });
        response.on('error', () => {});
      });
      request.on('error', reject);
    });
    expect(heard).toContain('event: case.changed\ndata: {"caseId":"a","revision":3}');
    await vi.waitFor(() => expect(fake.listeners.size).toBe(0));
  });

  test('who hangs up before the answer is found: the file behind it is let go, and nothing is printed', async () => {
    const said = vi.spyOn(console, 'error').mockImplementation(() => {});
    const [asked, gone, letGo] = [0, 0, 0].map(() => Promise.withResolvers<void>());
    const body = new ReadableStream({ cancel: () => letGo?.resolve() });
    const slow = await startLoopback(fake.service, async () => {
      asked?.resolve();
      await gone?.promise;
      // The server hears of it a turn or two after the caller.
      await new Promise((resolve) => setTimeout(resolve, 50));
      return new Response(body);
    });
    const entered = await fetch(slow.issueTicket().url);
    const request = http.get(slow.origin, { headers: { cookie: entered.headers.get('set-cookie')?.split(';')[0] } });
    request.on('error', () => gone?.resolve());
    await asked?.promise;
    request.destroy(new Error('gone'));
    await gone?.promise;
    await letGo?.promise;
    await slow.close();
    expect(said).not.toHaveBeenCalled();
    said.mockRestore();
  });
});

describe('tickets', () => {
  test('a ticket gives a cookie that scripts cannot read and other sites do not send, named after the port', async () => {
    const { status, headers } = await enter(loopback.issueTicket().url, { 'sec-fetch-site': 'cross-site' });
    expect(status).toBe(200);
    const given = headers['set-cookie']?.[0] ?? '';
    expect(given).toContain(`__Host-caseframe_${new URL(loopback.origin).port}=`);
    for (const attribute of ['HttpOnly', 'SameSite=Strict', 'Secure', 'Path=/']) expect(given).toContain(attribute);
  });

  test('a used ticket is refused', async () => {
    const { url, spent } = loopback.issueTicket();
    expect((await enter(url)).status).toBe(200);
    await spent;
    const again = await enter(url);
    expect(again.status).toBe(403);
    expect(again.headers['set-cookie']).toBeUndefined();
  });

  test('a wrong, a missing and an expired ticket are refused', async () => {
    expect((await enter(`${loopback.origin}/enter?ticket=guess`)).status).toBe(403);
    expect((await enter(`${loopback.origin}/enter`)).status).toBe(403);
    const { url } = loopback.issueTicket();
    vi.useFakeTimers({ toFake: ['Date'], now: Date.now() + 6 * 60_000 });
    try {
      expect((await enter(url)).status).toBe(403);
    } finally {
      vi.useRealTimers();
    }
  });

  test('a ticket is not spent by a frame or by another method', async () => {
    const { url } = loopback.issueTicket();
    expect((await enter(url, { 'sec-fetch-dest': 'iframe' })).status).toBe(403);
    expect((await enter(url, {}, 'POST')).status).toBe(403);
    expect((await enter(url)).status).toBe(200);
  });
});

describe('refused before anything is read or written', () => {
  test.each([
    ['localhost with our port', () => `localhost:${new URL(loopback.origin).port}`],
    ['a rebound name', () => `evil.example:${new URL(loopback.origin).port}`],
    ['our address without the port', () => '127.0.0.1'],
  ])('host: %s', async (_name, wrong) => {
    expect((await send({ headers: { cookie, host: wrong() } })).status).toBe(421);
  });

  test('an absolute address of another host as request target', async () => {
    expect((await send({ path: 'http://evil.example/', headers: { cookie } })).status).toBe(421);
  });

  test.each([
    ['missing', undefined],
    ['null, as from a sandboxed frame', 'null'],
    ['another site', 'http://evil.example'],
    ['another port of this machine', 'http://127.0.0.1:1'],
  ])('origin of a call: %s', async (_name, origin) => {
    const headers = origin === undefined ? {} : { origin };
    const { status } = await send({
      method: 'POST',
      path: '/api/app.info',
      headers: { cookie, 'content-type': 'application/json', ...headers },
      body: '{}',
    });
    expect(status).toBe(403);
    expect(fake.dispatched).toEqual([]);
  });

  test.each(['cross-site', 'same-site'])('Sec-Fetch-Site: %s', async (site) => {
    expect((await send({ headers: { cookie, 'sec-fetch-site': site } })).status).toBe(403);
    expect((await call('app.info', { 'sec-fetch-site': site })).status).toBe(403);
    expect(fake.dispatched).toEqual([]);
  });

  test('no cookie, a wrong one, and one named after another port', async () => {
    const value = cookie.split('=')[1];
    for (const headers of [
      {},
      { cookie: `${cookie.split('=')[0]}=guess` },
      { cookie: `__Host-caseframe_1=${value}` },
    ]) {
      expect((await send({ headers })).status).toBe(401);
      expect((await send({ path: '/api/events', headers })).status).toBe(401);
    }
  });

  test('a form’s and a text’s content type', async () => {
    for (const type of ['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data']) {
      expect((await call('app.info', { 'content-type': type })).status).toBe(415);
    }
    expect(fake.dispatched).toEqual([]);
  });

  test('a body over 32 MB', async () => {
    const outcome = await call('app.info', {}, Buffer.alloc(33 * 1024 * 1024, 0x20)).then(
      ({ status }) => status,
      // The server may close while we still send.
      (error: NodeJS.ErrnoException) => error.code,
    );
    expect([413, 'EPIPE', 'ECONNRESET']).toContain(outcome);
    expect(fake.dispatched).toEqual([]);
  });

  test('a body that is not JSON', async () => {
    expect((await call('app.info', {}, '{')).status).toBe(400);
  });

  test.each(['no.such', 'toString', '__proto__', 'app.info/more', ''])('channel %j', async (channel) => {
    expect((await call(channel)).status).toBe(404);
    expect(fake.dispatched).toEqual([]);
  });

  test('a channel by GET, and a preflight', async () => {
    expect((await send({ path: '/api/app.info', headers: { cookie } })).status).toBe(405);
    const preflight = await send({
      method: 'OPTIONS',
      path: '/api/app.info',
      headers: { origin: 'http://evil.example', 'access-control-request-method': 'POST' },
    });
    expect(preflight.status).toBe(403);
    expect(Object.keys(preflight.headers).filter((name) => name.startsWith('access-control'))).toEqual([]);
  });

  test.each([
    '/../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
    '/%2e%2e%2fsecret.txt',
    '/..\\secret.txt',
    '/..%5csecret.txt',
    '/page/../../secret.txt',
    '/%00',
    '/%',
    '/files/../secret.txt',
  ])('a way out of the page folder: %s', async (way) => {
    const { status, body } = await send({ path: way, headers: { cookie } });
    expect([400, 404]).toContain(status);
    expect(body).not.toContain('secret');
  });
});
