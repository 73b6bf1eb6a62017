import { measured, type Quantity, type Source } from '../../quantity.ts';

const source: Source = {
  cite: '3rd General Conference on Weights and Measures (CGPM), 1901: standard acceleration due to gravity, 9.80665 m/s², exact by convention',
  status: 'published',
};

/** g_n = 9.80665 m/s², exact by convention. Local gravity lies within 0.3 % of it anywhere on Earth's surface. */
export const standardGravity: Quantity<'m/s2'> = measured('g', 'standard gravity', 9.80665, 'm/s2', 0, source);
