import { useMemo } from 'react';
import { tiltOfFlight } from '../../../shared/assess/tiltOfFlight.ts';
import { quantityText } from '../../../shared/format/number.ts';
import type { MovementTrial } from '../../../shared/model/trial.ts';
import { isKnown } from '../../../shared/quantity.ts';
import { Button } from '../../parts/Button.tsx';
import { useCase } from '../useCase.ts';
import { clampTilt } from './calibrationEdits.ts';

/** Offers the tilt at which what flies freely falls straight down. Says nothing where nothing flies yet. */
export function FlightTilt({ trial, onTilt }: { trial: MovementTrial; onTilt: (tiltDeg: number) => void }) {
  const { file } = useCase();
  const says = useMemo(() => tiltOfFlight(file, trial), [file, trial]);
  if ('unknown' in says) return null;
  const { tilt } = says;
  if (!isKnown(tilt)) return <span className="quiet">No tilt from the free flight: {tilt.unknown}.</span>;
  return (
    <Button onClick={() => onTilt(clampTilt((tilt.value * 180) / Math.PI))}>
      Take the tilt of the {says.of === 'ball' ? 'ball’s' : 'body’s'} free flight, {quantityText(tilt, 'deg')}
    </Button>
  );
}
