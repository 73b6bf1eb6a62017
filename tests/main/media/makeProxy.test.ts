import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { filmFacts } from '../../../main/media/filmFacts.ts';
import { makeProxy } from '../../../main/media/makeProxy.ts';
import { type FilmType, filmType } from '../../../shared/film/filmType.ts';
import { aScene, ffmpeg, numbersIn, timesIn } from './films.ts';
import { hasFfmpeg } from '../../support/hasFfmpeg.ts';

// The truth of these tests is ffmpeg's and ffprobe's own reading of the film each copy was made of.

let folder: string;
beforeAll(() => {
  folder = fs.mkdtempSync(path.join(os.tmpdir(), 'caseframe-films-'));
});
afterAll(() => fs.rmSync(folder, { recursive: true }));

const at = (name: string) => path.join(folder, name);
const upTo = (n: number) => Array.from({ length: n }, (_, i) => i);

async function copyOf(name: string, pictures: number | null = null, signal = new AbortController().signal) {
  const type: FilmType = filmType(fs.readFileSync(at(name)).subarray(0, 512), name);
  const steps: number[] = [];
  const film = { place: at(name), type, pictures };
  const made = await makeProxy('ffmpeg', film, at('copy.part'), (done) => steps.push(done), signal);
  return { ...made, steps, facts: await filmFacts(at('copy.part')) };
}

describe.skipIf(!hasFfmpeg)('a copy of a film (skipped without ffmpeg)', () => {
  const x264 = ['-c:v', 'libx264', '-preset', 'ultrafast'];
  const kinds: [string, string, string[]][] = [
    ['MPEG-4 part 2 in AVI', 'a.avi', ['-c:v', 'mpeg4', '-q:v', '2']],
    ['Motion JPEG in AVI', 'b.avi', ['-c:v', 'mjpeg', '-q:v', '2']],
    ['HEVC', 'c.mp4', ['-c:v', 'libx265', '-preset', 'ultrafast', '-x265-params', 'log-level=none']],
    ['H.264, one long group with B-frames', 'd.mp4', [...x264, '-g', '250', '-bf', '4']],
    ['H.264 in a transport stream', 'e.ts', [...x264, '-bf', '2']],
    ['VP9 in WebM', 'f.webm', ['-c:v', 'libvpx-vp9', '-deadline', 'realtime', '-cpu-used', '8']],
    ['odd width and height', 'g.mkv', ['-vf', 'crop=159:89:0:0', '-pix_fmt', 'yuv444p', ...x264]],
  ];
  test.each(kinds)('%s: every picture, in order, at its own time', async (_kind, name, codec) => {
    ffmpeg(...aScene(40), ...codec.filter((word, i) => word !== '-vf' && codec[i - 1] !== '-vf'), at(name));
    const { pictures, steps, facts } = await copyOf(name);
    expect(pictures).toBe(40);
    expect(steps).toEqual(upTo(40).map((i) => i + 1));
    expect(numbersIn(at('copy.part'))).toEqual(upTo(40));
    const original = timesIn(at(name));
    const apart = (facts?.times ?? []).map((t, i) => Math.abs(t - ((original[i] ?? 0) - (original[0] ?? 0))));
    // A tick of 1/90 000 s, and what milliseconds of the container and ffprobe's six digits round away.
    expect(Math.max(...apart)).toBeLessThan(6e-4);
    expect([facts?.codec, facts?.longestGroup]).toEqual(['avc', 12]);
  });

  test('variable frame rate: dropped and unevenly spaced pictures keep their own times', async () => {
    const [input, graph = '', ...rest] = aScene(40);
    const uneven = `${graph.replace('[out]', '[even]')};[even]select='not(eq(mod(n,7),3))',setpts='PTS+0.004*mod(N,3)/TB'[out]`;
    const args = rest.map((word, i) => (rest[i - 1] === '-frames:v' ? '30' : word));
    ffmpeg(
      input ?? '',
      uneven,
      ...args,
      '-fps_mode',
      'passthrough',
      '-enc_time_base',
      '1/90000',
      ...x264,
      '-video_track_timescale',
      '90000',
      at('vfr.mp4'),
    );
    const { facts } = await copyOf('vfr.mp4');
    const original = timesIn(at('vfr.mp4'));
    expect(new Set(original.map((t, i) => Math.round(1000 * (t - (original[i - 1] ?? 0))))).size).toBeGreaterThan(2);
    expect(facts?.times.length).toBe(30);
    facts?.times.forEach((t, i) => expect(Math.abs(t - ((original[i] ?? 0) - (original[0] ?? 0)))).toBeLessThan(3e-5));
    expect(numbersIn(at('copy.part'))).toEqual(numbersIn(at('vfr.mp4')));
  });

  test('an edit list that hides the beginning: the copy begins where the film does', async () => {
    ffmpeg(...aScene(60), ...x264, '-g', '30', '-bf', '2', at('whole.mp4'));
    ffmpeg('-ss', '0.53', '-i', at('whole.mp4'), '-c', 'copy', at('cut.mp4'));
    const original = await filmFacts(at('cut.mp4'));
    const { facts } = await copyOf('cut.mp4');
    const numbers = numbersIn(at('copy.part'));
    expect(numbers).toEqual(upTo(numbers.length).map((i) => i + (numbers[0] ?? 0)));
    expect([numbers[0], facts?.times.length]).toEqual([16, original?.times.length]);
  });

  test('turned by its metadata: the copy is turned in its pictures', async () => {
    ffmpeg(...aScene(10), ...x264, at('flat.mp4'));
    ffmpeg('-i', at('flat.mp4'), '-c', 'copy', '-metadata:s:v', 'rotate=90', at('turned.mp4'));
    await copyOf('turned.mp4');
    ffmpeg('-i', at('copy.part'), '-frames:v', '1', at('turned.png'));
    // PNG, width and height: big-endian at 16 and 20.
    const head = fs.readFileSync(at('turned.png'));
    expect([head.readUInt32BE(16), head.readUInt32BE(20)]).toEqual([90, 160]);
  });

  test.each(['png', 'jpg'])(
    'numbered pictures (%s), one after the other: each is a picture of the copy',
    async (ending) => {
      ffmpeg(...aScene(20), ...(ending === 'jpg' ? ['-pix_fmt', 'yuvj420p', '-q:v', '2'] : []), at(`n%03d.${ending}`));
      const names = fs.readdirSync(folder).filter((name) => new RegExp(`^n\\d+\\.${ending}$`).test(name));
      fs.writeFileSync(at('all'), Buffer.concat(names.toSorted().map((name) => fs.readFileSync(at(name)))));
      expect((await copyOf('all', 20)).pictures).toBe(20);
      expect(numbersIn(at('copy.part'))).toEqual(upTo(20));
      await expect(copyOf('all', 21)).rejects.toMatchObject({ code: 'input-malformed' });
    },
  );

  test('cut off: the pictures that are there, each still at its own time, out of those promised', async () => {
    ffmpeg(
      ...aScene(60),
      '-c:v',
      'libx265',
      '-preset',
      'ultrafast',
      '-x265-params',
      'log-level=none:keyint=10',
      '-movflags',
      '+faststart',
      at('long.mp4'),
    );
    const whole = fs.readFileSync(at('long.mp4'));
    fs.writeFileSync(at('short.mp4'), whole.subarray(0, Math.round(0.6 * whole.length)));
    const facts = await filmFacts(at('short.mp4'));
    const made = await copyOf('short.mp4');
    expect(facts?.promised).toBe(60);
    expect(made.promised).toBe(60);
    expect(made.pictures).toBeGreaterThan(10);
    expect(made.pictures).toBeLessThan(60);
    // Pictures are not stored in the order they are shown, so the last ones there have gaps between them.
    expect(numbersIn(at('copy.part'))).toEqual((made.facts?.times ?? []).map((t) => Math.round(30 * t)));
    expect(made.facts?.times.length).toBe(made.pictures);
  });

  test('stopped as asked, and refused where nothing can be decoded', async () => {
    ffmpeg(...aScene(200, 30, '640x360'), '-c:v', 'mpeg4', at('long.avi'));
    const stop = new AbortController();
    setTimeout(() => stop.abort(), 60);
    await expect(copyOf('long.avi', null, stop.signal)).rejects.toMatchObject({ code: 'cancelled' });
    fs.writeFileSync(at('hollow.avi'), fs.readFileSync(at('long.avi')).subarray(0, 300));
    await expect(copyOf('hollow.avi')).rejects.toMatchObject({ code: 'input-malformed' });
  });
});
