import { flightHeight } from '../../shared/kernel/jump/flightHeight.ts';
import { flightTime } from '../../shared/kernel/jump/flightTime.ts';
import { takeoffVelocityFromFlightTime } from '../../shared/kernel/jump/takeoffVelocityFromFlightTime.ts';
import { type Command, numberFrom, optionalNumber } from './command.ts';
import { readingsToJson, readingsToLines } from './readings.ts';

export const jumpTime: Command = {
  name: 'jump time',
  usage: 'SECONDS [--fps HZ]',
  does: 'jump height from the time in the air; the camera’s frames a second give its uncertainty',
  words: 1,
  options: { fps: { type: 'string' } },
  run({ words, options }) {
    const time = flightTime(numberFrom(words[0], 'SECONDS'), optionalNumber(options['fps'], '--fps'));
    const rows = [
      { key: 'flightTime', label: 'Flight time', reading: time },
      { key: 'jumpHeight', label: 'Jump height', reading: flightHeight(time), shownIn: 'cm' },
      { key: 'takeoffVelocity', label: 'Take-off velocity', reading: takeoffVelocityFromFlightTime(time) },
    ] as const;
    return {
      json: { ...readingsToJson(rows), reference: 'take-off', method: 'flight-time' },
      lines: [
        ...readingsToLines(rows),
        'Height above take-off; reads high where the landing is more bent than the take-off.',
      ],
    };
  },
};
