import { DomainError } from '../../shared/errors.ts';
import { movementsOf } from '../../shared/assess/movementOf.ts';
import { previewRule } from '../../shared/assess/previewRule.ts';
import type { Answer } from '../../shared/contract/channels.ts';
import type { Movement } from '../../shared/knowledge/movement.ts';
import type { Edit } from '../../shared/model/edit.ts';
import type { RuleBody } from '../../shared/model/ownRule.ts';
import { readOwnRule, readOwnRules } from '../../shared/rules/ownRules.ts';
import { parsePack, packBodies } from '../../shared/rules/rulePack.ts';
import type { Rule } from '../../shared/rules/rule.ts';
import { parseJson } from '../exchange/parseJson.ts';
import { checkSignature, writePackFile } from '../exchange/packFile.ts';
import type { Context, Handlers } from './context.ts';
import { judged, judgeOutdated } from './judged.ts';
import { openCases } from './openCases.ts';

export const ruleHandlers: Handlers<'rules.preview' | 'rules.export' | 'rules.import'> = {
  'rules.preview': async ({ store }, { caseId, rule: body }) => {
    const file = caseId === null ? null : await store.open(caseId);
    const movements = movementsOf(file ?? { ownMovements: await store.rules.movements() });
    const { rule, problems } = readOwnRule(body, [], movements);
    if (rule === null) return { problems: [...problems], here: null, of: 0, fires: [] };
    // Named as it was written, so that every case finds the movement of that name among its own.
    const asked = { ...rule, movement: typeof body['movement'] === 'string' ? body['movement'] : rule.movement };
    const fires: Answer<'rules.preview'>['fires'] = [];
    let of = 0;
    for await (const other of openCases(store)) {
      of += 1;
      const said = previewRule(asked, other);
      if (said !== null && said.outcome !== 'not-assessed')
        fires.push({ caseId: other.case.id, number: other.case.number, ...said });
    }
    return { problems: [...problems], here: file === null ? null : previewRule(asked, file), of, fires };
  },
  'rules.export': async ({ store }, { caseId, name }) => {
    const { own, movements } = await ownRulesOf(store, caseId);
    const sound = soundOf(own, movements).map(({ body }) => body);
    if (sound.length === 0) {
      throw new DomainError(
        'not-enough-data',
        'No rule of one’s own is switched on and sound: there is nothing to write.',
      );
    }
    return {
      fileName: `${name.replaceAll(/[^\p{L}\p{N}]+/gu, '-').toLowerCase()}.rules.json`,
      ...writePackFile(name, sound),
    };
  },
  'rules.import': async (context, { caseId, fileName, text }) => {
    const { own, movements } = await ownRulesOf(context.store, caseId);
    const pack = parseJson(text, fileName);
    const sha256 = checkSignature(pack, fileName);
    const { rules } = parsePack(pack, fileName);
    const others = soundOf(own, movements).map(({ rule }) => rule);
    const bodies = packBodies(pack, fileName);
    for (const [i, body] of bodies.entries()) {
      const [problem] = readOwnRule(body, [...others, ...rules.slice(0, i)], movements).problems;
      if (problem !== undefined) {
        throw new DomainError(
          'refused-for-safety',
          `Nothing of ${fileName} was imported: ${rules[i]?.id}: ${problem.words}.`,
        );
      }
    }
    if (caseId === null) {
      const made = bodies.map((rule) => ({ id: context.newId(), isOn: true, rule }));
      await context.store.rules.share(
        made.map((rule) => ({ id: rule.id, rule })),
        context.now(),
      );
      await judgeOutdated(context);
      return { rules: rules.length, sha256, edits: null };
    }
    const created = bodies.map(
      (rule): Edit => ({ op: 'create', kind: 'ownRule', record: { id: context.newId(), caseId, isOn: true, rule } }),
    );
    const edits = await context.store.apply(caseId, created, context.now());
    await judged(context, caseId, created);
    return { rules: rules.length, sha256, edits };
  },
};

type Own = readonly { readonly isOn: boolean; readonly rule: RuleBody }[];

/** The own rules of one case, or those for every case, with the movements they may name. */
async function ownRulesOf(
  store: Context['store'],
  caseId: string | null,
): Promise<{ own: Own; movements: readonly Movement[] }> {
  if (caseId === null) {
    const ownMovements = await store.rules.movements();
    return { own: (await store.rules.shared()).rules, movements: movementsOf({ ownMovements }) };
  }
  const file = await store.open(caseId);
  return { own: file.ownRules, movements: movementsOf(file) };
}

/** Those that are on and may judge, each with the form it was written in. */
function soundOf(own: Own, movements: readonly Movement[]): { readonly body: RuleBody; readonly rule: Rule }[] {
  const on = own.filter(({ isOn }) => isOn);
  return readOwnRules(on, movements).flatMap(({ of, sound }) =>
    sound === null ? [] : [{ body: of.rule, rule: sound }],
  );
}
