/** J7 of the mechanics dossier, force at 1000 Hz: 70 kg, 1 s still, take-off at 2.6465 m/s, flight, and standing again. */
export function dossierForceN(): number[] {
  const W = 70 * 9.80665;
  return Array.from({ length: 3200 }, (_, i) => {
    const t = (i - 1000) / 1000;
    if (t < 0) return W;
    if (t < 0.3) return W - 350 * Math.sin((Math.PI * t) / 0.3);
    if (t < 0.66) return W + 1100 * Math.sin((Math.PI * (t - 0.3)) / 0.36);
    return t < 1.2 ? 0 : W;
  });
}
