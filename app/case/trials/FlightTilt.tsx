import { useMemo } from 'react';
import { flightSays } from '../../../shared/assess/flightSays.ts';
import { quantityText } from '../../../shared/format/number.ts';
import type { MovementTrial } from '../../../shared/model/trial.ts';
import { Button } from '../../parts/Button.tsx';
import { useCase } from '../useCase.ts';
import { clampTilt } from './calibrationEdits.ts';

/** Offers the tilt at which what flies freely falls straight down. Says nothing where nothing flies yet. */
export function FlightTilt({ trial, onTilt }: { trial: MovementTrial; onTilt: (tiltDeg: number) => void }) {
  const { file } = useCase();
  const says = useMemo(() => flightSays(file, trial), [file, trial]);
  if ('unknown' in says) return null;
  return (
    <Button onClick={() => onTilt(clampTilt((says.tilt.value * 180) / Math.PI))}>
      Take the tilt of the {says.of === 'ball' ? 'ball’s' : 'body’s'} free flight, {quantityText(says.tilt, 'deg')}
    </Button>
  );
}
