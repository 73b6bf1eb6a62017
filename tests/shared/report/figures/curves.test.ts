import { expect, test } from 'vitest';
import { movementById } from '../../../../shared/knowledge/movements/index.ts';
import { curves } from '../../../../shared/report/figures/curves.ts';
import { squareMetrics } from '../squareMetrics.ts';

const movement = movementById('handball-jump-throw');
if (movement === null) throw new Error('the movement is known');
/** An event each tenth of a second; a phase from an event to itself lasts no time and cannot be shaded. */
const events = movement.events.map(({ id }, i) => ({
  id: `00000000-0000-4000-8000-00000000000${i}`,
  trialId: '00000000-0000-4000-8000-000000000100',
  event: id,
  timeS: i / 10,
  uS: null,
  origin: 'by-hand' as const,
}));
const series = [
  {
    id: 'knee-left',
    label: 'Knee flexion, left',
    unit: 'rad' as const,
    points: [
      [0, 0],
      [0.6, 1],
    ] as const,
  },
];

test('law: the caption of curves names every band that is drawn, no other, and every upright line in order', () => {
  const drawn = curves(series, events, movement);
  const bands = drawn?.draw(480, squareMetrics).marks.filter(({ mark }) => mark === 'rect').length;
  const named = /Shaded: ([^.]*)\./.exec(drawn?.caption ?? '')?.[1]?.split(', ') ?? [];
  expect(named).toHaveLength(bands ?? -1);
  expect(bands).toBeGreaterThan(1);
  const instants = movement.phases.filter(({ startsAt, endsAt }) => startsAt === endsAt);
  for (const { label } of instants) expect(named).not.toContain(label.toLowerCase());
  const lines = /lines are the events: ([^.]*)\./.exec(drawn?.caption ?? '')?.[1]?.split(', ');
  expect(lines).toEqual(movement.events.map(({ label }) => label.charAt(0).toLowerCase() + label.slice(1)));
});
