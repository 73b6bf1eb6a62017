import { test } from 'vitest';
import { planClip, truthOf } from '../../../main/clip/clip.ts';
import { sourceFor } from '../../../main/clip/sourceFor.ts';
import { measureTrial } from '../../../shared/kernel/trial/measureTrial.ts';
import { planeCalibration, stickCalibration, trialOfClip } from '../../support/trialOfClip.ts';
test('dbg', () => {
  for (const seed of [11,12,13,14,15,16]) for (const o of [{captureRateHz:240,tiltDeg:0,turnDeg:0},{captureRateHz:120,tiltDeg:6,turnDeg:20}]) {
    const truth = truthOf(planClip({ movementId: 'handball-jump-throw', seed, slowMotion: 1, ...o }));
    const random = sourceFor(seed, 'hand');
    const points = new Map(Object.entries(truth.points).map(([n, s]) => [n, s.map(([f, x, y]) => [f, x + random.normal(0.5), y + random.normal(0.5)] as const)]));
    for (const cal of o.tiltDeg ? [planeCalibration(truth, random)] : [stickCalibration(truth, random)]) {
      const input = trialOfClip(truth, points, cal, o.captureRateHz);
      const m = measureTrial(input).measures;
      const g = (k: string) => m.find((x) => x.measure === k)?.reading as { value: number; u: number };
      const line = [['ball.releaseSpeed', truth.release!.speedMPerS], ['ball.releaseAngle', truth.release!.angleRad], ['ball.releaseHeight', truth.release!.heightM], ['com.riseInSkill', truth.jumpHeightM], ['ball.gravityFound', 9.80665]].map(([k, v]) => `${k} err ${(g(k as string).value - (v as number)).toFixed(4)} u ${g(k as string).u?.toFixed(4)}`);
      console.log(seed, o.captureRateHz, cal.kind, line.join('; '), 'rel', (input.events.find(e=>e.event==='release')!.timeS - truth.release!.timeS).toFixed(4), truth.points.ball.length);
    }
  }
});
