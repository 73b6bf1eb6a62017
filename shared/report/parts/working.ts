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
import { plain, quantityRuns, quiet, type Runs, strong, symbolRuns } from '../runs.ts';
import { SOURCE_STATUS_WORDS } from '../words.ts';
import { cite, sentenceCase, type Writing } from './writing.ts';

/** Every computed number with its equation and the numbers put in; every recorded one in a table. Each once. */
export function workingAppendix(writing: Writing): Block[] {
  const entries = collect(writing);
  const computed = entries.filter(({ quantity }) => quantity.working.formula !== null);
  const recorded = entries.filter(({ quantity }) => quantity.working.formula === null);
  const unknown = writing.assessment.facts.flatMap((fact) =>
    fact.value.kind === 'unknown' ? [[fact.label, fact.value.reason]] : [],
  );
  if (entries.length === 0 && unknown.length === 0) return [];
  return [
    heading(2, 'Working'),
    paragraph(
      'How each number was obtained. ± is the standard uncertainty (JCGM 100). Numbers are shown to the place their uncertainty reaches; they were computed with all their digits.',
    ),
    ...computed.map((entry) => oneEntry(writing, entry)),
    ...(recorded.length === 0
      ? []
      : [
          table(
            'Numbers that were measured, entered or taken from a table',
            ['Number', 'Value', 'Uncertainty, source'],
            recorded.map(({ quantity, unit }) => [
              named(quantity),
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
}

/** Facts first, each followed by what went into it; a number that is used twice is worked once. */
function collect({ assessment }: Writing): Entry[] {
  const entries = new Map<string, Entry>();
  const add = (quantity: Quantity, unit: Unit) => {
    const { symbol, name, formula } = quantity.working;
    const key = [symbol, name, formula, quantity.value, quantity.unit, quantity.u].join('|');
    if (entries.has(key)) return;
    entries.set(key, { quantity, unit });
    for (const input of quantity.working.inputs) add(input.quantity, input.quantity.unit);
  };
  for (const { value, displayUnit } of assessment.facts) {
    if (value.kind === 'number' && isKnown(value.reading)) add(value.reading, displayUnit ?? value.reading.unit);
  }
  return [...entries.values()];
}

function oneEntry(writing: Writing, { quantity, unit }: Entry): Block {
  const { working } = quantity;
  return beside(sentenceCase(working.name), [
    equation(working.formula ?? ''),
    ...(working.inputs.length === 0 ? [] : [equation(working.formula ?? '', working.inputs)]),
    paragraph([
      ...symbolRuns(working.symbol),
      ...plain(' = '),
      ...strong(quantityText(quantity)),
      ...(unit === quantity.unit ? [] : [...plain(', that is '), ...quantityRuns(quantity, unit)]),
    ]),
    paragraph(
      [
        ...plain(working.inputs.length === 0 ? '' : 'with '),
        ...working.inputs.flatMap(
          (input, i): Runs => [
            ...plain(i === 0 ? '' : ', '),
            ...symbolRuns(input.symbol),
            ...plain(' = '),
            ...quantityRuns(input.quantity),
          ],
        ),
      ],
      { style: 'quiet' },
    ),
    paragraph(
      [
        ...quiet(working.variant === null ? '' : `${sentenceCase(working.variant)}. `),
        ...quiet(quantity.u === null ? `${sentenceCase(uncertaintyWords(quantity))} ` : ''),
        ...sourceRuns(writing, quantity),
      ],
      { style: 'quiet' },
    ),
  ]);
}

function named({ working }: Quantity): Runs {
  return [...symbolRuns(working.symbol), ...plain(`, ${working.name}`)];
}

function uncertaintyWords({ u, uReason }: Quantity): string {
  if (u === 0) return 'exact. ';
  if (u !== null) return '';
  return `no uncertainty: ${uReason ?? 'none was given'}. `;
}

function sourceRuns(writing: Writing, { working }: Quantity): Runs {
  if (working.source === null) return [];
  return [...plain(`${sentenceCase(SOURCE_STATUS_WORDS[working.source.status])} `), ...cite(writing, [working.source])];
}
