import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { parseArgs } from 'node:util';
import { COMMANDS } from '../../../main/cli/commands.ts';
import { openService } from '../../../main/service.ts';
import { DomainError } from '../../../shared/errors.ts';

/** A command on a store in this process: each process of its own would cost seconds. */
async function caseframe(store: string, name: string, ...args: string[]) {
  const command = COMMANDS.find((one) => one.name === name);
  if (command === undefined) throw new Error(`no command ${name}`);
  const { values, positionals } = parseArgs({ args, options: command.options, allowPositionals: true });
  const service = await openService({ folder: path.join(folder, store), host: 'command line' });
  try {
    const options = values as Record<string, string | boolean | undefined>;
    const { json, exitCode = 0 } = await command.run({ words: positionals, options, openStore: async () => service });
    return { code: exitCode, json: json as Record<string, unknown> };
  } finally {
    await service.close();
  }
}

const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-test-'));
afterAll(() => fs.rmSync(folder, { recursive: true }));
const write = (name: string, text: string) => {
  const file = path.join(folder, name);
  fs.writeFileSync(file, text);
  return file;
};
const DAY = '2026-11-20';

/** Both athletes of a roster take part; the first jumps this far on the left leg, the second on the right. */
async function take(store: string, hopCm: number): Promise<void> {
  const squad = write('squad.csv', 'Name,Date of birth\nÅsa Ek,2003-01-01\nBo Lind,2001-01-01\n');
  const { json } = await caseframe(store, 'roster import', squad);
  for (const [i, { caseId }] of (json['cases'] as { caseId: string }[]).entries()) {
    const hops = write('hops.csv', `item,side,result\nsingle-leg-hop,${i === 0 ? 'left' : 'right'},${hopCm}\n`);
    await caseframe(store, 'screen import', caseId, hops, '--date', DAY);
  }
}

test('a run of two: reports of both in one go, each a file; a run that is none is refused, naming those there are', async () => {
  await take('reports', 143);
  const out = path.join(folder, 'reports-out');
  const made = await caseframe('reports', 'report all', '--run', DAY, '--out', out);
  expect(made).toMatchObject({ code: 0, json: { failed: [], left: 0 } });
  const files = fs.readdirSync(out);
  expect(files).toHaveLength(2);
  for (const file of files) expect(fs.readFileSync(path.join(out, file)).subarray(0, 5).toString()).toBe('%PDF-');
  const none = caseframe('reports', 'report all', '--run', '2020-01-01', '--out', out);
  await expect(none).rejects.toThrow(DomainError);
  await expect(none).rejects.toThrow(DAY);
});

test('another laptop’s run: nothing is stored while a conflict is undecided, then once, and not a second time', async () => {
  await take('here', 143);
  await take('there', 150);
  const run = path.join(folder, 'run.json');
  await caseframe('there', 'run export', '--run', DAY, '--out', run);
  expect(await caseframe('here', 'run merge', run)).toMatchObject({ code: 3, json: { stored: false } });
  expect(await caseframe('here', 'run merge', run, '--conflicts', 'theirs')).toMatchObject({
    code: 0,
    json: { stored: true, merged: { added: 0, replaced: 2 } },
  });
  expect(await caseframe('here', 'run merge', run)).toMatchObject({
    code: 0,
    json: { merged: { caseIds: [], added: 0, replaced: 0 } },
  });
});
