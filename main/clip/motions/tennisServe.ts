import { curve } from '../../demo/curves.ts';
import type { Motion } from '../../demo/motion.ts';
import type { RandomSource } from '../../demo/randomSource.ts';
import { beyondHand, thrown, tossed } from '../hands.ts';
import { uprightMotion } from '../uprightMotion.ts';
import { between } from './between.ts';

const BALL_RADIUS_M = 0.033;
/** From the knuckles to the middle of the strings. */
const RACKET_M = 0.5;

/** The left hand tosses, the right one strikes with a racket. */
export function tennisServe(random: RandomSource): Motion {
  const statureM = between(random, 1.7, 2);
  const riseMPerS = between(random, 0.9, 1.4);
  const [start, toss, loaded, up] = [0.3, 0.8, 1.25, 1.48];
  const cocked = 1.44;
  const contact = up + riseMPerS / 9.80665;
  const leftUpper = curve([start, 10], [toss, 130], [loaded, 165], [contact, 60], [contact + 0.3, 10]);
  const upper = curve([start, 5], [toss, -40], [loaded, -95], [cocked, -120], [contact, -186], [contact + 0.35, -320]);
  const fore = curve([start, 30], [toss, -20], [loaded, -160], [cocked, -20], [contact, -186], [contact + 0.35, -330]);
  const body = uprightMotion({
    statureM,
    start: 0.9,
    lowest: loaded,
    up,
    dip: 0.06,
    riseMPerS,
    boxM: 0,
    trunk: curve([start, 4], [loaded, -12], [contact, 10], [contact + 0.4, 34]),
    arms: (t) => ({
      left: { upper: leftUpper(t), fore: leftUpper(t) + 6 },
      right: { upper: upper(t), fore: fore(t) },
    }),
  });
  const tossHand = (t: number) => beyondHand(body.figureAt(t), 'left', 0.04);
  const place = beyondHand(body.figureAt(contact), 'right', RACKET_M);
  const rising = tossed(tossHand(toss), toss, place, contact);
  const speedMPerS = between(random, 38, 52);
  const angleRad = between(random, -0.12, -0.06);
  const flight = thrown(place, speedMPerS, angleRad, 0.013);
  return {
    movementId: 'tennis-serve',
    side: 'right',
    statureM,
    lastsS: body.deepest + 0.3,
    events: { start, release: toss, loaded, cocked, contact, landing: body.landing, end: body.deepest + 0.1 },
    figureAt: body.figureAt,
    ballAt: (t) => (t <= toss ? tossHand(t) : t <= contact ? rising(t) : flight(t - contact)),
    ballRadiusM: BALL_RADIUS_M,
    release: { timeS: contact, speedMPerS, angleRad, heightM: place.y },
    riseMPerS,
  };
}
