/** What the screen needs and does not know yet, reckoned one step at a time; keys come in between two of them. */
import type { Steps } from '../breeding/steps.ts'
import type { Reckoning } from '../morning/to-reckon.ts'

export class Reckoner {
  readonly #whenDone: () => void
  #reckoning: (Reckoning & { readonly steps: Steps<void> }) | undefined
  #next: NodeJS.Immediate | undefined

  /** @param whenDone called after the last step; what is asked for next is up to it */
  constructor(whenDone: () => void) {
    this.#whenDone = whenDone
  }

  /** Something is still being reckoned. */
  get reckons(): boolean {
    return this.#reckoning !== undefined
  }

  /** Goes on with what is wanted; begins anew where that is another thing, ends where it is nothing. */
  want(wanted: Reckoning | undefined): void {
    const same = wanted?.book === this.#reckoning?.book && wanted?.name === this.#reckoning?.name
    if (!same) this.#reckoning = wanted && { ...wanted, steps: wanted.begin() }
    if (this.#reckoning !== undefined) this.#next ??= setImmediate(this.#step)
  }

  stop(): void {
    clearImmediate(this.#next)
  }

  #step = (): void => {
    this.#next = undefined
    if (this.#reckoning?.steps.next().done === false) this.#next = setImmediate(this.#step)
    else if (this.#reckoning !== undefined) {
      this.#reckoning = undefined
      this.#whenDone()
    }
  }
}
