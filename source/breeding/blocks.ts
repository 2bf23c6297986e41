/** The blocks of a herd on a day. */
import type { HerdBook } from './book.ts'
import { compareTexts } from './compare-texts.ts'
import type { Day } from './day.ts'
import type { BlockDay } from './list.ts'
import { phaseEnd, phaseOf, seasonDay, seasonOn } from './season.ts'

/**
 * The blocks on a day: by mating start of the season shown (live, else next, else last), then name.
 *
 * @example blocksOn(book, isoDay('2026-05-28'))[0]?.phase // 'ai'
 */
export function blocksOn(book: HerdBook, today: Day): readonly BlockDay[] {
  const blocks: BlockDay[] = []
  for (const [block, seasons] of book.seasons) {
    const current = seasonOn(seasons, today)
    if (current === undefined) continue
    const season =
      phaseOf(current, today) === 'closed'
        ? (seasons.find((one) => one.matingStart > today) ?? current)
        : current
    blocks.push({
      block,
      season,
      phase: phaseOf(season, today),
      day: seasonDay(season, today),
      closes: phaseEnd(season, today),
    })
  }
  return blocks.sort((a, b) => a.season.matingStart - b.season.matingStart || compareTexts(a.block, b.block))
}
