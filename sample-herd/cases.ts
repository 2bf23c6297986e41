/**
 * Writes cases.json: animals made by hand, one for every reason and every warning of the morning list. All of them
 * stand on the list of one day:
 *
 *     node sample-herd/cases.ts
 *     dawnlist list sample-herd/cases.json --date 2026-05-28
 */
import { writeFileSync } from 'node:fs'
import { allCases, caseFacts, casesDate } from './hand-made/herd.ts'
import { herdBytes } from './herd-bytes.ts'

writeFileSync(new URL('cases.json', import.meta.url), await herdBytes(caseFacts(), 'casebook'))
process.stdout.write(`${allCases.length} cases, all on the list of ${casesDate}\n`)
