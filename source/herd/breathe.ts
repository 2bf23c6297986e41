import { setImmediate } from 'node:timers/promises'

/** Lets keys and frames through between two slices of long work. */
export const breathe = (): Promise<void> => setImmediate()

/**
 * Does something for each item, a slice at a time, so that the screen is never held up.
 *
 * @param size items a slice: as many as take a few milliseconds at most
 */
export async function inSlices<T>(
  items: readonly T[],
  size: number,
  work: (item: T, place: number) => void,
): Promise<void> {
  for (let start = 0; start < items.length; start += size) {
    if (start > 0) await breathe()
    for (let place = start; place < Math.min(start + size, items.length); place += 1)
      work(items[place] as T, place)
  }
}
