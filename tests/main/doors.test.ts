import fs from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { ask } from '../../main/cli/ask.ts';
import { COMMANDS } from '../../main/cli/commands.ts';
import { jumpTraceCsv } from '../../main/demo/jumpTrace.ts';
import { type RandomSource, randomSource } from '../../main/demo/randomSource.ts';
import { DomainError } from '../../shared/errors.ts';
import { writeBattery } from '../../shared/exchange/batteryFile.ts';
import { aCopy, anItem } from '../support/ownBattery.ts';
import { writeC3d } from './exchange/c3d/writeC3d.ts';
import { type Asked, aService, TODAY } from './handlers/aService.ts';

/** Mutated files for each door. DOOR_RUNS=10000 is the long run. */
const RUNS = Number(process.env['DOOR_RUNS'] ?? 60);
const SOURCE = Number(process.env['DOOR_SOURCE'] ?? 21);

let made: Asked;
let caseId: string;
beforeAll(async () => {
  made = await aService();
  // Opened with a run in it, which no undo reaches: what is merged into the run is taken back, the run stays.
  const text = JSON.stringify({
    athlete: { name: 'Tova Reed' },
    screeningSessions: [{ id: 's', heldOn: TODAY, batteryId: 'general', batteryVersion: '1' }],
    screeningResults: [{ sessionId: 's', itemId: 'weight-bearing-lunge', side: 'left', valueSi: 0.1 }],
  });
  ({ caseId } = await made.ask('case.import', { fileName: 'case.json', text, purpose: 'study', openedOn: TODAY }));
});
afterAll(() => made.dispose());

/** What files that were made to upset a reader are made of. */
const PIECES = ['"', ',', ';', '\t', '\n', '\r\n', '\0', '-', '.', 'e', '9', '1e309', 'NaN', '\u{feff}', '\u{fffd}'];
const MORE = [
  '{',
  '}',
  '[',
  ']',
  'null',
  ':',
  'é',
  '\u{202e}',
  '0,5',
  ' ',
  '"id"',
  'kg',
  'left',
  '\u{d83d}',
  'Infinity',
];

/** A text cut, doubled, stirred and overwritten in up to six places. */
function mutated(text: string, random: RandomSource): string {
  const upTo = (n: number) => Math.floor(random.uniform() * n);
  let so = text;
  for (let left = 1 + upTo(6); left > 0; left--) {
    const at = upTo(so.length + 1);
    const cut = upTo(2) === 0 ? upTo(4) : upTo(Math.max(1, so.length / 8));
    const piece = [...PIECES, ...MORE][upTo(PIECES.length + MORE.length)] ?? '';
    const put = [piece, '', so.slice(at, at + cut).repeat(2), so.slice(upTo(so.length), at)][upTo(4)] ?? '';
    so = upTo(12) === 0 ? so.slice(0, at) : so.slice(0, at) + put + so.slice(at + cut);
  }
  return so;
}

/** Everything stored, as far as a person can see it. */
async function stored(): Promise<string> {
  const { total } = await made.ask('shelf.list', { search: '', archived: false, offset: 0, limit: 1 });
  const { file } = await made.ask('case.open', { caseId });
  // A file that was kept for an import that was then undone stays, by design.
  const { batteries } = await made.ask('battery.list', {});
  return JSON.stringify([total, batteries, { ...file, revision: 0, media: [] }]);
}

async function run(words: readonly string[]): Promise<void> {
  const command = COMMANDS.find(({ name }) => name === words.slice(0, name.split(' ').length).join(' '));
  if (command === undefined) throw new Error(`no command in ${words.join(' ')}`);
  const args = words.slice(command.name.split(' ').length);
  const { values, positionals } = parseArgs({ args, options: command.options, allowPositionals: true });
  const options = values as Record<string, string | boolean | undefined>;
  await command.run({ words: positionals, options, openStore: async () => made.service });
}

/** What a door does with a file's text. */
type Door = (text: string) => Promise<void>;

/** By a command, the text in a file of its own. */
const command =
  (ending: string, ...words: string[]): Door =>
  async (text) => {
    const file = path.join(made.folder, `door.${ending}`);
    fs.writeFileSync(file, text);
    await run(words.map((word) => ({ CASE: caseId, FILE: file })[word] ?? word));
  };

const importTrial: Door = async (text) => {
  await ask(made.service, 'trial.import', { caseId, fileName: 'throw.json', text: text.toWellFormed() });
};

/** A text of one letter a byte, as bytes. */
const importMarkers: Door = async (text) => {
  const file = { fileName: 'walk.c3d', base64: Buffer.from(text, 'latin1').toString('base64'), reading: null };
  const how = { movementId: 'countermovement-jump', side: 'none', filmedOn: TODAY, pointUM: null } as const;
  await ask(made.service, 'trial.importMarkers', { caseId, file, ...how });
};

const MARKERS = Buffer.from(
  writeC3d({
    order: 'intel',
    isReal: true,
    points: 3,
    channels: 1,
    samplesPerFrame: 2,
    scale: 1,
    frames: Array.from({ length: 40 }, (_, i) => [i, 0, 1500, 0, i, 5, 500, 0, i + 5, 0, 20, 0, 1, 2]),
    parameters: [
      ['POINT', 'RATE', 'real', [], [100]],
      ['POINT', 'LABELS', 'text', [4, 3], ['LSHO', 'LKNE', 'LHEE']],
      ['POINT', 'UNITS', 'text', [2, 1], ['mm']],
    ],
  }),
).toString('latin1');

const TABLES = {
  roster: 'Name,DOB,Mass (kg),Sex\nÅsa Ek,2003-01-01,60,f\n"Lind, Bo",2001-01-01,81,m\nCy,2000-01-01,70,x\n',
  screening: `item;side;result;pain;note
Weight-bearing lunge;left;10,5;0;
Weight-bearing lunge;right;9,5;0;"stiff; cold"
Single-leg squat;left;met;2;
`,
  jumps: 'trial,flight time (ms),pain,note\n1,520,0,\n2,535,0,"good"\n3,498,3,slipped\n',
  force: jumpTraceCsv({ massKg: 70, takeoffVelocityMPerS: 2.5, depthM: 0.3, leftShare: 0.5 }, randomSource(1))
    .split('\n')
    .filter((_line, i) => i === 0 || i % 10 === 1)
    .join('\n'),
};

const CASE = JSON.stringify({
  athlete: { name: 'A', massKg: 70 },
  injuries: [{ id: 'a', condition: 'ankle-sprain', region: 'ankle', side: 'left', status: 'resolved' }],
  jumpTests: [{ id: 't', heldOn: '2026-01-02', kind: 'countermovement', method: 'flight-time' }],
  jumpTrials: [
    { testId: 't', number: 1, flightTimeS: 0.52, note: 'Some words in which a slip does no harm. '.repeat(12) },
  ],
});

const TRIAL = JSON.stringify({
  format: 'caseframe-trial',
  version: 1,
  movement: 'handball-jump-throw',
  filmedOn: '2026-01-02',
  side: 'right',
  captureRateHz: 120,
  calibration: { kind: 'metres', pointUM: 0.01 },
  points: { ball: Array.from({ length: 12 }, (_, i) => [i, i / 10, 2 + i / 10 - (i * i) / 50]) },
  events: [{ event: 'release', timeS: 0.02 }],
  measures: [{ measure: 'ball.releaseSpeed', value: 21, unit: 'm/s' }],
});

/** A run of the case below, as another laptop took it: one result that it has too, and others that it has not. */
const RUN = JSON.stringify({
  format: 'caseframe-run',
  formatVersion: 1,
  heldOn: TODAY,
  batteryId: 'general',
  batteryVersion: '1',
  athletes: [
    {
      name: 'Tova Reed',
      birthDate: null,
      rater: 'R',
      note: 'Some words in which a slip does no harm. '.repeat(12),
      results: [
        { itemId: 'weight-bearing-lunge', side: 'left', valueSi: 0.11 },
        { itemId: 'weight-bearing-lunge', side: 'right', valueSi: 0.12, painNrs: 2 },
        { itemId: 'single-leg-squat', side: 'left', grade: 'met' },
      ].map((one) => ({ valueSi: null, grade: null, isPositive: null, painNrs: null, note: '', ...one })),
    },
  ],
});

const BATTERY = JSON.stringify(
  writeBattery({
    ...aCopy(),
    description: 'Some words in which a slip does no harm. '.repeat(7),
    items: [...aCopy().items.slice(0, 4), anItem({ caution: 'Some words in which a slip does no harm. '.repeat(40) })],
  }),
);

/** Each as a battery of its own, so that what an earlier one left does not stand in its way. */
const importBattery: Door = async (text) => {
  const { id } = await ask(made.service, 'battery.import', { fileName: 'battery.json', text: text.toWellFormed() });
  await made.ask('battery.remove', { id, version: null });
};

const DOORS: readonly (readonly [string, Door, string])[] = [
  ['roster import', command('csv', 'roster', 'import', 'FILE'), TABLES.roster],
  ['screen import', command('csv', 'screen', 'import', 'CASE', 'FILE'), TABLES.screening],
  ['jump import of a table', command('csv', 'jump', 'import', 'CASE', 'FILE'), TABLES.jumps],
  ['jump import of a force record', command('csv', 'jump', 'import', 'CASE', 'FILE'), TABLES.force],
  ['case new', command('json', 'case', 'new', '--from', 'FILE'), CASE],
  ['the import of a trial', importTrial, TRIAL],
  ['battery import', importBattery, BATTERY],
  ['the import of markers', importMarkers, MARKERS],
  ['the merge of another laptop’s run', command('json', 'run', 'merge', 'FILE', '--conflicts', 'theirs'), RUN],
];

test.each(DOORS)(
  `law: %s takes a file that was tampered with whole, or refuses it whole with a reason (${RUNS} files, random source ${SOURCE})`,
  async (_name, door, sample) => {
    const random = randomSource(SOURCE);
    await door(sample);
    await tidy();
    let taken = 0;
    for (let i = 0; i < RUNS; i++) {
      const before = await stored();
      const text = mutated(sample, random);
      const refusal = await door(text).then(
        () => null,
        (thrown: unknown) => thrown,
      );
      if (refusal === null) taken++;
      else {
        // A refusal is one of ours, in words, and nothing of the file is stored.
        const isOurs = refusal instanceof DomainError && refusal.code !== 'internal';
        const said = refusal instanceof Error ? refusal.message : 'no error at all';
        expect(isOurs, `${said}, for ${JSON.stringify(text.slice(0, 2000))}`).toBe(true);
        expect([text, await stored()]).toEqual([text, before]);
      }
      await tidy();
    }
    // Some mutations are harmless and some are not: were it always the same, nothing would be tried.
    expect([taken > 0, taken < RUNS]).toEqual([true, true]);
    expect((await made.ask('store.verify', {})).problems).toEqual([]);
  },
  60_000 + 500 * RUNS,
);

test('a case file whose parts do not belong together leaves no case behind', async () => {
  const before = await stored();
  const jumpTrials = [{ testId: '6aac1d29-a7fa-4dc1-afa4-dc7df63787fd', number: 1, flightTimeS: 0.5 }];
  const door = command('json', 'case', 'new', '--from', 'FILE');
  await expect(door(JSON.stringify({ jumpTrials }))).rejects.toMatchObject({ code: 'not-found', path: 'testId' });
  expect(await stored()).toBe(before);
});

/** Takes back what a file brought into the case, so that it stays small. */
async function tidy(): Promise<void> {
  for (let { edits } = await made.ask('case.open', { caseId }); edits.undo !== null; ) {
    edits = await made.ask('case.undo', { caseId });
  }
}
