/** stock.csv: straws delivered and spoiled, and the depth of the nitrogen. */
import { choice, date, decimal, timeOfDay, whole, word } from '../cells.ts'
import { column, required } from '../columns.ts'
import { order, strawKinds } from './straws.ts'

const lot = ['sire', 'straw', 'batch', 'flask', 'canister', 'count']

/** What each kind of row needs, and what else it may have. */
export const stockKinds: Readonly<Record<string, { needs: readonly string[]; may: readonly string[] }>> = {
  delivery: { needs: ['sire', 'straw', 'count'], may: lot },
  spoiled: { needs: ['sire', 'straw', 'count'], may: lot },
  nitrogen: { needs: ['depthCm'], may: ['flask', 'depthCm'] },
}

export const stockColumns = [
  required(column('date', date)),
  column('time', timeOfDay),
  required(column('what', choice(Object.keys(stockKinds)), 'kind')),
  column('sire', word),
  column('kind', choice(strawKinds), 'straw'),
  column('batch', word),
  column('flask', word),
  column('canister', word),
  column('count', whole(1, 100_000)),
  column('depth_cm', decimal(0, 200), 'depthCm'),
  order,
]
