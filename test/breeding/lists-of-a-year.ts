/**
 * Prints what a fixed herd's lists of more than a year come to: how many days and rows, and a digest of every row. Run in a
 * process of its own for each time zone.
 */
import { createHash } from 'node:crypto'
import { morningList } from '../../source/breeding/morning-list.ts'
import {
  bookOf,
  bullService,
  calving,
  cow,
  dayAt,
  examined,
  heat,
  maiden,
  on,
  onset,
  planned,
  pregnant,
  service,
  suspect,
} from './support.ts'

const seasons = [
  { block: 'spring', scans: [100] },
  { block: 'autumn', matingStart: on(205) },
  { block: 'spring', matingStart: on(363) },
]
const times = ['00:10', '02:30', '05:30', '11:59', '15:31', '23:50', 'morning', 'evening']

/** Animals whose heats and services lie around the clock changes of both hemispheres. */
const animals = Array.from({ length: 24 }, (_, i) => {
  const record = { number: String(i + 1), block: i % 3 === 0 ? 'autumn' : 'spring' }
  const start = i % 3 === 0 ? 205 : 0
  const time = { time: times[i % times.length] }
  const facts = [
    calving(start - 30 - i * 5),
    suspect(start - 40 + i, time),
    heat(start - 20 + i, time),
    onset(start + (i % 21), time),
    service(start + (i % 21), { time: 'evening' }),
    heat(start + 20 + (i % 21), time),
    ...(i % 4 === 0 ? [service(start + 20 + (i % 21), time)] : []),
    ...(i % 5 === 0 ? [bullService(start + 50, time)] : []),
    ...(i % 2 === 0 ? [pregnant(start + 70, { foetalAge: 40 + (i % 30) })] : []),
    planned(start + 3, start + 8),
    examined(start - 50),
  ]
  return i % 7 === 0 ? maiden(record, ...facts.slice(1)) : cow(record, ...facts)
})

const book = bookOf(animals, { seasons, policy: { servingTime: 'by-the-hour' } })
const digest = createHash('sha256')
let rows = 0
const days = 420
for (let s = -100; s < days - 100; s += 1) {
  const list = morningList(book, dayAt(s))
  rows += list.rows.length
  digest.update(JSON.stringify(list))
}
const zone = process.env.TZ ?? ''
// A zone that the computer did not take would prove nothing.
const taken = new Intl.DateTimeFormat().resolvedOptions().timeZone
process.stdout.write(
  JSON.stringify({
    zone: taken === zone ? zone : `${taken}, not ${zone}`,
    days,
    rows,
    digest: digest.digest('hex'),
  }),
)
