import { spawn } from 'node:child_process';
import { once } from 'node:events';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { trialImport } from '../../../main/cli/trialImport.ts';
import { openService } from '../../../main/service.ts';
import type { CaseFile } from '../../../shared/model/records.ts';
import { aService, TODAY } from '../handlers/aService.ts';
import { writeC3d } from '../exchange/c3d/writeC3d.ts';
import { aScene, ffmpeg, timesIn } from '../media/films.ts';
import { hasFfmpeg } from '../../support/hasFfmpeg.ts';
import { caseframe } from './caseframe.ts';

const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-film-'));
const at = (name: string) => path.join(folder, name);
const THROW = ['--movement', 'handball-jump-throw', '--folder', at('store'), '--json'];
afterAll(() => fs.rmSync(folder, { recursive: true }));

let number: string;
let caseId: string;
beforeAll(async () => {
  const made = await aService(at('store'));
  ({ caseId } = await made.ask('case.create', { purpose: 'study', athleteId: null, openedOn: TODAY }));
  number = (await made.ask('case.open', { caseId })).file.case.number;
  await made.service.close();
});

/** The command in this process, which is quicker; what it refuses is thrown. */
async function bring(name: string, options: Readonly<Record<string, string>> = { movement: 'handball-jump-throw' }) {
  const service = await openService({ folder: at('store'), host: 'command line' });
  try {
    const { json } = await trialImport.run({ words: [number, at(name)], options, openStore: async () => service });
    return json as Record<string, unknown>;
  } finally {
    await service.close();
  }
}

const lying = () =>
  fs
    .readdirSync(at('store/media'), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ name }) => name);
const kept = (sha256: string) => fs.readFileSync(at(path.join('store/media', sha256.slice(0, 2), sha256)));

/** The case as it is now; each file is named by it, each trial has its film, and the store is sound. */
async function soundCase(): Promise<CaseFile> {
  const made = await aService(at('store'));
  const { file } = await made.ask('case.open', { caseId });
  expect(await made.ask('store.verify', {})).toEqual({ problems: [] });
  await made.service.close();
  expect(lying().toSorted()).toEqual([...new Set(file.media.map(({ sha256 }) => sha256))].toSorted());
  expect(file.movementTrials.filter(({ clipSha256 }) => clipSha256 === null)).toEqual([]);
  return file;
}

describe.skipIf(!hasFfmpeg)('a film on the command line (skipped without ffmpeg)', () => {
  test('in a codec that not every window shows: kept as it is, with a copy, progress on standard error', async () => {
    const hevc = ['-c:v', 'libx265', '-preset', 'ultrafast', '-x265-params', 'log-level=none'];
    ffmpeg(...aScene(30), ...hevc, at('phone.mov'));
    const ran = caseframe('trial', 'import', number, at('phone.mov'), '--rate', '240', ...THROW);
    expect(ran.code).toBe(0);
    expect(ran.json).toMatchObject({ codec: 'hevc', readablePictures: 30, promisedPictures: 30, warnings: [] });
    expect(ran.err).toContain('Bringing in phone.mov');
    const { media, movementTrials } = await soundCase();
    expect(movementTrials).toMatchObject([{ captureRateHz: 240, captureRateFrom: 'entered', label: 'phone.mov' }]);
    expect(media).toMatchObject([
      { sha256: movementTrials[0]?.clipSha256, mediaType: 'video/quicktime', proxyOf: null },
      { sha256: ran.json['copySha256'], mediaType: 'video/mp4', proxyOf: movementTrials[0]?.clipSha256 },
    ]);
    expect(fs.readFileSync(at('phone.mov')).equals(kept(media[0]?.sha256 ?? ''))).toBe(true);
  });

  test('numbered pictures by their folder; with a gap they are refused by name', async () => {
    fs.mkdirSync(at('pictures'));
    ffmpeg(...aScene(12), at('pictures/shot_%04d.png'));
    expect(await bring('pictures')).toMatchObject({
      fileName: 'shot_0001.png to shot_0012.png',
      readablePictures: 12,
      copySha256: expect.stringMatching(/^[0-9a-f]{64}$/),
    });
    fs.rmSync(at('pictures/shot_0007.png'));
    await expect(bring('pictures')).rejects.toThrow('After picture shot_0006.png comes shot_0008.png');
    await soundCase();
  });

  test('cut off: says how many of its pictures can be read', async () => {
    const x264 = ['-c:v', 'libx264', '-preset', 'ultrafast', '-g', '10', '-movflags', '+faststart'];
    ffmpeg(...aScene(60), ...x264, at('whole.mp4'));
    const whole = fs.readFileSync(at('whole.mp4'));
    fs.writeFileSync(at('cut.mp4'), whole.subarray(0, Math.round(whole.length / 2)));
    const { readablePictures, promisedPictures, warnings } = await bring('cut.mp4');
    expect(promisedPictures).toBe(60);
    expect(readablePictures).toBeGreaterThan(15);
    expect(readablePictures).toBeLessThan(45);
    expect(warnings).toEqual([`cut.mp4 was cut off: ${String(readablePictures)} of its 60 pictures can be read.`]);
    await soundCase();
  });

  test('unevenly spaced: the time of each picture is kept, as ffprobe reads it', async () => {
    const own = ['-fps_mode', 'passthrough', '-enc_time_base', '1/90000', '-video_track_timescale', '90000'];
    const some = ['-vf', "select='not(eq(mod(n,7),3))',setpts='PTS+0.004*mod(N,3)/TB'", '-c:v', 'libx264', '-bf', '2'];
    ffmpeg(...aScene(40), '-c:v', 'libx264', '-preset', 'ultrafast', at('even.mp4'));
    ffmpeg('-i', at('even.mp4'), ...some, ...own, at('uneven.mp4'));
    expect(await bring('uneven.mp4')).toMatchObject({ warnings: [expect.stringContaining('unevenly spaced')] });
    expect(await bring('even.mp4')).toMatchObject({ warnings: [] });
    const times = timesIn(at('uneven.mp4'));
    const { movementTrials } = await soundCase();
    const kept = (label: string) => movementTrials.find((trial) => trial.label === label)?.frameTimesS;
    expect(kept('even.mp4')).toBeNull();
    expect(kept('uneven.mp4')).toEqual(times.map((t) => expect.closeTo(t - (times[0] ?? 0), 5)));
  });

  test('without ffmpeg: asked for in words where it is needed, not missed where it is not; refusals leave nothing', async () => {
    ffmpeg(...aScene(10), '-c:v', 'mpeg4', at('old.avi'));
    ffmpeg(...aScene(10), '-c:v', 'libx264', at('plain.mp4'));
    fs.writeFileSync(at('notes.mp4'), 'The third throw was the best.');
    fs.writeFileSync(at('empty.mp4'), '');
    process.env['CASEFRAME_FFMPEG'] = at('nowhere');
    try {
      const before = (await soundCase()).movementTrials.length;
      await expect(bring('old.avi')).rejects.toThrow('ffmpeg was not found on this computer. Install it');
      await expect(bring('notes.mp4')).rejects.toThrow('notes.mp4 is not a film');
      await expect(bring('empty.mp4')).rejects.toThrow('empty.mp4 is empty');
      expect((await soundCase()).movementTrials).toHaveLength(before);
      expect(await bring('plain.mp4')).toMatchObject({ copySha256: null, readablePictures: 10 });
    } finally {
      delete process.env['CASEFRAME_FFMPEG'];
    }
    await soundCase();
  });

  test('killed with signal 9 while it came in, the same command goes on where it stopped', async () => {
    const noise = ['-f', 'lavfi', '-i', 'testsrc2=s=1280x720,noise=alls=60:allf=t', '-frames:v', '40'];
    ffmpeg(...noise, '-c:v', 'libx264', '-preset', 'ultrafast', '-qp', '4', '-pix_fmt', 'yuv420p', at('large.mp4'));
    const { size } = fs.statSync(at('large.mp4'));
    // At least four pieces of 3 MB, or there is no middle to be killed in.
    expect(size).toBeGreaterThan(12e6);
    const words = ['trial', 'import', number, at('large.mp4'), ...THROW];
    const child = spawn(process.execPath, ['main/cli/main.ts', ...words], { stdio: ['ignore', 'ignore', 'pipe'] });
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      if (/: [1-9]\d* %/.test(text)) child.kill('SIGKILL');
    });
    expect(await once(child, 'close')).toEqual([null, 'SIGKILL']);
    const there = fs.statSync(at(`store/media/${lying().find((name) => name.endsWith('.part')) ?? ''}`)).size;
    expect(there).toBeGreaterThan(0);
    expect(there).toBeLessThan(size);

    const again = caseframe(...words);
    expect(again.code).toBe(0);
    expect(again.err).not.toContain('large.mp4: 0 %');
    expect(fs.readFileSync(at('large.mp4')).equals(kept(String(again.json['sha256'])))).toBe(true);
    const { movementTrials } = await soundCase();
    expect(movementTrials.filter(({ label }) => label === 'large.mp4')).toHaveLength(1);
  });
});

test('a trial file (JSON) comes in by the same command', async () => {
  const file = {
    format: 'caseframe-trial',
    version: 1,
    movement: 'countermovement-jump',
    label: 'Third',
    filmedOn: '2026-09-14',
    side: 'none',
    captureRateHz: 120,
    playbackRateHz: null,
    calibration: null,
    ball: null,
    target: null,
    painNrs: 0,
    points: {},
    events: [],
    measures: [],
    note: '',
  };
  fs.writeFileSync(at('trial.json'), JSON.stringify(file));
  expect(await bring('trial.json', {})).toMatchObject({
    warnings: expect.arrayContaining([expect.stringContaining('no calibration')]),
  });
  const made = await aService(at('store'));
  expect((await made.ask('case.open', { caseId })).file.movementTrials).toContainEqual(
    expect.objectContaining({ label: 'Third', clipSha256: null }),
  );
  await made.service.close();
});

test('the markers of a C3D file: as suggested, but for what is said; a name that is no marker’s is refused', async () => {
  const labels = ['LSHO', 'LKNE', 'M3'];
  const made = writeC3d({
    order: 'mips',
    isReal: true,
    points: 3,
    channels: 0,
    samplesPerFrame: 0,
    scale: 1,
    frames: Array.from({ length: 20 }, (_, i) => [0, i, 1500, 0, 5, i, 500, 0, 0, i, 20, 0]),
    parameters: [
      ['POINT', 'RATE', 'real', [], [200]],
      ['POINT', 'LABELS', 'text', [4, 3], labels],
    ],
  });
  fs.writeFileSync(at('walk.c3d'), made);
  const said = {
    movement: 'countermovement-jump',
    points: 'M3=heel-left,LKNE=',
    unit: 'mm',
    forward: '-y',
    side: 'left',
  };
  await expect(bring('walk.c3d', { movement: 'countermovement-jump' })).rejects.toThrow('needs the unit of length');
  await expect(bring('walk.c3d', { ...said, points: 'M4=heel-left' })).rejects.toThrow('M4, which is no marker');
  const taken = await bring('walk.c3d', said);
  expect(taken).toMatchObject({ frames: 20, captureRateHz: 200, forward: '-y', up: '+z', unit: 'mm' });
  expect(taken['points']).toEqual([
    { marker: 'LSHO', framesSeen: 20, point: 'shoulder-left' },
    { marker: 'LKNE', framesSeen: 20, point: null },
    { marker: 'M3', framesSeen: 20, point: 'heel-left' },
  ]);
  const service = await aService(at('store'));
  const { file } = await service.ask('case.open', { caseId });
  await service.service.close();
  const ofTrial = file.landmarkTracks.filter(({ trialId }) => trialId === taken['trialId']);
  expect(ofTrial.map(({ point, samples }) => [point, samples[3]])).toEqual([
    ['shoulder-left', [3, -0.003, 1.5]],
    ['heel-left', [3, -0.003, 0.02]],
  ]);
});
