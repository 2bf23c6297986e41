/** What stays of a herd when its old seasons are closed. */
import { archivableOn } from '../../source/breeding/archive.ts'
import { openBook } from '../../source/breeding/book.ts'
import { type Day, dayIso } from '../../source/breeding/day.ts'
import type { ArchiveFact, Fact } from '../../source/breeding/facts.ts'

/** The facts that stay, with the one that tells of the archive. */
export function archived(
  facts: readonly Fact[],
  today: Day,
): { kept: Fact[]; went: readonly Fact[]; before: Day } {
  const found = archivableOn(openBook(facts), today)
  const { facts: went, before } = found ?? { facts: [], before: today }
  const took = went.map(({ id }) => id)
  const told: ArchiveFact = {
    id: 'archive',
    about: 'herd',
    date: dayIso(today),
    kind: 'archive',
    at: '2030-01-01T00:00:00Z',
    before: dayIso(before),
    file: 'herd.archive.json',
    took,
  }
  return { kept: [...facts.filter(({ id }) => !took.includes(id)), told], went, before }
}
