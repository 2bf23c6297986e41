/** The animals behind the figure that is open, in groups: those against it first. */
import type { Behind, Counts, FigureName } from '../../breeding/figures/behind.ts'
import { behind } from '../../breeding/figures/behind.ts'
import type { SeasonView } from '../../breeding/figures/season-view.ts'
import { compareNumbers } from '../../breeding/order.ts'

interface ListedGroup {
  readonly counts: Counts
  readonly animals: readonly Behind[]
}

/** Whoever is to be looked into comes first. */
const order: readonly Counts[] = ['no', 'unknown', 'yes']

const known = new WeakMap<SeasonView, Map<string, readonly ListedGroup[]>>()

/**
 * The groups of a figure's animals, each by number. Found once for a view.
 *
 * @example listedOf(view, { of: 'submission' })[0]?.counts // 'no'
 */
export function listedOf(view: SeasonView, name: FigureName): readonly ListedGroup[] {
  const ofView = known.get(view) ?? new Map<string, readonly ListedGroup[]>()
  const key = JSON.stringify(name)
  const groups = ofView.get(key) ?? groupsOf(view, name)
  known.set(view, ofView.set(key, groups))
  return groups
}

function groupsOf(view: SeasonView, name: FigureName): readonly ListedGroup[] {
  const { counted, figures, book, season } = view
  const all = behind(name, { counted, figures, book, season })
  return order
    .map((counts) => ({
      counts,
      animals: all
        .filter((one) => one.counts === counts)
        .sort((a, b) => compareNumbers(a.animal.number, b.animal.number) || (a.day ?? 0) - (b.day ?? 0)),
    }))
    .filter(({ animals }) => animals.length > 0)
}
