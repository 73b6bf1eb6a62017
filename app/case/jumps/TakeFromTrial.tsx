import type { JumpTest, JumpTrial } from '../../../shared/model/jump.ts';
import type { MovementTrial } from '../../../shared/model/trial.ts';
import { formatDate } from '../../../shared/format/number.ts';
import { JUMP_KIND_WORDS } from '../../../shared/report/words.ts';
import { Button } from '../../parts/Button.tsx';
import { useCase } from '../useCase.ts';
import { useEdit } from '../useEdit.ts';
import { emptyTrial } from './emptyTrial.ts';

/** Filmed standing jumps of this kind whose take-off and landing are marked, each to be taken in as a jump of the test. */
export function TakeFromTrial({ test, trials }: { test: JumpTest; trials: readonly JumpTrial[] }) {
  const { file } = useCase();
  const edit = useEdit();
  const kind = JUMP_KIND_WORDS[test.kind].toLowerCase();
  const has = (trialId: string, event: string) =>
    file.trialEvents.some((one) => one.trialId === trialId && one.event === event);
  const filmed = file.movementTrials.filter(
    ({ id, movementId }) => movementId === `${test.kind}-jump` && has(id, 'take-off') && has(id, 'landing'),
  );
  const left = filmed.filter(({ id }) => trials.every(({ movementTrialId }) => movementTrialId !== id));
  const take = (movementTrialId: string) => {
    const record = { ...emptyTrial(test.id, (trials.at(-1)?.number ?? 0) + 1), movementTrialId };
    edit([{ op: 'create', kind: 'jumpTrial', record }]);
  };
  return (
    <div className="take-from-trial">
      <p className="quiet">
        The flight time is the time between take-off and landing as marked in the trial, and follows them when they are
        moved. A rise within a skill is no standing jump, so only trials of a {kind} are offered.
      </p>
      {filmed.length === 0 && <p>No filmed trial of a {kind} has its take-off and landing marked yet.</p>}
      {left.length > 0 && (
        <ul className="row-of-buttons">
          {left.map((trial) => (
            <li key={trial.id}>
              <Button onClick={() => take(trial.id)}>Take {filmedName(trial)}</Button>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

export function filmedName({ label, filmedOn }: MovementTrial): string {
  return `${label === '' ? 'trial' : label}, filmed ${formatDate(filmedOn)}`;
}
