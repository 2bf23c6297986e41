import fc from 'fast-check'
import { expect, test } from 'vitest'
import { kaplanMeier, survivalAt } from '../../../source/breeding/statistics/kaplan-meier.ts'
import reference from '../../fixtures/statistics.json' with { type: 'json' }

test('agrees with R survival: ties, censoring, standard errors', () => {
  for (const curve of reference.kaplanMeier) {
    const steps = kaplanMeier(
      curve.watchedUntil.map((time, i) => ({ time, happened: curve.happened[i] === 1 })),
    )
    expect(steps.map((s) => s.time)).toEqual(curve.time)
    expect(steps.map((s) => s.atRisk)).toEqual(curve.atRisk)
    expect(steps.map((s) => s.happened)).toEqual(curve.events)
    for (const [i, step] of steps.entries()) {
      expect(step.survival).toBeCloseTo(curve.survival[i] ?? Number.NaN, 12)
      expect(step.standardError).toBeCloseTo(curve.standardError[i] ?? Number.NaN, 12)
    }
  }
})

test('nobody watched, or nothing seen: no steps', () => {
  expect(kaplanMeier([])).toEqual([])
  expect(kaplanMeier([{ time: 3, happened: false }])).toEqual([])
  expect(survivalAt([], 10)).toBe(1)
})

test('without censoring it is the share still waiting', () => {
  fc.assert(
    fc.property(fc.array(fc.nat(30), { minLength: 1, maxLength: 80 }), fc.nat(30), (times, at) => {
      const steps = kaplanMeier(times.map((time) => ({ time, happened: true })))
      expect(survivalAt(steps, at)).toBeCloseTo(times.filter((t) => t > at).length / times.length, 12)
    }),
  )
})

test('does not depend on the order of the watched', () => {
  const watched = fc.record({ time: fc.nat(20), happened: fc.boolean() })
  fc.assert(
    fc.property(fc.array(watched), (list) => {
      expect(kaplanMeier([...list].reverse())).toEqual(kaplanMeier(list))
    }),
  )
})
