import fs from 'node:fs';
import path from 'node:path';
import { parseSync, Visitor } from 'rolldown/utils';
import { expect, test } from 'vitest';

// The mechanics dossier numbers its check values: anthropometry A, jumps J, indices I, video V, ball flight P, units W,
// uncertainty U, handball HB. Each must stand in the title of a test that asserts it.

const CHECKS = { A: 13, J: 14, I: 9, V: 20, P: 7, W: 7, U: 17, HB: 8 };

const tests = path.resolve(import.meta.dirname, '..');

function titlesOf(file: string): string[] {
  const titles: string[] = [];
  new Visitor({
    CallExpression: ({ callee, arguments: [title] }) => {
      const of = callee.type === 'CallExpression' ? callee.callee : callee;
      const name = of.type === 'MemberExpression' ? of.object : of;
      if (name.type !== 'Identifier' || !['test', 'describe'].includes(name.name)) return;
      if (title?.type === 'Literal') titles.push(String(title.value));
      if (title?.type === 'TemplateLiteral') titles.push(title.quasis.map(({ value }) => value.raw).join(' '));
      // Titles that come from a table: each of its texts.
      if (title?.type === 'ArrayExpression' || title?.type === 'TSAsExpression') {
        titles.push(
          ...(fs
            .readFileSync(file, 'utf8')
            .slice(title.start, title.end)
            .match(/'[^'\n]*'/g) ?? []),
        );
      }
    },
  }).visit(parseSync(file, fs.readFileSync(file, 'utf8')).program);
  return titles;
}

test('every numbered check value of the mechanics dossier has a test that names it', () => {
  const titles = ['reference', 'shared/kernel']
    .flatMap((folder) =>
      fs
        .readdirSync(path.join(tests, folder), { recursive: true, encoding: 'utf8' })
        .filter((name) => name.endsWith('.test.ts'))
        .map((name) => path.join(tests, folder, name)),
    )
    .flatMap(titlesOf)
    .join('\n');
  const ids = Object.entries(CHECKS).flatMap(([letter, last]) =>
    Array.from({ length: last }, (_, i) => `${letter}${i + 1}`),
  );
  expect(ids.filter((id) => !new RegExp(`(^|[^A-Za-z0-9])${id}([^0-9]|$)`, 'm').test(titles))).toEqual([]);
});
