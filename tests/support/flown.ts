import type { FlightSample } from '../../shared/kernel/flight/fitRelease.ts';

/** A flight by fourth-order Runge-Kutta in steps of a tenth of a millisecond: not the kernel's integrator. */
export function flown(speed: number, angle: number, k: number, frames: number, rateHz: number): FlightSample[] {
  type S = readonly [number, number, number, number];
  const rate = ([, , u, w]: S): S => [u, w, -k * Math.hypot(u, w) * u, -9.80665 - k * Math.hypot(u, w) * w];
  const moved = (s: S, r: S, dt: number) => s.map((value, i) => value + dt * (r[i] as number)) as unknown as S;
  let s: S = [0, 2, speed * Math.cos(angle), speed * Math.sin(angle)];
  const dt = 1e-4;
  const samples: FlightSample[] = [];
  const every = Math.round(1 / (rateHz * dt));
  for (let i = 0; samples.length < frames; i += 1) {
    if (i % every === 0) samples.push({ t: i * dt, x: s[0], y: s[1] });
    const k1 = rate(s);
    const k2 = rate(moved(s, k1, dt / 2));
    const k3 = rate(moved(s, k2, dt / 2));
    const k4 = rate(moved(s, k3, dt));
    s = s.map(
      (value, j) =>
        value + (dt / 6) * ((k1[j] as number) + 2 * (k2[j] as number) + 2 * (k3[j] as number) + (k4[j] as number)),
    ) as unknown as S;
  }
  return samples;
}
