import type { Ball } from './ball.ts';
import { basketball5 } from './basketball-5.ts';
import { basketball6 } from './basketball-6.ts';
import { basketball7 } from './basketball-7.ts';
import { basketballRing } from './basketball-ring.ts';
import { customBall } from './customBall.ts';
import { football5 } from './football-5.ts';
import { footballGoal } from './football-goal.ts';
import { handball1 } from './handball-1.ts';
import { handball2 } from './handball-2.ts';
import { handball3 } from './handball-3.ts';
import { handballGoal } from './handball-goal.ts';
import { shot4 } from './shot-4.ts';
import { shot726 } from './shot-7-26.ts';
import { shotSector } from './shot-sector.ts';
import { tennisBall } from './tennis-ball.ts';
import { tennisNet } from './tennis-net.ts';
import { volleyball } from './volleyball.ts';
import { volleyballNetMen } from './volleyball-net-men.ts';
import { volleyballNetWomen } from './volleyball-net-women.ts';
import type { Target } from './target.ts';

/** Every ball and implement the program knows, in the order it offers them. */
export const BALLS: readonly Ball[] = [
  basketball7,
  basketball6,
  basketball5,
  handball3,
  handball2,
  handball1,
  volleyball,
  tennisBall,
  shot726,
  shot4,
  football5,
];

/** Everything it knows to aim at. */
export const TARGETS: readonly Target[] = [
  basketballRing,
  handballGoal,
  volleyballNetMen,
  volleyballNetWomen,
  tennisNet,
  shotSector,
  footballGoal,
];

const balls = new Map(BALLS.map((ball) => [ball.id, ball]));
/** What the ball's sport aims at; null where this program knows nothing. */
export function targetOf(ball: Ball | null): Target | null {
  return TARGETS.find(({ sport }) => sport === ball?.sport) ?? null;
}

const targets = new Map(TARGETS.map((target) => [target.id, target]));

/** One on file, or one of the user's own (customBallId). Null for a ball this version does not know. */
export function ballById(id: string): Ball | null {
  return balls.get(id) ?? customBall(id);
}

/** Null for a target this version does not know. */
export function targetById(id: string): Target | null {
  return targets.get(id) ?? null;
}
