import fs from 'node:fs';
import path from 'node:path';
import { parseSync } from 'rolldown/utils';
import { describe, expect, test } from 'vitest';

// Whoever re-derives a number by hand starts from the docstring of the function that gave it.

const kernel = path.resolve(import.meta.dirname, '../../shared/kernel');

interface Documented {
  /** `jump/flightHeight.ts flightHeight`. */
  readonly name: string;
  /** The one its file is named after. */
  readonly isPublic: boolean;
  readonly doc: string;
  readonly returnsPlainNumber: boolean;
  /** Parameters whose type says neither unit nor range. */
  readonly bareNumbers: readonly string[];
  /** Its file refuses input, or calls what does. */
  readonly mayThrow: boolean;
}

const functions = fs
  .readdirSync(kernel, { recursive: true, encoding: 'utf8' })
  .map((name) => name.split(path.sep).join('/'))
  .filter((name) => name.endsWith('.ts') && !name.endsWith('.d.ts'))
  .flatMap(functionsOf);

function functionsOf(file: string): Documented[] {
  const text = fs.readFileSync(path.join(kernel, file), 'utf8');
  const { program, comments } = parseSync(file, text);
  return program.body.flatMap((node) => {
    if (node.type !== 'ExportNamedDeclaration' || node.declaration?.type !== 'FunctionDeclaration') return [];
    const name = node.declaration.id?.name ?? '';
    const type = node.declaration.returnType ?? null;
    const comment = comments.findLast(({ end }) => end <= node.start);
    const isBeside = comment?.value.startsWith('*') === true && text.slice(comment.end, node.start).trim() === '';
    return [
      {
        name: `${file} ${name}`,
        isPublic: path.posix.basename(file, '.ts') === name,
        doc: isBeside ? comment.value : '',
        returnsPlainNumber: type !== null && /^: \(?(readonly )?(number|Float64Array)/.test(text.slice(type.start)),
        bareNumbers: node.declaration.params.flatMap((param) => {
          const named = param.type === 'Identifier' ? param : param.type === 'AssignmentPattern' ? param.left : null;
          if (named?.type !== 'Identifier' || !named.typeAnnotation) return [];
          const is = text.slice(named.typeAnnotation.start, named.typeAnnotation.end);
          return /^: (readonly )?(number|Float64Array)\b/.test(is) ? [named.name] : [];
        }),
        mayThrow: /new DomainError\(|\b(requirePositive|refuse[A-Z]\w*)\(/.test(text),
      },
    ];
  });
}

const without = (tag: RegExp, of: readonly Documented[]) =>
  of.filter(({ doc }) => !tag.test(doc)).map(({ name }) => name);
const open = functions.filter(({ isPublic }) => isPublic);

describe('every function the kernel offers says what it computes', () => {
  test('the kernel was read', () => expect(open.length).toBeGreaterThan(120));
  test('each exported function has a docstring', () => expect(without(/\w/, functions)).toEqual([]));
  test('the one its file is named after names a source', () => expect(without(/@source \w/, open)).toEqual([]));
  test('its parameters and its errors, where it refuses anything', () =>
    expect(
      without(
        /@throws/,
        open.filter(({ mayThrow }) => mayThrow),
      ),
    ).toEqual([]));
  test('what each number put into it is: unit, range, or what it counts', () =>
    expect(
      open.flatMap(({ name, doc, bareNumbers }) =>
        bareNumbers
          .filter((one) => !new RegExp(`@param [^\\n]*\\b${one}\\b`).test(doc))
          .map((one) => `${name}: ${one}`),
      ),
    ).toEqual([]));
  test('the unit of what it returns, where the type does not carry it', () =>
    expect(
      without(
        /@returns/,
        open.filter(({ returnsPlainNumber }) => returnsPlainNumber),
      ),
    ).toEqual([]));
});
