import fs from 'node:fs';
import { counted } from '../../shared/format/number.ts';
import { ask } from './ask.ts';
import { choiceFrom, type Command, readText, UsageError, writing } from './command.ts';

export const runExport: Command = {
  name: 'run export',
  usage: '--run DAY[/BATTERY[/VERSION]] --out FILE.json [--folder DIR]',
  does: 'an intake run as one file, for another laptop to merge',
  words: 0,
  options: { run: { type: 'string' }, out: { type: 'string' } },
  async run({ options: { run, out }, openStore }) {
    if (typeof run !== 'string' || run === '')
      throw new UsageError('--run needs the day of a run, such as 2026-09-01.');
    if (typeof out !== 'string' || out === '') throw new UsageError('--out needs the file to write.');
    const [heldOn = '', batteryId = 'general', batteryVersion] = run.split('/');
    const { text } = await ask(await openStore(), 'run.export', { heldOn, batteryId, batteryVersion });
    writing(out, () => fs.writeFileSync(out, text));
    return { json: { heldOn, batteryId, file: out }, lines: [`The run of ${heldOn} written to ${out}`] };
  },
};

export const runMerge: Command = {
  name: 'run merge',
  usage: 'FILE.json [--conflicts ours|theirs] [--dry-run] [--folder DIR]',
  does: 'another laptop’s results of the same run; conflicts are shown side by side and need a choice',
  words: 1,
  options: { conflicts: { type: 'string' }, 'dry-run': { type: 'boolean' } },
  async run({ words: [fileName = ''], options, openStore }) {
    const file = { fileName, text: readText(fileName) };
    const service = await openStore();
    const compared = await ask(service, 'run.compare', file);
    const conflicts = compared.athletes.flatMap(({ caseId, name, conflicts: all }) =>
      caseId === null ? [] : all.map((conflict) => ({ caseId, name, ...conflict })),
    );
    const added = compared.athletes.reduce((sum, one) => sum + one.added.length, 0);
    const lines = [
      `${counted(added, 'result')} only there, ${counted(conflicts.length, 'conflict')}`,
      ...conflicts.map(
        ({ name, itemId, side, ours, theirs }) =>
          `  ${name}, ${itemId}, ${side}: here ${words(ours)}, there ${words(theirs)}`,
      ),
      ...compared.athletes.flatMap(({ name, reason }) => (reason === null ? [] : [`  Left out: ${name}, ${reason}`])),
    ];
    const isUndecided = conflicts.length > 0 && options['conflicts'] === undefined;
    if (options['dry-run'] === true || isUndecided) {
      return {
        json: { stored: false, ...compared },
        lines: [...lines, isUndecided ? 'Nothing was stored: say --conflicts ours or theirs.' : 'Nothing was stored.'],
        exitCode: options['dry-run'] === true ? 0 : 3,
      };
    }
    const take = choiceFrom(options['conflicts'], '--conflicts', ['ours', 'theirs'], 'ours');
    const choices = conflicts.map(({ caseId, itemId, side }) => ({ caseId, itemId, side, take }));
    const merged = await ask(service, 'run.merge', { ...file, choices });
    return {
      json: { stored: true, ...compared, merged },
      lines: [...lines, `${counted(merged.added, 'result')} added, ${merged.replaced} replaced.`],
    };
  },
};

function words({
  valueSi,
  grade,
  isPositive,
  painNrs,
}: {
  valueSi: number | null;
  grade: string | null;
  isPositive: boolean | null;
  painNrs: number | null;
}): string {
  const result = valueSi ?? grade ?? (isPositive === null ? 'no result' : isPositive ? 'yes' : 'no');
  return `${result}${painNrs === null ? '' : `, pain ${painNrs}`}`;
}
