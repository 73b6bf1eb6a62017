import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { bringFilm, filmOnDisk } from '../../../main/cli/bringFilm.ts';
import { randomSource } from '../../../main/demo/randomSource.ts';
import { DomainError } from '../../../shared/errors.ts';
import { EXAMPLES } from '../../conformance/examples.ts';
import { aService, TODAY } from '../handlers/aService.ts';
import { aScene, ffmpeg, sentInCircles } from './films.ts';
import { hasFfmpeg } from '../../support/hasFfmpeg.ts';

/** MUTATED_FILMS=1000 is the long run. */
const FILMS = Number(process.env['MUTATED_FILMS'] ?? 40);
const SOURCE = 47;
const MOST_MS = 10_000;

describe.skipIf(!hasFfmpeg)('damaged films (skipped without ffmpeg)', () => {
  test(
    `${FILMS} films truncated, flipped, misnamed or emptied (random source ${SOURCE}), and one whose index sends its reader in circles: refused in words or taken in, none crashes, hangs 10 s or leaves an orphan`,
    async () => {
      const made = await aService();
      const at = (name: string) => path.join(made.folder, name);
      const { caseId } = await made.ask('case.create', { purpose: 'study', athleteId: null, openedOn: TODAY });
      const trialId = EXAMPLES.movementTrial.id;
      const record = { ...EXAMPLES.movementTrial, caseId, clipSha256: null };
      await made.ask('case.edit', { caseId, edits: [{ op: 'create', kind: 'movementTrial', record }] });
      const codecs: [string, string[]][] = [
        ['a.mp4', ['-c:v', 'libx264', '-preset', 'ultrafast', '-bf', '2']],
        [
          'b.mov',
          ['-c:v', 'libx265', '-preset', 'ultrafast', '-x265-params', 'log-level=none', '-movflags', '+faststart'],
        ],
        ['c.webm', ['-c:v', 'libvpx-vp9', '-deadline', 'realtime', '-cpu-used', '8']],
        ['d.mkv', ['-c:v', 'mjpeg', '-pix_fmt', 'yuvj420p']],
        ['e.avi', ['-c:v', 'mpeg4']],
        ['f.ts', ['-c:v', 'libx264', '-preset', 'ultrafast']],
        ['g.png', ['-frames:v', '1', '-update', '1']],
      ];
      const sound = codecs.map(([name, codec]) => {
        ffmpeg(...aScene(16), ...codec, at(name));
        return { name, bytes: fs.readFileSync(at(name)) };
      });
      const random = randomSource(SOURCE);
      const below = (n: number) => Math.floor(n * random.uniform());
      const ways: ((bytes: Buffer) => Buffer)[] = [
        (bytes) => bytes.subarray(0, below(bytes.length)),
        (bytes) => bytes.subarray(0, below(64)),
        (bytes) => flipped(bytes, 1 + below(40), below),
        // Most of what a reader trusts stands at the beginning.
        (bytes) => flipped(bytes, 1 + below(10), (n) => below(Math.min(n, 400))),
        (bytes) => Buffer.concat([bytes.subarray(0, below(bytes.length)), bytes.subarray(below(bytes.length))]),
        () => Buffer.alloc(0),
        (bytes) => bytes,
      ];
      const outcomes = { taken: 0, refused: 0 };
      let slowest = 0;
      const bringOne = async (called: string, mutated: Buffer, wantsCopy: boolean) => {
        const file = at(`film ${called}`);
        fs.writeFileSync(file, mutated);
        const start = performance.now();
        try {
          await bringFilm(made.service, { caseId, trialId }, filmOnDisk([file]), { wantsCopy, onWords: () => {} });
          outcomes.taken++;
        } catch (thrown) {
          if (!(thrown instanceof DomainError) || thrown.code === 'internal') throw thrown;
          expect(thrown.message).toMatch(/^\S.{10,}[.]$/s);
          outcomes.refused++;
        }
        slowest = Math.max(slowest, performance.now() - start);
        fs.rmSync(file);
      };
      await bringOne(
        'circles.webm',
        sentInCircles(sound.find(({ name }) => name === 'c.webm')?.bytes ?? Buffer.alloc(0)),
        true,
      );
      expect(outcomes).toEqual({ taken: 0, refused: 1 });
      for (let i = 0; i < FILMS; i++) {
        const { name, bytes } = sound[below(sound.length)] ?? { name: '', bytes: Buffer.alloc(0) };
        const mutated = ways[below(ways.length)]?.(bytes) ?? bytes;
        const called = random.uniform() < 0.2 ? (['film.mp4', 'film.txt', 'film.webm'][below(3)] ?? name) : name;
        await bringOne(called, mutated, random.uniform() < 0.3);
      }
      expect(slowest).toBeLessThan(MOST_MS);
      expect(outcomes.taken).toBeGreaterThan(FILMS / 20);
      expect(outcomes.refused).toBeGreaterThan(FILMS / 20);
      expect(await made.ask('store.verify', {})).toEqual({ problems: [] });
      const { file } = await made.ask('case.open', { caseId });
      const lying = fs.readdirSync(at('media'), { recursive: true, withFileTypes: true }).filter((one) => one.isFile());
      expect(lying.map((one) => one.name).toSorted()).toEqual(
        [...new Set(file.media.map(({ sha256 }) => sha256))].toSorted(),
      );
      console.info(
        `${FILMS} damaged films: ${outcomes.taken} taken in, ${outcomes.refused} refused, slowest ${slowest.toFixed(0)} ms`,
      );
      await made.dispose();
    },
    60_000 + 3000 * FILMS,
  );
});

function flipped(bytes: Buffer, times: number, below: (n: number) => number): Buffer {
  const copy = Buffer.from(bytes);
  for (let i = 0; i < times; i++) {
    const place = below(copy.length);
    copy[place] = (copy[place] ?? 0) ^ (1 << below(8));
  }
  return copy;
}
