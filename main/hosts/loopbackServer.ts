import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';
import http from 'node:http';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import type { ReadableStream as NodeReadableStream } from 'node:stream/web';
import { CHANNELS, EVENTS, type EventName } from '../../shared/contract/channels.ts';
import type { Service } from '../service.ts';
import { SECURITY_HEADERS, type Web } from './web.ts';

/** A contract request carries a whole force file as text; the schema's own limit is 24 million characters. */
const MAX_BODY_BYTES = 32 * 1024 * 1024;
/** Long enough to copy the address into a browser by hand. */
const TICKET_LIFE_MS = 5 * 60_000;
const BEAT_MS = 15_000;

export interface Ticket {
  /** Opens the workbench once. Whoever has it has the store: never on a command line, never in a log. */
  readonly url: string;
  readonly spent: Promise<void>;
}

export interface Loopback {
  readonly origin: string;
  /** @param landing where in the workbench the ticket leads: `/`, `/#/case/…` */
  issueTicket(landing?: string): Ticket;
  close(): Promise<void>;
}

/**
 * The contract and the page on 127.0.0.1, for one browser profile. The port is reachable by every program and every web
 * page on this machine, so a request must name our exact host (DNS rebinding), come from our own page (Origin and
 * Sec-Fetch-Site) and carry the secret of this launch. There is no CORS header anywhere: nobody else may read an answer.
 */
export async function startLoopback(service: Service, web: Web): Promise<Loopback> {
  const session = randomBytes(32).toString('base64url');
  const tickets = new Map<
    string,
    { readonly expiresAt: number; readonly landing: string; readonly spend: () => void }
  >();

  const server = http.createServer(
    { maxHeaderSize: 16 * 1024, requestTimeout: 60_000, headersTimeout: 10_000, keepAliveTimeout: 60_000 },
    (request, response) => {
      handle(request, response).catch((thrown: unknown) => {
        // A player that seeks, or a window that closes, ends its request early.
        const isHangUp = (thrown as NodeJS.ErrnoException).code === 'ERR_STREAM_PREMATURE_CLOSE';
        if (!isHangUp) console.error('loopback:', thrown);
        if (response.headersSent) response.destroy();
        else answer(response, 500, 'The request failed inside the program.');
      });
    },
  );
  server.on('upgrade', (_request, socket) => socket.destroy());
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen({ host: '127.0.0.1', port: 0, exclusive: true }, resolve);
  });
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('the loopback server has no port');
  const host = `127.0.0.1:${address.port}`;
  const origin = `http://${host}`;
  // Cookies are not kept apart by port, so the name carries it.
  const cookieName = `__Host-caseframe_${address.port}`;

  async function handle(request: http.IncomingMessage, response: http.ServerResponse): Promise<void> {
    // A request target may be absolute (`GET http://elsewhere/`); both it and the Host header must be ours.
    const url = URL.canParse(request.url ?? '', origin) ? new URL(request.url ?? '', origin) : null;
    if (url === null) return answer(response, 400, 'This address cannot be read.');
    if (request.headers.host !== host || url.origin !== origin) return answer(response, 421, 'Wrong host.');
    if (url.pathname === '/enter') return enter(url, request, response);

    const from = request.headers.origin;
    if (from !== undefined && from !== origin) return answer(response, 403, 'Wrong origin.');
    const site = request.headers['sec-fetch-site'];
    if (site !== undefined && site !== 'same-origin' && site !== 'none') return answer(response, 403, 'Wrong site.');
    if (!isSame(cookie(request, cookieName), session)) {
      return answer(response, 401, 'This window is not signed in. Close it and start Caseframe again.');
    }
    if (url.pathname === '/api/events') return streamEvents(request, response);
    if (url.pathname.startsWith('/api/')) return callChannel(url.pathname.slice('/api/'.length), request, response);
    return sendPage(url, request, response);
  }

  /**
   * Spends a ticket. The window arrives here from a private `file:` page, so Sec-Fetch-Site says cross-site; and a strict
   * cookie set during a redirect that another site began would not be sent along. Hence a small page that moves on.
   */
  function enter(url: URL, request: http.IncomingMessage, response: http.ServerResponse): void {
    const given = url.searchParams.get('ticket') ?? '';
    const found = [...tickets].find(([ticket]) => isSame(ticket, given));
    const isFramed = request.headers['sec-fetch-dest'] === 'iframe' || request.headers['sec-fetch-dest'] === 'frame';
    if (found === undefined || found[1].expiresAt < Date.now() || request.method !== 'GET' || isFramed) {
      return answer(
        response,
        403,
        'This link was used already or is too old. Close this window and start Caseframe again.',
      );
    }
    tickets.delete(found[0]);
    found[1].spend();
    answer(response, 200, movePage(found[1].landing), {
      'content-type': 'text/html; charset=utf-8',
      'set-cookie': `${cookieName}=${session}; Secure; HttpOnly; SameSite=Strict; Path=/`,
    });
  }

  function streamEvents(request: http.IncomingMessage, response: http.ServerResponse): void {
    if (request.method !== 'GET') return answer(response, 405, 'Only GET is answered here.');
    response.writeHead(200, { ...SECURITY_HEADERS, 'content-type': 'text/event-stream', 'cache-control': 'no-store' });
    response.write(': open\n\n');
    const stops = (Object.keys(EVENTS) as EventName[]).map((event) =>
      service.on(event, (payload) => response.write(`event: ${event}\ndata: ${JSON.stringify(payload)}\n\n`)),
    );
    const beat = setInterval(() => response.write(': beat\n\n'), BEAT_MS);
    request.on('close', () => {
      clearInterval(beat);
      for (const stop of stops) stop();
    });
  }

  async function callChannel(
    channel: string,
    request: http.IncomingMessage,
    response: http.ServerResponse,
  ): Promise<void> {
    if (request.method !== 'POST') return answer(response, 405, 'Only POST is answered here.');
    // Browsers put Origin on every POST; a caller without one is no page of ours.
    if (request.headers.origin !== origin) return answer(response, 403, 'Wrong origin.');
    // A form cannot send this type, and a script of another site would need a CORS permission that nobody gives.
    if (request.headers['content-type']?.split(';')[0]?.trim() !== 'application/json') {
      return answer(response, 415, 'Only application/json is read here.');
    }
    if (!Object.hasOwn(CHANNELS, channel)) return answer(response, 404, 'There is no such channel.');
    const body = await readBody(request);
    if (body === null) return answer(response, 413, 'The request is larger than 32 MB.', { connection: 'close' });
    let parsed: unknown;
    try {
      parsed = JSON.parse(body);
    } catch {
      return answer(response, 400, 'The request is not JSON.');
    }
    const result = await service.dispatch(channel, parsed);
    answer(response, 200, JSON.stringify(result), { 'content-type': 'application/json' });
  }

  async function sendPage(url: URL, request: http.IncomingMessage, response: http.ServerResponse): Promise<void> {
    const headers = new Headers();
    for (const name of ['range', 'if-range', 'if-none-match'] as const) {
      const value = request.headers[name];
      if (typeof value === 'string') headers.set(name, value);
    }
    const page = await web(new Request(url, { method: request.method ?? 'GET', headers }));
    // Who asked may have gone meanwhile; the file behind the answer must still be let go.
    if (response.destroyed) return page.body?.cancel();
    response.writeHead(page.status, Object.fromEntries(page.headers));
    const body: object | null = page.body; // declared by Node and by the page, each for itself
    if (body === null) response.end();
    else await pipeline(Readable.fromWeb(body as NodeReadableStream), response);
  }

  return {
    origin,
    issueTicket(landing = '/') {
      const ticket = randomBytes(32).toString('base64url');
      const { promise, resolve } = Promise.withResolvers<void>();
      tickets.set(ticket, { expiresAt: Date.now() + TICKET_LIFE_MS, landing, spend: resolve });
      return { url: `${origin}/enter?ticket=${ticket}`, spent: promise };
    },
    async close() {
      const closed = new Promise((resolve) => server.close(resolve));
      // Event streams and kept-alive connections would hold the process.
      server.closeAllConnections();
      await closed;
    },
  };
}

/** A page that only leads on, without script, which the policy would refuse inline. */
export function movePage(to: string): string {
  return `<!doctype html><html lang="en"><meta charset="utf-8"><link rel="icon" href="data:,"><title>Caseframe</title><meta http-equiv="refresh" content="0;url=${to}">`;
}

function answer(
  response: http.ServerResponse,
  status: number,
  body: string,
  headers: Readonly<Record<string, string>> = {},
): void {
  response.writeHead(status, {
    ...SECURITY_HEADERS,
    'content-type': 'text/plain; charset=utf-8',
    'cache-control': 'no-store',
    ...headers,
  });
  response.end(body);
}

/** Compares without telling by its duration how much was right. */
function isSame(a: string, b: string): boolean {
  return timingSafeEqual(digest(a), digest(b));
}

function digest(text: string): Buffer {
  return createHash('sha256').update(text).digest();
}

function cookie(request: http.IncomingMessage, name: string): string {
  const pair = (request.headers.cookie ?? '').split(';').find((part) => part.trim().startsWith(`${name}=`));
  return pair?.trim().slice(name.length + 1) ?? '';
}

/** The body as text, or null if it is too long. Checked while it arrives: the length header may lie. */
async function readBody(request: http.IncomingMessage): Promise<string | null> {
  const parts: Buffer[] = [];
  let size = 0;
  for await (const part of request as AsyncIterable<Buffer>) {
    size += part.length;
    if (size > MAX_BODY_BYTES) return null;
    parts.push(part);
  }
  return Buffer.concat(parts).toString('utf8');
}
