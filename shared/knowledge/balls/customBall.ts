import type { Ball } from './ball.ts';

export interface CustomBallFigures {
  readonly massKg: number;
  readonly diameterM: number;
  readonly dragCoefficient: number;
}

const AS_ENTERED = { cite: 'As entered', status: 'convention' } as const;
const ID = /^custom:([\d.]+):([\d.]+):([\d.]+)$/;

/** The id under which a ball of one's own is kept: `custom:0.45:0.19:0.5` is 0.45 kg, 0.19 m and a drag coefficient of 0.5. */
export function customBallId({ massKg, diameterM, dragCoefficient }: CustomBallFigures): string {
  return `custom:${massKg}:${diameterM}:${dragCoefficient}`;
}

/** Null for an id that is none of a custom ball, or whose figures no ball has. */
export function customBallFigures(id: string): CustomBallFigures | null {
  const [massKg = 0, diameterM = 0, dragCoefficient = -1] = (ID.exec(id) ?? []).slice(1).map(Number);
  const isBall = massKg > 0 && massKg <= 100 && diameterM > 0 && diameterM <= 2;
  return isBall && dragCoefficient >= 0 && dragCoefficient <= 2 ? { massKg, diameterM, dragCoefficient } : null;
}

/** A ball or implement by its own figures; of no sport, so that nothing is taken to be its target. */
export function customBall(id: string): Ball | null {
  const figures = customBallFigures(id);
  if (figures === null) return null;
  const { massKg, diameterM, dragCoefficient } = figures;
  return {
    id,
    label: `ball of ${massKg} kg and ${diameterM} m`,
    sport: '',
    massKg: [massKg, massKg],
    diameterM: [diameterM, diameterM],
    source: AS_ENTERED,
    drag: {
      coefficient: dragCoefficient,
      u: 0.05,
      source: { cite: 'As entered; ± 0.05 as for the balls on file is a convention', status: 'convention' },
    },
  };
}
