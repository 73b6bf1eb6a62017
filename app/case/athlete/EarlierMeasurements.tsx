import { formatDate, quantityText } from '../../../shared/format/number.ts';
import type { Athlete } from '../../../shared/model/athlete.ts';
import type { BodyMeasurement } from '../../../shared/model/bodyMeasurement.ts';
import type { Edit } from '../../../shared/model/edit.ts';
import { Button } from '../../parts/Button.tsx';
import { newId } from '../newRecord.ts';
import { useCase } from '../useCase.ts';
import { patch, useEdit } from '../useEdit.ts';

const MEASURE_WORDS = {
  mass: 'Body mass',
  stature: 'Stature',
  'leg-length': 'Leg length',
  'arm-length': 'Arm length',
} as const;

/** What was measured before, newest first, and the way to measure again without losing it. */
export function EarlierMeasurements() {
  const { athlete, bodyMeasurements } = useCase().file;
  const edit = useEdit();
  const again = AGAIN.filter(({ values }) => values(athlete).length > 0);
  const earlier = bodyMeasurements.toSorted((a, b) => ((a.takenOn ?? '') > (b.takenOn ?? '') ? -1 : 1));
  return (
    <section aria-labelledby="athlete-earlier">
      <h3 id="athlete-earlier">Earlier measurements</h3>
      {earlier.length === 0 ? (
        <p className="quiet">None. Measuring again keeps what stands above, with its day.</p>
      ) : (
        <table className="table">
          <thead>
            <tr>
              <th scope="col">What</th>
              <th scope="col" className="number">
                Value
              </th>
              <th scope="col">Day</th>
              <th scope="col">
                <span className="only-heard">Remove</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {earlier.map((one) => (
              <Earlier key={one.id} measurement={one} />
            ))}
          </tbody>
        </table>
      )}
      <p>
        {again.map(({ label, values, cleared }) => (
          <Button
            key={label}
            look="quiet"
            onClick={() =>
              edit([
                ...values(athlete).map(
                  (one): Edit => ({
                    op: 'create',
                    kind: 'bodyMeasurement',
                    record: { id: newId(), athleteId: athlete.id, ...one },
                  }),
                ),
                patch('athlete', athlete.id, cleared),
              ])
            }
          >
            {label}
          </Button>
        ))}
      </p>
    </section>
  );
}

function Earlier({ measurement }: { measurement: BodyMeasurement }) {
  const { id, measure, side, valueSi, uSi, takenOn } = measurement;
  const edit = useEdit();
  const unit = measure === 'mass' ? 'kg' : 'm';
  const words = side === 'none' ? MEASURE_WORDS[measure] : `${MEASURE_WORDS[measure]}, ${side}`;
  return (
    <tr>
      <th scope="row">{words}</th>
      <td className="number">{quantityText({ value: valueSi, unit, u: uSi }, unit === 'm' ? 'cm' : 'kg')}</td>
      <td>{takenOn === null ? 'day not recorded' : formatDate(takenOn)}</td>
      <td>
        <Button
          look="quiet"
          aria-label={`Remove ${words}`}
          onClick={() => edit([{ op: 'remove', kind: 'bodyMeasurement', id }])}
        >
          Remove
        </Button>
      </td>
    </tr>
  );
}

type Kept = Omit<BodyMeasurement, 'id' | 'athleteId'>;

interface Again {
  readonly label: string;
  /** What stands now and would be kept. */
  readonly values: (athlete: Athlete) => readonly Kept[];
  readonly cleared: Partial<Athlete>;
}

function kept(
  measure: Kept['measure'],
  side: Kept['side'],
  valueSi: number | null,
  uSi: number | null,
  takenOn: string | null,
): Kept[] {
  return valueSi === null ? [] : [{ measure, side, valueSi, uSi, takenOn }];
}

const AGAIN: readonly Again[] = [
  {
    label: 'Weigh again',
    values: ({ massKg, massUKg, massOn }) => kept('mass', 'none', massKg, massUKg, massOn),
    cleared: { massKg: null, massOn: null },
  },
  {
    label: 'Measure the stature again',
    values: ({ statureM, statureUM, statureOn }) => kept('stature', 'none', statureM, statureUM, statureOn),
    cleared: { statureM: null, statureOn: null },
  },
  {
    label: 'Measure the limbs again',
    values: (athlete) => [
      ...kept('leg-length', 'left', athlete.legLengthLeftM, null, athlete.limbsOn),
      ...kept('leg-length', 'right', athlete.legLengthRightM, null, athlete.limbsOn),
      ...kept('arm-length', 'left', athlete.armLengthLeftM, null, athlete.limbsOn),
      ...kept('arm-length', 'right', athlete.armLengthRightM, null, athlete.limbsOn),
    ],
    cleared: {
      legLengthLeftM: null,
      legLengthRightM: null,
      armLengthLeftM: null,
      armLengthRightM: null,
      limbsOn: null,
    },
  },
];
