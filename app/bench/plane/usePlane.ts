import { useState } from 'react';
import { draftFrom } from '../../../shared/model/calibrationDraft.ts';
import type { MovementTrial } from '../../../shared/model/trial.ts';
import { type Aim, aimAfter, firstAim, keepDraft, placeIn } from '../../case/trials/calibrationEdits.ts';
import { useEdit } from '../../case/useEdit.ts';

/** What the next click on the picture sets in the plane step, and that click. Chosen null: nothing; undefined: what is missing. */
export function usePlane(trial: MovementTrial) {
  const edit = useEdit();
  const [chosen, setChosen] = useState<Aim | null | undefined>(undefined);
  const draft = trial.calibrationDraft ?? draftFrom(trial.calibration);
  const isMetres = trial.calibration?.kind === 'metres';
  const aim = isMetres ? null : chosen === undefined ? firstAim(draft) : chosen;
  return {
    aim,
    onAim: setChosen,
    place: ({ xPx, yPx }: { xPx: number; yPx: number }) => {
      if (aim === null) return;
      const next = placeIn(draft, aim, { xPx, yPx });
      edit(keepDraft(trial, next));
      setChosen(aimAfter(aim, next) ?? undefined);
    },
  };
}
