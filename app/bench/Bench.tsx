import { type ReactNode, useCallback, useMemo, useRef, useState } from 'react';
import { counted, toDecimals } from '../../shared/format/number.ts';
import { frameClock } from '../../shared/kernel/event/frameClock.ts';
import { joinTracks } from '../../shared/kernel/trial/joinTracks.ts';
import type { Place } from '../../shared/kernel/track/image.ts';
import { movementOf } from '../../shared/assess/movementOf.ts';
import { BALL, type MovementTrial } from '../../shared/model/trial.ts';
import { newId } from '../case/newRecord.ts';
import { ClipFacts } from '../case/trials/ClipFacts.tsx';
import { EventTable } from '../case/trials/EventTable.tsx';
import { GravityCheck } from '../case/trials/GravityCheck.tsx';
import { MeasureTables } from '../case/trials/MeasureTables.tsx';
import { metresPerUnit } from '../case/trials/stage.ts';
import { lacksForProposals, Proposals } from '../case/trials/Proposals.tsx';
import { ReleaseAndRise } from '../case/trials/ReleaseAndRise.tsx';
import { Ribbon } from '../case/trials/ribbon/Ribbon.tsx';
import { partsOf, timelineOf } from '../case/trials/timeline.ts';
import { useProposals } from '../case/trials/useProposals.ts';
import { useCase } from '../case/useCase.ts';
import { useEdit } from '../case/useEdit.ts';
import { FilmFacts } from './FilmFacts.tsx';
import type { Film } from './film.ts';
import type { FrameStore } from './frameStore.ts';
import { PlaneDrawing } from './plane/PlaneDrawing.tsx';
import { PlaneStep } from './plane/PlaneStep.tsx';
import { usePlane } from './plane/usePlane.ts';
import { PointsStep } from './PointsStep.tsx';
import { RepeatPanel } from './RepeatPanel.tsx';
import { useRepeats } from './useRepeats.ts';
import { putSamples, removeSample } from './pointEdits.ts';
import { pointLabel } from './pointNames.ts';
import { type DrawnPoint, Stage } from './Stage.tsx';
import { Steps } from './Steps.tsx';
import { type Step, stepNeeds, STEPS } from './stepNeeds.ts';
import { Transport } from './Transport.tsx';
import { contactSheet } from './stills/contactSheet.ts';
import { drawStill, type StillDrawing } from './stills/drawStill.ts';
import { StillPanel } from './stills/StillPanel.tsx';
import { SuggestedPoints } from './suggest/SuggestedPoints.tsx';
import { SuggestPanel } from './suggest/SuggestPanel.tsx';
import { confirmEdits, openSuggestions } from './suggest/confirmEdits.ts';
import { useSuggester } from './suggest/useSuggester.ts';
import { usePicture } from './usePicture.ts';
import { useTracker } from './useTracker.ts';

/** Stage and ribbon, and beside them the five steps. What a click on the picture does follows from the step at hand. */
export function Bench(props: {
  trial: MovementTrial;
  film: Film;
  frames: FrameStore;
  source: { readonly href: string; readonly name: string };
}) {
  const { trial, film, frames, source } = props;
  const { file } = useCase();
  const edit = useEdit();
  const movement = movementOf(file, trial.movementId);
  const { events, tracks, entered } = useMemo(() => partsOf(file, trial.id), [file, trial.id]);
  const standing = { trial, movement, tracks, events };
  const [step, setStep] = useState<Step>(() => STEPS.find((one) => stepNeeds(one, standing) !== '') ?? 'measures');
  const [frame, setFrame] = useState(0);
  const [active, setActive] = useState<string>(BALL);
  const [advances, setAdvances] = useState(true);
  const plane = usePlane(trial);
  const proposals = useProposals(trial);
  const [loopPhase, setLoopPhase] = useState<string | null>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const shown = usePicture(canvas, film, frames, frame);

  const last = film.times.length - 1;
  // Without a capture rate the film's own time is shown, as such.
  const clock = useMemo(
    () => frameClock({ ...trial, captureRateHz: trial.captureRateHz ?? film.pace.rateHz }),
    [trial, film],
  );
  const playheadS = clock === null ? null : clock.timeOf(frame);
  const goTo = useCallback((to: number) => setFrame(Math.min(last, Math.max(0, Math.round(to)))), [last]);
  const seek = (timeS: number) => {
    if (clock !== null) goTo(clock.frameAt(timeS));
  };

  const repeats = useRepeats(trial.id, tracks, goTo);
  const points = useMemo(() => {
    const drawn = drawnIn(tracks, shown.frame);
    if (repeats.point === null) return drawn;
    const again = { point: repeats.point, label: pointLabel(repeats.point), isByHand: true };
    const others = drawn.filter(({ point }) => point !== repeats.point);
    return repeats.held === null ? others : [...others, { ...again, ...repeats.held }];
  }, [tracks, shown.frame, repeats.point, repeats.held]);
  const here = points.find(({ point }) => point === active) ?? null;
  const target = { trialId: trial.id, point: active, tracks, newId };
  const put = (place: Place) => {
    if (shown.frame !== frame) return;
    const inside = { x: clamp(place.x, film.width), y: clamp(place.y, film.height) };
    edit(putSamples(target, 'by-hand', [[frame, rounded(inside.x), rounded(inside.y)]]));
  };
  const tracker = useTracker(trial.id, source, goTo);
  const suggester = useSuggester(source);
  const suggestions = openSuggestions(suggester.found.get(shown.frame ?? -1), tracks);
  const openFrames = useMemo(
    () =>
      [...suggester.found.values()].filter((one) => openSuggestions(one, tracks).length > 0).map((one) => one.frame),
    [suggester.found, tracks],
  );
  const confirm = (from: number, to: number, of: string | null = null) => {
    const frames = [...suggester.found.values()].filter((one) => one.frame >= from && one.frame <= to);
    edit(confirmEdits(trial.id, tracks, frames, of, newId));
  };

  const place = (at: Place) => {
    if (step === 'plane') plane.place(pixel(at));
    else if (repeats.point !== null) {
      if (shown.frame === frame) repeats.place(at, frame);
    } else {
      put(at);
      if (advances) goTo(frame + 1);
    }
  };
  /** Where Enter puts the point: where it is suggested, else where it was in the nearest frame, else in the middle. */
  const enter = () => {
    const near = tracks
      .filter(({ point }) => point === active)
      .flatMap(({ samples }) => samples)
      .toSorted(([a], [b]) => Math.abs(a - frame) - Math.abs(b - frame))[0];
    if (step === 'points' && repeats.point !== null) repeats.enter({ x: film.width / 2, y: film.height / 2 }, frame);
    else if (step === 'points' && suggestions.some(({ point }) => point === active)) confirm(frame, frame, active);
    else if (step === 'points' && here === null)
      put(near === undefined ? { x: film.width / 2, y: film.height / 2 } : { x: near[1], y: near[2] });
  };
  const remove = () => repeats.point === null && edit(removeSample(tracks, active, frame));

  // Kept while only the playhead moves: what is drawn from it then need not be drawn again.
  const timeline = useMemo(() => timelineOf(trial, movement, events, tracks), [trial, movement, events, tracks]);
  const filmEndS = clock === null ? 0 : clock.timeOf(last);
  const ribbon = { ...timeline, fromS: Math.min(0, timeline.fromS), toS: Math.max(filmEndS, timeline.toS) };

  const drawingAt = (at: number): StillDrawing => ({
    points: drawnIn(tracks, at),
    path: joinTracks(tracks.filter(({ point }) => point === active)).flatMap(({ samples }) =>
      samples.map(([, x, y]) => ({ x, y })),
    ),
    metresPerPixel: metresPerUnit(trial.calibration),
  });
  const cells =
    clock === null
      ? []
      : timeline.events.map(({ label, timeS }) => {
          const at = Math.min(last, Math.max(0, Math.round(clock.frameAt(timeS))));
          return { frame: at, words: `${label}, ${toDecimals(timeS, 3)} s`, drawing: drawingAt(at) };
        });
  const looped = timeline.phases.find(({ id }) => id === loopPhase);

  const bodies: Readonly<Record<Step, ReactNode>> = {
    clip: (
      <>
        <FilmFacts trial={trial} film={film} />
        <ClipFacts trial={trial} />
      </>
    ),
    plane: (
      <PlaneStep
        trial={trial}
        hasPoints={tracks.length > 0}
        picker={{ aim: plane.aim, onAim: plane.onAim, width: film.width, height: film.height }}
      />
    ),
    points: (
      <PointsStep
        tracks={tracks}
        active={active}
        onActive={setActive}
        advances={advances}
        onAdvances={setAdvances}
        isHere={here !== null}
        onRemove={remove}
        tracking={tracker.words}
        tracked={tracker.outcome}
        onTrack={(way, halfPx) =>
          here !== null && tracker.start({ point: active, frame, here, step: way, halfPx, last })
        }
        onStop={tracker.stop}
        onLook={goTo}
      >
        <SuggestPanel
          frame={frame}
          last={last}
          openHere={suggestions.length}
          openFrames={openFrames}
          words={suggester.words}
          outcome={suggester.outcome}
          onStart={suggester.start}
          onStop={suggester.stop}
          onConfirm={confirm}
          onClear={suggester.clear}
        />
        <RepeatPanel trial={trial} tracks={tracks} active={active} repeats={repeats} />
      </PointsStep>
    ),
    events: (
      <>
        <Proposals
          trial={trial}
          proposals={proposals}
          lacks={lacksForProposals(trial, tracks.length > 0)}
          onSeek={seek}
        />
        <EventTable
          trial={trial}
          movement={movement}
          events={events}
          playheadS={trial.captureRateHz === null ? null : playheadS}
          onSeek={seek}
        />
      </>
    ),
    measures: (
      <>
        <GravityCheck trial={trial} />
        <ReleaseAndRise trial={trial} />
        <MeasureTables trial={trial} movement={movement} entered={entered} />
        <StillPanel
          trial={trial}
          timeS={playheadS}
          draw={() =>
            canvas.current === null || shown.frame !== frame ? null : drawStill(canvas.current, drawingAt(frame))
          }
          sheet={cells.length === 0 ? null : () => contactSheet(film, frames, cells)}
          onSeek={seek}
        />
      </>
    ),
  };

  return (
    <div className="bench-columns">
      <section className="bench-main" aria-label="Stage and ribbon">
        <Stage
          canvas={canvas}
          width={film.width}
          height={film.height}
          shownFrame={shown.frame}
          label={`Stage, frame ${frame}: ${counted(points.length, 'point')}`}
          points={points}
          active={step === 'points' ? active : null}
          drawing={
            <>
              <PlaneDrawing trial={trial} unit={film.width / 640} />
              {step === 'points' && <SuggestedPoints points={suggestions} unit={film.width / 640} />}
            </>
          }
          isPlacing={step === 'points' || (step === 'plane' && plane.aim !== null)}
          onPlace={place}
          onEnter={enter}
          onNudge={(by) => {
            if (repeats.point !== null) repeats.nudge(by);
            else if (here !== null) put({ x: here.x + by.x, y: here.y + by.y });
          }}
          onStep={(by) => goTo(frame + by)}
          onRemove={remove}
        />
        {shown.problem !== null && (
          <p className="questioned" role="alert">
            {shown.problem}
          </p>
        )}
        <Transport
          frame={frame}
          shownFrame={shown.frame}
          count={film.times.length}
          clock={clock}
          isTrueRate={trial.captureRateHz !== null}
          loop={
            looped === undefined || clock === null ? null : [clock.frameAt(looped.fromS), clock.frameAt(looped.toS)]
          }
          onFrame={goTo}
        />
        <Ribbon
          trial={trial}
          timeline={ribbon}
          proposals={proposals.map(({ event, label, timeS, uS }) => ({ id: event, label, timeS, uS }))}
          rateHz={trial.captureRateHz === null ? null : (clock?.rateHz ?? null)}
          playheadS={playheadS}
          onSeek={seek}
          loop={{ phase: loopPhase, onPhase: setLoopPhase }}
        />
      </section>
      <Steps step={step} onStep={setStep} standing={standing} behind={step === 'measures'}>
        {bodies[step]}
      </Steps>
    </div>
  );
}

/** The points of one frame; where two tracks speak of it, the one placed by a person last in the list wins. */
function drawnIn(tracks: ReturnType<typeof partsOf>['tracks'], frame: number | null): readonly DrawnPoint[] {
  if (frame === null) return [];
  const found = tracks.flatMap(({ point, origin, samples }) => {
    const sample = samples.find(([at]) => at === frame);
    if (sample === undefined) return [];
    return [{ point, label: pointLabel(point), isByHand: origin !== 'tracked', x: sample[1], y: sample[2] }];
  });
  return [
    ...new Map(
      found.toSorted((a, b) => Number(a.isByHand) - Number(b.isByHand)).map((one) => [one.point, one]),
    ).values(),
  ];
}

function clamp(value: number, size: number): number {
  return Math.min(size - 1, Math.max(0, value));
}

/** A hundredth of a pixel is far below what anyone can see. */
function rounded(value: number): number {
  return Math.round(value * 100) / 100;
}

function pixel({ x, y }: Place): { xPx: number; yPx: number } {
  return { xPx: rounded(x), yPx: rounded(y) };
}
