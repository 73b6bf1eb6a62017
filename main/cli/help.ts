import type { Command, Output } from './command.ts';

/** Every command with its usage, or one of them. */
export function helpOutput(commands: readonly Command[]): Output {
  return {
    json: { commands: commands.map(({ name, usage, does }) => ({ name, usage, does })) },
    lines: [
      'Caseframe keeps movement-assessment case files. Screening is not diagnosis; a licensed clinician decides.',
      '',
      ...commands.flatMap(({ name, usage, does }) => [`  ${name} ${usage}`, `      ${does}`]),
      '',
      'Each command also takes --json: one JSON document on standard output, messages on standard error.',
      'Commands that keep cases take --folder DIR for the store; otherwise they use your own.',
      'Exit codes: 0 done, 2 usage, 3 bad input and nothing changed, 4 refused for safety or integrity.',
    ],
  };
}
