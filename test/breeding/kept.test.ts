import { expect, test } from 'vitest'
import { keeping } from '../../source/breeding/kept.ts'

test('what is asked again is made once; when too many are kept they are made anew', () => {
  const made: string[] = []
  const keep = keeping<string, string>(2)
  const ask = (...keys: string[]): string[] =>
    keys.map((key) =>
      keep(key, () => {
        made.push(key)
        return `made of ${key}`
      }),
    )
  expect(ask('a', 'b', 'a', 'b')).toEqual(['made of a', 'made of b', 'made of a', 'made of b'])
  expect(made.splice(0)).toEqual(['a', 'b'])
  ask('c', 'a', 'c', 'a')
  expect(made).toEqual(['c', 'a'])
})
