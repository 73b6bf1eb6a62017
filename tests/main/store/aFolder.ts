import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { onTestFinished } from 'vitest';

export const HOLDER = { host: 'test', pid: process.pid, since: '2026-11-25T10:00:00.000Z' };

/** An empty folder that is gone after the test. */
export function aFolder(): string {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-store-'));
  onTestFinished(() => fs.rmSync(folder, { recursive: true, force: true }));
  return folder;
}
