import type { Fact } from '../../assess/assessment.ts';
import { sentenceCase } from '../../format/letterCase.ts';
import { quantityText } from '../../format/number.ts';
import type { Quantity } from '../../quantity.ts';
import { isKnown } from '../../quantity.ts';
import type { Unit } from '../../units.ts';
import { beside } from '../blocks/beside.ts';
import type { Block } from '../blocks/block.ts';
import { equation } from '../blocks/equation.ts';
import { heading } from '../blocks/heading.ts';
import { paragraph } from '../blocks/paragraph.ts';
import { table } from '../blocks/table.ts';
import { plain, quantityRuns, type Runs, strong, symbolRuns } from '../runs.ts';
import { SIDE_WORDS, statusWords } from '../words.ts';
import { cite, type Writing } from './writing.ts';

/** Every computed number with its equation and the numbers put in; every recorded one in a table. Each once. */
export function workingAppendix(writing: Writing): Block[] {
  const entries = collect(writing);
  const computed = entries.filter(({ quantity }) => quantity.working.formula !== null);
  const recorded = entries.filter(({ quantity }) => quantity.working.formula === null);
  const unknown = writing.worked.flatMap((fact) =>
    fact.value.kind === 'unknown' ? [[fact.label, fact.value.reason]] : [],
  );
  if (entries.length === 0 && unknown.length === 0) return [];
  return [
    heading(2, 'Working'),
    paragraph(
      'How each number was obtained. ± is the standard uncertainty (JCGM 100). Numbers are shown to the place their uncertainty reaches; they were computed with all their digits.',
    ),
    ...grouped(computed).map((group) => oneGroup(writing, group)),
    ...(recorded.length === 0
      ? []
      : [
          table(
            'Numbers that were measured, entered or taken from a table',
            ['Number', 'Value', 'Uncertainty, source'],
            recorded.map(({ quantity, unit, of }) => [
              [...named(quantity), ...plain(of === null || quantity.working.name.endsWith(of) ? '' : `, ${of}`)],
              quantityRuns(quantity, unit),
              [...plain(uncertaintyWords(quantity)), ...sourceRuns(writing, quantity)],
            ]),
          ),
        ]),
    ...(unknown.length === 0 ? [] : [table('Numbers that are not known', ['Number', 'Why'], unknown)]),
  ];
}

interface Entry {
  readonly quantity: Quantity;
  readonly unit: Unit;
  /** Which trial, item or clip it belongs to, in words; null for something that went into another number. */
  readonly of: string | null;
}

/** Facts first, each followed by what went into it; a number that goes into two others is worked once. */
function collect({ file, worked }: Writing): Entry[] {
  const entries: Entry[] = [];
  const seen = new Set<string>();
  const add = (quantity: Quantity, unit: Unit, of: string | null, isInput = false) => {
    const { symbol, name, formula } = quantity.working;
    const key = [symbol, name, formula, quantity.value, quantity.unit, quantity.u].join('|');
    // Two trials may come to the very same number, and each shows its own.
    if (seen.has(isInput ? key : `${key}|${of}`)) return;
    seen.add(key).add(`${key}|${of}`);
    entries.push({ quantity, unit, of });
    // A constant belongs to no trial.
    for (const { quantity: input } of quantity.working.inputs) add(input, input.unit, input.u === 0 ? null : of, true);
  };
  for (const fact of worked) {
    if (fact.value.kind === 'number' && isKnown(fact.value.reading)) {
      add(fact.value.reading, fact.displayUnit ?? fact.value.reading.unit, recordWords(file, fact));
    }
  }
  return entries;
}

/** What a number stands for where several have one name: the trial, or the side. */
function recordWords(file: Writing['file'], { from, side }: Fact): string | null {
  const jump = file.jumpTrials.find((one) => one.id === from.id);
  if (jump !== undefined) return `trial ${jump.number}`;
  const trial = file.movementTrials.find((one) => one.id === from.id);
  const named = trial === undefined || file.movementTrials.length === 1 ? '' : trial.label;
  return [named, SIDE_WORDS[side]].filter((word) => word !== '').join(', ') || null;
}

/** Numbers found by one formula in one way, so that the formula is set once. */
function grouped(entries: readonly Entry[]): Entry[][] {
  const groups = new Map<string, Entry[]>();
  for (const entry of entries) {
    const { name, formula, variant, source } = entry.quantity.working;
    const key = [name, formula, variant, source?.cite].join('|');
    groups.set(key, [...(groups.get(key) ?? []), entry]);
  }
  return [...groups.values()];
}

function oneGroup(writing: Writing, group: readonly Entry[]): Block {
  const [first] = group as readonly [Entry];
  const { working } = first.quantity;
  const formula = working.formula ?? '';
  return beside(sentenceCase(working.name), [
    equation(formula),
    ...group.flatMap((entry) => [
      equation(formula, putIn(entry.quantity), {
        symbol: entry.quantity.working.symbol,
        words: quantityText(entry.quantity),
      }),
      paragraph(instanceRuns(entry), { style: 'quiet' }),
    ]),
    paragraph(
      [
        ...plain(working.variant === null ? '' : `${variantWords(working.variant)}. `),
        ...sourceRuns(writing, first.quantity),
      ],
      { style: 'quiet' },
    ),
  ]);
}

/** Numbers stand in an equation for what it gives; one to be solved for it, or fitted, is not equal to its answer. */
function putIn({ working: { formula, symbol, inputs } }: Quantity): Quantity['working']['inputs'] {
  return formula?.startsWith(`${symbol} =`) === true ? inputs : [];
}

/** A variant that starts by explaining a symbol keeps it as it is: a capital would be another symbol. */
function variantWords(variant: string): string {
  return /^[^\s:]+:/.test(variant) ? variant : sentenceCase(variant);
}

/** Which one, what went in with its uncertainty, and the result in the unit that people read. */
function instanceRuns({ quantity, unit, of }: Entry): Runs {
  const { symbol, inputs } = quantity.working;
  const said: Runs[] = [
    ...(unit === quantity.unit ? [] : [[...symbolRuns(symbol), ...plain(' is '), ...quantityRuns(quantity, unit)]]),
    ...(inputs.length === 0 ? [] : [[...plain('with '), ...putInRuns(inputs)]]),
    ...(quantity.u === null ? [plain(uncertaintyWords(quantity).trimEnd().replace(/\.$/, ''))] : []),
  ];
  if (said.length === 0) return strong(of === null ? '' : `${sentenceCase(of)}.`);
  return [
    ...strong(of === null ? '' : `${sentenceCase(of)}: `),
    ...said.flatMap((part, i) => [...plain(i === 0 ? '' : '; '), ...part]),
    ...plain('.'),
  ];
}

function putInRuns(inputs: Quantity['working']['inputs']): Runs {
  return inputs.flatMap((input, i) => [
    ...plain(i === 0 ? '' : ', '),
    ...symbolRuns(input.symbol),
    ...plain(' = '),
    ...quantityRuns(input.quantity),
  ]);
}

function named({ working }: Quantity): Runs {
  return [...symbolRuns(working.symbol), ...plain(`, ${working.name}`)];
}

function uncertaintyWords({ u, uReason, working }: Quantity): string {
  if (u === 0) return working.source === null ? 'taken as exact. ' : 'exact. ';
  if (u !== null) return '';
  return `no uncertainty: ${uReason ?? 'none was given'}. `;
}

function sourceRuns(writing: Writing, { working }: Quantity): Runs {
  if (working.source === null) return [];
  return [...plain(`${sentenceCase(statusWords(working.source))} `), ...cite(writing, [working.source])];
}
