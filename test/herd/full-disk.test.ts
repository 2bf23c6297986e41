/** A disk of 1 MB that is full: durability table, row 5. */
import { expect, test } from 'vitest'
import { fillDisk } from './support/full-disk.ts'
import { inFolder } from './support/herds.ts'

test(
  'on a full disk the old file stays as it was, nothing half written is left, and the retry works',
  { timeout: 120_000 },
  (context) =>
    inFolder(async (folder) => {
      const seen = await fillDisk(folder)
      context.skip(
        seen === undefined,
        'a small disk cannot be mounted here (needs unshare and user namespaces)',
      )
      expect(seen).toEqual({
        rooms: [1, 2, 3, 4].map((unsaved) => ({
          refused: ['disk-full'],
          untouched: true,
          left: [],
          unsaved,
        })),
        retried: true,
        notes: ['first', 'with 0 left', 'with 4096 left', 'with 40960 left', 'with 81920 left'],
      })
    }),
)
