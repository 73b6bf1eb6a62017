import { useId, useState } from 'react';
import { READERS, type Reader } from '../../shared/rules/rule.ts';
import { LONGEST } from '../../shared/rules/checkRules.ts';
import { asObject, type Loose, textOf } from './loose.ts';

const PARTS = ['finding', 'intervention'] as const;
const TITLES = { finding: 'What is found', intervention: 'What to do' } as const;

/** The words of a rule for its three readers: once for all of them, or apart. */
export function RuleWording(props: { wording: Loose; hasAdvice: boolean; onChange: (wording: Loose) => void }) {
  const said = (reader: Reader, part: (typeof PARTS)[number]) => textOf(asObject(props.wording[reader])[part]);
  const [isApart, setApart] = useState(() =>
    PARTS.some((part) => new Set(READERS.map((reader) => said(reader, part))).size > 1),
  );
  const parts = props.hasAdvice ? PARTS : PARTS.slice(0, 1);
  const write = (readers: readonly Reader[], part: string, words: string) =>
    props.onChange({
      ...props.wording,
      ...Object.fromEntries(readers.map((reader) => [reader, { ...asObject(props.wording[reader]), [part]: words }])),
    });
  return (
    <div className="rule-wording">
      {(isApart ? READERS : (['practitioner'] as const)).map((reader) => (
        <div key={reader} className="rule-reader">
          {isApart && <p className="rule-for">For the {reader}</p>}
          {parts.map((part) => (
            <Words
              key={part}
              label={isApart ? `${TITLES[part]}, for the ${reader}` : TITLES[part]}
              most={LONGEST[part]}
              value={said(reader, part)}
              onChange={(words) => write(isApart ? [reader] : READERS, part, words)}
            />
          ))}
        </div>
      ))}
      <label className="choice">
        <input
          type="checkbox"
          checked={isApart}
          onChange={({ target }) => {
            setApart(target.checked);
            if (target.checked) return;
            const { practitioner } = props.wording;
            props.onChange(Object.fromEntries(READERS.map((reader) => [reader, practitioner ?? {}])));
          }}
        />
        <span>In other words for the athlete and the clinician</span>
      </label>
    </div>
  );
}

function Words(props: { label: string; most: number; value: string; onChange: (words: string) => void }) {
  const id = useId();
  const isTooLong = props.value.length > props.most;
  return (
    <div className="rule-said">
      <label htmlFor={id}>{props.label}</label>
      <textarea
        id={id}
        className="input input-long"
        rows={2}
        value={props.value}
        maxLength={2000}
        aria-describedby={`${id}-length`}
        aria-invalid={isTooLong || undefined}
        onChange={({ target }) => props.onChange(target.value)}
      />
      <span id={`${id}-length`} className="quiet">
        {props.value.length} of at most {props.most} characters
      </span>
    </div>
  );
}
