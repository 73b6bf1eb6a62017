import { expect, test } from 'vitest';
import { airborneSpan } from '../../../../shared/kernel/event/airborneSpan.ts';
import { evenClock } from '../../../../shared/kernel/event/frameClock.ts';
import { lastInHand } from '../../../../shared/kernel/event/lastInHand.ts';
import { phaseTimes } from '../../../../shared/kernel/event/phaseTimes.ts';
import { turningPoint } from '../../../../shared/kernel/event/turningPoint.ts';
import { handballJumpThrow } from '../../../../shared/knowledge/movements/handball-jump-throw.ts';
import type { TrialEvent } from '../../../../shared/model/trial.ts';
import { isKnown } from '../../../../shared/quantity.ts';

const events = (times: Record<string, number>, uS: number | null = null): TrialEvent[] =>
  Object.entries(times).map(([event, timeS]) => ({
    id: '00000000-0000-4000-8000-000000000001',
    trialId: '00000000-0000-4000-8000-000000000002',
    event,
    timeS,
    uS,
    origin: 'by-hand',
  }));
const TIMES = { 'approach-start': 0, plant: 0.5, 'take-off': 0.7, cocked: 0.85, release: 0.95, landing: 1.3, end: 1.5 };

test('JCGM 100, 4.3.7: two ends of half a frame give an interval u of one frame over √6', () => {
  const { phases, warnings } = phaseTimes(handballJumpThrow, events(TIMES), evenClock(120));
  const approach = phases.find(({ phase }) => phase === 'approach')?.duration;
  expect(approach !== undefined && isKnown(approach) && approach.value).toBeCloseTo(0.5, 12);
  expect(approach !== undefined && isKnown(approach) && approach.u).toBeCloseTo(0.408 / 120, 5);
  expect(warnings).toEqual([]);
});

test('an uncertainty entered for an event is used instead', () => {
  const { phases } = phaseTimes(handballJumpThrow, events(TIMES, 0.003), evenClock(120));
  const approach = phases[0]?.duration;
  expect(approach !== undefined && isKnown(approach) && approach.u).toBeCloseTo(0.003 * Math.SQRT2, 9);
});

test('a phase that is an instant lasts no time; one without its event is unknown and says which', () => {
  const { release: _, ...rest } = TIMES;
  const { phases } = phaseTimes(handballJumpThrow, events(rest), evenClock(120));
  expect(phases.find(({ phase }) => phase === 'acceleration')?.duration).toEqual({ unknown: 'no release event' });
  const all = phaseTimes(handballJumpThrow, events(TIMES), evenClock(120)).phases;
  expect(all.find(({ phase }) => phase === 'release')?.duration).toMatchObject({ value: 0 });
});

test('events out of order are said; cocking may begin before the foot has left', () => {
  const swapped = phaseTimes(handballJumpThrow, events({ ...TIMES, landing: 0.9 }), evenClock(120));
  expect(swapped.warnings).toEqual(['Landing (0.900 s) should come after release (0.950 s).']);
  expect(phaseTimes(handballJumpThrow, events({ ...TIMES, cocked: 0.68 }), evenClock(120)).warnings).toEqual([]);
});

test('law: the top of a parabola is found between samples, exactly', () => {
  const top = turningPoint(
    Array.from({ length: 9 }, (_, i) => 2 - 3 * (i - 4.3) ** 2),
    'highest',
  );
  expect(top.index).toBeCloseTo(4.3, 12);
  expect(top.value).toBeCloseTo(2, 12);
  expect(turningPoint([1, 2, 3], 'highest').isAtEdge).toBe(true);
  expect(turningPoint([3, 1, 2], 'lowest').isAtEdge).toBe(false);
});

const height = (i: number) => Math.max(0, ((i - 50) * (100 - i)) / 2500) * 0.3;

test('closed form: a foot on a parabola 0.075 m high over 50 samples is 3 cm up from 5.6 samples after it left', () => {
  // 0.3 s (1 − s) = 0.03 at s = 0.1127.
  expect(
    airborneSpan(
      Array.from({ length: 150 }, (_, i) => height(i)),
      120,
    ),
  ).toEqual({ takeoff: 55, landing: 95 });
});

test('a foot that only steps is not in the air; a record that ends in the air has no landing', () => {
  expect(
    airborneSpan(
      Array.from({ length: 100 }, (_, i) => (i > 40 && i < 50 ? 0.1 : 0)),
      120,
    ),
  ).toBeNull();
  expect(
    airborneSpan(
      Array.from({ length: 100 }, (_, i) => (i > 40 ? 0.1 : 0)),
      120,
    ),
  ).toEqual({ takeoff: 40, landing: null });
});

test('the ball is last in the hand where it was still held; one misread frame at the end is not a release', () => {
  expect(lastInHand([0.1, 0.11, 0.1, 0.12, 0.1, 0.3, 0.6, 0.9])).toBe(4);
  expect(lastInHand([0.1, 0.11, 0.1, 0.12, 0.1, 0.11, 0.6])).toBeNull();
});
