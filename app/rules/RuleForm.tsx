import type { ReactNode } from 'react';
import { DRILLS } from '../../shared/knowledge/drills/index.ts';
import { MOVEMENTS } from '../../shared/knowledge/movements/index.ts';
import { NAMED_LOADS } from '../../shared/knowledge/namedLoads.ts';
import { REGIONS } from '../../shared/model/injury.ts';
import type { RuleBody } from '../../shared/model/ownRule.ts';
import type { RulePart } from '../../shared/rules/checkRules.ts';
import { LOADS } from '../../shared/rules/loads/index.ts';
import { Button } from '../parts/Button.tsx';
import { Clause } from './Clause.tsx';
import { asObject, type Loose, textOf } from './loose.ts';
import { RulePreview } from './RulePreview.tsx';
import { RuleWording } from './RuleWording.tsx';
import { RuleTest } from './RuleTest.tsx';
import { NumberBox, Pick } from './inline.tsx';
import { usePreview } from './usePreview.ts';
import './rules.css';

/** A movement that a rule may name, with its phases. */
export interface NamedMovement {
  readonly id: string;
  readonly label: string;
  readonly phases: readonly { readonly id: string; readonly label: string }[];
}

const KINDS = [
  { value: 'referral', label: 'refer the athlete on' },
  { value: 'caution', label: 'warn' },
  { value: 'intervention', label: 'suggest a change' },
  { value: 'monitor', label: 'keep an eye on it' },
  { value: 'confirmation', label: 'confirm that nothing needs changing' },
];
const OF_ANY = [
  { id: 'session', label: 'the session as a whole' },
  { id: 'profile', label: 'the athlete’s profile' },
];

/**
 * One rule, read from top to bottom as a sentence: where, if, then what is said, what is practised, what that asks of the
 * body, founded on what. Each change is stored as it is made, sound or not; what keeps the rule from judging stands beside
 * the part it is about, and the preview says what it would find.
 */
export function RuleForm(props: {
  rule: RuleBody;
  isOn: boolean;
  /** What it judges while it is on: `this case`, `every case`. */
  judges: string;
  /** The case it is looked at from; null: none. */
  caseId: string | null;
  /** Movements of the user's own that it may name. */
  movements: readonly NamedMovement[];
  onRule: (rule: RuleBody) => void;
  onSwitch: (isOn: boolean) => void;
  children?: ReactNode;
}) {
  const { rule, isOn, caseId } = props;
  const preview = usePreview(caseId, rule);
  const change = (fields: Loose) => props.onRule({ ...rule, ...fields });
  const of = (part: RulePart) => (preview?.problems ?? []).filter((one) => one.part === part).map(({ words }) => words);
  const tests = Array.isArray(rule['all']) ? rule['all'].map(asObject) : [];
  const loads = Array.isArray(rule['loads']) ? rule['loads'] : [];
  const eases = Array.isArray(rule['eases']) ? rule['eases'] : [];
  const sources = Array.isArray(rule['sources']) ? rule['sources'].map(asObject) : [];
  const retest = asObject(rule['retest']);
  const all = [...MOVEMENTS, ...props.movements];
  const movement = all.find(({ id }) => id === rule['movement']);
  const phases = movement === undefined ? OF_ANY : [...movement.phases, { id: 'whole', label: 'the whole movement' }];

  return (
    <div className="rule-form">
      <div className="rule-sentence">
        <Clause title="Called" problems={of('name')}>
          <span>own/</span>
          <input
            className="input rule-name"
            aria-label="Name, in small letters, digits and hyphens"
            value={textOf(rule['id']).replace(/^own\//, '')}
            maxLength={80}
            spellCheck={false}
            onChange={({ target }) => change({ id: `own/${target.value.toLowerCase().replaceAll(' ', '-')}` })}
          />
        </Clause>
        <Clause title="Where" problems={of('place')}>
          <span>In</span>
          <Pick
            label="Movement"
            value={textOf(rule['movement'])}
            choices={[{ value: 'any', label: 'any movement' }, ...all.map(({ id, label }) => ({ value: id, label }))]}
            onChange={(id) => change({ movement: id, phase: id === 'any' ? 'session' : 'whole' })}
          />
          <span>, looking at</span>
          <Pick
            label="Phase"
            value={textOf(rule['phase'])}
            choices={phases.map(({ id, label }) => ({ value: id, label }))}
            onChange={(phase) => change({ phase })}
          />
          <span>and the</span>
          <Pick
            label="Region"
            value={textOf(rule['region'])}
            choices={REGIONS.map((region) => ({ value: region, label: region.replaceAll('-', ' ') }))}
            onChange={(region) => change({ region })}
          />
        </Clause>
        <Clause title="If" problems={of('tests')}>
          <ol className="rule-tests">
            {tests.map((test, i) => (
              <RuleTest
                key={`${String(i)}-${textOf(test['measure'])}-${textOf(test['comparator'])}`}
                test={test}
                number={i + 1}
                onChange={(fields) => change({ all: tests.map((one, j) => (j === i ? { ...one, ...fields } : one)) })}
                onRemove={tests.length > 1 ? () => change({ all: tests.filter((_, j) => j !== i) }) : null}
              />
            ))}
          </ol>
          <Button
            look="quiet"
            onClick={() =>
              change({ all: [...tests, { measure: 'fppa', comparator: '>', threshold: 10, unit: 'deg' }] })
            }
          >
            Add a condition
          </Button>
        </Clause>
        <Clause title="Then" problems={of('wording')}>
          <Pick
            label="What it does"
            value={textOf(rule['kind'])}
            choices={KINDS}
            onChange={(kind) => change({ kind })}
          />
          <span>, in these words:</span>
          <RuleWording
            wording={asObject(rule['wording'])}
            hasAdvice={rule['kind'] !== 'confirmation'}
            onChange={(wording) => change({ wording })}
          />
        </Clause>
        <Clause title="Practise" problems={of('drill')}>
          <Pick
            label="Drill, with its dose"
            value={typeof rule['drill'] === 'string' ? rule['drill'] : ''}
            choices={[
              { value: '', label: rule['drill'] === null ? 'no drill' : 'the drill of the rule it grew from' },
              ...Object.entries(DRILLS).map(([id, { label, dose }]) => ({ value: id, label: `${label}: ${dose}` })),
            ]}
            onChange={(drill) => change({ drill: drill === '' ? null : drill })}
          />
          <span>and test again after</span>
          <NumberBox
            label="Days until the next test"
            value={retest['afterDays']}
            onChange={(afterDays) =>
              change({
                retest:
                  afterDays === null ? null : { measure: retest['measure'] ?? tests[0]?.['measure'] ?? '', afterDays },
              })
            }
          />
          <span>days.</span>
        </Clause>
        <Clause title="It asks" problems={of('effects')}>
          <fieldset className="rule-loads">
            <legend>of the body; each brings the limits of every injury that this reaches:</legend>
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
        </Clause>
        <Clause title="It eases" problems={[]}>
          <fieldset className="rule-loads">
            <legend>Loads that it asks for less of; advice that adds one of them then pulls apart from it:</legend>
            {NAMED_LOADS.map(({ id, load }) => (
              <label key={id} className="choice">
                <input
                  type="checkbox"
                  checked={eases.includes(id)}
                  onChange={({ target }) =>
                    change({ eases: target.checked ? [...eases, id] : eases.filter((one) => one !== id) })
                  }
                />
                <span>{load}</span>
              </label>
            ))}
          </fieldset>
        </Clause>
        <Clause title="Founded on" problems={of('sources')}>
          <input
            className="input rule-source"
            aria-label="What it is founded on"
            value={textOf(sources.at(-1)?.['cite'])}
            maxLength={300}
            onChange={({ target }) =>
              change({ sources: [...sources.slice(0, -1), { cite: target.value, status: 'convention' }] })
            }
          />
          <span className="quiet">Called a convention wherever it is printed.</span>
        </Clause>
      </div>
      <div className="rule-beside">
        <label className="choice">
          <input type="checkbox" checked={isOn} onChange={({ target }) => props.onSwitch(target.checked)} />
          <span>On: it judges {props.judges}</span>
        </label>
        <RulePreview preview={preview} hasCase={caseId !== null} />
        <div className="rule-ways">{props.children}</div>
      </div>
    </div>
  );
}
