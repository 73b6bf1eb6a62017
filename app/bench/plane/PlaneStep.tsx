import type { MovementTrial } from '../../../shared/model/trial.ts';
import { CalibrationField, type Picker } from '../../case/trials/CalibrationField.tsx';
import { RESIDUAL_SCALE, residualLines } from './PlaneDrawing.tsx';

/** How the picture becomes metres, with the clicks that set it. */
export function PlaneStep({ trial, hasPoints, picker }: { trial: MovementTrial; hasPoints: boolean; picker: Picker }) {
  const isEmpty = trial.calibration === null && trial.calibrationDraft === null;
  return (
    <>
      {isEmpty && (
        <p>Click one end of a known length in the plane of motion, then the other; then type how long it truly is.</p>
      )}
      <CalibrationField trial={trial} hasPoints={hasPoints} picker={picker} />
      {residualLines(trial.calibration).length > 0 && (
        <p className="quiet">
          The strokes at the points show how far each lies off the plane of all, {RESIDUAL_SCALE} times its size.
        </p>
      )}
    </>
  );
}
