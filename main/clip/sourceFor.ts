import { type RandomSource, randomSource } from '../demo/randomSource.ts';

/** Draws after which sources of neighbouring numbers no longer resemble each other. */
const WARMING_UP = 64;

/** A new one goes to the end: its place is part of the seed. */
const PARTS = ['motion', 'camera', 'picture', 'hand', 'scale', 'clock'] as const;

/** A random source for one part of a clip: neighbouring seeds and other parts have nothing in common. */
export function sourceFor(seed: number, part: (typeof PARTS)[number]): RandomSource {
  const mixed = Math.imul(seed + 1, 0x9e3779b1) ^ Math.imul(PARTS.indexOf(part) + 1, 0x85ebca6b);
  const source = randomSource(mixed);
  for (let i = 0; i < WARMING_UP; i += 1) source.uniform();
  return source;
}
