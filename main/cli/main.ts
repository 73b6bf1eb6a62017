import { type ParseArgsConfig, parseArgs } from 'node:util';
import { DomainError, type ErrorCode, toFailure } from '../../shared/errors.ts';
import { storeFolder } from '../hosts/storeFolder.ts';
import type { Service } from '../service.ts';
import { type Command, type Output, UsageError } from './command.ts';
import { COMMANDS } from './commands.ts';
import { helpOutput } from './help.ts';

/** 0 done, 2 usage, 3 the input is bad and nothing was changed, 4 refused for safety or integrity; 1 a fault of ours. */
const EXIT = { done: 0, fault: 1, usage: 2, badInput: 3, refused: 4 } as const;
const REFUSED: readonly ErrorCode[] = [
  'refused-for-safety',
  'store-locked',
  'store-unwritable',
  'store-newer',
  'store-corrupt',
];

const wantsJson = process.argv.includes('--json');
const words = process.argv.slice(2).filter((word) => word !== '--json');
try {
  const output = await run(words);
  process.stdout.write(wantsJson ? `${JSON.stringify(output.json, null, 2)}\n` : `${output.lines.join('\n')}\n`);
  process.exitCode = output.exitCode ?? EXIT.done;
} catch (thrown) {
  process.exitCode = complain(thrown);
}

async function run(words: readonly string[]): Promise<Output> {
  const spoken = words.filter((word) => !word.startsWith('-')).join(' ');
  if (spoken === '' || spoken === 'help') return helpOutput(COMMANDS);
  if (words[0] === 'help') {
    return helpOutput(COMMANDS.filter(({ name }) => `${name} `.startsWith(`${spoken.slice('help '.length)} `)));
  }
  // The longest name that fits: `flight fit` before `flight`.
  const command = COMMANDS.filter(({ name }) => `${words.join(' ')} `.startsWith(`${name} `)).toSorted(
    (a, b) => b.name.length - a.name.length,
  )[0];
  if (command === undefined) throw new UsageError(`There is no command “${spoken}”. Try: help`);
  const { values, positionals } = parse(command, words.slice(command.name.split(' ').length));
  if (values['help'] === true) return helpOutput([command]);
  const most = command.words + (command.mayFollow ?? 0);
  if (positionals.length < command.words || positionals.length > most)
    throw new UsageError(`Usage: ${command.name} ${command.usage}`);
  const opened: Service[] = [];
  try {
    return await command.run({
      words: positionals,
      options: values,
      openStore: async () => {
        const named = values['folder'];
        const folder = storeFolder({ folder: typeof named === 'string' ? named : undefined });
        // Loaded only by those who need it: most of the start-up time.
        const { openService } = await import('../service.ts');
        const service = await openService({ folder, host: 'command line' });
        opened.push(service);
        return service;
      },
    });
  } finally {
    for (const service of opened) await service.close();
  }
}

function parse(command: Command, args: readonly string[]) {
  const config = {
    args: withSignedNumbers(args),
    options: { ...command.options, folder: { type: 'string' }, help: { type: 'boolean' } },
    allowPositionals: true,
  } as const satisfies ParseArgsConfig;
  try {
    const { values, positionals } = parseArgs(config);
    return { values: values as Record<string, string | boolean | undefined>, positionals };
  } catch (thrown) {
    throw new UsageError(`${(thrown as Error).message}\nUsage: ${command.name} ${command.usage}`);
  }
}

/** `--angle -3` and `-1` are a value and a word, not options: a number may have a sign. */
function withSignedNumbers(args: readonly string[]): string[] {
  const before: string[] = [];
  const signed: string[] = [];
  for (const word of args) {
    const option = before.at(-1) ?? '';
    if (!/^-[\d.]/.test(word)) before.push(word);
    else if (/^--[\w-]+$/.test(option)) before[before.length - 1] = `${option}=${word}`;
    else signed.push(word);
  }
  return signed.length === 0 ? before : [...before, '--', ...signed];
}

/** Says what went wrong on standard error; a program that asked for JSON gets it as its one document too. */
function complain(thrown: unknown): number {
  const isUsage = thrown instanceof UsageError;
  const failure = toFailure(thrown);
  console.error(failure.path === null ? failure.message : `${failure.message} (at ${failure.path})`);
  if (wantsJson) {
    const code = isUsage ? 'usage' : failure.code;
    process.stdout.write(`${JSON.stringify({ error: { ...failure, code } }, null, 2)}\n`);
  }
  if (isUsage) return EXIT.usage;
  if (!(thrown instanceof DomainError)) return EXIT.fault;
  return REFUSED.includes(thrown.code) ? EXIT.refused : EXIT.badInput;
}
