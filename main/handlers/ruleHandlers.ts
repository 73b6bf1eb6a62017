import { DomainError } from '../../shared/errors.ts';
import { movementsOf } from '../../shared/assess/movementOf.ts';
import { previewRule } from '../../shared/assess/previewRule.ts';
import type { Edit } from '../../shared/model/edit.ts';
import type { CaseFile } from '../../shared/model/records.ts';
import { readOwnRule, ruleBook } from '../../shared/rules/ownRules.ts';
import { parsePack, packBodies } from '../../shared/rules/rulePack.ts';
import { checkSignature, writePackFile } from '../exchange/packFile.ts';
import type { Context, Handlers } from './context.ts';
import { judged } from './judged.ts';

const PAGE = 500;

export const ruleHandlers: Handlers<'rules.preview' | 'rules.export' | 'rules.import'> = {
  'rules.preview': async ({ store }, { caseId, rule: body }) => {
    const file = await store.open(caseId);
    const { rule, problems } = readOwnRule(body, [], movementsOf(file));
    if (rule === null) return { problems: [...problems], here: null, of: 0, fires: [] };
    const fires: {
      caseId: string;
      number: string;
      outcome: NonNullable<ReturnType<typeof previewRule>>['outcome'];
      finding: string;
      intervention: string | null;
    }[] = [];
    let of = 0;
    for await (const other of openCases(store)) {
      of += 1;
      const said = previewRule(rule, other);
      if (said !== null && said.outcome !== 'not-assessed')
        fires.push({ caseId: other.case.id, number: other.case.number, ...said });
    }
    return { problems: [...problems], here: previewRule(rule, file), of, fires };
  },
  'rules.export': async ({ store }, { caseId, name }) => {
    const file = await store.open(caseId);
    const { refused } = ruleBook(file.ownRules, movementsOf(file));
    const sound = file.ownRules.filter(({ id, isOn }) => isOn && !refused.has(id)).map(({ rule }) => rule);
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
    const file = await context.store.open(caseId);
    const pack = jsonOf(text, fileName);
    const sha256 = checkSignature(pack, fileName);
    const { rules } = parsePack(pack, fileName);
    const own = ruleBook(file.ownRules, movementsOf(file)).rules.filter(({ id }) => id.startsWith('own/'));
    const bodies = packBodies(pack, fileName);
    for (const [i, body] of bodies.entries()) {
      const [problem] = readOwnRule(body, [...own, ...rules.slice(0, i)], movementsOf(file)).problems;
      if (problem !== undefined) {
        throw new DomainError(
          'refused-for-safety',
          `Nothing of ${fileName} was imported: ${rules[i]?.id}: ${problem}.`,
        );
      }
    }
    const created = bodies.map(
      (rule): Edit => ({ op: 'create', kind: 'ownRule', record: { id: context.newId(), caseId, isOn: true, rule } }),
    );
    const edits = await context.store.apply(caseId, created, context.now());
    await judged(context, caseId, created);
    return { rules: rules.length, sha256, edits };
  },
};

/** @throws DomainError 'input-malformed' */
function jsonOf(text: string, fileName: string): unknown {
  try {
    return JSON.parse(text);
  } catch (thrown) {
    throw new DomainError('input-malformed', `${fileName} is not JSON: ${(thrown as Error).message}.`);
  }
}

/** Every case that is not archived, one after the other. */
async function* openCases(store: Context['store']): AsyncGenerator<CaseFile> {
  for (let offset = 0, total = 1; offset < total; offset += PAGE) {
    const page = await store.shelf({ search: '', archived: false, offset, limit: PAGE });
    total = page.total;
    for (const { caseId } of page.rows) yield store.open(caseId);
  }
}
