import { expect, test } from 'vitest';
import { depthFactor } from '../../../../shared/kernel/plane/depthFactor.ts';
import { outOfPlaneAngle } from '../../../../shared/kernel/plane/outOfPlaneAngle.ts';
import { scalesDiffer } from '../../../../shared/kernel/plane/scalesDiffer.ts';
import { isKnown, measured } from '../../../../shared/quantity.ts';

const metres = (value: number, u = 0) => measured('L', 'Length', value, 'm', u);
const degrees = (rad: number) => (rad * 180) / Math.PI;

test.each([
  [3, 0.3, 11.11],
  [5, 0.3, 6.38],
  [8, 0.3, 3.9],
  [10, 0.3, 3.09],
  [15, 0.3, 2.04],
  [10, -0.3, -2.91],
])('V5: similar triangles: camera at %d m, object %d m nearer: lengths %d %% too long', (camera, nearer, percent) => {
  expect(100 * depthFactor(metres(camera), metres(nearer)).value).toBeCloseTo(percent, 2);
});

test('refuses an object at the lens', () => {
  expect(() => depthFactor(metres(3), metres(3))).toThrow(expect.objectContaining({ code: 'input-out-of-range' }));
});

test.each([
  [0.24, 0.27, 27.27],
  [0.4, 0.43, 21.53],
])('V7: foreshortening: %d m seen of %d m true is turned %d°', (apparent, truth, angle) => {
  const turned = outOfPlaneAngle(metres(apparent), metres(truth));
  expect(isKnown(turned) && degrees(turned.value)).toBeCloseTo(angle, 2);
});

test.each([
  [10, -1.52],
  [20, -6.03],
  [30, -13.4],
])('V6: foreshortening: turned %d° looks %d %% shorter', (angle, percent) => {
  const turned = outOfPlaneAngle(metres(1 + percent / 100), metres(1));
  expect(isKnown(turned) && degrees(turned.value)).toBeCloseTo(angle, 1);
});

test('a segment that looks 10 % longer than measured is a mistake, not an angle', () => {
  expect(outOfPlaneAngle(metres(0.33, 0.005), metres(0.3, 0.005))).toHaveProperty('unknown');
});

test('V4: scales that differ by more than 1 % are questioned (convention)', () => {
  expect(scalesDiffer(0.0025, 0.00251)).toBeNull();
  expect(scalesDiffer(0.0025, 0.00255)).toMatch(/2\.0 %/);
});
