import { parseSync } from 'vite';

/** One place where a file names another module. */
export interface Link {
  readonly kind: 'import' | 'glob' | 'url';
  /** As written; for a glob the pattern. Undefined when it is computed at run time and cannot be checked. */
  readonly specifier: string | undefined;
}

interface Node {
  readonly type: string;
  readonly [key: string]: unknown;
}

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as { type?: unknown }).type === 'string';

const literal = (value: unknown): string | undefined => {
  if (!isNode(value)) return undefined;
  if (value.type === 'Literal' && typeof value.value === 'string') return value.value;
  if (value.type === 'TSLiteralType') return literal(value.literal);
  if (value.type === 'TemplateLiteral' && (value.expressions as unknown[]).length === 0) {
    const [quasi] = value.quasis as { value: { cooked: string } }[];
    return quasi?.value.cooked;
  }
  return undefined;
};

const isImportMeta = (value: unknown, property: string): boolean =>
  isNode(value) &&
  value.type === 'MemberExpression' &&
  isNode(value.object) &&
  value.object.type === 'MetaProperty' &&
  isNode(value.property) &&
  value.property.name === property;

function linksOf(node: Node): Link[] {
  switch (node.type) {
    case 'ImportDeclaration':
    case 'ExportAllDeclaration':
    case 'ImportExpression':
    case 'TSImportType':
      return [{ kind: 'import', specifier: literal(node.source ?? node.argument) }];
    case 'ExportNamedDeclaration':
      return node.source ? [{ kind: 'import', specifier: literal(node.source) }] : [];
    case 'TSExternalModuleReference':
      return [{ kind: 'import', specifier: literal(node.expression) }];
    case 'CallExpression': {
      const [first] = node.arguments as unknown[];
      if (isNode(node.callee) && node.callee.type === 'Identifier' && node.callee.name === 'require') {
        return [{ kind: 'import', specifier: literal(first) }];
      }
      if (!isImportMeta(node.callee, 'glob')) return [];
      const patterns = isNode(first) && first.type === 'ArrayExpression' ? (first.elements as unknown[]) : [first];
      return patterns.map((pattern) => ({ kind: 'glob', specifier: literal(pattern) }));
    }
    case 'NewExpression': {
      const [first, second] = node.arguments as unknown[];
      const isUrl = isNode(node.callee) && node.callee.name === 'URL' && isImportMeta(second, 'url');
      return isUrl ? [{ kind: 'url', specifier: literal(first) }] : [];
    }
    default:
      return [];
  }
}

function walk(value: unknown, visit: (node: Node) => void): void {
  if (Array.isArray(value)) {
    for (const part of value) walk(part, visit);
  } else if (isNode(value)) {
    visit(value);
    for (const part of Object.values(value)) walk(part, visit);
  }
}

function programOf(path: string, code: string): Node {
  const { program, errors } = parseSync(path, code);
  const [error] = errors;
  if (error !== undefined) throw new Error(`${path} cannot be read: ${error.message}`);
  return program as unknown as Node;
}

/** Every module a file names: static, dynamic and type imports, re-exports, glob patterns, and URLs beside the file. */
export function readLinks(path: string, code: string): readonly Link[] {
  const links: Link[] = [];
  walk(programOf(path, code), (node) => links.push(...linksOf(node)));
  return links;
}

/** How many default exports a file has. */
export function countDefaultExports(path: string, code: string): number {
  let count = 0;
  walk(programOf(path, code), (node) => {
    if (node.type === 'ExportDefaultDeclaration') count += 1;
    if (node.type === 'ExportSpecifier' && isNode(node.exported) && node.exported.name === 'default') count += 1;
  });
  return count;
}
