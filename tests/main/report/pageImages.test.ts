import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { ask } from '../../../main/cli/ask.ts';
import { invent } from '../../../main/demo/demoStore.ts';
import { makeReport } from '../../../main/report/makeReport.ts';
import { changedPages, hasPoppler, pageInk } from '../../support/pageInk.ts';
import { SAMPLE_CREATED_AT } from '../../support/sampleCase.ts';

/**
 * The pages of the demo reports as pictures, beside how they looked when somebody last looked at them. What they say is
 * held elsewhere (demoReports.test.ts); this notices what words cannot: a figure gone, a margin moved, a page left blank.
 * After a change that is meant, look at the pages and write them down anew: RENEW_PAGES=1.
 */
const KEPT = path.join(import.meta.dirname, 'pageImages.json');
const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-pages-'));
afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

test.skipIf(!hasPoppler)(
  'the demo reports look as they did when last looked at; a line more is noticed, with its page',
  async () => {
    const { service, cases } = await invent(path.join(folder, 'store'), 'command line');
    const now: Record<string, string[]> = {};
    for (const name of ['handball', 'climber', 'judoka', 'twice'] as const) {
      const { file } = await ask(service, 'case.open', {
        caseId: name === 'twice' ? (cases.squad[0] ?? '') : cases[name],
      });
      for (const kind of ['client', 'study', 'referral'] as const) {
        const { bytes } = await makeReport(file, SAMPLE_CREATED_AT, { kind, paper: 'a4' });
        now[`${name}, ${kind}`] = pageInk(bytes, folder);
      }
    }
    const { file } = await ask(service, 'case.open', { caseId: cases.handball });
    await service.close();
    if (process.env['RENEW_PAGES'] === '1') fs.writeFileSync(KEPT, `${JSON.stringify(now, null, 2)}\n`);
    const kept = JSON.parse(fs.readFileSync(KEPT, 'utf8')) as Record<string, string[]>;
    const changed = Object.keys(now).map((name) => [name, changedPages(kept[name] ?? [], now[name] ?? [])]);
    expect(changed.filter(([, pages]) => pages?.length !== 0)).toEqual([]);

    const athlete = {
      ...file.athlete,
      goals: 'To throw without pain, and to play the whole season in the first team.',
    };
    const other = await makeReport({ ...file, athlete }, SAMPLE_CREATED_AT, { kind: 'study', paper: 'a4' });
    expect(changedPages(now['handball, study'] ?? [], pageInk(other.bytes, folder))).not.toEqual([]);
  },
  120_000,
);
