/** `dawnlist season`: the figures of a season and what lies ahead, as text, JSON or a page for the wall. */
import type { HerdBook } from '../breeding/book.ts'
import type { Day } from '../breeding/day.ts'
import { type SeasonView, seasonShown, seasonView } from '../breeding/figures/season-view.ts'
import type { Change } from '../breeding/forecast/what-if.ts'
import { fault, type Outcome } from '../breeding/problem.ts'
import { standingOn } from '../breeding/standing.ts'
import { seasonContent } from '../exchange/season/content.ts'
import { seasonHtml } from '../exchange/season/html.ts'
import { seasonJson } from '../exchange/season/json.ts'
import { seasonText } from '../exchange/season/text.ts'
import { safeText } from '../words/safe.ts'
import type { Given, Run, Shell } from './command.ts'
import { openForReading, statusOf } from './open-book.ts'
import { readWhatIf } from './what-if.ts'
import { writeOut } from './write-out.ts'

export const run: Run = async (given, shell) => {
  const asked = askedFor(given)
  const opened = asked.ok ? await openForReading(given, shell) : asked
  const view = opened.ok ? viewOf(opened.value, given.options.block) : opened
  if (!asked.ok || !view.ok) {
    const problems = !asked.ok ? asked.problems : view.ok ? [] : view.problems
    shell.tell(problems)
    return statusOf(problems)
  }
  const { html } = given.options
  if (html !== undefined) return writePage(given, html, view.value, asked.value, shell)
  if (given.switches.has('json'))
    shell.print(`${JSON.stringify(seasonJson(view.value, asked.value), null, 1)}\n`)
  else shell.print(seasonText(seasonContent(view.value, asked.value)))
  return 0
}

/** The changes to look at; undefined: those worth a look. */
function askedFor({ options, switches }: Given): Outcome<readonly Change[] | undefined> {
  if (options.html !== undefined && switches.has('json'))
    return { ok: false, problems: [fault('option-json-html', '')] }
  if (options['what-if'] === undefined) return { ok: true, value: undefined }
  const change = readWhatIf(options['what-if'])
  return change.ok ? { ok: true, value: [change.value] } : change
}

function viewOf(
  { book, day }: { readonly book: HerdBook; readonly day: Day },
  block: string | undefined,
): Outcome<SeasonView> {
  const season = seasonShown(book, day, block)
  if (season === undefined) {
    const blocks = [...book.seasons.keys()].join(', ')
    const missing =
      block === undefined || blocks === ''
        ? fault('season-none', '')
        : fault('season-block', '', { block, blocks })
    return { ok: false, problems: [missing] }
  }
  const standings = Array.from(book.animals.values(), (animal) => standingOn(book, animal, day))
  return { ok: true, value: seasonView(book, standings, season, day) }
}

async function writePage(
  given: Given,
  out: string,
  view: SeasonView,
  changes: readonly Change[] | undefined,
  shell: Shell,
): Promise<number> {
  const written = await writeOut(given, out, seasonHtml(seasonContent(view, changes)))
  if (!written.ok) {
    shell.tell(written.problems)
    return 1
  }
  shell.say(safeText(out))
  return 0
}
