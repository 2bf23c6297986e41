import { expect, test } from 'vitest'
import { nothingSetAside } from '../../../source/breeding/straws/set-aside.ts'

test('promised straws are counted by sire and kind, by sire, and in all', () => {
  const aside = nothingSetAside()
  expect([aside.straws('S1', 'sexed'), aside.ofSire('S1'), aside.total()]).toEqual([0, 0, 0])
  aside.add('S1', 'sexed')
  aside.add('S1', 'sexed')
  aside.add('S1', 'beef')
  aside.add('S2', 'sexed')
  expect([aside.straws('S1', 'sexed'), aside.straws('S1', 'beef'), aside.straws('S2', 'sexed')]).toEqual([
    2, 1, 1,
  ])
  expect([aside.straws('S2', 'beef'), aside.ofSire('S1'), aside.ofSire('S2'), aside.total()]).toEqual([
    0, 3, 1, 4,
  ])
})
