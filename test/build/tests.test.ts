import { expect, test } from 'vitest'
import { below } from '../../build/paths.ts'
import { tallyOf } from '../../build/tests.ts'

const file = (status: string, message: string, ...tests: Array<[string, string, string?]>) => ({
  name: below('test', 'a.test.ts'),
  status,
  message,
  assertionResults: tests.map(([fullName, testStatus, failure]) => ({
    fullName,
    status: testStatus,
    failureMessages: failure === undefined ? [] : [failure],
  })),
})

test('passed and failed tests are counted, a skipped one is named', () => {
  const report = {
    testResults: [
      file(
        'failed',
        '',
        ['one', 'passed'],
        ['two', 'failed', 'Error: not so\n  at line 3'],
        ['three', 'skipped'],
      ),
      file('passed', '', ['four', 'passed']),
    ],
  }
  expect(tallyOf(report, 1)).toEqual({
    passed: 2,
    failed: 1,
    reasons: ['test/a.test.ts: two: Error: not so'],
    skipped: ['test/a.test.ts: three'],
  })
})

test('a file that does not load counts as failed', () => {
  const report = { testResults: [file('failed', 'does not load'), file('passed', '', ['one', 'passed'])] }
  expect(tallyOf(report, 1)).toMatchObject({
    passed: 1,
    failed: 1,
    reasons: ['test/a.test.ts: does not load'],
  })
})

test('a status that no failure explains counts as failed', () => {
  const report = { testResults: [file('passed', '', ['one', 'passed'])] }
  expect(tallyOf(report, 1)).toMatchObject({ passed: 1, failed: 1 })
  expect(tallyOf(report, 0)).toMatchObject({ passed: 1, failed: 0 })
})

test('a run without a test counts as failed', () => {
  expect(tallyOf({ testResults: [] }, 0)).toMatchObject({ passed: 0, failed: 1 })
})
