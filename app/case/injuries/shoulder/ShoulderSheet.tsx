import type { ReactNode } from 'react';
import { judgeShoulder } from '../../../../shared/assess/judgeShoulder.ts';
import { blankShoulderRecord } from '../../../../shared/model/blank.ts';
import type { Injury } from '../../../../shared/model/injury.ts';
import { LAXITY_SIGNS, SHOULDER_FLAGS, type ShoulderRecord } from '../../../../shared/model/shoulder.ts';
import { FLAG_WORDS, SIGN_WORDS } from '../../../../shared/knowledge/shoulder/words.ts';
import { Button } from '../../../parts/Button.tsx';
import { ChoiceField } from '../../../parts/ChoiceField.tsx';
import { DateField } from '../../../parts/DateField.tsx';
import { LongTextField } from '../../../parts/LongTextField.tsx';
import { NumberField } from '../../../parts/NumberField.tsx';
import { TextField } from '../../../parts/TextField.tsx';
import { Words } from '../../../parts/Words.tsx';
import { YesNoField } from '../../../parts/YesNoField.tsx';
import { newId, today } from '../../newRecord.ts';
import { useCase } from '../../useCase.ts';
import { useEdit } from '../../useEdit.ts';
import { useFields } from '../../useFields.ts';
import { Checks, Events, Provocations, Questionnaires } from './ShoulderLists.tsx';
import { WorkedOut } from './WorkedOut.tsx';

/** The fuller record of an unstable shoulder: what was found, and what follows from it. Coaches no one through a test. */
export function ShoulderSheet({ injury }: { injury: Injury }) {
  const { file } = useCase();
  const edit = useEdit();
  const record = file.shoulderRecords.find((one) => one.injuryId === injury.id);
  const judgement = judgeShoulder(file, injury);
  if (record === undefined || judgement === null) {
    return (
      <p>
        <Button
          onClick={() => {
            const blank = blankShoulderRecord({ id: newId(), injuryId: injury.id });
            edit([{ op: 'create', kind: 'shoulderRecord', record: blank }]);
          }}
        >
          Open the fuller shoulder record
        </Button>
      </p>
    );
  }
  return (
    <section className="shoulder" aria-label="Shoulder record">
      <h4>Shoulder record</h4>
      <p className="quiet">
        Screening is not diagnosis. This supports, and never replaces, a licensed clinician; local pathways win. Laxity
        is a trait, instability a symptom.
      </p>
      <WorkedOut judgement={judgement} record={record} />
      <Part title="Events" isOpen>
        <Events injury={injury} />
        <div className="form">
          <Answers record={record} fields={DIRECTION_FIELDS} />
        </div>
      </Part>
      <Part title="Red flags">
        <div className="form">
          <Answers record={record} fields={SHOULDER_FLAGS.map((name) => ({ name, label: FLAG_WORDS[name] }))} />
        </div>
      </Part>
      <Part title="Nerves and vessels" isClinical>
        <Checks injury={injury} />
      </Part>
      <Part title="Laxity signs" isClinical>
        <Laxity record={record} />
      </Part>
      <Part title="Provocation tests" isClinical>
        <p>Not after a recent dislocation: the release test can put a shoulder out.</p>
        <Provocations injury={injury} />
      </Part>
      <Part title="Imaging, as reported">
        <Imaging record={record} />
      </Part>
      <Part title="Items of the severity index">
        <Severity record={record} />
      </Part>
      <Part title="Questionnaire totals">
        <p className="quiet">Total, day, language and version only; whoever uses a questionnaire holds its licence.</p>
        <Questionnaires injury={injury} />
      </Part>
    </section>
  );
}

function Part(props: { title: string; isOpen?: boolean; isClinical?: boolean; children: ReactNode }) {
  return (
    <details className="shoulder-part" open={props.isOpen}>
      <summary>
        {props.title} {props.isClinical === true && <Words weight="heavy">clinician only</Words>}
      </summary>
      {props.children}
    </details>
  );
}

type Answer = {
  [K in keyof ShoulderRecord]: ShoulderRecord[K] extends boolean | null ? K : never;
}[keyof ShoulderRecord];

interface AnswerField {
  readonly name: Answer;
  readonly label: string;
}

const DIRECTION_FIELDS: readonly AnswerField[] = [
  { name: 'isMultidirectional', label: 'More than one direction' },
  { name: 'canSlipAtWill', label: 'Can be made to slip at will' },
];

function Answers({ record, fields }: { record: ShoulderRecord; fields: readonly AnswerField[] }) {
  const field = useFields('shoulderRecord', record);
  return fields.map(({ name, label }) => <YesNoField key={name} label={label} {...field(name)} />);
}

const SULCUS = [
  { value: 'none', label: 'None' },
  { value: 'under-1-cm', label: 'Less than 1 cm' },
  { value: '1-to-2-cm', label: '1 to 2 cm' },
  { value: 'over-2-cm', label: 'More than 2 cm' },
] as const;

const SHIFTS = [
  { value: 'little', label: 'Little' },
  { value: 'to-rim', label: 'To the rim' },
  { value: 'over-rim-returns', label: 'Over the rim, returns by itself' },
  { value: 'over-rim-stays', label: 'Over the rim, stays' },
] as const;

const ANGLES = [
  {
    name: 'passiveAbductionRad',
    label: 'Passive abduction, blade held, this side',
    hint: 'Positive above 105°, or 20° more than the other side.',
  },
  { name: 'otherPassiveAbductionRad', label: 'Passive abduction, blade held, other side', hint: undefined },
  {
    name: 'externalRotationRad',
    label: 'External rotation, elbow at the side, this side',
    hint: 'Positive from 85°.',
  },
  { name: 'otherExternalRotationRad', label: 'External rotation, elbow at the side, other side', hint: undefined },
] as const;

function Laxity({ record }: { record: ShoulderRecord }) {
  const field = useFields('shoulderRecord', record);
  return (
    <div className="form">
      <TextField label="Examiner" {...field('examiner')} />
      <DateField label="Examined on" latest={today()} {...field('examinedOn')} />
      {ANGLES.map(({ name, label, hint }) => (
        <NumberField
          key={name}
          label={label}
          hint={hint}
          unit="rad"
          entry={['deg']}
          possible={[0, Math.PI]}
          {...field(name)}
        />
      ))}
      <ChoiceField
        look="list"
        label="Groove below the shoulder"
        empty="Not examined"
        choices={SULCUS}
        {...field('sulcus')}
      />
      <YesNoField label="Groove stays in external rotation" empty="Not examined" {...field('sulcusStaysInRotation')} />
      <YesNoField
        label="It brings on the symptom"
        empty="Not examined"
        hint="Only then does it count."
        {...field('sulcusIsSymptom')}
      />
      <ChoiceField
        look="list"
        label="Shift to the front"
        empty="Not examined"
        choices={SHIFTS}
        {...field('anteriorShift')}
      />
      <ChoiceField
        look="list"
        label="Shift to the back"
        empty="Not examined"
        choices={SHIFTS}
        {...field('posteriorShift')}
      />
      <Answers record={record} fields={LAXITY_SIGNS.map((name) => ({ name, label: SIGN_WORDS[name] }))} />
      <YesNoField label="Before puberty" hint="Under 18 it decides the cut-off." {...field('isPrepubertal')} />
    </div>
  );
}

const LENGTHS = [
  { name: 'glenoidWidthM', label: 'Width of the socket' },
  { name: 'anteriorDefectM', label: 'Front defect of the socket' },
  { name: 'lesionWidthM', label: 'Width of the lesion of the head' },
  { name: 'boneBridgeM', label: 'Bone bridge to the cuff' },
] as const;

function Imaging({ record }: { record: ShoulderRecord }) {
  const field = useFields('shoulderRecord', record);
  return (
    <div className="form">
      <YesNoField label="Imaging done" {...field('wasImaged')} />
      <DateField label="Done on" latest={today()} {...field('imagedOn')} />
      <div className="wide">
        <LongTextField label="Kind of imaging, and its report" {...field('imagingReport')} />
      </div>
      {LENGTHS.map(({ name, label }) => (
        <NumberField
          key={name}
          label={label}
          hint="From the report; nothing is measured on screen."
          unit="m"
          entry={['mm']}
          possible={[0, 0.2]}
          {...field(name)}
        />
      ))}
      <NumberField
        label="Share of the socket lost"
        unit="1"
        entry={['%']}
        possible={[0, 1]}
        {...field('glenoidLossRatio')}
      />
      <YesNoField label="Fracture of the greater tuberosity" {...field('tuberosityFracture')} />
    </div>
  );
}

const SEVERITY_FIELDS: readonly AnswerField[] = [
  { name: 'isCompetitive', label: 'Competitive sport' },
  { name: 'isContactOrOverhead', label: 'Contact or forced overhead sport' },
  { name: 'isHyperlaxShoulder', label: 'Lax shoulder' },
  { name: 'headDentVisible', label: 'Dent of the head on the front film in external rotation' },
  { name: 'lowerOutlineLost', label: 'Lower outline of the socket lost on the front film' },
];

function Severity({ record }: { record: ShoulderRecord }) {
  const field = useFields('shoulderRecord', record);
  return (
    <div className="form">
      <NumberField label="Age at surgery, years" unit="1" possible={[0, 120]} {...field('ageAtSurgeryYears')} />
      <Answers record={record} fields={SEVERITY_FIELDS} />
    </div>
  );
}
