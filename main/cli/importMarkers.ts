import path from 'node:path';
import { AXES, MARKER_UNITS, type MarkerReading, type MarkerUnit } from '../../shared/exchange/markerReading.ts';
import { plainLabel } from '../../shared/exchange/suggestPoints.ts';
import { sideOrNone } from '../../shared/model/parts.ts';
import { counted } from '../../shared/format/number.ts';
import type { Service } from '../service.ts';
import { ask } from './ask.ts';
import { choiceFrom, optionalNumber, type Output, readBytes, UsageError } from './command.ts';
import { findCase } from './findCase.ts';

const UNITS = Object.keys(MARKER_UNITS) as MarkerUnit[];

/** What `trial import` takes besides, for the markers of a C3D file. */
export const MARKER_OPTIONS = {
  side: { type: 'string' },
  date: { type: 'string' },
  points: { type: 'string' },
  forward: { type: 'string' },
  up: { type: 'string' },
  unit: { type: 'string' },
  'point-u': { type: 'string' },
} as const;

/** A trial from the markers of a C3D file: read as suggested, or as files with the same markers were, but for what is said. */
export async function importMarkers(
  service: Service,
  { caseName, fileName, movementId }: { caseName: string; fileName: string; movementId: string },
  options: Readonly<Record<string, string | boolean | undefined>>,
): Promise<Output> {
  const opened = await findCase(service, caseName);
  const file = { fileName: path.basename(fileName), base64: readBytes(fileName).toString('base64') };
  const {
    markers,
    reading: found,
    frames,
    rateHz,
  } = await ask(service, 'trial.previewMarkers', {
    file: { ...file, reading: null },
  });
  const reading: MarkerReading = {
    points: pointsSaid(options['points'], markers, found.points),
    forward: choiceFrom(options['forward'], '--forward', AXES, found.forward),
    up: choiceFrom(options['up'], '--up', AXES, found.up),
    unit: options['unit'] === undefined ? found.unit : choiceFrom(options['unit'], '--unit', UNITS),
  };
  const { trialId, warnings } = await ask(service, 'trial.importMarkers', {
    caseId: opened.case.id,
    file: { ...file, reading },
    movementId,
    side: choiceFrom(options['side'], '--side', sideOrNone.options, 'none'),
    filmedOn: String(options['date'] ?? new Date().toISOString().slice(0, 10)),
    pointUM: optionalNumber(options['point-u'], '--point-u'),
  });
  const taken = markers.map(({ label, framesSeen }, i) => ({
    marker: label,
    framesSeen,
    point: reading.points[i] ?? null,
  }));
  return {
    json: { trialId, frames, captureRateHz: rateHz, ...reading, points: taken, warnings },
    lines: [
      `Trial ${trialId} taken in: ${counted(frames, 'frame')} at ${rateHz} Hz.`,
      ...taken.flatMap(({ marker, point }) => (point === null ? [] : [`${marker}: ${point}`])),
      ...warnings.map((warning) => `Look at: ${warning}`),
    ],
  };
}

/** `LSHO=shoulder-left,HEAD=` over what was found; nothing after the sign leaves a marker out. */
function pointsSaid(
  text: string | boolean | undefined,
  markers: readonly { readonly label: string }[],
  found: MarkerReading['points'],
): MarkerReading['points'] {
  if (typeof text !== 'string') return found;
  const said = new Map(
    text.split(',').map((pair) => {
      const at = pair.lastIndexOf('=');
      if (at < 1) throw new UsageError(`--points needs MARKER=POINT with commas between, got “${pair}”.`);
      return [pair.slice(0, at).trim(), pair.slice(at + 1).trim()] as const;
    }),
  );
  const names = markers.map(({ label }) => plainLabel(label));
  const strange = [...said.keys()].find((name) => !names.includes(name));
  if (strange !== undefined) throw new UsageError(`--points names ${strange}, which is no marker of the file.`);
  return found.map((point, i) => {
    const one = said.get(names[i] as string);
    return one === undefined ? point : one === '' ? null : one;
  });
}
