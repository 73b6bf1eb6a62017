import { useState } from 'react';
import { BALLS } from '../../../shared/knowledge/balls/index.ts';
import { type CustomBallFigures, customBallFigures, customBallId } from '../../../shared/knowledge/balls/customBall.ts';
import { ChoiceField } from '../../parts/ChoiceField.tsx';
import type { FieldProps } from '../../parts/FieldFrame.tsx';
import { NumberField } from '../../parts/NumberField.tsx';

const OWN = 'own';
const CHOICES = [
  ...BALLS.map(({ id, label }) => ({ value: id, label })),
  { value: OWN, label: 'Another, by its own figures' },
];

type Draft = { readonly [K in keyof CustomBallFigures]: number | null };
const NOTHING: Draft = { massKg: null, diameterM: null, dragCoefficient: null };

/** The ball of a trial: one on file, or one whose mass, size and drag are entered; kept once all three are. */
export function BallField(field: Omit<FieldProps<string | null>, 'label'>) {
  const { value, onChange } = field;
  const stored = value === null ? null : customBallFigures(value);
  const [draft, setDraft] = useState<Draft | null>(null);
  const figures = draft ?? stored;
  const set = (change: Partial<Draft>) => {
    const next = { ...(figures ?? NOTHING), ...change };
    const { massKg, diameterM, dragCoefficient } = next;
    const isWhole = massKg !== null && diameterM !== null && dragCoefficient !== null;
    setDraft(isWhole ? null : next);
    if (isWhole) onChange(customBallId({ massKg, diameterM, dragCoefficient }));
  };
  return (
    <>
      <ChoiceField
        {...field}
        label="Ball or implement"
        look="list"
        choices={CHOICES}
        empty="None"
        value={figures === null ? value : OWN}
        onChange={(id) => {
          setDraft(id === OWN ? NOTHING : null);
          if (id !== OWN) onChange(id);
        }}
      />
      {figures !== null && (
        <>
          <NumberField
            label="Mass of the ball"
            unit="kg"
            entry={['kg', 'g']}
            possible={[0.001, 100]}
            value={figures.massKg}
            onChange={(massKg) => set({ massKg })}
          />
          <NumberField
            label="Diameter of the ball"
            unit="m"
            entry={['cm', 'm']}
            possible={[0.001, 2]}
            value={figures.diameterM}
            onChange={(diameterM) => set({ diameterM })}
          />
          <NumberField
            label="Drag coefficient of the ball"
            unit="1"
            possible={[0, 2]}
            hint="0: through a vacuum. Smooth balls in play lie near 0.5, by convention uncertain by 0.05."
            value={figures.dragCoefficient}
            onChange={(dragCoefficient) => set({ dragCoefficient })}
          />
          {draft !== null && <p className="quiet">Counts once all three are entered.</p>}
        </>
      )}
    </>
  );
}
