import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { paceOf } from '../../../../shared/film/paceOf.ts';
import { frameClock, usualRateHz } from '../../../../shared/kernel/event/frameClock.ts';

/** Spacings of a phone's film, ms: mostly a thirtieth of a second, sometimes late, sometimes two left out. */
const timesOf = (spacings: readonly number[]) =>
  spacings.reduce<number[]>((times, ms) => [...times, (times.at(-1) as number) + ms / 1000], [0]);
const spacings = fc.array(fc.integer({ min: 5, max: 120 }), { minLength: 2, maxLength: 60 });

const clockOf = (frameTimesS: number[] | null, captureRateHz: number) => {
  const clock = frameClock({ captureRateHz, frameTimesS });
  if (clock === null) throw new Error('no clock');
  return clock;
};

/** 240 frames of an even film, in a container that counts so many ticks a second. */
const at = (rateHz: number, ticks: number) =>
  Array.from({ length: 240 }, (_, i) => Math.round((i / rateHz) * ticks) / ticks);

test('law: an even clock is frame over rate, and without a rate there is none', () => {
  const clock = clockOf(null, 240);
  expect([clock.timeOf(120), clock.frameAt(0.5), clock.rateAt(3)]).toEqual([0.5, 120, 240]);
  expect(frameClock({ captureRateHz: null, frameTimesS: [0, 0.1] })).toBeNull();
});

test('law: each frame is at its own time, and there and back is where one was, also outside the film', () => {
  fc.assert(
    fc.property(spacings, fc.double({ min: -20, max: 100, noNaN: true }), (ms, frame) => {
      const times = timesOf(ms);
      const clock = clockOf(times, usualRateHz(times));
      times.forEach((t, i) => expect(clock.timeOf(i)).toBeCloseTo(t, 9));
      expect(clock.frameAt(clock.timeOf(frame))).toBeCloseTo(frame, 6);
    }),
  );
});

test('law: filmed eight times faster than it plays, all real times are an eighth', () => {
  const times = timesOf([33, 33, 34, 33, 100, 33, 33, 34]);
  const [plain, slowed] = [clockOf(times, usualRateHz(times)), clockOf(times, 8 * usualRateHz(times))];
  for (const frame of [0, 1, 4.5, 5, 8, 11]) {
    expect(slowed.timeOf(frame)).toBeCloseTo(plain.timeOf(frame) / 8, 12);
  }
  expect(slowed.rateHz).toBeCloseTo(8 * plain.rateHz, 9);
  expect(slowed.rateAt(0.2 / 8)).toBeCloseTo(8 * plain.rateAt(0.2), 9);
});

test('the usual rate is the one the camera was set to, whatever was left out, and in whole milliseconds', () => {
  const sixty = Array.from({ length: 300 }, (_, i) => i / 60).filter((_, i) => i % 7 !== 3 && i % 31 !== 4);
  expect(usualRateHz(sixty)).toBeCloseTo(60, 9);
  const rounded = Array.from({ length: 300 }, (_, i) => Math.round((1000 * i) / 30) / 1000).filter((_, i) => i !== 90);
  expect(usualRateHz(rounded)).toBeCloseTo(30, 1);
});

test('an even film has no times of its own, though its container rounds; one picture left out is enough to have them', () => {
  for (const [rateHz, ticks] of [
    [30, 1000],
    [29.97, 600],
    [60, 1000],
    [120, 90_000],
    [239.76, 90_000],
  ] as const) {
    expect([rateHz, ticks, paceOf(at(rateHz, ticks)).frameTimesS]).toEqual([rateHz, ticks, null]);
    expect(paceOf(at(rateHz, ticks)).rateHz).toBeCloseTo(rateHz, 1);
    const without = at(rateHz, ticks).filter((_, i) => i !== 100);
    expect(paceOf(without).frameTimesS).toHaveLength(239);
    expect(paceOf(without).rateHz).toBeCloseTo(rateHz, 0);
  }
  expect(paceOf([0.5])).toEqual({ rateHz: null, offBeatS: 0, frameTimesS: null });
  expect(paceOf([1.433, 1.5, 1.7]).frameTimesS).toEqual([0, 0.067, 0.267]);
});
