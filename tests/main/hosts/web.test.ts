import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { createWeb, parseRange } from '../../../main/hosts/web.ts';

const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-test-'));
const sha256 = 'a'.repeat(64);
const stored = path.join(folder, 'stored');
fs.writeFileSync(stored, '0123456789');
fs.writeFileSync(path.join(folder, 'index.html'), '<!doctype html>');
fs.writeFileSync(path.join(folder, 'empty.txt'), '');
const web = createWeb({ rendererFolder: folder, mediaFile: (asked) => (asked === sha256 ? stored : null) });
const get = (url: string, headers: Record<string, string> = {}, method = 'GET') =>
  web(new Request(`app://caseframe${url}`, { headers, method }));
afterAll(() => fs.rmSync(folder, { recursive: true }));

test('a stored file is a download with its name and the type that the name says', async () => {
  const response = await get(`/files/${sha256}/${encodeURIComponent("Anna's report (é).pdf")}`);
  expect(response.status).toBe(200);
  expect(response.headers.get('content-type')).toBe('application/pdf');
  expect(response.headers.get('content-disposition')).toBe(
    "attachment; filename*=UTF-8''Anna%27s%20report%20%28%C3%A9%29.pdf",
  );
  expect(await response.text()).toBe('0123456789');
});

test('an unknown file, a malformed SHA-256 and a missing name are not found', async () => {
  for (const url of [`/files/${'b'.repeat(64)}/x.pdf`, `/files/${'A'.repeat(64)}/x.pdf`, `/files/${sha256}`]) {
    expect((await get(url)).status).toBe(404);
  }
});

test('only GET and HEAD', async () => {
  expect((await get('/', {}, 'POST')).status).toBe(405);
  const head = await get('/', {}, 'HEAD');
  expect(head.status).toBe(200);
  expect(head.headers.get('content-length')).toBe('15');
  expect(await head.text()).toBe('');
});

test('an empty file', async () => {
  const response = await get('/empty.txt');
  expect(response.status).toBe(200);
  expect(response.headers.get('content-length')).toBe('0');
});

test('a copy that is still good is not sent again', async () => {
  const etag = (await get('/')).headers.get('etag') ?? '';
  expect((await get('/', { 'if-none-match': etag })).status).toBe(304);
});

describe('ranges, RFC 9110 section 14', () => {
  test.each([
    ['bytes=0-3', 206, '0123', 'bytes 0-3/10'],
    ['bytes=7-', 206, '789', 'bytes 7-9/10'],
    ['bytes=-2', 206, '89', 'bytes 8-9/10'],
    ['bytes=4-400', 206, '456789', 'bytes 4-9/10'],
    ['bytes=0-1,3-4', 200, '0123456789', null],
    ['lines=0-1', 200, '0123456789', null],
    ['bytes=-', 200, '0123456789', null],
  ])('%s', async (range, status, body, contentRange) => {
    const response = await get(`/files/${sha256}/x.txt`, { range });
    expect(response.status).toBe(status);
    expect(await response.text()).toBe(body);
    expect(response.headers.get('content-range')).toBe(contentRange);
  });

  test.each(['bytes=10-', 'bytes=-0', 'bytes=5-4'])('%s cannot be satisfied: 416 with the size', async (range) => {
    const response = await get(`/files/${sha256}/x.txt`, { range });
    expect(response.status).toBe(416);
    expect(response.headers.get('content-range')).toBe('bytes */10');
  });

  test('If-Range with another version sends the whole file', async () => {
    const response = await get(`/files/${sha256}/x.txt`, { range: 'bytes=0-1', 'if-range': '"other"' });
    expect(response.status).toBe(200);
  });

  test('no header, no range', () => expect(parseRange(null, 10)).toBeNull());
});
