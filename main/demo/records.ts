import type { RecordOf } from '../../shared/model/records.ts';
import { UNSAID } from '../../shared/model/blank.ts';
import type { Edit } from '../../shared/model/edit.ts';
import type { Grade } from '../../shared/model/screening.ts';
import { generalBattery } from '../../shared/knowledge/screening/generalBattery.ts';
import { convert, type Unit } from '../../shared/units.ts';
import type { RandomSource } from './randomSource.ts';

/** Edits that make the records of an invented case, ids from its random source. */

type ItemId = (typeof generalBattery)['items'][number]['id'];
type Side = 'left' | 'right' | 'none';

export interface InventedResult {
  readonly item: ItemId;
  readonly side?: Side;
  /** In the item's display unit: degrees, centimetres. */
  readonly value?: number;
  readonly grade?: Grade;
  readonly isPositive?: boolean;
  readonly painNrs?: number;
  readonly note?: string;
}

export function screening(
  caseId: string,
  heldOn: string,
  rater: string,
  results: readonly InventedResult[],
  random: RandomSource,
): Edit[] {
  const sessionId = random.id();
  return [
    {
      op: 'create',
      kind: 'screeningSession',
      record: {
        id: sessionId,
        caseId,
        heldOn,
        rater,
        batteryId: generalBattery.id,
        batteryVersion: generalBattery.version,
        note: '',
        battery: null,
      },
    },
    ...results.map(
      (result): Edit => ({
        op: 'create',
        kind: 'screeningResult',
        record: {
          id: random.id(),
          sessionId,
          itemId: result.item,
          side: result.side ?? 'none',
          valueSi: result.value === undefined ? null : toSi(result.item, result.value),
          grade: result.grade ?? null,
          isPositive: result.isPositive ?? null,
          painNrs: result.painNrs ?? 0,
          note: result.note ?? '',
          ...UNSAID,
        },
      }),
    ),
  ];
}

/** The same result on both sides, but for the values. */
export function bothSides(item: ItemId, right: number, left: number): InventedResult[] {
  return [
    { item, side: 'right', value: right },
    { item, side: 'left', value: left },
  ];
}

function toSi(itemId: ItemId, value: number): number {
  const item: { unit: Unit | null; displayUnit: Unit | null } | undefined = generalBattery.items.find(
    ({ id }) => id === itemId,
  );
  if (!item?.unit || !item.displayUnit) throw new Error(`${itemId} has no number`);
  return convert(value, item.displayUnit, item.unit);
}

type JumpTest = RecordOf<'jumpTest'>;

export function jumpTest(
  test: Pick<JumpTest, 'id' | 'caseId' | 'heldOn' | 'method' | 'device'> & Partial<JumpTest>,
): Edit {
  return {
    op: 'create',
    kind: 'jumpTest',
    record: {
      kind: 'countermovement',
      arms: 'hips',
      shoes: true,
      frameRateHz: null,
      standingReachM: null,
      dropHeightM: null,
      note: '',
      warmUp: '',
      ...test,
    },
  };
}

const FRAME_RATE_HZ = 240;

/** Countermovement jumps filmed at 240 frames a second; flight times fall on a frame. */
export function filmedJumps(
  caseId: string,
  heldOn: string,
  flightTimesS: readonly number[],
  random: RandomSource,
): Edit[] {
  const testId = random.id();
  const device = 'Telephone camera, feet filmed from the side';
  return [
    jumpTest({ id: testId, caseId, heldOn, method: 'flight-time', device, frameRateHz: FRAME_RATE_HZ }),
    ...flightTimesS.map(
      (time, i): Edit => ({
        op: 'create',
        kind: 'jumpTrial',
        record: {
          id: random.id(),
          testId,
          number: i + 1,
          flightTimeS: Math.round(time * FRAME_RATE_HZ) / FRAME_RATE_HZ,
          contactTimeS: null,
          jumpReachM: null,
          force: null,
          mediaSha256: null,
          painNrs: 0,
          isSetAside: false,
          note: '',
          movementTrialId: null,
        },
      }),
    ),
  ];
}
