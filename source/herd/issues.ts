import type { z } from 'zod'
import { fault, type Problem } from '../breeding/problem.ts'

/** Longest piece of a wrong value that is repeated in a problem, characters. */
const shownLength = 60

type Issue = z.core.$ZodIssue

/** A value from the file as a problem names it: short, and text whatever it was. */
export function shown(value: unknown): string {
  const text =
    typeof value === 'string'
      ? value
      : value === null || typeof value !== 'object'
        ? String(value)
        : Array.isArray(value)
          ? 'a list'
          : 'an object'
  return text.length > shownLength ? `${text.slice(0, shownLength)}…` : text
}

/**
 * What the schema found wrong with a fact, as a problem.
 *
 * @param place path of the fact, `facts[3]`
 * @param animal number of the animal it is about
 * @example problemOf(issue, fact, 'facts[3]') // { code: 'field-date', path: 'facts[3].date', … }
 */
export function problemOf(issue: Issue, fact: unknown, place: string, animal?: string): Problem {
  const path =
    place + issue.path.map((part) => (typeof part === 'number' ? `[${part}]` : `.${String(part)}`)).join('')
  const value = valueAt(fact, issue.path)
  const found = shown(value)
  const field = String(issue.path.findLast((part) => typeof part === 'string'))
  const problem = (code: string, values: Problem['values'] = {}): Problem =>
    fault(code, path, { field, found, ...values }, animal)
  switch (issue.code) {
    case 'invalid_type':
      return value === undefined
        ? fault('field-missing', path, { field }, animal)
        : problem('field-type', { expected: issue.expected })
    case 'invalid_value':
      return value === undefined
        ? fault('field-missing', path, { field }, animal)
        : problem('field-choice', { choices: issue.values.map(String).join(', ') })
    case 'too_small':
      return issue.origin === 'string'
        ? problem('field-empty')
        : problem('field-too-small', { limit: Number(issue.minimum) })
    case 'too_big':
      return issue.origin === 'string'
        ? problem('field-too-long', { limit: Number(issue.maximum) })
        : problem('field-too-large', { limit: Number(issue.maximum) })
    case 'not_multiple_of':
      return problem('field-step', { step: issue.divisor })
    default:
      return problem(`field-${issue.message}`)
  }
}

/** What stands where the schema found something: it goes into objects and lists only, and the last part may lack. */
const valueAt = (fact: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce((value, part) => (value as Record<PropertyKey, unknown>)[part], fact)
