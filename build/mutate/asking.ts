/** Asks the process that runs the tests, and ends it when it does not answer. */
import { type ChildProcess, fork } from 'node:child_process'
import { below } from '../paths.ts'
import type { Ask, Ran, Start } from './runs.ts'

export class Asking {
  readonly #start: Start
  #child: ChildProcess | undefined

  constructor(start: Start) {
    this.#start = start
  }

  /**
   * @param patience milliseconds
   * @returns the answer; undefined where none came in time
   */
  ask(ask: Ask, patience: number): Promise<readonly Ran[] | undefined> {
    const child = this.#child ?? this.#begin()
    return new Promise((resolve, reject) => {
      const done = (answer: readonly Ran[] | undefined): void => {
        clearTimeout(timer)
        child.removeAllListeners()
        resolve(answer)
      }
      const timer = setTimeout(() => {
        this.end()
        done(undefined)
      }, patience)
      child.once('message', (answer) => done(answer as readonly Ran[]))
      child.once('exit', () => {
        this.#child = undefined
        done(undefined)
      })
      child.once('error', reject)
      child.send(ask)
    })
  }

  end(): void {
    this.#child?.removeAllListeners()
    this.#child?.kill('SIGKILL')
    this.#child = undefined
  }

  #begin(): ChildProcess {
    const child = fork(below('build/mutate/runs.ts'), { stdio: ['ignore', 'ignore', 'inherit', 'ipc'] })
    child.send(this.#start)
    this.#child = child
    return child
  }
}
