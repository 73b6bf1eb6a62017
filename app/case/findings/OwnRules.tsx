import { useState } from 'react';
import { movementsOf, ownMovementName } from '../../../shared/assess/movementOf.ts';
import { counted } from '../../../shared/format/number.ts';
import { MOVEMENTS } from '../../../shared/knowledge/movements/index.ts';
import type { RuleBody } from '../../../shared/model/ownRule.ts';
import { OWN_RULE_WORDS, ruleBook } from '../../../shared/rules/ownRules.ts';
import { useEditSharedRulesMutation } from '../../api.ts';
import { Button } from '../../parts/Button.tsx';
import { RuleForm } from '../../rules/RuleForm.tsx';
import { RuleList } from '../../rules/RuleList.tsx';
import { RulePacks } from '../../rules/RulePacks.tsx';
import { RuleStart } from '../../rules/RuleStart.tsx';
import { hrefOf } from '../../workbench/route.ts';
import { newId } from '../newRecord.ts';
import { useCase } from '../useCase.ts';
import { patch, useEdit } from '../useEdit.ts';

/** Rules of the user's own for this case: changed from a shipped one or written anew, held to the same checks, and packs of them. */
export function OwnRules() {
  const { file } = useCase();
  const edit = useEdit();
  const [share] = useEditSharedRulesMutation();
  const [openId, setOpenId] = useState<string | null>(null);
  const { refused } = ruleBook(file);
  const { shared } = file.judgedBy;
  const movements = movementsOf(file)
    .filter((one) => !MOVEMENTS.includes(one))
    .map(({ label, phases }) => ({ id: ownMovementName(label), label, phases }));
  const add = (rule: RuleBody) => {
    const id = newId();
    edit([{ op: 'create', kind: 'ownRule', record: { id, caseId: file.case.id, isOn: false, rule } }]);
    setOpenId(id);
  };
  return (
    <section className="own-rules" aria-labelledby="own-rules">
      <h3 id="own-rules">Rules of one’s own</h3>
      <p className="quiet">
        They judge this case beside the rules of the program, or in place of one, once they are on and pass the same
        checks. Every finding they make says: {OWN_RULE_WORDS.toLowerCase()}.{' '}
        {shared.length > 0 && `${counted(shared.length, 'rule')} for every case beside them. `}
        <a href={hrefOf({ screen: 'rules' })}>Rules for every case</a>
      </p>
      <RuleList rules={file.ownRules} openId={openId} isRefused={({ id }) => refused.has(id)} onOpen={setOpenId}>
        {(own) => (
          <RuleForm
            rule={own.rule}
            isOn={own.isOn}
            judges="this case"
            caseId={file.case.id}
            movements={movements}
            onRule={(rule) => edit([patch('ownRule', own.id, { rule })])}
            onSwitch={(isOn) => edit([patch('ownRule', own.id, { isOn })])}
          >
            <Button
              look="quiet"
              onClick={() => {
                const id = newId();
                void share({ edits: [{ id, rule: { id, isOn: false, rule: own.rule } }] })
                  .unwrap()
                  .then(() => edit([{ op: 'remove', kind: 'ownRule', id: own.id }]))
                  .catch(() => undefined);
              }}
            >
              Make it a rule for every case
            </Button>
            <Button
              look="quiet"
              onClick={() => {
                edit([{ op: 'remove', kind: 'ownRule', id: own.id }]);
                setOpenId(null);
              }}
            >
              Remove this rule
            </Button>
          </RuleForm>
        )}
      </RuleList>
      <RuleStart count={file.ownRules.length} onStart={add} />
      <RulePacks caseId={file.case.id} hasOwn={file.ownRules.some(({ isOn }) => isOn)} />
    </section>
  );
}
