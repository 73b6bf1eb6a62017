import { openMover } from './moves.ts';
import { openRunMover } from './runMoves.ts';

/**
 * Run as a process of its own, to be killed: works in a store folder without end, and prints the number of each move
 * once the program has acknowledged it.
 */
const [folder = '', first = '0', work = 'case'] = process.argv.slice(2);
const mover = await (work === 'run' ? openRunMover : openMover)(folder);

for (let n = Number(first); ; n++) {
  await mover.move(n);
  // Straight to the pipe: what is printed was acknowledged, whatever happens next.
  if (!process.stdout.write(`${n}\n`)) await new Promise((resolve) => process.stdout.once('drain', resolve));
}
