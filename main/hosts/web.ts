import { createReadStream } from 'node:fs';
import fs from 'node:fs/promises';
import path from 'node:path';
import { Readable } from 'node:stream';

/**
 * One fetch-style handler serves the renderer and the stored files in both hosts: `app://` in Electron,
 * `http://127.0.0.1` in the loopback host. Who may ask is the host's business; what may be had is decided here.
 */

const CONTENT_TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.ico': 'image/x-icon',
  '.ttf': 'font/ttf',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
  '.json': 'application/json',
  '.csv': 'text/csv; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.pdf': 'application/pdf',
  '.mp4': 'video/mp4',
  '.webm': 'video/webm',
};

export const CONTENT_SECURITY_POLICY = [
  "default-src 'none'",
  // The landmark model's arithmetic is WebAssembly; text still becomes no code.
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "media-src 'self' blob:",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
  "object-src 'none'",
  "require-trusted-types-for 'script'",
  'trusted-types default',
].join('; ');

export const SECURITY_HEADERS: Readonly<Record<string, string>> = {
  'content-security-policy': CONTENT_SECURITY_POLICY,
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'cross-origin-embedder-policy': 'require-corp',
  'x-frame-options': 'DENY',
  'permissions-policy': 'camera=(), microphone=(), geolocation=(), usb=(), serial=(), hid=()',
};

export type Web = (request: Request) => Promise<Response>;

export interface WebSources {
  /** Folder of the built renderer. */
  readonly rendererFolder: string;
  /** Path of a stored file by its SHA-256, or null. */
  mediaFile(sha256: string): string | null;
}

/** Answers GET and HEAD for `/…` (page files) and `/files/<sha256>/<name>` (stored files, always as downloads). */
export function createWeb(sources: WebSources): Web {
  const root = path.resolve(sources.rendererFolder);
  return async (request) => {
    if (request.method !== 'GET' && request.method !== 'HEAD')
      return refuse(405, 'Only GET and HEAD are answered here.');
    const pathname = decodedPath(request.url);
    if (pathname === null) return refuse(400, 'This address cannot be read.');

    const stored = /^\/files\/([0-9a-f]{64})\/([^/]+)$/.exec(pathname);
    if (stored !== null) {
      const [, sha256 = '', name = ''] = stored;
      const file = sources.mediaFile(sha256);
      return file === null ? notFound() : sendFile(request, file, { name, etag: `"${sha256}"`, isDownload: true });
    }
    const file = path.join(root, pathname === '/' ? 'index.html' : pathname);
    if (!file.startsWith(root + path.sep)) return notFound();
    return sendFile(request, file, { name: file, etag: null, isDownload: false });
  };
}

/** Byte range asked for; null: none or one we may ignore (RFC 9110, 14.2); 'unsatisfiable': answer 416. */
export function parseRange(
  header: string | null,
  size: number,
): { readonly start: number; readonly end: number } | null | 'unsatisfiable' {
  const match = /^bytes=(\d*)-(\d*)$/.exec(header?.trim() ?? '');
  if (match === null) return null;
  const [, first = '', last = ''] = match;
  if (first === '' && last === '') return null;
  const start = first === '' ? Math.max(0, size - Number(last)) : Number(first);
  const end = first === '' || last === '' ? size - 1 : Math.min(Number(last), size - 1);
  return start >= size || start > end ? 'unsatisfiable' : { start, end };
}

async function sendFile(
  request: Request,
  file: string,
  as: { readonly name: string; readonly etag: string | null; readonly isDownload: boolean },
): Promise<Response> {
  const stat = await fs.stat(file).catch(() => null);
  if (stat === null || !stat.isFile()) return notFound();
  const etag = as.etag ?? `"${stat.size.toString(16)}-${Math.trunc(stat.mtimeMs).toString(16)}"`;
  const headers: Record<string, string> = {
    ...SECURITY_HEADERS,
    'content-type': CONTENT_TYPES[path.extname(as.name).toLowerCase()] ?? 'application/octet-stream',
    'accept-ranges': 'bytes',
    'cache-control': 'no-cache',
    etag,
  };
  if (as.isDownload) headers['content-disposition'] = `attachment; filename*=UTF-8''${rfc5987(as.name)}`;
  if (request.headers.get('if-none-match') === etag) return new Response(null, { status: 304, headers });

  const ifRange = request.headers.get('if-range');
  const range = ifRange === null || ifRange === etag ? parseRange(request.headers.get('range'), stat.size) : null;
  if (range === 'unsatisfiable') {
    return new Response(null, { status: 416, headers: { ...headers, 'content-range': `bytes */${stat.size}` } });
  }
  const { start, end } = range ?? { start: 0, end: stat.size - 1 };
  const status = range === null ? 200 : 206;
  headers['content-length'] = String(end - start + 1);
  if (range !== null) headers['content-range'] = `bytes ${start}-${end}/${stat.size}`;
  if (request.method === 'HEAD' || stat.size === 0) return new Response(null, { status, headers });
  // Node and the page each declare this one class for themselves; whoever compiles us may see either.
  const body: object = Readable.toWeb(createReadStream(file, { start, end, highWaterMark: 256 * 1024 }));
  return new Response(body as ReadableStream, { status, headers });
}

/** Null for what no honest page asks: bad escapes, backslashes, NUL, dot segments that survived URL parsing. */
function decodedPath(url: string): string | null {
  try {
    const pathname = decodeURIComponent(new URL(url).pathname);
    return /[\\\0]|(^|\/)\.\.?(\/|$)/.test(pathname) ? null : pathname;
  } catch {
    return null;
  }
}

function rfc5987(name: string): string {
  return encodeURIComponent(name).replace(/['()*]/g, (c) => `%${c.charCodeAt(0).toString(16).toUpperCase()}`);
}

function refuse(status: number, message: string): Response {
  return new Response(message, {
    status,
    headers: { ...SECURITY_HEADERS, 'content-type': 'text/plain; charset=utf-8', 'cache-control': 'no-store' },
  });
}

function notFound(): Response {
  return refuse(404, 'There is nothing here.');
}
