/** Power cuts: durability table, row 4. */
import { expect, test } from 'vitest'
import { cutPowerEverywhere } from './support/power-cut.ts'

test('a power cut after any call loses no acknowledged fact and leaves a whole file', {
  timeout: 120_000,
}, async () => {
  const found = await cutPowerEverywhere(10)
  expect(found).toMatchObject({ lost: 0, broken: 0 })
  expect(found.cuts).toBeGreaterThan(500)
})

test('the model is strict enough to find a store that does not sync its files', {
  timeout: 120_000,
}, async () => {
  const found = await cutPowerEverywhere(10, (files) => ({
    ...files,
    create: async (path, mode) => ({ ...(await files.create(path, mode)), sync: async () => undefined }),
  }))
  expect(found.lost + found.broken).toBeGreaterThan(0)
})

test('the model is strict enough to find a store that does not sync its folder', {
  timeout: 120_000,
}, async () => {
  const found = await cutPowerEverywhere(10, (files) => ({ ...files, syncFolder: async () => undefined }))
  expect(found.lost).toBeGreaterThan(0)
})
