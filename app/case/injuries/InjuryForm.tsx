import { CONDITION_ENTRIES, conditionEntry } from '../../../shared/knowledge/conditions/index.ts';
import { formatDate } from '../../../shared/format/number.ts';
import { type Injury, REGIONS, TISSUES } from '../../../shared/model/injury.ts';
import { liftedBy } from '../../../shared/rules/effects/liftedBy.ts';
import { EVIDENCE_WORDS } from '../../../shared/assess/words.ts';
import { Button } from '../../parts/Button.tsx';
import { ChoiceField } from '../../parts/ChoiceField.tsx';
import { DateField } from '../../parts/DateField.tsx';
import { LongTextField } from '../../parts/LongTextField.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { RoughDateField } from '../../parts/RoughDateField.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { Words } from '../../parts/Words.tsx';
import { SourceLine } from '../../parts/WorkingView.tsx';
import { YesNoField } from '../../parts/YesNoField.tsx';
import { today } from '../newRecord.ts';
import { useCase } from '../useCase.ts';
import { patch, useEdit } from '../useEdit.ts';
import { useFields } from '../useFields.ts';
import { BodyOutline } from './BodyOutline.tsx';
import { PAIRED } from './bodyShapes.ts';
import { CONTACTS, MODES, RECURRENCES, TISSUE_WORDS } from './injuryWords.ts';
import { REGION_WORDS } from './regionWords.ts';
import { ShoulderSheet } from './shoulder/ShoulderSheet.tsx';

const SIDES = [
  { value: 'left', label: 'Left' },
  { value: 'right', label: 'Right' },
  { value: 'none', label: 'Neither, or both' },
] as const;

const STATUSES = [
  { value: 'current', label: 'Current' },
  { value: 'recovering', label: 'Recovering' },
  { value: 'resolved', label: 'Resolved' },
] as const;

/** Conditions that reach this region come first; any can be chosen. */
function conditionChoices({ region }: Injury) {
  const near = CONDITION_ENTRIES.filter(({ regions }) => regions.some((one) => one === region));
  return [...near, ...CONDITION_ENTRIES.filter((entry) => !near.includes(entry))].map(({ id, label }) => ({
    value: id,
    label,
  }));
}

/** One injury in full. */
export function InjuryForm({ injury }: { injury: Injury }) {
  const edit = useEdit();
  const field = useFields('injury', injury);
  return (
    <div className="injury-form">
      <div className="injury-columns">
        <div className="form">
          <div className="wide">
            <ChoiceField
              label="Condition"
              look="list"
              hint="Conditions of this region stand first. The rules know how to protect these; anything else is “other”."
              choices={conditionChoices(injury)}
              {...field('condition')}
            />
          </div>
          <div className="wide">
            <TextField label="Diagnosis, in the words of whoever made it" {...field('diagnosis')} />
          </div>
          <ChoiceField
            label="Region"
            look="list"
            choices={REGIONS.map((value) => ({ value, label: REGION_WORDS[value] }))}
            {...field('region')}
          />
          <ChoiceField label="Side" choices={SIDES} {...field('side')} />
          <RoughDateField label="When it happened or began" {...field('onset')} />
          <ChoiceField label="Status" choices={STATUSES} {...field('status')} />
          <ChoiceField
            label="Tissue"
            look="list"
            empty="Not given"
            choices={TISSUES.map((value) => ({ value, label: TISSUE_WORDS[value] }))}
            {...field('tissue')}
          />
          <TextField label="Code, of any classification" {...field('code')} />
        </div>
        <BodyOutline
          chosen={[injury]}
          onChoose={({ region, side }) =>
            edit([patch('injury', injury.id, { region, side: PAIRED.has(region) ? side : 'none' })])
          }
        />
      </div>
      <div className="form">
        <NumberField
          label="Episodes known, this one included"
          unit="1"
          possible={[1, 999]}
          isWhole
          {...field('episodes')}
        />
        <NumberField label="Days lost from sport" unit="1" possible={[0, 36_500]} isWhole {...field('timeLossDays')} />
        <YesNoField label="Operated on" {...field('hadSurgery')} />
        <ChoiceField look="list" label="How it came on" empty="Not given" choices={MODES} {...field('mode')} />
        <ChoiceField
          look="list"
          label="Contact, where it came on suddenly"
          empty="Not given"
          choices={CONTACTS}
          {...field('contact')}
        />
        <ChoiceField
          look="list"
          label="The same diagnosis before"
          empty="Not given"
          choices={RECURRENCES}
          {...field('recurrence')}
        />
        {injury.hadSurgery === true && (
          <div className="wide">
            <LongTextField label="Operation, day and surgeon" {...field('surgery')} />
          </div>
        )}
        <div className="wide">
          <LongTextField label="How it happened" {...field('mechanism')} />
        </div>
        <div className="wide">
          <LongTextField
            label="Limits in force, as set by a clinician"
            hint="Printed beside every suggestion that loads this region."
            {...field('restrictions')}
          />
        </div>
        <TextField label="Cleared by" {...field('clearedBy')} />
        <TextField label="Their profession" {...field('clearedRole')} />
        <DateField label="Cleared on" latest={today()} {...field('clearedOn')} />
        <TextField label="Cleared for" {...field('clearedFor')} />
        <DateField label="Cleared until" {...field('clearedUntil')} />
        <div className="wide">
          <LongTextField label="Notes" {...field('note')} />
        </div>
      </div>
      <Limits injury={injury} />
      {injury.condition.endsWith('shoulder-instability') && <ShoulderSheet injury={injury} />}
      <p className="injury-end">
        <Button look="quiet" onClick={() => edit([{ op: 'remove', kind: 'injury', id: injury.id }])}>
          Remove this injury
        </Button>{' '}
        <span className="quiet">Undo brings it back.</span>
      </p>
    </div>
  );
}

/** Which limits the injury puts in force, who lifts them, and what it does in this very case. */
function Limits({ injury }: { injury: Injury }) {
  const entry = conditionEntry(injury.condition);
  const lifted = liftedBy(injury, today());
  return (
    <section className="limits" aria-label="Limits">
      <h4>{lifted === null ? 'Limits it puts in force' : 'Limits it had put in force'}</h4>
      {lifted !== null && (
        <p>
          Lifted: cleared by {injury.clearedBy.trim()}
          {injury.clearedOn !== null && ` on ${formatDate(injury.clearedOn)}`}.
        </p>
      )}
      <p>{entry.limits}</p>
      {entry.tolerated !== '' && (
        <p>
          <span className="quiet">Usually borne well:</span> {entry.tolerated}
        </p>
      )}
      {lifted === null && (
        <p>
          <span className="quiet">Lifted by</span> {entry.clears}
          <span className="quiet">, once it is resolved and a name and a day are entered under cleared.</span>
        </p>
      )}
      <InThisCase injuryId={injury.id} />
      <details>
        <summary>Sources, evidence {entry.evidence}</summary>
        <p className="working-note">Evidence {EVIDENCE_WORDS[entry.evidence]}.</p>
        {entry.sources.map((source) => (
          <SourceLine key={source.cite} source={source} />
        ))}
      </details>
    </section>
  );
}

const COUNTED = [
  ['stop', 'stopped'],
  ['replace', 'replaced'],
  ['modify', 'modified'],
] as const;

function InThisCase({ injuryId }: { injuryId: string }) {
  const { findings } = useCase().assessment;
  const counts = COUNTED.map(([effect, word]) => {
    const count = findings.filter(({ effects }) =>
      effects.some((one) => one.injuryId === injuryId && one.effect === effect),
    ).length;
    return { word, count };
  }).filter(({ count }) => count > 0);
  if (counts.length === 0) return <p className="quiet">It changes no finding of this case so far.</p>;
  return (
    <p>
      <span className="quiet">In this case:</span>{' '}
      <Words weight="heavy">
        {counts.map(({ word, count }) => `${count} ${count === 1 ? 'finding' : 'findings'} ${word}`).join(', ')}
      </Words>
    </p>
  );
}
