import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { createHerdFile } from '../../source/herd/create.ts'
import { openHerdFile } from '../../source/herd/open.ts'
import { codes, good, inFolder, note, smallHerd } from './support/herds.ts'

test('a recorded fact is in the file, and there when it is opened again', () =>
  inFolder(async (folder) => {
    const path = join(folder, 'herd.json')
    good(await createHerdFile(path, smallHerd, 'MK'))
    const herd = good(await openHerdFile(path))
    const [recorded] = good(await herd.record([note('lame, left hind')], 'MK'))
    expect(await readFile(path, 'utf8')).toContain('lame, left hind')
    const again = good(await openHerdFile(path))
    expect(again.facts.at(-1)).toEqual(recorded)
    expect(again.revision).toBe(2)
  }))

test('a missing file is a fault, never an empty herd', () =>
  inFolder(async (folder) => {
    expect(codes(await openHerdFile(join(folder, 'herd.json')))).toEqual(['herd-missing'])
  }))

test('making a herd never touches a file that is there', () =>
  inFolder(async (folder) => {
    const path = join(folder, 'herd.json')
    good(await createHerdFile(path, smallHerd))
    const before = await readFile(path)
    expect(codes(await createHerdFile(path, smallHerd))).toEqual(['path-taken'])
    expect((await readFile(path)).equals(before)).toBe(true)
  }))
