import { PURPOSES } from '../../../shared/model/case.ts';
import { missingOfAthlete } from '../../../shared/assess/sectionStates.ts';
import { REFERENCE_SEXES } from '../../../shared/model/athlete.ts';
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
import { EraseAthlete } from './EraseAthlete.tsx';

/** Who the athlete is, and what this case is for. */
export function AthleteSection() {
  return (
    <>
      <Who />
      <Body />
      <Sport />
      <Consent />
      <RedFlags />
      <ThisCase />
    </>
  );
}

const SEX_WORDS = { female: 'Female', male: 'Male', 'no-reference': 'None' } as const;

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
      <TextField label="Name or pseudonym" isNeeded={missing.includes('name')} {...field('name')} />
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
        isNeeded={missing.includes('date of birth')}
        latest={today()}
        hint="Reference values for adults are not used under 16."
        {...field('birthDate')}
      />
      <div className="wide">
        <ChoiceField
          label="Reference values to use"
          isNeeded={missing.includes('reference values')}
          empty="Not given yet"
          choices={REFERENCE_SEXES.map((value) => ({ value, label: SEX_WORDS[value] }))}
          {...field('referenceSex')}
        />
      </div>
    </section>
  );
}

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
          isNeeded={missing.includes('body mass')}
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
          isNeeded={missing.includes('stature')}
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
        <div className="wide">
          <ChoiceField
            label="Dominant side"
            isNeeded={missing.includes('dominant side')}
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
          isNeeded={missingOfAthlete(file).includes('consent')}
          latest={today()}
          {...field('consentOn')}
        />
        <YesNoField label="Pictures and film may be used" {...field('consentToImages')} />
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
          isNeeded={missingOfAthlete(file).includes('red flags')}
          hint="Your own summary: chest pain, fainting, breathlessness out of proportion, a recent head injury, and the like."
          {...field('hasRedFlags')}
        />
        {(athlete.hasRedFlags === true || athlete.redFlagsClearedBy !== '') && (
          <TextField
            label="Cleared by"
            hint="Name and profession. Empty: not cleared, and nothing strenuous is suggested."
            {...field('redFlagsClearedBy')}
          />
        )}
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
            <ChoiceField label="Urgency" look="list" empty="Not given yet" choices={URGENCIES} {...field('urgency')} />
            <div className="wide">
              <LongTextField label="Why this urgency" {...field('urgencyReason')} />
            </div>
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
