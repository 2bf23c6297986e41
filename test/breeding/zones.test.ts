/** The same list whatever zone the computer is set to, and on whatever side of a clock change its morning lies. */
import { execFileSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'

const zones = ['UTC', 'Pacific/Auckland', 'Europe/Dublin', 'Australia/Lord_Howe', 'America/Santiago']
const script = fileURLToPath(new URL('./lists-of-a-year.ts', import.meta.url))
const listsIn = (zone: string): unknown =>
  JSON.parse(
    execFileSync(process.execPath, [script], { encoding: 'utf8', env: { ...process.env, TZ: zone } }),
  )

test('days, sessions and rows of more than a year are the same in five zones', () => {
  const expected = listsIn('UTC') as { zone: string; days: number; digest: string; rows: number }
  expect(expected).toMatchObject({ zone: 'UTC', days: 420 })
  expect(expected.rows).toBeGreaterThan(2000)
  for (const zone of zones.slice(1)) expect(listsIn(zone)).toEqual({ ...expected, zone })
}, 120_000)
