import { counted } from '../../shared/format/number.ts';
import { c3dPlates } from '../exchange/c3d/c3dPlates.ts';
import { readC3d } from '../exchange/c3d/readC3d.ts';
import { type Command, readBytes } from './command.ts';

export const c3dInfo: Command = {
  name: 'c3d info',
  usage: 'FILE.c3d',
  does: 'what a C3D file holds: frames, rates, points, analog channels, force plates, events',
  words: 1,
  options: {},
  run({ words: [name = ''] }) {
    const file = readC3d(readBytes(name));
    const { point, analog, parameters, pointLabels, analogLabels, analogUnits, ...plain } = file;
    const plates = c3dPlates(file);
    const seen = pointLabels.map((label, p) => {
      const frames = Array.from({ length: file.frames }, (_, frame) => Number(point(frame, p) !== null));
      return { label, framesSeen: frames.reduce((sum, one) => sum + one, 0) };
    });
    const valid = seen.reduce((sum, { framesSeen }) => sum + framesSeen, 0);
    return {
      json: {
        ...plain,
        lastFrame: file.firstFrame + file.frames - 1,
        points: seen,
        validPointSamples: valid,
        invalidPointSamples: seen.length * file.frames - valid,
        analog: analog.map((samples, i) => ({
          label: analogLabels[i],
          unit: analogUnits[i],
          samples: samples.length,
          min: finite(samples.reduce((least, one) => Math.min(least, one), Number.POSITIVE_INFINITY)),
          max: finite(samples.reduce((most, one) => Math.max(most, one), Number.NEGATIVE_INFINITY)),
          mean: finite(samples.reduce((sum, one) => sum + one, 0) / samples.length),
        })),
        plates: plates.map(({ verticalN, reason, ...plate }) => ({
          ...plate,
          peakVerticalN: verticalN === null ? null : verticalN.reduce((most, force) => Math.max(most, force), 0),
          peakVerticalNReason: reason,
        })),
        parameters: [...parameters.keys()],
      },
      lines: [
        `${counted(file.frames, 'frame')} at ${file.pointRateHz} Hz, ${file.storedAs}, ${file.byteOrder} byte order`,
        `${counted(seen.length, 'point')}${file.units === '' ? '' : ` in ${file.units}`}: ${valid} of ${seen.length * file.frames} places known`,
        `${counted(analog.length, 'analog channel')}${analog.length === 0 ? '' : ` at ${file.analogRateHz} Hz`}`,
        ...plates.map(({ number, type, channels, verticalN, reason }) =>
          verticalN === null
            ? `Force plate ${number}, type ${type}: no vertical force, ${reason}`
            : `Force plate ${number}, type ${type}: ${channels.join(', ')}`,
        ),
        ...file.warnings.map((warning) => `Look at: ${warning}`),
      ],
    };
  },
};

function finite(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
