import * as fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { jumpTraceCsv } from '../../main/demo/jumpTrace.ts';
import { randomSource } from '../../main/demo/randomSource.ts';
import { type Channel, CHANNEL_NAMES, type Request } from '../../shared/contract/channels.ts';
import { writeBattery } from '../../shared/exchange/batteryFile.ts';
import type { Edit } from '../../shared/model/edit.ts';
import { EXAMPLES, id } from '../conformance/examples.ts';
import { aCopy, anItem, OWN_ID } from '../support/ownBattery.ts';
import { type Asked, aService, TODAY } from './handlers/aService.ts';

let made: Asked;
let caseId: string;
let otherId: string;
let requests: { readonly [C in Channel]?: readonly Request<C>[] };
beforeAll(async () => {
  made = await aService();
  ({ caseId } = await made.ask('case.create', { purpose: 'study', athleteId: null, openedOn: TODAY }));
  ({ caseId: otherId } = await made.ask('case.create', { purpose: 'intake', athleteId: null, openedOn: TODAY }));
  const test = { ...EXAMPLES.jumpTest, caseId, method: 'force-plate' as const };
  const trial = { ...EXAMPLES.movementTrial, caseId, clipSha256: null };
  const edits: Edit[] = [
    { op: 'create', kind: 'jumpTest', record: test },
    { op: 'create', kind: 'movementTrial', record: trial },
  ];
  await made.ask('case.edit', { caseId, edits });
  const { file } = await made.ask('case.open', { caseId });
  requests = validRequests(file.athlete.id);
});
afterAll(() => made.dispose());

function validRequests(athleteId: string): typeof requests {
  const text = jumpTraceCsv(
    { massKg: 70, takeoffVelocityMPerS: 2.5, depthM: 0.3, leftShare: 0.5 },
    randomSource(1),
  ).slice(0, 9000);
  const file = { fileName: 'jump.csv', text, columns: ['fz_left_n'], rateHz: 1000, massKg: 70 };
  const calibration = EXAMPLES.movementTrial.calibration;
  const editing = (...edits: Edit[]) => ({ caseId, edits });
  const trialId = EXAMPLES.movementTrial.id;
  return {
    'app.info': [{}],
    'shelf.list': [{ search: 'back court', archived: false, offset: 0, limit: 10 }],
    'case.create': [{ purpose: 'study', athleteId, openedOn: TODAY }],
    'case.import': [{ fileName: 'a.json', text: '{}', purpose: 'study', openedOn: TODAY }],
    'case.open': [{ caseId }],
    'case.edit': [
      editing({ op: 'create', kind: 'injury', record: { ...EXAMPLES.injury, athleteId } }),
      editing({ op: 'patch', kind: 'athlete', id: athleteId, fields: { name: 'A name', massKg: 70, note: 'a note' } }),
      editing({ op: 'patch', kind: 'case', id: caseId, fields: { question: 'Why?', archivedOn: null } }),
      editing({ op: 'patch', kind: 'movementTrial', id: trialId, fields: { calibration } }),
      editing({ op: 'create', kind: 'landmarkTrack', record: EXAMPLES.landmarkTrack }),
      editing({ op: 'remove', kind: 'jumpTest', id: id(99) }),
    ],
    'case.undo': [{ caseId }],
    'case.redo': [{ caseId }],
    'case.history': [{ caseId, limit: 5 }],
    'jump.previewForce': [{ kind: 'countermovement', file }],
    'jump.importForce': [{ caseId, testId: EXAMPLES.jumpTest.id, file }],
    'jump.trace': [{ caseId, jumpTrialId: id(3) }],
    'trial.import': [{ caseId, fileName: 'throw.json', text: '{"format": "caseframe-trial"}' }],
    'trial.previewMarkers': [{ file: { fileName: 'walk.c3d', base64: 'AAAA', reading: null } }],
    'trial.importMarkers': [
      {
        caseId,
        file: {
          fileName: 'walk.c3d',
          base64: 'AAAA',
          reading: { points: ['hip-left', null], forward: '+x', up: '-z', unit: 'mm' },
        },
        movementId: 'drop-landing',
        side: 'none',
        filmedOn: TODAY,
        pointUM: 0.001,
      },
    ],
    'mapping.list': [{}],
    'mapping.forget': [{ door: 'markers', heads: ['LSHO'] }],
    'mapping.putBack': [
      {
        door: 'force',
        heads: ['fz'],
        mapping: { columns: ['fz'], rateHz: 1000, forceUnit: null },
        usedAt: '2026-01-02T03:04:05.000Z',
      },
    ],
    'media.begin': [{ caseId, trialId, fileName: 'a.mp4', sizeBytes: 10, modifiedAtMs: 0, pictures: null }],
    'media.append': [{ uploadId: id(4), offsetBytes: 0, base64: 'AAAA' }],
    'media.facts': [{ uploadId: id(4) }],
    'media.startProxy': [{ uploadId: id(4) }],
    'media.proxyState': [{ uploadId: id(4) }],
    'media.finish': [{ uploadId: id(4) }],
    'media.cancel': [{ uploadId: id(4) }],
    'still.keep': [{ caseId, trialId, timeS: 0.4, caption: 'Release', alt: 'A throw', png: 'iVBORw0KGgo=' }],
    'export.keep': [{ caseId, fileName: 'measures.csv', file: { kind: 'csv', text: 'a,b' } }],
    'report.preview': [{ caseId: id(5), kind: 'study', paper: 'a4' }],
    'report.make': [{ caseId: id(5), kind: 'study', paper: 'a4', jobId: id(6) }],
    'report.cancel': [{ jobId: id(6) }],
    'battery.edit': [{ id: OWN_ID, draft: { ...aCopy(), items: [anItem()] }, isRetired: false }],
    'battery.save': [{ id: OWN_ID }],
    'battery.remove': [{ id: OWN_ID, version: '1' }],
    'battery.import': [
      { fileName: 'battery.json', text: JSON.stringify(writeBattery({ ...aCopy(), items: [anItem()] })) },
    ],
    'battery.export': [{ id: 'general', version: '1' }],
    'run.export': [{ heldOn: TODAY, batteryId: 'general' }],
    'run.compare': [{ fileName: 'run.json', text: '{"format":"caseframe-run"}' }],
    'run.merge': [
      {
        fileName: 'run.json',
        text: '{"format":"caseframe-run"}',
        choices: [{ caseId, itemId: 'weight-bearing-lunge', side: 'left', take: 'ours' }],
      },
    ],
    'store.verify': [{}],
  };
}

/** Values that have upset programs before. */
const AWKWARD: readonly unknown[] = [
  '',
  '\0',
  'a\0b',
  '\ud800',
  'x'.repeat(20_000),
  -1,
  0.5,
  1e308,
  2 ** 53,
  true,
  null,
  [],
  {},
  '0001-01-01',
  '2026-02-30',
  id(99),
  '__proto__',
  Array.from({ length: 600 }, () => ({})),
  JSON.parse('{"__proto__": {"op": "remove"}}'),
  JSON.parse('{"constructor": {"prototype": 1}}'),
];

/** Every place in a value, the value itself first. */
function placesIn(value: unknown, place: readonly string[] = []): (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [place];
  return [place, ...Object.entries(value).flatMap(([key, inner]) => placesIn(inner, [...place, key]))];
}

function replaced(value: unknown, [key, ...rest]: readonly string[], by: unknown): unknown {
  if (key === undefined) return by;
  const inner = replaced((value as Record<string, unknown>)[key], rest, by);
  return Array.isArray(value) ? value.with(Number(key), inner) : { ...(value as object), [key]: inner };
}

/** All of the store that an edit could have changed, as text. */
async function state(): Promise<string> {
  const shelf = await made.ask('shelf.list', { search: '', archived: false, offset: 0, limit: 500 });
  const archive = await made.ask('shelf.list', { search: '', archived: true, offset: 0, limit: 500 });
  const cases = [caseId, otherId].map((one) => made.ask('case.open', { caseId: one }));
  return JSON.stringify([shelf, archive, await Promise.all(cases)]);
}

let before = '';
beforeAll(async () => {
  before = await state();
});

async function expectAnswerOrSentence(channel: Channel, request: unknown): Promise<void> {
  const result = await made.service.dispatch(channel, request);
  if (result.ok) {
    expect(await made.ask('store.verify', {})).toEqual({ problems: [] });
    before = await state();
    return;
  }
  expect(result.error).toMatchObject({ message: expect.stringMatching(/^.{15,}/s) });
  expect(result.error.code).not.toBe('internal');
  expect(await state()).toBe(before);
}

test.each(CHANNEL_NAMES)(
  'law: %s answers any JSON, never throws, and changes nothing that it refuses',
  async (channel) => {
    await fc.assert(
      fc.asyncProperty(fc.oneof(fc.jsonValue(), fc.constantFrom(...AWKWARD)), (request) =>
        expectAnswerOrSentence(channel, request),
      ),
      { numRuns: 60 },
    );
  },
);

test.each(CHANNEL_NAMES)('law: %s with any one value replaced is met whole or refused whole', async (channel) => {
  for (const valid of requests[channel] ?? [{}]) {
    const places = placesIn(valid);
    for (const place of places) {
      for (const by of AWKWARD) await expectAnswerOrSentence(channel, replaced(valid, place, by));
    }
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...places), fc.jsonValue(), (place, by) =>
        expectAnswerOrSentence(channel, replaced(valid, place, by)),
      ),
      { numRuns: 40 },
    );
  }
});

test.each(['', '__proto__', 'constructor', 'toString', 7, null, undefined, {}, []])(
  'a channel %j is none',
  async (channel) => {
    expect(await made.refusal(channel as string, {})).toMatchObject({ code: 'not-found' });
  },
);
