import { counted } from '../../shared/format/number.ts';
import { checkKnowledge, SHIPPED_KNOWLEDGE } from '../../shared/knowledge/checkKnowledge.ts';
import { checkRules } from '../../shared/rules/checkRules.ts';
import { checkPack, parsePack } from '../../shared/rules/rulePack.ts';
import { SHIPPED_RULES } from '../../shared/rules/shippedRules.ts';
import { checkSignature } from '../exchange/packFile.ts';
import { type Command, readJson } from './command.ts';

export const rulesCheck: Command = {
  name: 'rules check',
  usage: '[PACK.json]',
  does: 'whether the rules and knowledge that come with the program, or a pack of your own beside them, may be used',
  words: 0,
  mayFollow: 1,
  options: {},
  run({ words: [file] }) {
    const content = file === undefined ? null : readJson(file);
    const sha256 = file === undefined ? null : checkSignature(content, file);
    const pack = file === undefined ? null : parsePack(content, file);
    const count = pack?.rules.length ?? SHIPPED_RULES.length;
    // A shipped rule has a file of its own, named after its id; a phase without rules has none.
    const own = (about: string) =>
      file ?? (SHIPPED_RULES.some(({ id }) => id === about) ? `shared/rules/entries/${about}.ts` : null);
    const found = pack === null ? checkRules(SHIPPED_RULES) : checkPack(pack);
    const knowledge = pack === null ? checkKnowledge(SHIPPED_KNOWLEDGE) : [];
    const problems = [
      ...found.map(({ about, problem }) => ({ file: own(about), about, problem })),
      ...knowledge.map((one) => ({ ...one, file: `shared/knowledge/${one.file}` })),
    ];
    return {
      json: { file: file ?? null, rules: count, sha256, problems },
      lines: [
        `${counted(count, 'rule')}, ${problems.length === 0 ? 'nothing against them' : `${counted(problems.length, 'problem')}: refused`}`,
        ...problems.map(
          ({ file: where, about, problem }) => `${where === null ? '' : `${where}: `}${about}: ${problem}`,
        ),
      ],
      exitCode: problems.length === 0 ? 0 : 3,
    };
  },
};
