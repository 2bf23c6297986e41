/** Does one piece of work after the other, in the order in which they come. */
export class Turns {
  #last: Promise<unknown> = Promise.resolve()

  /**
   * Does this when all that came before it is done.
   *
   * @returns what it gives; where it fails, what waits behind it is done all the same
   */
  take<T>(work: () => Promise<T>): Promise<T> {
    const turn = this.#last.then(work)
    this.#last = turn.catch(() => undefined)
    return turn
  }

  /** Waits until all is done. */
  async end(): Promise<void> {
    await this.#last
  }
}
