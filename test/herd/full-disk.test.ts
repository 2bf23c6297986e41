/** A disk of 1 MB that is full: durability table, row 5. */
import { expect, test } from 'vitest'
import { child, works } from './support/child.ts'
import { inFolder } from './support/herds.ts'

/** Starts a program with disks of its own, so that what it mounts is seen by nobody else and goes with it. */
const ownDisks = ['unshare', '--mount', '--map-root-user']

test('on a full disk the old file stays as it was, nothing half written is left, and the retry works', async (context) => {
  const mounts = await works('unshare', [
    ...ownDisks.slice(1),
    'mount',
    '-t',
    'tmpfs',
    '-o',
    'size=1m',
    'tmpfs',
    '/mnt',
  ])
  context.skip(!mounts, 'a small disk cannot be mounted here (needs unshare and user namespaces)')
  await inFolder(async (folder) => {
    const seen = await child('./full-disk-child.ts', [folder], { through: ownDisks })
    expect(seen).toEqual({
      rooms: [1, 2, 3, 4].map((unsaved) => ({ refused: ['disk-full'], untouched: true, left: [], unsaved })),
      retried: true,
      notes: ['first', 'with 0 left', 'with 4096 left', 'with 40960 left', 'with 81920 left'],
    })
  })
})
