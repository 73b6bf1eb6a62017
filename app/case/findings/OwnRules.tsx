import { useState } from 'react';
import type { RuleBody } from '../../../shared/model/ownRule.ts';
import { blankRule } from '../../../shared/rules/blankRule.ts';
import { OWN_RULE_WORDS, ruleBook } from '../../../shared/rules/ownRules.ts';
import { ownCopy } from '../../../shared/rules/ownCopy.ts';
import { SHIPPED_RULES } from '../../../shared/rules/shippedRules.ts';
import { useExportRulesMutation, useImportRulesMutation } from '../../api.ts';
import { failureWords } from '../../failureWords.ts';
import { Button } from '../../parts/Button.tsx';
import { ChoiceField } from '../../parts/ChoiceField.tsx';
import { FileDoor } from '../../parts/FileDoor.tsx';
import { newId } from '../newRecord.ts';
import { useCase } from '../useCase.ts';
import { patch, useEdit } from '../useEdit.ts';
import { OwnRuleForm } from './OwnRuleForm.tsx';

/** Rules of the user's own: changed from a shipped one or written anew, held to the same checks, and packs of them. */
export function OwnRules() {
  const { file } = useCase();
  const edit = useEdit();
  const [openId, setOpenId] = useState<string | null>(null);
  const { refused } = ruleBook(file);
  const open = file.ownRules.find(({ id }) => id === openId) ?? null;
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
        checks. Every finding they make says: {OWN_RULE_WORDS.toLowerCase()}.
      </p>
      {file.ownRules.length > 0 && (
        <ul className="own-list">
          {file.ownRules.map((own) => (
            <li key={own.id}>
              <button
                type="button"
                className="finding-title"
                aria-expanded={own.id === openId}
                onClick={() => setOpenId(own.id === openId ? null : own.id)}
              >
                {typeof own.rule['id'] === 'string' ? own.rule['id'] : 'own rule without a name'}{' '}
                <span className="quiet">
                  {!own.isOn ? 'off' : refused.has(own.id) ? 'on, but refused: it judges nothing' : 'on'}
                </span>
              </button>
            </li>
          ))}
        </ul>
      )}
      {open !== null && (
        <OwnRuleForm
          key={open.id}
          own={open}
          onChange={(fields) => edit([patch('ownRule', open.id, fields)])}
          onRemove={() => {
            edit([{ op: 'remove', kind: 'ownRule', id: open.id }]);
            setOpenId(null);
          }}
        />
      )}
      <div className="form">
        <ChoiceField
          label="Change a rule of the program"
          look="list"
          empty="Choose a rule to start from"
          value={null}
          choices={SHIPPED_RULES.map(({ id }) => ({ value: id, label: id }))}
          onChange={(id) => {
            const rule = SHIPPED_RULES.find((one) => one.id === id);
            if (rule !== undefined) add(ownCopy(rule));
          }}
        />
        <Button onClick={() => add(blankRule(file.ownRules.length + 1))}>Write a rule from nothing</Button>
      </div>
      <Packs caseId={file.case.id} hasOwn={file.ownRules.some(({ isOn }) => isOn)} />
    </section>
  );
}

/** Own rules out of this case and into it, as one file. */
function Packs({ caseId, hasOwn }: { caseId: string; hasOwn: boolean }) {
  const [write, written] = useExportRulesMutation();
  const [read, taken] = useImportRulesMutation();
  const failure = written.error ?? taken.error;
  return (
    <>
      <div className="row-of-buttons">
        {hasOwn && (
          <Button
            onClick={() =>
              void write({ caseId, name: 'Own rules' })
                .unwrap()
                .then(({ fileName, text }) => save(fileName, text))
                .catch(() => undefined)
            }
          >
            Write the rules that are on to a file
          </Button>
        )}
      </div>
      {written.data !== undefined && (
        <p className="quiet">
          SHA-256 of the content: <code>{written.data.sha256}</code>. It shows that the content is unchanged, not who
          wrote it.
        </p>
      )}
      <FileDoor
        label="Take in a file of rules"
        accept=".json"
        hint="Each rule is checked like those of the program; with one fault in the file nothing is taken in."
        isBusy={taken.isLoading}
        onFile={({ name, text }) => void read({ caseId, fileName: name, text })}
      />
      {taken.data !== undefined && (
        <output>
          Taken in: {taken.data.rules}.{' '}
          {taken.data.sha256 === null
            ? 'The file carries no SHA-256, so nothing shows whether it was changed.'
            : 'Its content is as it was written; this does not show who wrote it.'}
        </output>
      )}
      {failure !== undefined && <p role="alert">{failureWords(failure)}</p>}
    </>
  );
}

function save(fileName: string, text: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  link.download = fileName;
  link.click();
  URL.revokeObjectURL(link.href);
}
