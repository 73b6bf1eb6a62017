import { expect, test } from 'vitest';
import { overLimbLength } from '../../../../shared/kernel/screening/overLimbLength.ts';
import { measured } from '../../../../shared/quantity.ts';

test('187.8 % of a leg of 0.90 m is a hop of 1.690 m (J Athl Train 2018;53:35, mean of boys; product by hand)', () => {
  const ratio = overLimbLength(measured('d', 'hop', 1.6902, 'm', 0.03), measured('L', 'leg', 0.9, 'm', 0.01));
  expect(ratio.value).toBeCloseTo(1.878, 12);
  // JCGM 100:2008, 5.1.6: relative uncertainties of a quotient add in squares.
  expect(ratio.u).toBeCloseTo(1.878 * Math.hypot(0.03 / 1.6902, 0.01 / 0.9), 5);
});

test('without a limb there is no ratio: refused', () => {
  const none = measured('L', 'leg', 0, 'm', 'not known');
  expect(() => overLimbLength(measured('d', 'hop', 1.5, 'm', 'none'), none)).toThrow('no finite value');
});
