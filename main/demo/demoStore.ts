import fs from 'node:fs';
import path from 'node:path';
import { ask } from '../cli/ask.ts';
import { openService, type Service } from '../service.ts';
import { handballPlayer } from './handballPlayer.ts';
import { randomSource } from './randomSource.ts';
import { type DemoCases, writeDemo } from './writeDemo.ts';

/** The clock of the demo: starts on the afternoon its handball player was assessed and gains a second at each look. */
function clock(): () => Date {
  let at = Date.parse('2026-09-14T14:00:00.000Z');
  return () => new Date((at += 1000));
}

/** Fills an empty store folder with the invented cases; ids and dates are the same every time. */
export async function invent(
  folder: string,
  host: 'electron' | 'loopback' | 'command line',
): Promise<{ service: Service; cases: DemoCases }> {
  const service = await openService({ folder, host, now: clock(), newId: randomSource(1).id });
  return { service, cases: await writeDemo(service) };
}

/**
 * Opens this user's demo store, made on first use. It is made beside its place and moved there whole, so that a start
 * broken off half way leaves no half demo.
 */
export async function openDemoStore(
  folder: string,
  host: 'electron' | 'loopback',
): Promise<{ service: Service; landing: string }> {
  if (!fs.existsSync(folder)) {
    fs.mkdirSync(path.dirname(folder), { recursive: true, mode: 0o700 });
    const making = fs.mkdtempSync(`${folder}-`);
    const { service } = await invent(making, host);
    await service.close();
    fs.renameSync(making, folder);
  }
  const service = await openService({ folder, host });
  const name = handballPlayer.athlete.name ?? '';
  const { rows } = await ask(service, 'shelf.list', { search: name, archived: false, offset: 0, limit: 1 });
  return { service, landing: rows[0] === undefined ? '/' : `/#/case/${rows[0].caseId}/athlete` };
}
