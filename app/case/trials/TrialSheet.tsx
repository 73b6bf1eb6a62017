import { useMemo, useState } from 'react';
import type { MovementTrial } from '../../../shared/model/trial.ts';
import { frameClock } from '../../../shared/kernel/event/frameClock.ts';
import { movementOf } from '../../../shared/assess/movementOf.ts';
import { Button } from '../../parts/Button.tsx';
import { useCase } from '../useCase.ts';
import { useEdit } from '../useEdit.ts';
import { CalibrationField } from './CalibrationField.tsx';
import { ClipFacts } from './ClipFacts.tsx';
import { EventKinematics } from './EventKinematics.tsx';
import { EventTable } from './EventTable.tsx';
import { GravityCheck } from './GravityCheck.tsx';
import { MeasureTables } from './MeasureTables.tsx';
import { lacksForProposals, Proposals } from './Proposals.tsx';
import { OpenedDetails } from './OpenedDetails.tsx';
import { ReleaseAndRise } from './ReleaseAndRise.tsx';
import { Ribbon } from './ribbon/Ribbon.tsx';
import { stageOf } from './stage.ts';
import { TrialFilm } from './TrialFilm.tsx';
import { StagePlayer } from './StagePlayer.tsx';
import { TrialLoads } from './TrialLoads.tsx';
import { useProposals } from './useProposals.ts';
import { partsOf, timelineOf } from './timeline.ts';

/** One trial: the stage above the ribbon, then the facts it rests on, its events and its measures. */
export function TrialSheet({ trial, title }: { trial: MovementTrial; title: string }) {
  const { file } = useCase();
  const edit = useEdit();
  const movement = movementOf(file, trial.movementId);
  // Parts keep their identity while only the playhead moves, so that what does not show it is not drawn again.
  const { events, tracks, entered } = useMemo(() => partsOf(file, trial.id), [file, trial.id]);
  // The list keeps its identity while other things are typed, so a long trial is not sorted anew at each keystroke.
  const stage = useMemo(
    () => stageOf(file.landmarkTracks.filter((track) => track.trialId === trial.id)),
    [file.landmarkTracks, trial.id],
  );
  const [frame, setFrame] = useState(stage?.firstFrame ?? 0);
  const proposals = useProposals(trial);
  // Kept while only the playhead moves: what is drawn from it then need not be drawn again.
  const timeline = useMemo(() => timelineOf(trial, movement, events, tracks), [trial, movement, events, tracks]);
  const clock = useMemo(() => frameClock(trial), [trial]);
  const playheadS = stage === null || clock === null ? null : clock.timeOf(frame);
  const seek = (timeS: number) => {
    if (stage === null || clock === null) return;
    setFrame(Math.min(stage.lastFrame, Math.max(stage.firstFrame, Math.round(clock.frameAt(timeS)))));
  };

  return (
    <article className="trial-sheet" aria-label={title}>
      <TrialFilm trial={trial} />
      {stage !== null && <StagePlayer trial={trial} stage={stage} clock={clock} frame={frame} onFrame={setFrame} />}
      {events.length > 0 || stage !== null ? (
        <Ribbon
          trial={trial}
          timeline={timeline}
          proposals={proposals.map(({ event, label, timeS, uS }) => ({ id: event, label, timeS, uS }))}
          rateHz={clock?.rateHz ?? null}
          playheadS={playheadS}
          {...(playheadS === null ? {} : { onSeek: seek })}
        />
      ) : (
        <p className="quiet">The ribbon of phases appears here once two events have times.</p>
      )}
      <GravityCheck trial={trial} />

      <section aria-labelledby="clip-facts">
        <h3 id="clip-facts">Clip facts</h3>
        <ClipFacts trial={trial} />
      </section>
      <section aria-labelledby="plane">
        <h3 id="plane">Plane and scale</h3>
        <CalibrationField trial={trial} hasPoints={stage !== null} />
      </section>
      <section aria-labelledby="events">
        <h3 id="events">Events</h3>
        <Proposals
          trial={trial}
          proposals={proposals}
          lacks={lacksForProposals(trial, tracks.length > 0)}
          onSeek={seek}
        />
        <EventTable trial={trial} movement={movement} events={events} playheadS={playheadS} onSeek={seek} />
      </section>
      <section aria-labelledby="measures">
        <h3 id="measures">Measures by phase</h3>
        <ReleaseAndRise trial={trial} />
        <MeasureTables trial={trial} movement={movement} entered={entered} />
        {stage !== null && (
          <>
            <OpenedDetails title="Angles and speeds at each event">
              {() => <EventKinematics trial={trial} />}
            </OpenedDetails>
            <OpenedDetails title="Loads, by models">{() => <TrialLoads trial={trial} frame={frame} />}</OpenedDetails>
          </>
        )}
      </section>
      <div className="row-of-buttons">
        <Button look="quiet" onClick={() => edit([{ op: 'remove', kind: 'movementTrial', id: trial.id }])}>
          Remove this trial with all it holds
        </Button>
      </div>
    </article>
  );
}
