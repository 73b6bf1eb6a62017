// npm run bench: how long the heavy parts take on this machine. Prints medians; decides nothing.
import { jumpTraceCsv } from '../main/demo/jumpTrace.ts';
import { randomSource } from '../main/demo/randomSource.ts';
import { readForceCsv } from '../main/exchange/forceCsv.ts';
import { analyseForceTrace } from '../shared/kernel/jump/analyseForceTrace.ts';
import { advance, launch } from '../shared/kernel/flight/path.ts';
import { zeroLagButterworth } from '../shared/kernel/signal/zeroLagButterworth.ts';

function median(name, work, rounds = 20) {
  work();
  const times = Array.from({ length: rounds }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  }).toSorted((a, b) => a - b);
  console.log(`${times[rounds >> 1].toFixed(2).padStart(9)} ms  ${name}`);
}

const csv = jumpTraceCsv({ massKg: 80, takeoffVelocityMPerS: 2.6, depthM: 0.3, leftShare: 0.5 }, randomSource(1));
const options = { columns: [], rateHz: null };
const record = readForceCsv(csv, options);
const seconds = (record.plates[0].length / record.rateHz).toFixed(1);
median(`read ${seconds} s of two plates at 1000 Hz from CSV`, () => readForceCsv(csv, options));
median(`analyse ${seconds} s of two plates at 1000 Hz`, () =>
  analyseForceTrace({ ...record, massKg: null, kind: 'countermovement' }),
);

const noise = randomSource(2);
const tracks = Array.from({ length: 40 }, () =>
  Array.from({ length: 1000 }, (_, i) => Math.sin(i / 40) + noise.normal(0.01)),
);
median('filter 20 points, 1000 frames, both coordinates', () => {
  for (const track of tracks) zeroLagButterworth(track, 120, 6);
});
median('fly a ball for 0.5 s with drag', () => advance(launch(22, 0.02, 2.5), 0.5, { drag: 0.018, lift: 0 }));
