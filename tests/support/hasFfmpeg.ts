import { spawnSync } from 'node:child_process';

/** Whether films can be made on this machine. */
export const hasFfmpeg = spawnSync('ffmpeg', ['-version']).status === 0;
