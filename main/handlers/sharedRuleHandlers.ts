import { canonicalJson } from '../../shared/canonicalJson.ts';
import { movementsOf, ownMovementName } from '../../shared/assess/movementOf.ts';
import { whatUpdateChanges } from '../../shared/assess/whatUpdateChanges.ts';
import type { Answer } from '../../shared/contract/channels.ts';
import { MOVEMENTS } from '../../shared/knowledge/movements/index.ts';
import { readOwnRules } from '../../shared/rules/ownRules.ts';
import { RULES_VERSION } from '../../shared/versions.ts';
import type { Context, Handlers } from './context.ts';
import { judgeOutdated } from './judged.ts';
import { openCases } from './openCases.ts';

type SharedChannel =
  | 'rules.shared'
  | 'rules.editShared'
  | 'rules.undoShared'
  | 'rules.redoShared'
  | 'rules.update'
  | 'rules.acceptUpdate';

export const sharedRuleHandlers: Handlers<SharedChannel> = {
  'rules.shared': (context) => sharedRules(context),
  'rules.editShared': async (context, { edits }) => {
    const { rules } = await context.store.rules.shared();
    // Half a threshold must not judge everyone while the other half is typed.
    const careful = edits.map(({ id, rule }) => {
      const before = rules.find((one) => one.id === id);
      const isChanged = before !== undefined && canonicalJson(before.rule) !== canonicalJson(rule?.rule ?? null);
      return { id, rule: rule === null ? null : { ...rule, isOn: rule.isOn && !(isChanged && before.isOn) } };
    });
    await context.store.rules.share(careful, context.now());
    return judgeAndAnswer(context);
  },
  'rules.undoShared': async (context) => {
    await context.store.rules.undoShared(context.now());
    return judgeAndAnswer(context);
  },
  'rules.redoShared': async (context) => {
    await context.store.rules.redoShared(context.now());
    return judgeAndAnswer(context);
  },
  'rules.update': async ({ store }) => {
    const waiting = new Set(await store.rules.waiting());
    const from = new Set<string>();
    const cases: Answer<'rules.update'>['cases'] = [];
    if (waiting.size > 0) {
      for await (const file of openCases(store)) {
        const { held } = file.judgedBy;
        if (held === null) continue;
        from.add(held.version);
        const changes = whatUpdateChanges(file);
        const { id: caseId, number } = file.case;
        if (changes.length > 0) cases.push({ caseId, number, athleteName: file.athlete.name, changes });
      }
    }
    return { from: [...from].toSorted(), to: RULES_VERSION, waiting: waiting.size, cases };
  },
  'rules.acceptUpdate': async (context) => {
    await context.store.rules.accept();
    await judgeOutdated(context);
    return {};
  },
};

async function judgeAndAnswer(context: Context): Promise<Answer<'rules.shared'>> {
  await judgeOutdated(context);
  return sharedRules(context);
}

async function sharedRules({ store }: Context): Promise<Answer<'rules.shared'>> {
  const { rules, canUndo, canRedo } = await store.rules.shared();
  const movements = movementsOf({ ownMovements: await store.rules.movements() });
  const own = new Map(
    movements
      .filter((one) => !MOVEMENTS.includes(one))
      .map(({ label, phases }) => [
        ownMovementName(label),
        { id: ownMovementName(label), label, phases: phases.map(({ id, label: name }) => ({ id, label: name })) },
      ]),
  );
  const checked = readOwnRules(rules, movements).map(({ of, problems }) => ({ ...of, problems: [...problems] }));
  return { rules: checked, movements: [...own.values()], canUndo, canRedo };
}
