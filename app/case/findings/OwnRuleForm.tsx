import { useEffect, useState } from 'react';
import { movementsOf } from '../../../shared/assess/movementOf.ts';
import { OUTCOME_WORDS } from '../../../shared/assess/words.ts';
import { DRILLS } from '../../../shared/knowledge/drills/index.ts';
import { MEASURES, measureById } from '../../../shared/knowledge/measures/index.ts';
import { REGIONS } from '../../../shared/model/injury.ts';
import type { OwnRule, RuleBody } from '../../../shared/model/ownRule.ts';
import { LOADS } from '../../../shared/rules/loads/index.ts';
import { READERS, RULE_KINDS } from '../../../shared/rules/rule.ts';
import { usePreviewRuleMutation } from '../../api.ts';
import { Button } from '../../parts/Button.tsx';
import { ChoiceField } from '../../parts/ChoiceField.tsx';
import { LongTextField } from '../../parts/LongTextField.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { useCase } from '../useCase.ts';

const COMPARATORS = ['<', '<=', '>', '>=', 'between', 'outside', 'is'] as const;
const WAIT_MS = 400;

type Loose = Readonly<Record<string, RuleBody[string]>>;

/** One rule as a form. What is typed is stored as it is typed, sound or not; the preview says what keeps it from judging. */
export function OwnRuleForm(props: {
  own: OwnRule;
  onChange: (fields: Partial<OwnRule>) => void;
  onRemove: () => void;
}) {
  const { own, onChange } = props;
  const { file } = useCase();
  const { rule } = own;
  const change = (fields: Loose) => onChange({ rule: { ...rule, ...fields } });
  const text = (key: string) => (typeof rule[key] === 'string' ? rule[key] : '');
  const tests = Array.isArray(rule['all']) ? rule['all'].map(asObject) : [];
  const wording = asObject(rule['wording']);
  const loads = Array.isArray(rule['loads']) ? rule['loads'] : [];
  const retest = asObject(rule['retest']);
  const movements = movementsOf(file);
  const movement = movements.find(({ id }) => id === text('movement'));
  const phases =
    movement === undefined
      ? [choice('session'), choice('profile')]
      : [...movement.phases.map(({ id, label }) => ({ value: id, label })), choice('whole')];

  return (
    <div className="own-rule form">
      <label className="choice">
        <input type="checkbox" checked={own.isOn} onChange={({ target }) => onChange({ isOn: target.checked })} />
        <span>On: it judges this case</span>
      </label>
      <TextField
        label="Name"
        hint="own/ and then small letters, digits and hyphens"
        value={text('id')}
        onChange={(id) => change({ id })}
      />
      <ChoiceField
        label="Kind"
        value={text('kind')}
        choices={RULE_KINDS.map(choice)}
        onChange={(kind) => change({ kind })}
      />
      <ChoiceField
        label="Movement"
        look="list"
        value={text('movement')}
        choices={[{ value: 'any', label: 'any movement' }, ...movements.map(({ id, label }) => ({ value: id, label }))]}
        onChange={(id) => change({ movement: id, phase: id === 'any' ? 'session' : 'whole' })}
      />
      <ChoiceField
        label="Phase"
        look="list"
        value={text('phase')}
        choices={phases}
        onChange={(phase) => change({ phase })}
      />
      <ChoiceField
        label="Region it loads"
        look="list"
        value={text('region')}
        choices={REGIONS.map(choice)}
        onChange={(region) => change({ region })}
      />
      {tests.map((test, i) => (
        <TestFields
          key={`${String(i)}-${tests.length}`}
          test={test}
          onChange={(fields) => change({ all: tests.map((one, j) => (j === i ? { ...one, ...fields } : one)) })}
        />
      ))}
      {READERS.map((reader) => (
        <fieldset key={reader} className="own-wording">
          <legend>For the {reader}</legend>
          {(['finding', 'intervention'] as const).map((part) => {
            const said = asObject(wording[reader]);
            return (
              <LongTextField
                key={part}
                label={part === 'finding' ? `What is found, for the ${reader}` : `What to do, for the ${reader}`}
                value={typeof said[part] === 'string' ? said[part] : ''}
                onChange={(words) => change({ wording: { ...wording, [reader]: { ...said, [part]: words } } })}
              />
            );
          })}
        </fieldset>
      ))}
      <ChoiceField
        label="Drill, with its dose"
        look="list"
        empty={typeof rule['drill'] === 'object' && rule['drill'] !== null ? 'As in the rule it grew from' : 'None'}
        value={typeof rule['drill'] === 'string' ? rule['drill'] : null}
        choices={Object.entries(DRILLS).map(([id, { label, dose }]) => ({ value: id, label: `${label}: ${dose}` }))}
        onChange={(drill: string | null) => change({ drill })}
      />
      <NumberText
        label="Test again after, days"
        value={retest['afterDays']}
        onChange={(afterDays) =>
          change({
            retest:
              afterDays === null ? null : { measure: retest['measure'] ?? tests[0]?.['measure'] ?? '', afterDays },
          })
        }
      />
      <fieldset className="own-wording">
        <legend>What it asks of the body: each brings the limits of every injury that this reaches</legend>
        {Object.values(LOADS).map(({ id, means }) => (
          <label key={id} className="choice">
            <input
              type="checkbox"
              checked={loads.includes(id)}
              onChange={({ target }) =>
                change({ loads: target.checked ? [...loads, id] : loads.filter((one) => one !== id) })
              }
            />
            <span>{means}</span>
          </label>
        ))}
      </fieldset>
      <Preview caseId={file.case.id} rule={rule} />
      <Button look="quiet" onClick={props.onRemove}>
        Remove this rule
      </Button>
    </div>
  );
}

/** What must be so for the rule to fire. */
function TestFields({ test, onChange }: { test: Loose; onChange: (fields: Loose) => void }) {
  const measure = measureById(typeof test['measure'] === 'string' ? test['measure'] : '');
  const { threshold } = test;
  const comparator = COMPARATORS.find((one) => one === test['comparator']) ?? null;
  const isRange = comparator === 'between' || comparator === 'outside';
  const limits = Array.isArray(threshold) ? threshold : [threshold];
  const unit = typeof test['unit'] === 'string' ? test['unit'] : 'no unit';
  const bySex = typeof threshold === 'object' && threshold !== null && !Array.isArray(threshold) ? threshold : null;
  return (
    <fieldset className="own-wording">
      <legend>It fires if</legend>
      <ChoiceField
        label="Measure"
        look="list"
        value={measure?.id ?? null}
        choices={MEASURES.map(({ id, label }) => ({ value: id, label }))}
        onChange={(id) => {
          const chosen = measureById(id);
          const isNumber = chosen?.kind === 'number';
          onChange({
            measure: id,
            unit: chosen?.displayUnit ?? null,
            comparator: isNumber ? '>' : 'is',
            threshold: isNumber ? 0 : chosen?.kind === 'flag' ? true : 'not-met',
          });
        }}
      />
      {measure?.kind === 'number' && (
        <>
          <ChoiceField
            label="is"
            value={comparator}
            choices={COMPARATORS.map(choice)}
            onChange={(chosen) => {
              const [low] = limits;
              const isTwo = chosen === 'between' || chosen === 'outside';
              onChange({ comparator: chosen, threshold: isTwo ? [low ?? 0, limits[1] ?? low ?? 0] : (low ?? 0) });
            }}
          />
          {bySex !== null
            ? (['female', 'male'] as const).map((sex) => (
                <NumberText
                  key={sex}
                  label={`Limit, ${sex} reference values, ${unit}`}
                  value={bySex[sex]}
                  onChange={(limit) => onChange({ threshold: { ...bySex, [sex]: limit } })}
                />
              ))
            : limits.map((limit, i) => (
                <NumberText
                  key={i === 0 ? 'low' : 'high'}
                  label={`${isRange ? (i === 0 ? 'From' : 'To') : 'Limit'}, ${unit}`}
                  value={limit}
                  onChange={(value) =>
                    onChange({ threshold: isRange ? limits.map((one, j) => (j === i ? value : (one ?? 0))) : value })
                  }
                />
              ))}
        </>
      )}
    </fieldset>
  );
}

/** A number as it is typed; what is no number stays in the box and is stored as nothing. */
function NumberText(props: { label: string; value: unknown; onChange: (value: number | null) => void }) {
  const [typed, setTyped] = useState(typeof props.value === 'number' ? String(props.value) : '');
  return (
    <TextField
      label={props.label}
      value={typed}
      onChange={(text) => {
        setTyped(text);
        const number = text.trim() === '' ? Number.NaN : Number(text);
        props.onChange(Number.isFinite(number) ? number : null);
      }}
    />
  );
}

/** What the rule would say of this case and of how many others, a moment after each change. */
function Preview({ caseId, rule }: { caseId: string; rule: RuleBody }) {
  const [preview, { data }] = usePreviewRuleMutation();
  useEffect(() => {
    const timer = setTimeout(() => void preview({ caseId, rule }), WAIT_MS);
    return () => clearTimeout(timer);
  }, [caseId, rule, preview]);
  if (data === undefined) return <p className="quiet">Looking at the stored cases…</p>;
  return (
    <section className="own-preview" aria-label="Preview" aria-live="polite">
      {data.problems.length > 0 && (
        <>
          <p>
            <strong>It judges nothing yet:</strong>
          </p>
          <ul className="bulleted">
            {data.problems.map((problem) => (
              <li key={problem}>{problem}</li>
            ))}
          </ul>
        </>
      )}
      <p>
        <strong>This case: </strong>
        {data.here === null ? 'it would not fire.' : `${OUTCOME_WORDS[data.here.outcome]}. ${data.here.finding}`}
      </p>
      <p>
        <strong>
          It would fire in {data.fires.length} of {data.of}
        </strong>{' '}
        stored cases{data.fires.length > 0 && `: ${data.fires.map(({ number }) => number).join(', ')}`}.
      </p>
    </section>
  );
}

function asObject(value: unknown): Loose {
  return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Loose) : {};
}

function choice<T extends string>(value: T): { value: T; label: string } {
  return { value, label: value.replaceAll('-', ' ') };
}
