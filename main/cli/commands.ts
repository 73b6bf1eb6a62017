import type { Command } from './command.ts';
import { flight } from './flight.ts';
import { flightFit } from './flightFit.ts';
import { jumpForce } from './jumpForce.ts';
import { jumpTime } from './jumpTime.ts';

/** In the order help shows them. */
export const COMMANDS: readonly Command[] = [jumpTime, jumpForce, flight, flightFit];
