import fs from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { planClip, truthOf } from './clip.ts';
import { MOTIONS } from './motions/index.ts';
import { writeClip } from './writeClip.ts';

const USAGE = `npm run make-clip -- --movement ${Object.keys(MOTIONS).join('|')} [--fps HZ] [--seed N] [--slow FACTOR] [--tilt DEG] [--turn DEG] [--out FOLDER]

Writes an invented clip and, beside it, what is exactly so in it. --fps: frames a second the camera records; --slow: how
many times slower than real it plays; --tilt: how far the camera leans; --turn: how far it is turned from square on.`;

const { values } = parseArgs({
  options: {
    movement: { type: 'string' },
    fps: { type: 'string', default: '120' },
    seed: { type: 'string', default: '1' },
    slow: { type: 'string', default: '1' },
    tilt: { type: 'string', default: '0' },
    turn: { type: 'string', default: '0' },
    out: { type: 'string', default: 'out/clips' },
    help: { type: 'boolean' },
  },
});

function number(name: 'fps' | 'seed' | 'slow' | 'tilt' | 'turn', low: number, high: number): number {
  const value = Number(values[name]);
  if (Number.isFinite(value) && value >= low && value <= high) return value;
  throw new Error(`--${name} needs a number from ${low} to ${high}, got “${values[name]}”.`);
}

async function main(): Promise<void> {
  if (values.help === true || values.movement === undefined) {
    console.log(USAGE);
    process.exitCode = values.help === true ? 0 : 2;
    return;
  }
  const clip = planClip({
    movementId: values.movement,
    captureRateHz: number('fps', 10, 2000),
    seed: Math.round(number('seed', 0, 2 ** 31)),
    slowMotion: number('slow', 1, 100),
    tiltDeg: number('tilt', -45, 45),
    turnDeg: number('turn', -45, 45),
  });
  const { movementId, seed, captureRateHz, slowMotion } = clip.options;
  const slowed = slowMotion === 1 ? '' : `-slow${slowMotion}`;
  const name = path.join(values.out, `${movementId}-${captureRateHz}hz${slowed}-seed${seed}`);
  fs.mkdirSync(values.out, { recursive: true });
  await writeClip(clip, `${name}.mp4`, (done) => {
    if (process.stderr.isTTY) process.stderr.write(`\r${done} of ${clip.frames} frames`);
  });
  fs.writeFileSync(`${name}.json`, `${JSON.stringify(truthOf(clip))}\n`);
  console.log(`${name}.mp4, ${clip.frames} frames; what is so in it: ${name}.json`);
}

await main().catch((thrown: unknown) => {
  console.error(thrown instanceof Error ? thrown.message : thrown);
  process.exitCode = 1;
});
