// npm run bench: how long the heavy parts take on this machine, each beside the same work in an implementation of its
// own (tests/bench) in the same run. Prints medians, ratios and how far the two answers lie apart; decides nothing.
import { jumpTraceCsv } from '../main/demo/jumpTrace.ts';
import { randomSource } from '../main/demo/randomSource.ts';
import { readForceCsv } from '../main/exchange/forceCsv.ts';
import { advance, launch } from '../shared/kernel/flight/path.ts';
import { analyseForceTrace } from '../shared/kernel/jump/analyseForceTrace.ts';
import { derivative } from '../shared/kernel/signal/derivative.ts';
import { zeroLagButterworth } from '../shared/kernel/signal/zeroLagButterworth.ts';
import { deriveByMonteCarlo } from '../shared/kernel/uncertainty/deriveByMonteCarlo.ts';
import { seededRandom } from '../shared/kernel/uncertainty/seededRandom.ts';
import { measured } from '../shared/quantity.ts';
import { makeReport } from '../main/report/makeReport.ts';
import { barePdf } from '../tests/bench/barePdf.ts';
import { curveFigures } from '../tests/bench/curves.ts';
import { filmFigures } from '../tests/bench/films.ts';
import { judging } from '../tests/bench/judging.ts';
import { tracking } from '../tests/bench/tracking.ts';
import { sampleCase } from '../tests/support/sampleCase.ts';
import { plainFilter } from '../tests/bench/plainFilter.ts';
import { plainForce } from '../tests/bench/plainForce.ts';
import { plainMonteCarlo } from '../tests/bench/plainMonteCarlo.ts';

function timed(work, rounds) {
  let answer = work();
  const times = Array.from({ length: rounds }, () => {
    const start = performance.now();
    answer = work();
    return performance.now() - start;
  }).toSorted((a, b) => a - b);
  return { ms: times[rounds >> 1], answer };
}

function beside(name, aimMs, ours, plain, apart, rounds = 20) {
  const [a, b] = [timed(ours, rounds), timed(plain, rounds)];
  const aim = aimMs === null ? '' : `, aim ${aimMs} ms`;
  console.log(
    `${a.ms.toFixed(2).padStart(9)} ms  ${name}${aim}\n${b.ms.toFixed(2).padStart(9)} ms  plainly; ratio ${(a.ms / b.ms).toFixed(2)}; ${apart(a.answer, b.answer)}\n`,
  );
}

const RATE = 1000;
const csv = jumpTraceCsv({ massKg: 80, takeoffVelocityMPerS: 2.6, depthM: 0.3, leftShare: 0.5 }, randomSource(1));
const jump = readForceCsv(csv, { columns: [], rateHz: null });
const noise = randomSource(2);
const standing = 10 * RATE - jump.plates[0].length;
const plates = jump.plates.map((plate) => [
  ...Array.from({ length: standing }, () => (80 * 9.80665) / 2 + noise.normal(1.2)),
  ...plate,
]);
beside(
  '10 s of two plates at 1000 Hz, with uncertainty and phases',
  5,
  () => analyseForceTrace({ rateHz: RATE, plates, massKg: null, kind: 'countermovement' }),
  () => plainForce(plates, RATE),
  (a, b) => `heights ${(1000 * Math.abs(a.jumpHeight.value - b.height)).toFixed(2)} mm apart`,
);

const tracks = Array.from({ length: 40 }, () =>
  Array.from({ length: 1000 }, (_, i) => Math.sin(i / 40) + noise.normal(0.01)),
);
const arrays = tracks.map((track) => Float64Array.from(track));
beside(
  '1000 frames of 20 points: both coordinates filtered, and differentiated once and twice',
  20,
  () =>
    tracks.map((track) => {
      const smooth = zeroLagButterworth(track, 120, 6);
      return { smooth, velocity: derivative(smooth, 120, 1), acceleration: derivative(smooth, 120, 2) };
    }),
  () => arrays.map((track) => plainFilter(track, 120, 6)),
  (a, b) => {
    const gaps = a.map(({ smooth }, k) =>
      Math.max(...smooth.slice(60, -60).map((x, i) => Math.abs(x - b[k].smooth[i + 60]))),
    );
    return `at most ${Math.max(...gaps).toExponential(1)} apart away from the ends`;
  },
);

const inputs = {
  d: measured('d', 'distance', 4.225, 'm', 0.02),
  Δh: measured('Δh', 'rise', 0.95, 'm', 0.03),
  θ: measured('θ', 'release angle', (52 * Math.PI) / 180, 'rad', 0.02),
};
const what = {
  symbol: 'v',
  name: 'speed to score',
  unit: 'm/s',
  formula: 'v = …',
  source: { cite: 'vacuum', status: 'derived' },
};
beside(
  'one release solved for speed by 100 000 draws',
  1000,
  () =>
    deriveByMonteCarlo(
      what,
      inputs,
      ({ d, Δh, θ }) => Math.sqrt((9.80665 * d * d) / (2 * Math.cos(θ) ** 2 * (d * Math.tan(θ) - Δh))),
      seededRandom(1),
      { leastDraws: 100_000, mostDraws: 100_000 },
    ).distribution,
  () => plainMonteCarlo(inputs.d, inputs.Δh, inputs.θ, 100_000),
  (a, b) => `u ${a.sd.toFixed(4)} and ${b.sd.toFixed(4)} m/s after ${a.draws} draws`,
  7,
);

beside(
  'one flight of 0.5 s with drag, adaptive, tolerance 1e-11',
  null,
  () => advance(launch(22, 0.02, 2.5), 0.5, { drag: 0.018, lift: 0 }),
  () => fixedSteps(22, 0.02, 2.5, 0.5, 0.018),
  (a, b) => `${(1000 * Math.hypot(a.x - b.x, a.y - b.y)).toExponential(1)} mm apart`,
);

function moved(s, r, dt) {
  return s.map((value, i) => value + dt * r[i]);
}

/** Fourth-order Runge-Kutta in 2000 fixed steps: as exact as the adaptive one, by brute force. */
function fixedSteps(speed, angle, height, seconds, k) {
  const rate = ([, , u, w]) => {
    const v = Math.hypot(u, w);
    return [u, w, -k * v * u, -9.80665 - k * v * w];
  };
  const dt = seconds / 2000;
  let s = [0, height, speed * Math.cos(angle), speed * Math.sin(angle)];
  for (let i = 0; i < 2000; i += 1) {
    const k1 = rate(s);
    const k2 = rate(moved(s, k1, dt / 2));
    const k3 = rate(moved(s, k2, dt / 2));
    const k4 = rate(moved(s, k3, dt));
    s = s.map((value, j) => value + (dt / 6) * (k1[j] + 2 * k2[j] + 2 * k3[j] + k4[j]));
  }
  return { x: s[0], y: s[1] };
}

// Reports: composed, laid out and drawn, beside the PDF package writing the same words alone.
async function took(work, rounds) {
  await work();
  const times = [];
  for (let i = 0; i < rounds; i++) {
    const start = performance.now();
    await work();
    times.push(performance.now() - start);
  }
  return times.toSorted((a, b) => a - b)[rounds >> 1];
}
const MADE_AT = '2026-11-25T12:00:00.000Z';
const file = sampleCase();
const study = { kind: 'study', paper: 'a4' };
const { report } = await makeReport(file, MADE_AT, study);
const whole = await took(() => makeReport(file, MADE_AT, study), 5);
const bare = await took(() => barePdf(report), 5);
console.log(
  `${whole.toFixed(0).padStart(9)} ms  case study of ${report.pages.length} pages, aim 1000 ms for 12 pages and under twice the bare\n${bare.toFixed(0).padStart(9)} ms  the same words by the PDF package alone; ratio ${(whole / bare).toFixed(2)}\n`,
);
const before = performance.now();
for (let i = 0; i < 40; i++) await makeReport(file, MADE_AT, { kind: 'client', paper: 'a4' });
console.log(
  `${(performance.now() - before).toFixed(0).padStart(9)} ms  40 client reports one after the other; ${(process.memoryUsage().rss / 2 ** 20).toFixed(0)} MB held, ${((process.resourceUsage().maxRSS * 1024) / 2 ** 20).toFixed(0)} MB at most since the bench began`,
);

// Judging: cases no two of which are alike, whole; then how it grows with cases and with rules.
console.log('\nCases judged whole, no two alike, aim 1000 a second');
for (const { cases, rules, facts, findings, casesPerSecond } of judging(() => performance.now())) {
  console.log(
    `${casesPerSecond.toFixed(0).padStart(9)} a second  ${cases} cases of about ${facts.toFixed(0)} facts, ${rules} rules, ${findings.toFixed(0)} findings a case`,
  );
}

// Tracking: per point and picture of 1920 × 1080. CASEFRAME_OPENCV=FOLDER adds a computer-vision library.
console.log('\nA point tracked through one picture more');
const [mine, ...others] = await tracking(() => performance.now());
for (const { name, msPerPoint, rmsPx } of [mine, ...others]) {
  const ratio = name === mine.name ? '' : `; ratio ${(mine.msPerPoint / msPerPoint).toFixed(2)}`;
  console.log(`${msPerPoint.toFixed(2).padStart(9)} ms  ${name}; ${rmsPx.toFixed(2)} px RMS from the truth${ratio}`);
}

// The bench on films of 1920 × 1080 in a real browser, from the key to the picture on the stage.
console.log('\nFrames on the stage');
const { firstFrameMs, cached, forward, jumps, bareMs, bareThreadsMs, residentMb, residentBeforeMb, scriptsMb } =
  await filmFigures(() => performance.now());
const line = (ms, words) => console.log(`${ms.toFixed(1).padStart(9)} ms  ${words}`);
line(firstFrameMs, 'first frame after opening the bench');
line(cached.p95Ms, `a step to a frame held, 95 of 100 within (half within ${cached.medianMs.toFixed(1)}), aim 16.7 ms`);
line(forward.medianMs, `a step on, decoded for it; ratio ${(forward.medianMs / bareMs).toFixed(1)} to ffmpeg alone`);
line(jumps.medianMs, 'a jump anywhere, groups of 30 frames');
line(bareMs, `a frame decoded by ffmpeg alone on one thread; ${bareThreadsMs.toFixed(1)} on all`);
console.log(
  `${residentMb.toFixed(0).padStart(9)} MB  held by the page with 10 000 frames open and 400 shown (${residentBeforeMb.toFixed(0)} when just opened), ${scriptsMb.toFixed(0)} of it by scripts`,
);

// Curves under the ribbon. An act is seen in the second picture after it at the soonest: 33.3 ms at 60 pictures a second.
console.log('\nSix curves of 2000 samples, filtered and not');
const { playhead, axis } = await curveFigures();
line(
  playhead.p95Ms,
  `the playhead moved, 95 of 100 within (half within ${playhead.medianMs.toFixed(1)}), soonest 33.3 ms`,
);
line(axis.p95Ms, `closer, wider or along, 95 of 100 within (half within ${axis.medianMs.toFixed(1)})`);
