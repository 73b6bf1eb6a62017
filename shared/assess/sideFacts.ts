import { derive, type Derivation } from '../kernel/quantity/derive.ts';
import { regionGroup } from '../knowledge/regions.ts';
import type { CaseFile } from '../model/records.ts';
import type { Side, SideOrNone } from '../model/parts.ts';
import { isKnown, type Quantity } from '../quantity.ts';
import type { Unit } from '../units.ts';
import type { Fact, FactValue } from './assessment.ts';
import { standardError } from './factsFromScreening.ts';
import { computed, makeFact, number, unknown } from './makeFact.ts';

const source = { cite: 'Definition', status: 'convention' } as const;

/** Both sides of one measure, taken on one day. */
interface Pair {
  readonly left: Fact;
  readonly right: Fact;
}

/** Differences and ratios between the sides, where both were taken on the same day outside any movement. */
export function sideFacts(facts: readonly Fact[], file: CaseFile): Fact[] {
  const pairs = pairsByDay(facts);
  return [...pairs].flatMap(([day, byMeasure]) => {
    const pair = (measure: string): Pair | null => byMeasure.get(measure) ?? null;
    return [
      ...lungeDifference(pair('wblt.distance'), day),
      ...hopSymmetry(pair('hop.distance'), day, file),
      ...shoulderRotation(pair('shoulder.ir'), pair('shoulder.er'), day, file),
      ...shoulderStrength(pair('shoulder.erStrength'), pair('shoulder.irStrength'), day, file),
    ];
  });
}

function pairsByDay(facts: readonly Fact[]): Map<string, Map<string, Pair>> {
  const days = new Map<string, Map<string, Pair>>();
  for (const left of facts) {
    if (left.side !== 'left' || left.movement !== null || left.takenOn === null || left.phase !== null) continue;
    const right = facts.findLast(
      (one) =>
        one.side === 'right' && one.measure === left.measure && one.takenOn === left.takenOn && one.movement === null,
    );
    if (right === undefined) continue;
    const byMeasure = days.get(left.takenOn) ?? new Map<string, Pair>();
    days.set(left.takenOn, byMeasure.set(left.measure, { left, right }));
  }
  return days;
}

function lungeDifference(pair: Pair | null, day: string): Fact[] {
  if (pair === null) return [];
  const what = { symbol: 'Δd', name: 'lunge difference', unit: 'm', formula: 'Δd = |d_l - d_r|', source } as const;
  const value = between(what, { d_l: pair.left, d_r: pair.right }, ({ d_l, d_r }) => Math.abs(d_l - d_r));
  return [sideFact('wblt.diff', withItsOwnError('wblt.diff', value), pair.left, day, 'larger less smaller side')];
}

function hopSymmetry(pair: Pair | null, day: string, file: CaseFile): Fact[] {
  if (pair === null) return [];
  const injured = injuredLeg(file);
  if (injured === null) {
    const what = {
      symbol: 'LSI',
      name: 'hop symmetry',
      unit: '1',
      formula: 'LSI = min(d_l, d_r) / max(d_l, d_r)',
      source,
    } as const;
    const value = between(
      what,
      { d_l: pair.left, d_r: pair.right },
      ({ d_l, d_r }) => Math.min(d_l, d_r) / Math.max(d_l, d_r),
    );
    return [sideFact('hop.lsi', withItsOwnError('hop.lsi', value), pair.left, day, 'shorter over longer side')];
  }
  const [own, other] = injured === 'left' ? [pair.left, pair.right] : [pair.right, pair.left];
  const what = { symbol: 'LSI', name: 'hop symmetry', unit: '1', formula: 'LSI = d_i / d_o', source } as const;
  // More than the other side is full symmetry, and no fault.
  const value = between(what, { d_i: own, d_o: other }, ({ d_i, d_o }) => Math.min(1, d_i / d_o));
  return [sideFact('hop.lsi', withItsOwnError('hop.lsi', value), own, day, `injured side, ${injured}, over the other`)];
}

/** The one leg with an injury on file; null where there is none, or both. */
function injuredLeg(file: CaseFile): Side | null {
  const sides = new Set(
    file.injuries.filter((injury) => regionGroup(injury.region) === 'lower-limb').map((injury) => injury.side),
  );
  if (sides.has('left') === sides.has('right')) return null;
  return sides.has('left') ? 'left' : 'right';
}

function shoulderRotation(ir: Pair | null, er: Pair | null, day: string, file: CaseFile): Fact[] {
  const facts: Fact[] = [];
  if (ir !== null) {
    const { dominant, other, missing } = byDominance(ir, file);
    const what = {
      symbol: 'ΔIR',
      name: 'internal rotation deficit',
      unit: 'rad',
      formula: 'ΔIR = IR_o - IR_d',
      source,
    } as const;
    const value = missing ?? between(what, { IR_o: other, IR_d: dominant }, ({ IR_o, IR_d }) => IR_o - IR_d);
    facts.push(sideFact('shoulder.irDeficit', value, dominant, day, 'other less dominant arm'));
  }
  if (er !== null) {
    const { dominant, other, missing } = byDominance(er, file);
    const what = {
      symbol: 'ΔER',
      name: 'external rotation gain',
      unit: 'rad',
      formula: 'ΔER = ER_d - ER_o',
      source,
    } as const;
    const value = missing ?? between(what, { ER_d: dominant, ER_o: other }, ({ ER_d, ER_o }) => ER_d - ER_o);
    facts.push(sideFact('shoulder.erGain', value, dominant, day, 'dominant less other arm'));
  }
  if (ir !== null && er !== null) {
    const [i, e] = [byDominance(ir, file), byDominance(er, file)];
    const what = {
      symbol: 'ΔA',
      name: 'total arc deficit',
      unit: 'rad',
      formula: 'ΔA = (IR_o + ER_o) - (IR_d + ER_d)',
      source,
    } as const;
    const inputs = { IR_o: i.other, ER_o: e.other, IR_d: i.dominant, ER_d: e.dominant };
    const value = i.missing ?? between(what, inputs, ({ IR_o, ER_o, IR_d, ER_d }) => IR_o + ER_o - IR_d - ER_d);
    facts.push(sideFact('shoulder.arcDeficit', value, i.dominant, day, 'other less dominant arm'));
  }
  return facts;
}

function shoulderStrength(er: Pair | null, ir: Pair | null, day: string, file: CaseFile): Fact[] {
  const facts: Fact[] = [];
  if (er !== null && ir !== null) {
    for (const side of ['left', 'right'] as const) {
      const what = {
        symbol: 'R',
        name: 'external to internal rotation',
        unit: '1',
        formula: 'R = F_er / F_ir',
        source,
      } as const;
      const value = between(what, { F_er: er[side], F_ir: ir[side] }, ({ F_er, F_ir }) => F_er / F_ir);
      facts.push(sideFact('shoulder.erIrRatio', value, er[side], day, 'external over internal', side));
    }
  }
  if (er !== null) {
    const { dominant, other, missing } = byDominance(er, file);
    const what = {
      symbol: 'D',
      name: 'external rotation deficit',
      unit: '1',
      formula: 'D = 1 - F_d / F_o',
      source,
    } as const;
    const value = missing ?? between(what, { F_d: dominant, F_o: other }, ({ F_d, F_o }) => 1 - F_d / F_o);
    facts.push(sideFact('shoulder.erSideDeficit', value, dominant, day, 'dominant against other arm'));
  }
  return facts;
}

function byDominance(pair: Pair, { athlete }: CaseFile): { dominant: Fact; other: Fact; missing: FactValue | null } {
  const isLeft = athlete.dominantSide === 'left';
  const missing =
    athlete.dominantSide === null || athlete.dominantSide === 'both'
      ? unknown('which side is dominant is not recorded')
      : null;
  return { dominant: isLeft ? pair.left : pair.right, other: isLeft ? pair.right : pair.left, missing };
}

function between<U extends Unit, K extends string>(
  what: Derivation<U>,
  facts: Readonly<Record<K, Fact>>,
  f: (values: Readonly<Record<K, number>>) => number,
): FactValue {
  const inputs = {} as Record<K, Quantity>;
  for (const [symbol, fact] of Object.entries<Fact>(facts)) {
    if (fact.value.kind === 'unknown') return fact.value;
    if (fact.value.kind !== 'number') return unknown(`${fact.label} is not a number`);
    if (!isKnown(fact.value.reading)) return unknown(fact.value.reading.unknown);
    inputs[symbol as K] = fact.value.reading;
  }
  return computed(() => derive(what, inputs, f));
}

function sideFact(
  measure: string,
  value: FactValue,
  from: Fact,
  day: string,
  how: string,
  side: SideOrNone = 'none',
): Fact {
  return makeFact({ measure, value, side, from: from.from, takenOn: day, provenance: `from both values: ${how}` });
}

/**
 * The lunge and the hop have an error found on differences and ratios themselves: taken in one session by one hand, both
 * sides share what their own errors would count twice. It stands instead of the two combined. The error given with a
 * rotation deficit is that of one side's rotation, so there both sides are combined.
 */
function withItsOwnError(measure: string, value: FactValue): FactValue {
  if (value.kind !== 'number' || !isKnown(value.reading)) return value;
  const { reading } = value;
  const error = standardError(measure, reading.unit);
  if (error === null) return value;
  const { working } = reading;
  return number({
    ...reading,
    u: error.u,
    uReason: null,
    working: {
      ...working,
      inputs: working.inputs.map(({ symbol, quantity }) => ({ symbol, quantity })),
      variant: `its uncertainty is the error found for it, not that of both sides together (${error.source.cite})`,
    },
  });
}
