import type { Fact } from '../../assess/assessment.ts';
import { type ForceDetail, forceDetails } from '../../assess/forceDetails.ts';
import { usualRange } from '../../assess/usualRange.ts';
import { lowerFirst, sentenceCase } from '../../format/letterCase.ts';
import { counted, formatDate, quantityText, type Quantified } from '../../format/number.ts';
import type { Unit } from '../../units.ts';
import { forceRecord } from '../figures/forceRecord.ts';
import { type SidePair, sidePairs } from '../figures/sidePairs.ts';
import { trialDots } from '../figures/trialDots.ts';
import type { Battery, BatteryItem } from '../../knowledge/screening/battery.ts';
import { takenWithWords } from '../../format/takenWithWords.ts';
import { trialsWords } from '../../format/trialsWords.ts';
import { batteryOf } from '../../knowledge/screening/index.ts';
import { measureById } from '../../knowledge/measures/index.ts';
import type { Athlete } from '../../model/athlete.ts';
import type { JumpTest, JumpTrial } from '../../model/jump.ts';
import type { ScreeningResult, ScreeningSession } from '../../model/screening.ts';
import { isKnown, type Quantity } from '../../quantity.ts';
import type { Block } from '../blocks/block.ts';
import { heading } from '../blocks/heading.ts';
import { paragraph } from '../blocks/paragraph.ts';
import { type Column, right, table } from '../blocks/table.ts';
import { dotted, plain, quantityRuns, quiet, type Runs } from '../runs.ts';
import { ARMS_WORDS, GRADE_WORDS, JUMP_KIND_WORDS, JUMP_METHOD_WORDS, SIDE_WORDS, statusWords } from '../words.ts';
import { cite, type Writing } from './writing.ts';

const NOT_RECORDED = quiet('not recorded');

/** Jumps and measured tests as figures only, under a heading of their own; nothing where none was measured. */
export function testFigures({ file, assessment }: Writing, title: string): Block[] {
  const numbers = assessment.facts.flatMap(numberOf);
  const drawn = [
    ...file.jumpTests.toSorted(byDay((test) => test.heldOn)).flatMap((test) => {
      const trials = trialsOf(file, test);
      return dotsOf(
        test,
        trials,
        numbers.filter(({ fact }) => trials.some(({ id }) => id === fact.from.id)),
      );
    }),
    ...file.screeningSessions.toSorted(byDay((session) => session.heldOn)).flatMap((session) =>
      pairsOf(
        batteryOf(session),
        file.screeningResults.filter((result) => result.sessionId === session.id),
        assessment.facts,
        session.heldOn,
        (item) => usualRange(item, file.athlete, session.heldOn),
      ),
    ),
  ];
  return drawn.length === 0 ? [] : [heading(2, title), ...drawn];
}

function trialsOf({ jumpTrials }: Writing['file'], { id }: JumpTest): JumpTrial[] {
  return jumpTrials.filter((trial) => trial.testId === id).toSorted((a, b) => a.number - b.number);
}

/** Jumps: every trial with what was recorded and computed, pain in a column of its own. */
export function jumps(writing: Writing): Block[] {
  const tests = writing.file.jumpTests.toSorted(byDay((test) => test.heldOn));
  if (tests.length === 0) return [];
  return [heading(2, 'Jumps'), ...tests.flatMap((test) => oneJumpTest(writing, test))];
}

/** Jumps as one table a test: what its trials come to together, and the worst pain. */
export function jumpsInShort({ file, assessment }: Writing): Block[] {
  const tests = file.jumpTests.toSorted(byDay((test) => test.heldOn));
  const numbers = assessment.facts.flatMap(numberOf);
  const tables = tests.map((test) => {
    const trials = trialsOf(file, test).filter((trial) => !trial.isSetAside);
    const pains = trials.flatMap(({ painNrs }) => (painNrs === null ? [] : [painNrs]));
    const caption = dotted(
      `${JUMP_KIND_WORDS[test.kind]}, ${JUMP_METHOD_WORDS[test.method]}`,
      formatDate(test.heldOn),
      counted(trials.length, 'jump'),
      pains.length === 0 ? 'pain not recorded' : `worst pain ${Math.max(...pains)} of 10`,
    );
    return table(
      caption,
      ['Measure', right('Value'), 'How'],
      numbers
        .filter(({ fact }) => fact.from.id === test.id && !fact.measure.startsWith('pain.'))
        .map((one) => [one.fact.label, shown(one), one.fact.provenance]),
    );
  });
  const filled = tables.filter(({ rows }) => rows.length > 0);
  return filled.length === 0 ? [] : [heading(2, 'Jumps'), ...filled];
}

function oneJumpTest(writing: Writing, test: JumpTest): Block[] {
  const { file, assessment, evidence } = writing;
  const trials = trialsOf(file, test);
  // Pain has a column of its own.
  const numbers = assessment.facts.filter((fact) => !fact.measure.startsWith('pain.')).flatMap(numberOf);
  const ofTrials = numbers.filter(({ fact }) => trials.some((trial) => trial.id === fact.from.id));
  const measures = [...new Set(ofTrials.map(({ fact }) => fact.measure))];
  const cell = (trial: JumpTrial, measure: string): Runs => {
    const found = ofTrials.find(({ fact }) => fact.from.id === trial.id && fact.measure === measure);
    return found === undefined ? NOT_RECORDED : shown(found);
  };
  const first = measures.slice(0, WITH_PAIN);
  const together = numbers.filter(({ fact }) => fact.from.id === test.id);
  return [
    heading(3, `${JUMP_KIND_WORDS[test.kind]}, ${JUMP_METHOD_WORDS[test.method]}`),
    paragraph(
      quiet(
        dotted(
          formatDate(test.heldOn),
          test.arms === null ? 'arms not recorded' : ARMS_WORDS[test.arms],
          test.shoes === null ? 'shoes not recorded' : test.shoes ? 'in shoes' : 'barefoot',
          test.device === '' ? 'device not recorded' : test.device,
          test.warmUp === '' ? 'warm-up not recorded' : `warm-up: ${test.warmUp}`,
          test.frameRateHz === null
            ? null
            : `${test.frameRateHz} ${test.method === 'contact-mat' ? 'samples' : 'frames'} a second`,
          test.dropHeightM === null
            ? null
            : `box ${quantityText({ value: test.dropHeightM, unit: 'm', u: null }, 'cm')}`,
        ),
      ),
    ),
    ...(trials.length === 0
      ? [paragraph('No trials recorded.')]
      : [
          table(
            'Trial by trial; ± is the standard uncertainty',
            ['Trial', ...heads(first), right('Pain of 10'), 'Remark'],
            trials.map((trial) => [
              `Trial ${trial.number}`,
              ...first.map((id) => cell(trial, id)),
              painRuns(trial.painNrs),
              remark(trial),
            ]),
          ),
        ]),
    ...dotsOf(test, trials, ofTrials),
    ...recordsOf(trials, evidence),
    ...chunked(measures.slice(WITH_PAIN), COLUMNS_AT_MOST).map((some) =>
      table(
        'Further measures; ± is the standard uncertainty',
        ['Trial', ...heads(some)],
        trials.map((trial) => [`Trial ${trial.number}`, ...some.map((id) => cell(trial, id))]),
      ),
    ),
    ...behindHeights(writing, trials),
    ...(together.length === 0
      ? []
      : [
          table(
            'Taken together',
            ['Measure', right('Value'), 'How'],
            together.map((one) => [one.fact.label, shown(one), one.fact.provenance]),
          ),
        ]),
  ];
}

/** Phases, loading and landing of the force records, a row each: there are more of them than fit side by side. */
function behindHeights(writing: Writing, trials: readonly JumpTrial[]): Block[] {
  const known = trials.flatMap(({ number, force }) => {
    const details = force === null ? [] : forceDetails(force);
    return details.length === 0 ? [] : [{ number, details }];
  });
  return chunked(known, TRIALS_AT_MOST).map((some) => {
    const rows = new Map(some.flatMap(({ details }) => details).map((detail) => [detail.label, detail]));
    return table(
      'Behind the heights; ± is the standard uncertainty',
      ['Measure', ...some.map(({ number }) => right(`Trial ${number}`)), 'How'],
      [...rows.values()].map(({ label, how, source }) => [
        label,
        ...some.map(({ details }) => detailRuns(details.find((detail) => detail.label === label))),
        [
          ...plain(sentenceCase(how === '' ? statusWords(source) : `${how}, ${statusWords(source)}`)),
          ...plain(' '),
          ...cite(writing, [source]),
        ],
      ]),
    );
  });
}

function detailRuns(detail: ForceDetail | undefined): Runs {
  if (detail === undefined || detail.quantity === null) return quiet('not known');
  const remark = detail.remark === '' ? [] : plain(`, ${detail.remark}`);
  return [...quantityRuns(detail.quantity, detail.displayUnit), ...remark];
}

/** Force records of the trials that have one. */
function recordsOf(trials: readonly JumpTrial[], { traces }: Writing['evidence']): Block[] {
  return trials.flatMap(({ id, number, force }) => {
    const trace = traces[id];
    return trace === undefined || force === null ? [] : (forceRecord(`Trial ${number}`, trace, force) ?? []);
  });
}

/** Every trial's height as a dot, by the first kind of height there is. */
function dotsOf({ heldOn }: JumpTest, trials: readonly JumpTrial[], numbers: readonly KnownNumber[]): Block[] {
  const first = numbers.find(({ fact }) => fact.measure.startsWith('jump.height.'));
  if (first === undefined) return [];
  const unit = first.fact.displayUnit ?? first.reading.unit;
  const dots = trials.flatMap((trial) => {
    const found = numbers.find(({ fact }) => fact.from.id === trial.id && fact.measure === first.fact.measure);
    return found === undefined
      ? []
      : [{ label: `Trial ${trial.number}`, quantity: found.reading, isSetAside: trial.isSetAside }];
  });
  const drawn = trialDots(`${first.fact.label}, ${formatDate(heldOn)}`, dots, unit);
  return drawn === null ? [] : [drawn];
}

/** Beside each other, with room for what was done. */
const TRIALS_AT_MOST = 3;
/** Wider tables are parted; the first also holds pain and remark. */
const COLUMNS_AT_MOST = 4;
const WITH_PAIN = 2;

function heads(measures: readonly string[]): Column[] {
  return measures.map((id) => right(measureById(id)?.label ?? id));
}

function chunked<T>(list: readonly T[], size: number): T[][] {
  return Array.from({ length: Math.ceil(list.length / size) }, (_, i) => list.slice(i * size, (i + 1) * size));
}

function remark(trial: JumpTrial): string {
  return dotted(trial.isSetAside ? 'set aside, not counted' : null, trial.note);
}

/** Screening: one row an item and side; grades are words, pain is its own column. */
export function screening({ file, assessment }: Writing): Block[] {
  const sessions = file.screeningSessions.toSorted(byDay((session) => session.heldOn));
  if (sessions.length === 0) return [];
  return [
    heading(2, 'Screening'),
    ...sessions.flatMap((session) => oneSession(session, file.screeningResults, assessment.facts, file.athlete)),
  ];
}

function oneSession(
  session: ScreeningSession,
  all: readonly ScreeningResult[],
  facts: readonly Fact[],
  athlete: Athlete,
): Block[] {
  const results = all.filter((result) => result.sessionId === session.id);
  const battery = batteryOf(session);
  const order = battery?.items.map((item) => item.id) ?? [];
  const rows = results
    .toSorted((a, b) => order.indexOf(a.itemId) - order.indexOf(b.itemId) || SIDE_ORDER[a.side] - SIDE_ORDER[b.side])
    .map((result) => [
      itemIn(battery, result)?.label ?? result.itemId,
      SIDE_WORDS[result.side],
      outcomeRuns(result, itemIn(battery, result), facts),
      painRuns(result.painNrs),
      [takenWithWords(result), result.note].filter((words) => words !== '').join('; '),
    ]);
  const caption = dotted(
    `${battery?.label ?? session.batteryId}, version ${session.batteryVersion}`,
    formatDate(session.heldOn),
    session.rater === '' ? 'rater not recorded' : `rated by ${session.rater}`,
  );
  return rows.length === 0
    ? [paragraph(quiet(`${caption} · no results recorded`))]
    : [
        table(caption, ['Test', 'Side', right('Result'), right('Pain of 10'), 'Note'], rows),
        ...pairsOf(battery, results, facts, session.heldOn, (item) => usualRange(item, athlete, session.heldOn)),
      ];
}

/** Measured tests of both sides, next to each other. */
function pairsOf(
  battery: Battery | null,
  results: readonly ScreeningResult[],
  facts: readonly Fact[],
  heldOn: string,
  rangeOf: (item: BatteryItem) => BatteryItem['reference'],
): Block[] {
  const taken = new Map(results.map((result) => [result.itemId, itemIn(battery, result)]));
  const items = [...taken.values()].filter((item) => item !== null);
  const pairs = items.flatMap((item): SidePair[] => {
    const { unit, displayUnit } = item;
    const reference = rangeOf(item);
    if (unit === null || !item.hasSides) return [];
    const of = (side: 'left' | 'right'): Quantified | null => {
      const result = results.find((one) => one.itemId === item.id && one.side === side);
      return result === undefined || result.valueSi === null ? null : quantityOf(result, item, unit, facts);
    };
    const [left, right] = [of('left'), of('right')];
    if (left === null && right === null) return [];
    return [
      {
        label: item.label,
        left,
        right,
        unit: displayUnit ?? unit,
        usual: reference === null ? null : [reference.low, reference.high],
      },
    ];
  });
  const groups = items.flatMap((item) => {
    const reference = rangeOf(item);
    return reference === null ? [] : [`${lowerFirst(reference.group)} (${reference.source.cite})`];
  });
  const ground =
    groups.length === 0 ? '' : ` Hatched: a usual range, never a pass mark – ${[...new Set(groups)].join('; ')}.`;
  const drawn = sidePairs(
    pairs,
    `Left and right on ${formatDate(heldOn)} with the standard uncertainty, each test on its own axis from zero.${ground}`,
  );
  return drawn === null ? [] : [drawn];
}

function quantityOf(result: ScreeningResult, item: BatteryItem, unit: Unit, facts: readonly Fact[]): Quantified {
  const fact = facts
    .flatMap(numberOf)
    .find((one) => one.fact.from.id === result.id && one.fact.measure === item.measure);
  return fact?.reading ?? { value: result.valueSi ?? 0, unit, u: null };
}

const SIDE_ORDER = { left: 0, right: 1, none: 2 } as const;

function itemIn(battery: Battery | null, { itemId }: ScreeningResult): BatteryItem | null {
  return battery?.items.find(({ id }) => id === itemId) ?? null;
}

function outcomeRuns(result: ScreeningResult, item: BatteryItem | null, facts: readonly Fact[]): Runs {
  if (result.grade !== null) return plain(GRADE_WORDS[result.grade]);
  if (result.isPositive !== null) return plain(result.isPositive ? 'it hurt' : 'did not hurt');
  if (result.valueSi === null || item === null || item.unit === null) return NOT_RECORDED;
  const shownIn = item.displayUnit ?? item.unit;
  const value = quantityRuns(quantityOf(result, item, item.unit, facts), shownIn);
  return result.trialsSi === null
    ? value
    : [...value, ...quiet(` (${trialsWords(result.trialsSi, item.unit, shownIn)})`)];
}

function painRuns(nrs: number | null): Runs {
  return nrs === null ? NOT_RECORDED : [{ text: String(nrs), isTabular: true }];
}

interface KnownNumber {
  readonly fact: Fact;
  readonly reading: Quantity;
}

function numberOf(fact: Fact): KnownNumber[] {
  return fact.value.kind === 'number' && isKnown(fact.value.reading) ? [{ fact, reading: fact.value.reading }] : [];
}

function shown({ fact, reading }: KnownNumber): Runs {
  return quantityRuns(reading, fact.displayUnit ?? reading.unit);
}

function byDay<T>(day: (one: T) => string): (a: T, b: T) => number {
  return (a, b) => (day(a) < day(b) ? -1 : day(a) > day(b) ? 1 : 0);
}
