import ts from 'typescript';
import { lineOf, nodesOf } from './imports.js';

/** Names that bring in the clock, randomness, the environment or the outside world. */
const OUTSIDE = new Set([
  'Date',
  'process',
  'performance',
  'crypto',
  'globalThis',
  'global',
  'navigator',
  'fetch',
  'WebSocket',
  'console',
  'setTimeout',
  'setInterval',
  'setImmediate',
  'eval',
]);

const OUTSIDE_MEMBERS = new Set(['Math.random', 'Temporal.Now', 'import.meta']);

/** Methods that use the machine's language unless their first or second argument names one. */
const LOCALE_ARGUMENT: Readonly<Record<string, number>> = {
  localeCompare: 2,
  toLocaleString: 1,
  toLocaleDateString: 1,
  toLocaleTimeString: 1,
};

/** What in a file reaches outside of its arguments, with the line of each. */
export function impurities(
  file: ts.SourceFile,
): { readonly what: string; readonly line: number }[] {
  return nodesOf(file).flatMap((node) => {
    const what = outsideMember(node) ?? outsideName(node) ?? machineLocale(node);
    return what === undefined ? [] : [{ what, line: lineOf(file, node) }];
  });
}

function outsideMember(node: ts.Node): string | undefined {
  if (ts.isMetaProperty(node)) return 'import.meta';
  if (!ts.isPropertyAccessExpression(node) && !ts.isElementAccessExpression(node)) return undefined;
  const member = ts.isPropertyAccessExpression(node) ? node.name : node.argumentExpression;
  if (!ts.isIdentifier(member) && !ts.isStringLiteralLike(member)) return undefined;
  const name = `${node.expression.getText()}.${member.text}`;
  return OUTSIDE_MEMBERS.has(name) ? name : undefined;
}

function outsideName(node: ts.Node): string | undefined {
  return ts.isIdentifier(node) && OUTSIDE.has(node.text) && isUse(node) ? node.text : undefined;
}

/** Whether a name stands for its value here, and is not a declaration, a key, a member or a type. */
function isUse(name: ts.Identifier): boolean {
  const parent = name.parent;
  if (ts.isShorthandPropertyAssignment(parent)) return true;
  if (ts.isTypeReferenceNode(parent) || ts.isQualifiedName(parent)) return false;
  if (ts.isBindingElement(parent) && parent.propertyName === name) return false;
  return !('name' in parent && parent.name === name);
}

function machineLocale(node: ts.Node): string | undefined {
  if (ts.isNewExpression(node) && node.expression.getText().startsWith('Intl.')) {
    return node.arguments?.length ? undefined : `new ${node.expression.getText()}()`;
  }
  if (!ts.isCallExpression(node) || !ts.isPropertyAccessExpression(node.expression)) {
    return undefined;
  }
  const method = node.expression.name.text;
  const least = Object.hasOwn(LOCALE_ARGUMENT, method) ? LOCALE_ARGUMENT[method] : undefined;
  return least !== undefined && node.arguments.length < least ? `${method}()` : undefined;
}
