import { type ReactNode, useState } from 'react';
import { NERVE_WORDS, PROVOCATION_WORDS, QUESTIONNAIRE_WORDS } from '../../../../shared/knowledge/shoulder/words.ts';
import type { Injury } from '../../../../shared/model/injury.ts';
import {
  type InstabilityEvent,
  NERVES_AND_VESSELS,
  type NeurovascularCheck,
  PROVOCATIONS,
  type ProvocationTest,
  QUESTIONNAIRES,
  type Questionnaire,
  type QuestionnaireTotal,
} from '../../../../shared/model/shoulder.ts';
import { Button } from '../../../parts/Button.tsx';
import { ChoiceField } from '../../../parts/ChoiceField.tsx';
import { DateField } from '../../../parts/DateField.tsx';
import { LongTextField } from '../../../parts/LongTextField.tsx';
import { NumberField } from '../../../parts/NumberField.tsx';
import { PainField } from '../../../parts/PainField.tsx';
import { RoughDateField } from '../../../parts/RoughDateField.tsx';
import { TextField } from '../../../parts/TextField.tsx';
import { YesNoField } from '../../../parts/YesNoField.tsx';
import { newId, today } from '../../newRecord.ts';
import { useCase } from '../../useCase.ts';
import { useEdit } from '../../useEdit.ts';
import { useFields } from '../../useFields.ts';

/** The lists of a shoulder record: events, checks of nerves and vessels, provocation tests, questionnaire totals. */

const choicesOf = <T extends string>(words: Readonly<Record<T, string>>, values: readonly T[]) =>
  values.map((value) => ({ value, label: words[value] }));

function Entry({ title, onRemove, children }: { title: string; onRemove: () => void; children: ReactNode }) {
  return (
    <fieldset className="shoulder-entry">
      <legend>{title}</legend>
      <div className="form">{children}</div>
      <Button look="quiet" aria-label={`Remove ${title}`} onClick={onRemove}>
        Remove
      </Button>
    </fieldset>
  );
}

const SEVERITIES = [
  { value: 'subluxation', label: 'Slipped' },
  { value: 'dislocation', label: 'Fully out' },
] as const;
const ETIOLOGIES = [
  { value: 'traumatic', label: 'By injury' },
  { value: 'atraumatic', label: 'Without' },
] as const;
const DIRECTIONS = [
  { value: 'anterior', label: 'Anterior' },
  { value: 'posterior', label: 'Posterior' },
  { value: 'inferior', label: 'Inferior' },
] as const;
const REDUCTIONS = [
  { value: 'by-itself', label: 'Went back by itself' },
  { value: 'by-the-athlete', label: 'Put back by the athlete' },
  { value: 'on-the-field', label: 'Put back on the field' },
  { value: 'in-hospital', label: 'Put back in hospital' },
  { value: 'not-reduced', label: 'Not back' },
] as const;

export function Events({ injury }: { injury: Injury }) {
  const { instabilityEvents } = useCase().file;
  const edit = useEdit();
  const events = instabilityEvents.filter((one) => one.injuryId === injury.id);
  const add = () => {
    const record: InstabilityEvent = {
      id: newId(),
      injuryId: injury.id,
      happenedOn: null,
      severity: null,
      etiology: null,
      direction: null,
      mechanism: '',
      reduction: null,
      underSedation: null,
      outOfJointS: null,
      afterSeizureOrShock: null,
      duringSleep: null,
      numbOrWeakAfter: null,
      note: '',
    };
    edit([{ op: 'create', kind: 'instabilityEvent', record }]);
  };
  return (
    <>
      {events.map((event, i) => (
        <EventEntry key={event.id} event={event} title={`Event ${i + 1}`} />
      ))}
      <Button onClick={add}>Add an event</Button>
    </>
  );
}

function EventEntry({ event, title }: { event: InstabilityEvent; title: string }) {
  const edit = useEdit();
  const field = useFields('instabilityEvent', event);
  return (
    <Entry title={title} onRemove={() => edit([{ op: 'remove', kind: 'instabilityEvent', id: event.id }])}>
      <RoughDateField label="When" {...field('happenedOn')} />
      <ChoiceField label="How far" empty="Not known" choices={SEVERITIES} {...field('severity')} />
      <ChoiceField label="By injury or without" empty="Not known" choices={ETIOLOGIES} {...field('etiology')} />
      <ChoiceField look="list" label="Direction" empty="Not known" choices={DIRECTIONS} {...field('direction')} />
      <ChoiceField look="list" label="Put back" empty="Not known" choices={REDUCTIONS} {...field('reduction')} />
      <YesNoField label="Under sedation" empty="Not known" {...field('underSedation')} />
      <NumberField label="Seconds out of joint" unit="s" possible={[0, 31_536_000]} {...field('outOfJointS')} />
      <YesNoField label="After a seizure or electric shock" {...field('afterSeizureOrShock')} />
      <YesNoField label="In sleep" {...field('duringSleep')} />
      <YesNoField label="Numb or weak afterwards" {...field('numbOrWeakAfter')} />
      <div className="wide">
        <LongTextField label="What happened, and where the arm was" {...field('mechanism')} />
      </div>
    </Entry>
  );
}

const TIMINGS = {
  'before-reduction': 'Before it was put back',
  'after-reduction': 'After it was put back',
  'at-assessment': 'At the assessment',
} as const;
const FOUND = [
  { value: 'normal', label: 'Normal' },
  { value: 'reduced', label: 'Reduced' },
  { value: 'absent', label: 'Absent' },
] as const;

export function Checks({ injury }: { injury: Injury }) {
  const { neurovascularChecks } = useCase().file;
  const edit = useEdit();
  const checks = neurovascularChecks.filter((one) => one.injuryId === injury.id);
  const add = (timing: NeurovascularCheck['timing']) => {
    const found = Object.fromEntries(NERVES_AND_VESSELS.map((name) => [name, null])) as Pick<
      NeurovascularCheck,
      (typeof NERVES_AND_VESSELS)[number]
    >;
    const when = { timing, checkedOn: null, checkedAt: '', examiner: '' };
    const record = { id: newId(), injuryId: injury.id, ...when, ...found, armpitSwelling: null, note: '' };
    edit([{ op: 'create', kind: 'neurovascularCheck', record }]);
  };
  return (
    <>
      {checks.map((check) => (
        <CheckEntry key={check.id} check={check} />
      ))}
      <p>
        {(Object.keys(TIMINGS) as NeurovascularCheck['timing'][]).map((timing) => (
          <Button key={timing} look="quiet" onClick={() => add(timing)}>
            Add: {TIMINGS[timing].toLowerCase()}
          </Button>
        ))}
      </p>
    </>
  );
}

function CheckEntry({ check }: { check: NeurovascularCheck }) {
  const edit = useEdit();
  const field = useFields('neurovascularCheck', check);
  return (
    <Entry
      title={TIMINGS[check.timing]}
      onRemove={() => edit([{ op: 'remove', kind: 'neurovascularCheck', id: check.id }])}
    >
      <DateField label="Day" latest={today()} {...field('checkedOn')} />
      <TextField label="Time" {...field('checkedAt')} />
      <TextField label="Examiner" {...field('examiner')} />
      {NERVES_AND_VESSELS.map((name) => (
        <ChoiceField
          key={name}
          look="list"
          label={NERVE_WORDS[name]}
          empty="Not examined"
          choices={FOUND}
          {...field(name)}
        />
      ))}
      <YesNoField label="Swelling in the armpit" empty="Not examined" {...field('armpitSwelling')} />
      <div className="wide">
        <LongTextField label="Notes on this check" {...field('note')} />
      </div>
    </Entry>
  );
}

export function Provocations({ injury }: { injury: Injury }) {
  const { provocationTests } = useCase().file;
  const edit = useEdit();
  const [test, setTest] = useState(PROVOCATIONS[0] as ProvocationTest['test']);
  const add = () => {
    const side = injury.side === 'left' ? 'left' : 'right';
    const found = { testedOn: null, examiner: '', apprehension: null, painNrs: null, clunk: null, note: '' };
    const record: ProvocationTest = { id: newId(), injuryId: injury.id, test, side, ...found };
    edit([{ op: 'create', kind: 'provocationTest', record }]);
  };
  return (
    <>
      {provocationTests
        .filter((one) => one.injuryId === injury.id)
        .map((one) => (
          <ProvocationEntry key={one.id} test={one} />
        ))}
      <div className="form">
        <ChoiceField
          look="list"
          label="Test to record"
          choices={choicesOf(PROVOCATION_WORDS, PROVOCATIONS)}
          value={test}
          onChange={setTest}
        />
      </div>
      <Button onClick={add}>Record this test</Button>
    </>
  );
}

const SIDES = [
  { value: 'left', label: 'Left' },
  { value: 'right', label: 'Right' },
] as const;

function ProvocationEntry({ test }: { test: ProvocationTest }) {
  const edit = useEdit();
  const field = useFields('provocationTest', test);
  return (
    <Entry
      title={PROVOCATION_WORDS[test.test]}
      onRemove={() => edit([{ op: 'remove', kind: 'provocationTest', id: test.id }])}
    >
      <ChoiceField label="Side tested" choices={SIDES} {...field('side')} />
      <YesNoField label="Apprehension" empty="Not recorded" {...field('apprehension')} />
      <YesNoField label="Clunk" empty="Not recorded" {...field('clunk')} />
      <div className="wide">
        <PainField label="Pain, apart from apprehension" {...field('painNrs')} />
      </div>
      <DateField label="Tested on" latest={today()} {...field('testedOn')} />
      <TextField label="Examiner" {...field('examiner')} />
    </Entry>
  );
}

export function Questionnaires({ injury }: { injury: Injury }) {
  const { questionnaireTotals } = useCase().file;
  const edit = useEdit();
  const [questionnaire, setQuestionnaire] = useState<Questionnaire>(QUESTIONNAIRES[0]);
  const [total, setTotal] = useState<number | null>(null);
  const { most, best } = QUESTIONNAIRE_WORDS[questionnaire];
  const add = () => {
    if (total === null) return;
    const more = { takenOn: today(), language: '', version: '' };
    const record = { id: newId(), injuryId: injury.id, questionnaire, totalPoints: total, ...more };
    edit([{ op: 'create', kind: 'questionnaireTotal', record }]);
    setTotal(null);
  };
  return (
    <>
      {questionnaireTotals
        .filter((one) => one.injuryId === injury.id)
        .map((one) => (
          <TotalEntry key={one.id} total={one} />
        ))}
      <div className="form">
        <ChoiceField
          look="list"
          label="Questionnaire"
          choices={QUESTIONNAIRES.map((value) => ({ value, label: QUESTIONNAIRE_WORDS[value].label }))}
          value={questionnaire}
          onChange={(chosen) => {
            setQuestionnaire(chosen);
            setTotal(null);
          }}
        />
        <NumberField
          key={questionnaire}
          label="Total to add"
          hint={`0 to ${most}; ${best}.`}
          unit="1"
          possible={[0, most]}
          value={total}
          onChange={setTotal}
        />
      </div>
      <Button onClick={add} disabled={total === null}>
        Add this total
      </Button>
    </>
  );
}

function TotalEntry({ total }: { total: QuestionnaireTotal }) {
  const edit = useEdit();
  const field = useFields('questionnaireTotal', total);
  const { label, most, best } = QUESTIONNAIRE_WORDS[total.questionnaire];
  return (
    <Entry title={label} onRemove={() => edit([{ op: 'remove', kind: 'questionnaireTotal', id: total.id }])}>
      <NumberField
        label="Total"
        hint={`0 to ${most}; ${best}.`}
        unit="1"
        possible={[0, most]}
        value={total.totalPoints}
        onFocus={field('totalPoints').onFocus}
        onChange={(points) => {
          if (points !== null) field('totalPoints').onChange(points);
        }}
      />
      <DateField label="Taken on" latest={today()} {...field('takenOn')} />
      <TextField label="Language" {...field('language')} />
      <TextField label="Version" {...field('version')} />
    </Entry>
  );
}
