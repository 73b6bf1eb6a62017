import type { RuleBody } from '../../shared/model/ownRule.ts';
import { blankRule } from '../../shared/rules/blankRule.ts';
import { ownCopy } from '../../shared/rules/ownCopy.ts';
import { SHIPPED_RULES } from '../../shared/rules/shippedRules.ts';
import { Button } from '../parts/Button.tsx';
import { Pick } from './inline.tsx';

/** Two ways to begin a rule: from one of the program, in its place, or from nothing. */
export function RuleStart({ count, onStart }: { count: number; onStart: (rule: RuleBody) => void }) {
  return (
    <div className="rule-start">
      <Button onClick={() => onStart(blankRule(count + 1))}>Write a rule from nothing</Button>
      <span>or change one of the program:</span>
      <Pick
        label="Change a rule of the program"
        value=""
        choices={SHIPPED_RULES.map(({ id }) => ({ value: id, label: id }))}
        onChange={(id) => {
          const rule = SHIPPED_RULES.find((one) => one.id === id);
          if (rule !== undefined) onStart(ownCopy(rule));
        }}
      />
    </div>
  );
}
