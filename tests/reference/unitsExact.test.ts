import { describe, expect, test } from 'vitest';
import { measured } from '../../shared/quantity.ts';
import { convert, feetAndInches } from '../../shared/units.ts';
import { weight } from '../../shared/kernel/force/weight.ts';

describe('unit conversions, NIST SP 811 appendix B (factors exact)', () => {
  test('23 in is 0.584 m and 5 ft 11 in is 1.803 m (common practice, no source)', () => {
    expect(convert(23, '[in_i]', 'm')).toBeCloseTo(0.584, 3);
    expect(feetAndInches(5, 11)).toBeCloseTo(1.803, 3);
  });
  test('W1: 72.0 kg weighs 706.0788 N, which is 158.73 lbf', () => {
    const w = weight(measured('m', 'mass', 72, 'kg', 0));
    expect(w.value).toBeCloseTo(706.0788, 4);
    expect(convert(w.value, 'N', '[lbf_av]')).toBeCloseTo(158.73, 2);
  });
  test('W2: 165 lb; 6 ft 2 in; 8 ft 3 in; 24 in', () => {
    expect(convert(165, '[lb_av]', 'kg')).toBeCloseTo(74.84274, 5);
    expect(feetAndInches(6, 2)).toBeCloseTo(1.8796, 10);
    expect(feetAndInches(8, 3)).toBeCloseTo(2.5146, 10);
    expect(convert(24, '[in_i]', 'm')).toBeCloseTo(0.6096, 10);
  });
  test('W3: 6.2 ft is not 6 ft 2 in', () => {
    expect(convert(6.2, '[ft_i]', 'm')).toBeCloseTo(1.88976, 10);
    expect(convert(6.2, '[ft_i]', 'm')).not.toBeCloseTo(feetAndInches(6, 2), 3);
  });
  test('W4: 15 ft; 13 ft 9 in; 23 ft 9 in; 10 ft', () => {
    expect(feetAndInches(15, 0)).toBeCloseTo(4.572, 10);
    expect(feetAndInches(13, 9)).toBeCloseTo(4.191, 10);
    expect(feetAndInches(23, 9)).toBeCloseTo(7.239, 10);
    expect(feetAndInches(10, 0)).toBeCloseTo(3.048, 10);
  });
  test('W5: ball circumferences and masses', () => {
    expect(convert(29.5, '[in_i]', 'm')).toBeCloseTo(0.7493, 10);
    expect(convert(28.5, '[in_i]', 'm')).toBeCloseTo(0.7239, 10);
    expect(convert(22, '[oz_av]', 'kg')).toBeCloseTo(0.62369, 5);
    expect(convert(20, '[oz_av]', 'kg')).toBeCloseTo(0.56699, 5);
  });
  test('W6: 7.20 m/s at 52° has components 4.43276 and 5.67368 m/s', () => {
    const angle = convert(52, 'deg', 'rad');
    expect(7.2 * Math.cos(angle)).toBeCloseTo(4.43276, 5);
    expect(7.2 * Math.sin(angle)).toBeCloseTo(5.67368, 5);
  });
  test('W7: 1000 °/s on a lever of 0.35 m is 6.1087 m/s', () => {
    expect(convert(1000, 'deg/s', 'rad/s') * 0.35).toBeCloseTo(6.1087, 4);
  });
});
