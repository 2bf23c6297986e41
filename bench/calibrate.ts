/**
 * npm run calibrate            1,000 seasons: some ten minutes at rest; Ctrl+C ends a table with what there is
 * npm run calibrate -- 50      fewer
 *
 * Grows invented seasons from known rates and holds the program's forecasts against what came. Its rates are either
 * known to it, or learned from two seasons before that differ by three points. Prints the tables for DEVELOPERS.md.
 */
import { setImmediate } from 'node:timers/promises'
import { Tables } from './calibrate/tables.ts'
import { ANIMALS, trySeason } from './calibrate/trial.ts'

const SEASONS = Number(process.argv.slice(2).find((word) => /^\d+$/.test(word)) ?? 1000)
/** Seasons with heats of the pregnant, which the rules leave out: they show what that costs. */
const WITH_FALSE_HEATS = 0.3

for (const falseHeats of [false, true]) {
  const tables = new Tables()
  const seasons = Math.round(SEASONS * (falseHeats ? WITH_FALSE_HEATS : 1))
  let done = 0
  let isStopped = false
  process.once('SIGINT', () => {
    isStopped = true
  })
  while (done < seasons && !isStopped) {
    done += 1
    trySeason(7919 * done + (falseHeats ? 1 : 0), falseHeats, tables)
    if (done % 20 === 0) process.stderr.write(`${done} of ${seasons}\n`)
    await setImmediate()
  }
  const what = falseHeats
    ? 'where 5.7 % of the pregnant come in heat once, and are seen and served like others'
    : 'as the rules assume'
  process.stdout.write(`\n${done} seasons of ${ANIMALS} animals, ${what}; bands of 8 in 10\n\n${tables.text}`)
}
