import type { ShoulderJudgement } from '../../../../shared/assess/judgeShoulder.ts';
import { counted } from '../../../../shared/format/number.ts';
import type { Classified } from '../../../../shared/kernel/shoulder/classified.ts';
import { FLAG_WORDS, REASON_WORDS, SEVERITY_WORDS, TIER_WORDS } from '../../../../shared/knowledge/shoulder/words.ts';
import type { ShoulderRecord } from '../../../../shared/model/shoulder.ts';
import { isKnown } from '../../../../shared/quantity.ts';
import { ReadingText } from '../../../parts/ReadingText.tsx';
import { Words } from '../../../parts/Words.tsx';

/** What follows from the record, with what each answer rests on, or why there is none. */
export function WorkedOut({ judgement, record }: { judgement: ShoulderJudgement; record: ShoulderRecord }) {
  const { frequency, etiology, direction, severity, urgency, laxity, laxityCutoff, distance } = judgement;
  const index = judgement.severityIndex;
  return (
    <dl className="shoulder-worked">
      <dt>Urgency</dt>
      <dd>
        <Words weight={urgency.tier === 'emergency' ? 'stop' : urgency.tier === 'routine' ? 'plain' : 'heavy'}>
          {urgency.unanswered.length > 0 && urgency.tier !== 'emergency' ? 'At least: ' : ''}
          {TIER_WORDS[urgency.tier]}
        </Words>{' '}
        {urgency.reasons.map((reason) => REASON_WORDS[reason]).join('; ')}
        {urgency.unanswered.length > 0 && (
          <span className="quiet">
            {' '}
            Not answered yet: {urgency.unanswered.map((flag) => FLAG_WORDS[flag].toLowerCase()).join('; ')}.
          </span>
        )}
      </dd>
      <Class label="Frequency" of={frequency} />
      <Class label="Cause" of={etiology} />
      <Class
        label="Direction"
        of={direction}
        more={record.isMultidirectional === true ? 'more than one direction ticked' : undefined}
      />
      <Class label="Severity" of={severity} />
      <dt>Generalised laxity</dt>
      <dd>
        {laxity.points === null ? (
          <span className="quiet">no total: {counted(laxity.missing.length, 'sign')} not examined</span>
        ) : (
          <>
            {laxity.points} of 9
            {laxityCutoff === null
              ? ', cut-off not known without age or puberty'
              : `, cut-off ${laxityCutoff}: ${laxity.points >= laxityCutoff ? 'reached' : 'not reached'}`}
          </>
        )}{' '}
        <span className="quiet">Malfait 2017</span>
      </dd>
      <dt>Severity index</dt>
      <dd>
        {index.points === null ? (
          <span className="quiet">
            no total: {index.missing.map((item) => SEVERITY_WORDS[item] ?? item).join(', ')} missing
          </span>
        ) : (
          <>
            {index.points} of 10
            <span className="quiet">
              {' '}
              Bands 0 to 3, 4 to 6, 7 to 10; series disagree on what they mean, and none says whom to operate on. For
              the surgeon.
            </span>
          </>
        )}{' '}
        <span className="quiet">Balg and Boileau 2007</span>
      </dd>
      <dt>Distance to dislocation</dt>
      <dd>
        {isKnown(distance) ? (
          <>
            <ReadingText reading={distance} unit="mm" />, {distance.value < 0 ? 'off the track' : 'on the track'}
          </>
        ) : (
          <span className="quiet">not known: {distance.unknown}</span>
        )}{' '}
        <span className="quiet">Di Giacomo 2014; for the surgeon</span>
      </dd>
    </dl>
  );
}

function Class({ label, of, more }: { label: string; of: Classified<string>; more?: string | undefined }) {
  return (
    <>
      <dt>{label}</dt>
      <dd>
        {of.is === null ? <Words weight="open">cannot tell</Words> : <strong>{of.is}</strong>}{' '}
        <span className="quiet">
          {of.because}
          {more !== undefined && `; ${more}`}
        </span>
      </dd>
    </>
  );
}
