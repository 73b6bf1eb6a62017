import { useEffect, useState } from 'react';
import { OWN_RULE_WORDS } from '../../shared/rules/ownRules.ts';
import type { RuleBody, SharedRule } from '../../shared/model/ownRule.ts';
import {
  useEditSharedRulesMutation,
  useRedoSharedRulesMutation,
  useSharedRulesQuery,
  useUndoSharedRulesMutation,
} from '../api.ts';
import { newId } from '../case/newRecord.ts';
import { failureWords } from '../failureWords.ts';
import { Button } from '../parts/Button.tsx';
import { EmptyState } from '../parts/EmptyState.tsx';
import { SharedHead } from '../workbench/SharedHead.tsx';
import { RuleForm } from './RuleForm.tsx';
import { RuleList } from './RuleList.tsx';
import { RulePacks } from './RulePacks.tsx';
import { RuleStart } from './RuleStart.tsx';
import { UpdatePanel } from './UpdatePanel.tsx';
import './rules.css';

/** Rules for every case: those of one's own, and what newer rules of the program would change. */
export function RulesScreen() {
  const { data, error } = useSharedRulesQuery();
  const [edit, edited] = useEditSharedRulesMutation();
  const [undo] = useUndoSharedRulesMutation();
  const [redo] = useRedoSharedRulesMutation();
  const [openId, setOpenId] = useState<string | null>(null);
  /** What is typed is on screen at once and stored in the order made; undone, the stored rule is shown again. */
  const [drafts, setDrafts] = useState<ReadonlyMap<string, SharedRule>>(new Map());
  useEffect(() => {
    document.title = 'Rules, Caseframe';
  }, []);
  const failure = error ?? edited.error;
  const rules = data?.rules ?? [];

  const put = (rule: SharedRule) => {
    setDrafts(new Map(drafts).set(rule.id, rule));
    void edit({ edits: [{ id: rule.id, rule }] });
  };
  const add = (rule: RuleBody) => {
    const id = newId();
    put({ id, isOn: false, rule });
    setOpenId(id);
  };

  return (
    <>
      <SharedHead steps={data} undo={() => undo()} redo={() => redo()} onDone={() => setDrafts(new Map())} />
      <main id="sheet" className="shelf rules-screen" tabIndex={-1}>
        <h1>Rules</h1>
        <UpdatePanel />
        <section aria-labelledby="shared-rules">
          <h2 id="shared-rules">Own rules for every case</h2>
          <p className="quiet">
            They judge every case beside the rules of the program, or in place of one, once they are on and pass the
            same checks. A rule that is changed is off until you switch it on again. Every finding they make says:{' '}
            {OWN_RULE_WORDS.toLowerCase()}.
          </p>
          {failure !== undefined && <p role="alert">{failureWords(failure)}</p>}
          {data !== undefined && rules.length === 0 && (
            <EmptyState title="No rule of one’s own yet.">
              <p>Begin with a rule of the program that you would set otherwise, or write one from nothing.</p>
            </EmptyState>
          )}
          <RuleList rules={rules} openId={openId} isRefused={({ problems }) => problems.length > 0} onOpen={setOpenId}>
            {(stored) => {
              const own = drafts.get(stored.id) ?? stored;
              return (
                <RuleForm
                  rule={own.rule}
                  isOn={own.isOn}
                  judges="every case"
                  caseId={null}
                  movements={data?.movements ?? []}
                  onRule={(rule) => put({ id: own.id, isOn: false, rule })}
                  onSwitch={(isOn) => put({ id: own.id, isOn, rule: own.rule })}
                >
                  <Button look="quiet" onClick={() => void edit({ edits: [{ id: own.id, rule: null }] })}>
                    Remove this rule
                  </Button>
                </RuleForm>
              );
            }}
          </RuleList>
          <RuleStart count={rules.length} onStart={add} />
          <RulePacks caseId={null} hasOwn={rules.some(({ isOn }) => isOn)} />
        </section>
      </main>
    </>
  );
}
