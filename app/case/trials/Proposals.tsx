import { toDecimals } from '../../../shared/format/number.ts';
import type { Edit } from '../../../shared/model/edit.ts';
import type { MovementTrial } from '../../../shared/model/trial.ts';
import { Button } from '../../parts/Button.tsx';
import { newId } from '../newRecord.ts';
import { useEdit } from '../useEdit.ts';
import type { LabelledProposal } from './useProposals.ts';

const CONFIDENCE_WORDS: Record<LabelledProposal['confidence'], string> = {
  clear: 'clear',
  likely: 'likely, look at it',
  doubtful: 'doubtful, look closely',
};

/** Events found in the points, to be taken one by one or all. None counts before. */
export function Proposals(props: {
  trial: MovementTrial;
  proposals: readonly LabelledProposal[];
  /** Why nothing can be proposed, where something is missing; null: nothing is. */
  lacks: string | null;
  onSeek: (timeS: number) => void;
}) {
  const { trial, proposals, lacks, onSeek } = props;
  const edit = useEdit();
  const taken = ({ event, timeS, uS }: LabelledProposal): Edit => ({
    op: 'create',
    kind: 'trialEvent',
    record: { id: newId(), trialId: trial.id, event, timeS, uS, origin: 'proposed-and-confirmed' },
  });
  if (proposals.length === 0) return lacks === null ? null : <p className="quiet">Events are proposed {lacks}.</p>;
  return (
    <section className="proposals" aria-labelledby="proposals">
      <h3 id="proposals">Proposed from the points</h3>
      <p className="quiet">Dashed on the ribbon. None of these counts until it is taken.</p>
      <ul>
        {proposals.map((one) => (
          <li key={one.event}>
            <p>
              <strong>{one.label}</strong> {toDecimals(one.timeS, 4)} s ± {toDecimals(one.uS * 1000, 1)} ms:{' '}
              {CONFIDENCE_WORDS[one.confidence]}. <span className="quiet">{one.because}.</span>
            </p>
            <div className="row-of-buttons">
              <Button look="quiet" aria-label={`Look at ${one.label}`} onClick={() => onSeek(one.timeS)}>
                Look at it
              </Button>
              <Button aria-label={`Take ${one.label}`} onClick={() => edit([taken(one)])}>
                Take it
              </Button>
            </div>
          </li>
        ))}
      </ul>
      {proposals.length > 1 && (
        <Button onClick={() => edit(proposals.map(taken))}>Take all {proposals.length} as they are</Button>
      )}
    </section>
  );
}

/** What the points need before events can be proposed. */
export function lacksForProposals(trial: MovementTrial, hasPoints: boolean): string | null {
  if (!hasPoints) return 'once points are there';
  if (trial.captureRateHz === null) return 'once the capture rate is known';
  return trial.calibration === null ? 'once the picture has a scale' : null;
}
