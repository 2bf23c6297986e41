/** A terminal's two ends: what is written goes into a model of a screen, what is typed is handed over in chunks. */
import { EventEmitter } from 'node:events'
import { Terminal } from '@xterm/headless'

export class FakeOutput extends EventEmitter {
  readonly isTTY = true
  readonly writable = true
  readonly terminal: Terminal
  columns: number
  rows: number
  /** Bytes written since the beginning. */
  written = 0
  /** Called after each write, for who measures. */
  onWrite: (data: string) => void = () => {}
  #pending = 0
  #quiet: (() => void)[] = []

  constructor(columns: number, rows: number) {
    super()
    this.columns = columns
    this.rows = rows
    this.terminal = new Terminal({
      cols: columns,
      rows,
      allowProposedApi: true,
      convertEol: true,
      scrollback: 100,
    })
  }

  write(data: string, then?: unknown, last?: unknown): boolean {
    const done = [then, last].find((one) => typeof one === 'function') as (() => void) | undefined
    this.written += data.length
    this.#pending += 1
    this.onWrite(data)
    this.terminal.write(data, () => {
      this.#pending -= 1
      if (this.#pending === 0) for (const quiet of this.#quiet.splice(0)) quiet()
    })
    if (done !== undefined) setImmediate(done)
    return true
  }

  /** Waits until the screen model has taken in all that was written. */
  settled(): Promise<void> {
    return this.#pending === 0 ? Promise.resolve() : new Promise((resolve) => this.#quiet.push(resolve))
  }

  resize(columns: number, rows: number): void {
    this.columns = columns
    this.rows = rows
    this.terminal.resize(columns, rows)
    this.emit('resize')
  }
}

export class FakeInput extends EventEmitter {
  readonly isTTY = true
  raw = false
  #chunks: string[] = []

  setRawMode(raw: boolean): this {
    this.raw = raw
    return this
  }
  setEncoding(): this {
    return this
  }
  ref(): this {
    return this
  }
  unref(): this {
    return this
  }
  read(): string | null {
    return this.#chunks.shift() ?? null
  }
  /** Hands over one chunk, as a terminal does. */
  send(chunk: string): void {
    this.#chunks.push(chunk)
    this.emit('readable')
  }
}
