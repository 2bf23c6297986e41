import { expect, test } from 'vitest'
import { fault, notice } from '../../source/breeding/problem.ts'

test('a fault and a notice hold a code, a place, and what they are told besides', () => {
  expect(fault('no-such-day', 'facts[3].date')).toEqual({
    code: 'no-such-day',
    severity: 'fault',
    path: 'facts[3].date',
  })
  expect(notice('no-such-day', 'facts[3].date', { found: '2026-02-30' }, '412')).toEqual({
    code: 'no-such-day',
    severity: 'notice',
    path: 'facts[3].date',
    values: { found: '2026-02-30' },
    animal: '412',
  })
})

test('what is not told is no field at all, so that two problems can be compared', () => {
  expect(Object.keys(notice('damaged', ''))).toEqual(['code', 'severity', 'path'])
  expect(Object.keys(fault('damaged', '', undefined, '412'))).toEqual(['code', 'severity', 'path', 'animal'])
  expect(Object.keys(fault('damaged', '', { line: 3 }))).toEqual(['code', 'severity', 'path', 'values'])
})
