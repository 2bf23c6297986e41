/** A file or folder that may not be written: durability table, row 6. As root permissions prove nothing, so the child is nobody. */
import { chown } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { createHerdFile } from '../../source/herd/create.ts'
import { child } from './support/child.ts'
import { good, inFolder, smallHerd } from './support/herds.ts'

const nobody = 65534
const isRoot = process.getuid?.() === 0

for (const how of ['file', 'folder']) {
  test(`a ${how} that may not be written: looked at only, a clear reason, nothing changed, the retry works`, {
    timeout: 120_000,
  }, (context) => {
    context.skip(process.platform === 'win32', 'Windows keeps permissions in another way')
    return inFolder(async (folder) => {
      const path = join(folder, 'herd.json')
      good(await createHerdFile(path, smallHerd))
      if (isRoot)
        for (const each of [folder, path, join(folder, '.herd.json.lock')]) await chown(each, nobody, nobody)
      const seen = await child('./read-only-child.ts', [path, how], isRoot ? { uid: nobody } : {})
      expect(seen).toMatchObject({
        user: isRoot ? nobody : process.getuid?.(),
        mode: 'read-only',
        notices: ['herd-read-only'],
        first: [{ code: 'no-permission', severity: 'fault' }],
        second: [{ code: 'herd-read-only', values: { reason: 'no-permission' } }],
        made: how === 'folder' ? [{ code: 'no-permission' }] : 'made',
        untouched: true,
        retried: true,
        notes: ['first'],
      })
    })
  })
}
