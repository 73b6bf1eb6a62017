import { type RandomSource, randomSource } from '../demo/randomSource.ts';

/** Draws after which sources of neighbouring numbers no longer resemble each other. */
const WARMING_UP = 64;

/** A random source for one part of a clip: neighbouring seeds and other parts have nothing in common. */
export function sourceFor(
  seed: number,
  part: 'motion' | 'camera' | 'picture' | 'hand' | 'scale' | 'clock',
): RandomSource {
  const parts = ['motion', 'camera', 'picture', 'hand', 'scale', 'clock'];
  const mixed = Math.imul(seed + 1, 0x9e3779b1) ^ Math.imul(parts.indexOf(part) + 1, 0x85ebca6b);
  const source = randomSource(mixed);
  for (let i = 0; i < WARMING_UP; i += 1) source.uniform();
  return source;
}
