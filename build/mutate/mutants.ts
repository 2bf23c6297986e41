/** Finds the small changes of a source text that its tests should notice. */
import { parseSync } from 'rolldown/utils'

export interface Mutant {
  /** Characters that are changed. */
  readonly from: number
  readonly to: number
  /** 1 for the first line. */
  readonly line: number
  /** The line, with what is changed between « and ». */
  readonly at: string
  /** What stands there instead; an empty change leaves a statement out. */
  readonly becomes: string
  readonly isStatement: boolean
}

interface Node {
  readonly type: string
  readonly start: number
  readonly end: number
  readonly [field: string]: unknown
}

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as Node).type === 'string'

/** Operators that stand in for one another. */
const operators: Readonly<Record<string, readonly string[]>> = {
  '<': ['<=', '>='],
  '<=': ['<', '>'],
  '>': ['>=', '<='],
  '>=': ['>', '<'],
  '===': ['!=='],
  '!==': ['==='],
  '+': ['-'],
  '-': ['+'],
  '*': ['/'],
  '/': ['*'],
  '%': ['*'],
  '&&': ['||'],
  '||': ['&&'],
  '??': ['&&'],
  '+=': ['-='],
  '-=': ['+='],
  '||=': ['&&='],
  '&&=': ['||='],
  '??=': ['='],
}

/** Methods that stand in for one another. */
const methods = new Map(
  [
    ['some', 'every'],
    ['min', 'max'],
    ['find', 'findLast'],
    ['findIndex', 'findLastIndex'],
  ].flatMap(([one = '', other = '']) => [
    [one, other],
    [other, one],
  ]) as [string, string][],
)

/** Methods that can be left out: what they are called on stands for what they give. */
const needless = new Set(['filter', 'sort', 'toSorted', 'toReversed'])

const removable = new Set(['ExpressionStatement', 'ReturnStatement', 'ThrowStatement', 'ContinueStatement'])

/** Conditions that are changed anyway; any other is turned round. */
const turned = new Set(['BinaryExpression', 'LogicalExpression', 'UnaryExpression', 'Literal'])

/** Fields that hold types, names or nothing that is reckoned. */
const passedOver = new Set([
  'typeAnnotation',
  'returnType',
  'typeParameters',
  'typeArguments',
  'superTypeArguments',
])
const wrappers = new Set(['TSAsExpression', 'TSNonNullExpression', 'TSSatisfiesExpression'])

/**
 * The mutants of a source text, in the order of the text.
 *
 * @param path its name tells whether it holds JSX
 * @example mutantsOf('a.ts', 'export const f = (a: number) => a < 3').map(({ becomes }) => becomes)
 *   // ['(a) <= (3)', '(a) >= (3)', '4', '2']
 */
export function mutantsOf(path: string, text: string): readonly Mutant[] {
  const { program, errors } = parseSync(path, text)
  if (errors.length > 0) throw new Error(`${path}: ${errors[0]?.message}`)
  const found: Mutant[] = []
  const add = (node: Node, becomes: string, isStatement = false): void => {
    const { start: from, end: to } = node
    const line = text.slice(0, from).split('\n').length
    found.push({ from, to, line, at: lineOf(text, from, to), becomes, isStatement })
  }
  const raw = (node: unknown): string => (isNode(node) ? text.slice(node.start, node.end) : '')
  const visit = (node: Node, inChain: boolean): void => {
    if (node.type.startsWith('TS') && !wrappers.has(node.type)) return
    if (node.type === 'ImportDeclaration') return
    if (removable.has(node.type) && !isNothing(node)) add(node, '', true)
    for (const becomes of changesOf(node, raw, inChain)) add(node, becomes)
    if (isNode(node.test) && !turned.has(node.test.type)) add(node.test, `!(${raw(node.test)})`)
    for (const [field, value] of Object.entries(node)) {
      if (passedOver.has(field) || (field === 'key' && node.computed !== true)) continue
      for (const child of Array.isArray(value) ? value : [value])
        if (isNode(child)) visit(child, node.type === 'ChainExpression' || (inChain && field !== 'arguments'))
    }
  }
  visit(program as unknown as Node, false)
  return found
}

function lineOf(text: string, from: number, to: number): string {
  const start = text.lastIndexOf('\n', from - 1) + 1
  const end = text.indexOf('\n', to)
  const after = text.slice(to, end === -1 ? undefined : end)
  return `${text.slice(start, from)}«${text.slice(from, to)}»${after}`.replaceAll(/\s+/g, ' ').trim()
}

/** A directive or an empty return. */
const isNothing = (node: Node): boolean =>
  typeof node.directive === 'string' || (node.type === 'ReturnStatement' && !isNode(node.argument))

function changesOf(node: Node, raw: (node: unknown) => string, inChain: boolean): readonly string[] {
  const { left, right, operator, argument, value } = node
  switch (node.type) {
    case 'BinaryExpression':
    case 'LogicalExpression':
    case 'AssignmentExpression': {
      if (operator === '+' && (isText(left) || isText(right))) return []
      const sides = (other: string): string =>
        node.type === 'AssignmentExpression'
          ? `${raw(left)} ${other} ${raw(right)}`
          : `(${raw(left)}) ${other} (${raw(right)})`
      return (operators[operator as string] ?? []).map(sides)
    }
    case 'UnaryExpression':
      return operator === '!' || operator === '-' ? [`(${raw(argument)})`] : []
    case 'Literal':
      if (typeof value === 'boolean') return [String(!value)]
      return typeof value === 'number' && Math.abs(value) < 1e6 ? [String(value + 1), `(${value - 1})`] : []
    case 'CallExpression': {
      const callee = node.callee
      if (inChain || !isNode(callee) || callee.type !== 'MemberExpression' || callee.computed === true)
        return []
      const name = raw(callee.property)
      if (needless.has(name)) return [raw(callee.object)]
      const other = methods.get(name)
      return other === undefined
        ? []
        : [`${raw(callee.object)}.${other}${raw(node).slice(raw(callee).length)}`]
    }
    default:
      return []
  }
}

/** A text, or a sum that holds one. */
const isText = (node: unknown): boolean =>
  isNode(node) &&
  (node.type === 'TemplateLiteral' ||
    (node.type === 'Literal' && typeof node.value === 'string') ||
    (node.type === 'BinaryExpression' && (isText(node.left) || isText(node.right))))
