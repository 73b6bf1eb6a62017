/** A formula as a tree, ready to be set. */
export type FormulaNode =
  | { readonly node: 'symbol'; readonly base: string; readonly sub: string | null }
  /** Set upright and as it is: a number, an operator, a bracket, a word. */
  | { readonly node: 'upright'; readonly text: string }
  | { readonly node: 'power'; readonly base: FormulaNode; readonly exponent: FormulaNode }
  | { readonly node: 'fraction'; readonly over: FormulaNode; readonly under: FormulaNode }
  | { readonly node: 'root'; readonly of: FormulaNode }
  | { readonly node: 'row'; readonly parts: readonly FormulaNode[] };

const TOKEN = /\s*(\d+(?:\.\d+)?(?:e[+-]?\d+)?|[\p{L}Σ∑][\p{L}\d]*(?:_\{[^}]*\}|_[\p{L}\d]+)?|[()^/,]|[^\s])/uy;
const OPERATORS = new Set(['=', '+', '-', '−', '±', '≈', '<', '>', '≤', '≥', ',', ';', '|']);

const FUNCTIONS = new Set(['sin', 'cos', 'tan', 'asin', 'acos', 'atan', 'log', 'exp']);

const upright = (text: string): FormulaNode => ({ node: 'upright', text });

/**
 * Reads the linear notation of a working, `h = v_to^2 / (2 g)`. A space multiplies; `/` divides all that was multiplied
 * so far by the next factor; brackets around a whole numerator or denominator are not needed once it is set.
 * Null for text that does not follow the notation; it is then shown as it stands.
 *
 * @source the notation is this program's own
 */
export function parseFormula(text: string): FormulaNode | null {
  const tokens: string[] = [];
  TOKEN.lastIndex = 0;
  for (let match = TOKEN.exec(text); match !== null; match = TOKEN.exec(text)) tokens.push(match[1] ?? '');
  let at = 0;

  /** Terms and operators up to a closing bracket or the end. */
  function row(): FormulaNode {
    const parts: FormulaNode[] = [];
    for (let token = tokens[at]; token !== undefined && token !== ')'; token = tokens[at]) {
      if (OPERATORS.has(token)) {
        at += 1;
        parts.push(upright(token === '-' ? '−' : token));
      } else parts.push(product());
    }
    return { node: 'row', parts };
  }

  function product(): FormulaNode {
    let factors: FormulaNode[] = [factor()];
    for (let token = tokens[at]; token !== undefined && token !== ')' && !OPERATORS.has(token); token = tokens[at]) {
      if (token === '/') {
        at += 1;
        factors = [{ node: 'fraction', over: bare({ node: 'row', parts: factors }), under: bare(factor()) }];
      } else factors.push(factor());
    }
    return { node: 'row', parts: factors };
  }

  function factor(): FormulaNode {
    const named = FUNCTIONS.has(tokens[at] ?? '') && tokens[at + 1] !== '(';
    const base = raised(atom());
    // `sin θ`, `cos^2 θ`: a named function takes the factor after it with it, wherever it goes.
    const hasArgument =
      named && tokens[at] !== undefined && !/^[)/]$/.test(tokens[at] ?? '') && !OPERATORS.has(tokens[at] ?? '');
    return hasArgument ? { node: 'row', parts: [base, factor()] } : base;
  }

  function raised(whole: FormulaNode): FormulaNode {
    let base = whole;
    while (tokens[at] === '^') {
      at += 1;
      const sign = tokens[at] === '-' ? tokens[at++] : undefined;
      const exponent = bare(atom());
      base = {
        node: 'power',
        base,
        exponent: sign === undefined ? exponent : { node: 'row', parts: [upright('−'), exponent] },
      };
    }
    return base;
  }

  function atom(): FormulaNode {
    const token = tokens[at];
    if (token === undefined || token === ')' || token === '^' || token === '/') throw new SyntaxError(text);
    at += 1;
    if (token === '(') return bracketed();
    if (!/^\p{L}|^∑/u.test(token)) return upright(token);
    const [base = token, sub] = token.split(/_(.*)/s);
    if (tokens[at] === '(' && /^[a-z]\w+$/.test(token)) {
      at += 1;
      const inside = bracketed();
      return token === 'sqrt' ? { node: 'root', of: bare(inside) } : { node: 'row', parts: [upright(token), inside] };
    }
    if (sub === undefined && /^[a-z]{3,}\d*$/.test(base)) return upright(base);
    return { node: 'symbol', base, sub: sub === undefined ? null : sub.replace(/[{}]/g, '') };
  }

  /** After an opening bracket: its content, brackets kept. */
  function bracketed(): FormulaNode {
    const inside = row();
    if (tokens[at] !== ')') throw new SyntaxError(text);
    at += 1;
    return { node: 'row', parts: [upright('('), inside, upright(')')] };
  }

  try {
    const whole = row();
    return at === tokens.length && tokens.length > 0 ? whole : null;
  } catch {
    return null;
  }
}

/** Without the brackets that a fraction bar, a root or a raised place makes needless. */
function bare(node: FormulaNode): FormulaNode {
  if (node.node !== 'row') return node;
  if (node.parts.length === 1) return bare(node.parts[0] as FormulaNode);
  const [open, inside, close] = node.parts;
  const isBracketed =
    node.parts.length === 3 &&
    open?.node === 'upright' &&
    open.text === '(' &&
    close?.node === 'upright' &&
    close.text === ')';
  return isBracketed && inside !== undefined ? inside : node;
}
