import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { assessCase } from '../../shared/assess/assessCase.ts';
import { OUTCOMES } from '../../shared/assess/assessment.ts';
import { OUTCOME_WORDS } from '../../shared/assess/words.ts';
import { counted } from '../../shared/format/number.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import { invent } from '../demo/demoStore.ts';
import { ask } from './ask.ts';
import type { Command } from './command.ts';
import { writeReport } from './report.ts';

export const demo: Command = {
  name: 'demo',
  usage: '[--out DIR]',
  does: 'runs the whole path on invented cases in a fresh store and writes four reports to out/demo',
  words: 0,
  options: { out: { type: 'string' } },
  async run({ options }) {
    const out = typeof options['out'] === 'string' ? options['out'] : 'out/demo';
    fs.rmSync(out, { recursive: true, force: true });
    fs.mkdirSync(out, { recursive: true });
    const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-demo-'));
    const { service, cases } = await invent(folder, 'command line');
    try {
      const open = async (caseId: string) => (await ask(service, 'case.open', { caseId })).file;
      const handball = await open(cases.handball);
      const squad = await Promise.all(cases.squad.map(open));
      const stopped = squad.filter((file) => assessCase(file).stops.length > 0);
      const first = stopped[0] ?? handball;

      const reports = [
        { name: 'handball-player.pdf', caseId: cases.handball, kind: 'client' },
        { name: 'stop-and-be-seen.pdf', caseId: first.case.id, kind: 'client' },
        { name: 'climber-referral.pdf', caseId: cases.climber, kind: 'referral' },
        { name: 'judoka-referral.pdf', caseId: cases.judoka, kind: 'referral' },
      ] as const;
      const files: string[] = [];
      for (const { name, caseId, kind } of reports) {
        const file = path.join(out, name);
        await writeReport(service, { caseId, kind, paper: 'a4' }, file);
        files.push(file);
      }
      const { problems } = await ask(service, 'store.verify', {});
      return {
        json: { folder, cases, outcomes: outcomesOf(handball), stops: stopped.map(stopsOf), reports: files, problems },
        lines: [
          `Store with ${counted(squad.length + 3, 'invented case')}: ${folder}`,
          `Handball player ${handball.athlete.name}:`,
          ...Object.entries(outcomesOf(handball)).map(([word, count]) => `  ${word}: ${count}`),
          ...withheldLines(handball),
          ...stopped.map((file) => `${file.athlete.name} – ${stopsOf(file).words.join('; ')}`),
          ...files.map((file) => `Written: ${file}`),
          problems.length === 0 ? 'The store is sound.' : `The store has problems: ${problems.join('; ')}`,
        ],
        exitCode: problems.length === 0 ? 0 : 4,
      };
    } finally {
      await service.close();
    }
  },
};

function outcomesOf(file: CaseFile): Record<string, number> {
  const { findings } = assessCase(file);
  return Object.fromEntries(
    OUTCOMES.map((outcome) => [
      OUTCOME_WORDS[outcome],
      findings.filter((finding) => finding.outcome === outcome).length,
    ]),
  );
}

function stopsOf(file: CaseFile) {
  return { athlete: file.athlete.name, words: assessCase(file).stops.map(({ words }) => words) };
}

function withheldLines(file: CaseFile): string[] {
  return assessCase(file).findings.flatMap(({ finding, withheld }) =>
    withheld === null
      ? []
      : [
          `  Withheld: ${finding} – ${withheld.because.map(({ condition }) => condition.replaceAll('-', ' ')).join(', ')}`,
        ],
  );
}
