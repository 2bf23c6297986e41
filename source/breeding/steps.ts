/** Work that is done in small steps, so that whoever does it can answer a key between two of them. */
export type Steps<T> = Generator<undefined, T, undefined>

/**
 * Does all steps at once.
 *
 * @example finished(mapInSteps([1, 2], (one) => 2 * one)) // [2, 4]
 */
export function finished<T>(steps: Steps<T>): T {
  for (;;) {
    const { done, value } = steps.next()
    if (done === true) return value
  }
}

/** So many items make a step unless something else is said. */
const A_STEP = 16

/**
 * Maps items, so many a step.
 *
 * @param each takes a small part of a millisecond
 */
export function* mapInSteps<A, B>(
  items: Iterable<A>,
  each: (item: A) => B,
  perStep = A_STEP,
): Steps<readonly B[]> {
  const mapped: B[] = []
  for (const item of items) {
    mapped.push(each(item))
    if (mapped.length % perStep === 0) yield
  }
  return mapped
}
