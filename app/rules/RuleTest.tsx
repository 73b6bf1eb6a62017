import { MEASURES, measureById } from '../../shared/knowledge/measures/index.ts';
import { GRADES } from '../../shared/model/screening.ts';
import { gradeWords } from '../../shared/rules/checks/words.ts';
import { UNITS, isUnit } from '../../shared/units.ts';
import { Button } from '../parts/Button.tsx';
import { NumberBox, Pick } from './inline.tsx';
import { type Loose, textOf } from './loose.ts';

const COMPARATORS = [
  { value: '<', label: 'is less than' },
  { value: '<=', label: 'is at most' },
  { value: '>', label: 'is more than' },
  { value: '>=', label: 'is at least' },
  { value: 'between', label: 'lies from' },
  { value: 'outside', label: 'lies outside' },
  { value: 'is', label: 'is exactly' },
];

/** One condition in words: `the knee's inward angle is more than 10 °`. */
export function RuleTest(props: {
  test: Loose;
  number: number;
  onChange: (fields: Loose) => void;
  onRemove: (() => void) | null;
}) {
  const { test, number, onChange, onRemove } = props;
  const measure = measureById(textOf(test['measure']));
  const name = (label: string) => (number === 1 ? label : `${label}, condition ${String(number)}`);
  return (
    <li>
      <Pick
        label={name('Measure')}
        value={textOf(test['measure'])}
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
      {measure?.kind === 'number' && <Limits {...{ test, name, onChange }} />}
      {measure?.kind === 'flag' && (
        <Pick
          label={name('Answer')}
          value={test['threshold'] === true ? 'true' : 'false'}
          choices={[
            { value: 'true', label: 'is yes' },
            { value: 'false', label: 'is no' },
          ]}
          onChange={(answer) => onChange({ threshold: answer === 'true' })}
        />
      )}
      {measure?.kind === 'grade' && (
        <Pick
          label={name('Grade')}
          value={textOf(test['threshold'])}
          choices={GRADES.map((grade) => ({ value: grade, label: `is ${gradeWords(grade)}` }))}
          onChange={(threshold) => onChange({ threshold })}
        />
      )}
      {onRemove !== null && (
        <Button look="quiet" aria-label={`Remove condition ${String(number)}`} onClick={onRemove}>
          Remove
        </Button>
      )}
    </li>
  );
}

function Limits(props: { test: Loose; name: (label: string) => string; onChange: (fields: Loose) => void }) {
  const { test, name, onChange } = props;
  const { threshold } = test;
  const comparator = textOf(test['comparator']);
  const isRange = comparator === 'between' || comparator === 'outside';
  const limits = Array.isArray(threshold) ? threshold : [threshold ?? null];
  const bySex = typeof threshold === 'object' && threshold !== null && !Array.isArray(threshold) ? threshold : null;
  const unit = textOf(test['unit']);
  return (
    <>
      <Pick
        label={name('Compared how')}
        value={comparator}
        choices={COMPARATORS}
        onChange={(chosen) => {
          const [low] = limits;
          const isTwo = chosen === 'between' || chosen === 'outside';
          if (bySex !== null && !isTwo) onChange({ comparator: chosen });
          else onChange({ comparator: chosen, threshold: isTwo ? [low ?? 0, limits[1] ?? low ?? 0] : (low ?? 0) });
        }}
      />
      {bySex !== null
        ? (['female', 'male'] as const).map((sex) => (
            <span key={sex} className="rule-limit">
              <NumberBox
                label={name(`Limit, ${sex} reference values`)}
                value={bySex[sex]}
                onChange={(limit) => onChange({ threshold: { ...bySex, [sex]: limit } })}
              />
              <span>
                {unitWords(unit)} ({sex} reference{sex === 'female' ? '),' : ')'}
              </span>
            </span>
          ))
        : limits.map((limit, i) => (
            <span key={i === 0 ? 'low' : 'high'} className="rule-limit">
              {i === 1 && <span>to</span>}
              <NumberBox
                label={name(isRange ? (i === 0 ? 'From' : 'To') : 'Limit')}
                value={limit}
                onChange={(value) =>
                  onChange({ threshold: isRange ? limits.map((one, j) => (j === i ? value : (one ?? 0))) : value })
                }
              />
              {(i === 1 || !isRange) && <span>{unitWords(unit)}</span>}
            </span>
          ))}
    </>
  );
}

function unitWords(unit: string): string {
  if (unit === '{score}') return 'of 10';
  return isUnit(unit) ? UNITS[unit].label : unit;
}
