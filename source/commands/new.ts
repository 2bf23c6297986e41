/** `dawnlist new`: the file of a new herd. */
import { dayIso } from '../breeding/day.ts'
import { HERD } from '../breeding/facts.ts'
import { standardMilkings } from '../breeding/moment.ts'
import { fault, type Problem } from '../breeding/problem.ts'
import { createHerdFile } from '../herd/create.ts'
import { isZone } from '../herd/zone.ts'
import { safeText } from '../words/safe.ts'
import type { Run } from './command.ts'
import { today } from './today.ts'

export const run: Run = async (given, shell) => {
  const { farm = '', zone = '', by } = given.options
  const file = given.args.FILE ?? ''
  const milkings = given.options.milkings?.split(',').map((time) => time.trim()) ?? standardMilkings
  const problems: Problem[] = []
  if (farm.trim() === '') problems.push(fault('option-empty', '', { option: 'farm' }))
  if (!isZone(zone)) problems.push(fault('option-zone', '', { value: zone }))
  if (!areMilkings(milkings))
    problems.push(fault('option-milkings', '', { value: given.options.milkings ?? '' }))
  if (problems.length > 0) {
    shell.tell(problems)
    return 2
  }
  const date = dayIso(today(zone))
  const created = await createHerdFile(
    file,
    [{ about: HERD, date, kind: 'farm', name: farm.trim(), zone, milkings }],
    by,
  )
  if (!created.ok) {
    shell.tell(created.problems)
    return 1
  }
  shell.print(`${safeText(file)}: a new herd, ${safeText(farm.trim())}.\n`)
  return 0
}

/** One or two wall times, the earlier first. */
function areMilkings(times: readonly string[]): boolean {
  const [first = '', second = '24:00'] = times
  return times.length <= 2 && times.every((time) => /^([01]\d|2[0-3]):[0-5]\d$/.test(time)) && first < second
}
