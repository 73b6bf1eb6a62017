import { PURPOSES } from '../../../shared/model/case.ts';
import { isMinor, missingOfAthlete } from '../../../shared/assess/sectionStates.ts';
import { AGE_BANDS, REFERENCE_SEXES } from '../../../shared/model/athlete.ts';
import { plausibleRangeSi } from '../../../shared/knowledge/measures/index.ts';
import type { Source } from '../../../shared/quantity.ts';
import { Button } from '../../parts/Button.tsx';
import { ChoiceField } from '../../parts/ChoiceField.tsx';
import { DateField } from '../../parts/DateField.tsx';
import { LongTextField } from '../../parts/LongTextField.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { YesNoField } from '../../parts/YesNoField.tsx';
import { PURPOSE_WORDS } from '../../shelf/purposeWords.ts';
import { today } from '../newRecord.ts';
import { useCase } from '../useCase.ts';
import { patch, useEdit } from '../useEdit.ts';
import { useFields } from '../useFields.ts';
import { EarlierMeasurements } from './EarlierMeasurements.tsx';
import { EraseAthlete } from './EraseAthlete.tsx';

/** Who the athlete is, and what this case is for. */
export function AthleteSection() {
  return (
    <>
      <Who />
      <Body />
      <EarlierMeasurements />
      <Sport />
      <Consent />
      <RedFlags />
      <ThisCase />
    </>
  );
}

const SEX_WORDS = { female: 'Female', male: 'Male', 'no-reference': 'None' } as const;

const BAND_WORDS = {
  'under-12': 'Under 12 years',
  '12-15': '12 to 15 years',
  '16-17': '16 or 17 years',
  '18-39': '18 to 39 years',
  '40-64': '40 to 64 years',
  '65-over': '65 years or older',
} as const;

const SIDES = [
  { value: 'left', label: 'Left' },
  { value: 'right', label: 'Right' },
  { value: 'both', label: 'Both alike' },
] as const;

function Who() {
  const { file } = useCase();
  const { athlete } = file;
  const field = useFields('athlete', athlete);
  const missing = missingOfAthlete(file);
  return (
    <section aria-label="Who" className="form">
      <TextField label="Name or pseudonym" neededFor={missing.includes('name') && 'this report'} {...field('name')} />
      <ChoiceField
        label="This name is"
        choices={[
          { value: 'pseudonym', label: 'A pseudonym' },
          { value: 'name', label: 'Their own name' },
        ]}
        value={athlete.isPseudonym ? 'pseudonym' : 'name'}
        onFocus={field('isPseudonym').onFocus}
        onChange={(chosen) => field('isPseudonym').onChange(chosen === 'pseudonym')}
      />
      <DateField
        label="Date of birth"
        neededFor={missing.includes('date of birth') && 'this report'}
        latest={today()}
        hint="Reference values for adults are not used under 16, nor from 65 on."
        {...field('birthDate')}
      />
      {athlete.birthDate === null && (
        <ChoiceField
          label="Or an age band"
          look="list"
          empty="Not given"
          hint="For whoever does not give a date of birth."
          choices={AGE_BANDS.map((value) => ({ value, label: BAND_WORDS[value] }))}
          {...field('ageBand')}
        />
      )}
      <TextField label="One more identifier" hint="A number in your own files, say." {...field('identifier')} />
      <div className="wide">
        <ChoiceField
          label="Reference values to use"
          neededFor={missing.includes('reference values') && 'this report'}
          empty="Not given yet"
          choices={REFERENCE_SEXES.map((value) => ({ value, label: SEX_WORDS[value] }))}
          {...field('referenceSex')}
        />
      </div>
    </section>
  );
}

const LIMBS = [
  { name: 'legLengthLeftM', label: 'Leg length, left' },
  { name: 'legLengthRightM', label: 'Leg length, right' },
  { name: 'armLengthLeftM', label: 'Arm length, left' },
  { name: 'armLengthRightM', label: 'Arm length, right' },
] as const;

/** Outside the measure's usual range a value is questioned. */
function usual(measure: string) {
  const source: Source = { cite: 'a range wide enough for most athletes, chosen here', status: 'convention' };
  return { range: plausibleRangeSi(measure) ?? ([-Infinity, Infinity] as const), source };
}

function Body() {
  const { file } = useCase();
  const { athlete } = file;
  const missing = missingOfAthlete(file);
  const field = useFields('athlete', athlete);
  return (
    <section aria-labelledby="athlete-body">
      <h3 id="athlete-body">Body</h3>
      <div className="form">
        <NumberField
          label="Body mass"
          neededFor={missing.includes('body mass') && 'this report'}
          unit="kg"
          entry={['kg', '[lb_av]']}
          possible={[0, 400]}
          isAbove
          plausible={usual('body.mass')}
          {...field('massKg')}
        />
        <NumberField
          label="Standard uncertainty of the scale"
          unit="kg"
          entry={['kg', '[lb_av]']}
          possible={[0, 20]}
          hint="Leave empty if not known; results then say that they have none."
          {...field('massUKg')}
        />
        <DateField label="Weighed on" latest={today()} {...field('massOn')} />
        <NumberField
          label="Stature"
          neededFor={missing.includes('stature') && 'this report'}
          unit="m"
          entry={['cm', 'm', 'ft and in']}
          possible={[0, 2.8]}
          isAbove
          plausible={usual('body.stature')}
          {...field('statureM')}
        />
        <NumberField
          label="Standard uncertainty of the stature"
          unit="m"
          entry={['cm', 'mm']}
          possible={[0, 0.2]}
          {...field('statureUM')}
        />
        <DateField label="Measured on" latest={today()} {...field('statureOn')} />
        {LIMBS.map(({ name, label }) => (
          <NumberField
            key={name}
            label={label}
            unit="m"
            entry={['cm', 'm']}
            possible={[0, 1.6]}
            isAbove
            {...field(name)}
          />
        ))}
        <DateField label="Limbs measured on" latest={today()} {...field('limbsOn')} />
        <div className="wide">
          <ChoiceField
            label="Dominant side"
            neededFor={missing.includes('dominant side') && 'this report'}
            empty="Not given yet"
            choices={SIDES}
            {...field('dominantSide')}
          />
        </div>
      </div>
    </section>
  );
}

function Sport() {
  const field = useFields('athlete', useCase().file.athlete);
  return (
    <section aria-labelledby="athlete-sport">
      <h3 id="athlete-sport">Sport and goals</h3>
      <div className="form">
        <TextField label="Sport" {...field('sport')} />
        <TextField label="Position or event" {...field('position')} />
        <TextField label="Level" {...field('level')} />
        <NumberField
          label="Training age in this sport, years"
          unit="1"
          possible={[0, 90]}
          {...field('trainingYears')}
        />
        <NumberField label="Sessions a week" unit="1" possible={[0, 50]} isWhole {...field('weeklySessions')} />
        <NumberField label="Hours a week" unit="1" possible={[0, 168]} {...field('weeklyHours')} />
        <div className="wide">
          <LongTextField label="Goals, in the athlete’s words" {...field('goals')} />
        </div>
      </div>
    </section>
  );
}

function Consent() {
  const { file } = useCase();
  const field = useFields('athlete', file.athlete);
  return (
    <section aria-labelledby="athlete-consent">
      <h3 id="athlete-consent">Consent</h3>
      <div className="form">
        <div className="wide">
          <LongTextField
            label="Agreed to"
            hint="What for, by whom, and what happens to the data. Under age: the guardian’s consent as well."
            {...field('consentFor')}
          />
        </div>
        <DateField
          label="Agreed on"
          neededFor={missingOfAthlete(file).includes('consent') && 'this report'}
          latest={today()}
          {...field('consentOn')}
        />
        <YesNoField label="Pictures and film may be used" {...field('consentToImages')} />
        <DateField
          label="Withdrawn on"
          latest={today()}
          hint="From then on this case counts as without consent."
          {...field('consentWithdrawnOn')}
        />
        {(isMinor(file) || file.athlete.guardianName !== '') && (
          <>
            <TextField label="Guardian who agreed" {...field('guardianName')} />
            <DateField
              label="Guardian agreed on"
              neededFor={missingOfAthlete(file).includes('guardian’s consent') && 'this report'}
              latest={today()}
              hint="Needed under 18; local law may say otherwise."
              {...field('guardianConsentOn')}
            />
          </>
        )}
      </div>
    </section>
  );
}

function RedFlags() {
  const { file } = useCase();
  const { athlete } = file;
  const field = useFields('athlete', athlete);
  return (
    <section aria-labelledby="athlete-flags">
      <h3 id="athlete-flags">Before taking part</h3>
      <div className="form">
        <YesNoField
          label="Any red flag for taking part"
          neededFor={missingOfAthlete(file).includes('red flags') && 'this report'}
          hint="Your own summary: chest pain, fainting, breathlessness out of proportion, a recent head injury, and the like."
          {...field('hasRedFlags')}
        />
        {(athlete.hasRedFlags === true || athlete.redFlagsClearedBy !== '') && (
          <>
            <TextField
              label="Cleared by"
              hint="Name and profession. Empty: not cleared, and nothing strenuous is suggested."
              {...field('redFlagsClearedBy')}
            />
            <DateField label="Cleared on" latest={today()} {...field('redFlagsClearedOn')} />
          </>
        )}
        <div className="wide">
          <LongTextField
            label="Medicines, with dose"
            hint="Write none where there are none; empty means not asked."
            {...field('medicines')}
          />
        </div>
        <div className="wide">
          <LongTextField label="Allergies" {...field('allergies')} />
        </div>
        <div className="wide">
          <LongTextField label="Other illnesses and conditions" {...field('otherHistory')} />
        </div>
        <TextField label="Interpreter or access needs" {...field('accessNeeds')} />
        <div className="wide">
          <LongTextField label="Notes on the athlete" {...field('note')} />
        </div>
      </div>
    </section>
  );
}

const URGENCIES = [
  { value: 'emergency', label: 'Emergency, now' },
  { value: 'urgent', label: 'Urgent, within days' },
  { value: 'soon', label: 'Soon, within weeks' },
  { value: 'routine', label: 'Routine' },
] as const;

function ThisCase() {
  const { case: record } = useCase().file;
  const field = useFields('case', record);
  const edit = useEdit();
  const isArchived = record.archivedOn !== null;
  return (
    <section aria-labelledby="this-case">
      <h3 id="this-case">This case</h3>
      <div className="form">
        <div className="wide">
          <ChoiceField
            label="Purpose"
            hint={PURPOSE_WORDS[record.purpose].means}
            choices={PURPOSES.map((value) => ({ value, label: PURPOSE_WORDS[value].label }))}
            {...field('purpose')}
          />
        </div>
        <div className="wide">
          <LongTextField label="Question this case is to answer" {...field('question')} />
        </div>
        <TextField label="Practitioner" hint="Printed on the report." {...field('practitioner')} />
        <TextField label="Profession and registration" {...field('practitionerRole')} />
        <TextField label="How to reach the practitioner" {...field('practitionerContact')} />
        <TextField label="Case number" {...field('number')} />
        <DateField
          label="Opened on"
          value={record.openedOn}
          onFocus={field('openedOn').onFocus}
          onChange={(day) => {
            if (day !== null) field('openedOn').onChange(day);
          }}
        />
        {record.purpose === 'referral' && (
          <>
            <TextField label="Referred to" {...field('addressee')} />
            <TextField label="Copies to" {...field('copiesTo')} />
            <ChoiceField label="Urgency" look="list" empty="Not given yet" choices={URGENCIES} {...field('urgency')} />
            <div className="wide">
              <LongTextField label="Why this urgency" {...field('urgencyReason')} />
            </div>
            <div className="wide">
              <LongTextField
                label="What has been tried"
                hint="Treatment, how much of it, whether it was kept to, what it did."
                {...field('triedSoFar')}
              />
            </div>
            <div className="wide">
              <LongTextField label="Effect on sport, work and daily life, and any deadline" {...field('effects')} />
            </div>
            <div className="wide">
              <LongTextField
                label="What the athlete was told and wants"
                hint="With the advice on what to watch for."
                {...field('toldAndWanted')}
              />
            </div>
            <YesNoField label="The athlete agrees to this referral" {...field('consentToReferral')} />
            <DateField label="Agreed to it on" latest={today()} {...field('consentToReferralOn')} />
          </>
        )}
        <div className="wide">
          <LongTextField label="Notes on the case" {...field('note')} />
        </div>
        <ChoiceField
          label="These data are"
          choices={[
            { value: 'real', label: 'A real person’s' },
            { value: 'invented', label: 'Invented' },
          ]}
          hint={record.isInvented ? 'Said on every page made from them.' : undefined}
          value={record.isInvented ? 'invented' : 'real'}
          onFocus={field('isInvented').onFocus}
          onChange={(chosen) => field('isInvented').onChange(chosen === 'invented')}
        />
        <div className="field">
          <p className="field-label">On the shelf</p>
          <Button onClick={() => edit([patch('case', record.id, { archivedOn: isArchived ? null : today() })])}>
            {isArchived ? 'Bring back from the archive' : 'Archive this case'}
          </Button>
        </div>
        <EraseAthlete />
      </div>
    </section>
  );
}
