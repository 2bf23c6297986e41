import { expect, test } from 'vitest'
import { Folder } from './support/run.ts'

test('check names what is impossible in a pedigree, and straws that the book cannot account for', async () => {
  const folder = new Folder()
  await folder.herd()
  folder.file(
    'animals.csv',
    [
      'number,sex,block,lactation,sire,dam',
      '1,F,spring,2,S1,2',
      '2,F,spring,2,S1,3',
      '3,F,spring,2,S2,1',
      '4,F,spring,1,7,7',
      '5,F,spring,1,S9,',
      '6,F,spring,1,,S9',
      '8,F,spring,1,S1,',
    ].join('\n'),
  )
  folder.file(
    'facts.csv',
    'number,date,fact,sire,kind\n8,2026-02-01,calving,,\n8,2026-05-02,service,S1,sexed\n',
  )
  folder.file('straws.csv', 'date,sire,kind,count\n2026-04-01,S1,conventional,5\n')
  const words = ['--animals', 'animals.csv', '--facts', 'facts.csv', '--straws', 'straws.csv', '--write']
  expect(folder.run('import', 'herd.json', ...words).err).toBe('')
  const { status, out } = folder.run('check', 'herd.json')
  expect(status).toBe(1)
  expect(out).toMatch(/animal \d: the parents lead back to where they began: (1, 2, 3|2, 3, 1|3, 1, 2)\./)
  expect(out).toContain('animal 4: 7 is given as sire and as dam.')
  expect(out).toContain('animal S9: given as the sire of 5 and as the dam of 6.')
  expect(out).toContain('animal 8: The service of 2 May 2026 took a sexed straw of S1')
})
