/** A real terminal: the program in a shell inside tmux, on a server of its own. */
import { execFileSync, spawnSync } from 'node:child_process'
import { setTimeout as pause } from 'node:timers/promises'

export const hasTmux = (): boolean => spawnSync('tmux', ['-V']).status === 0

/** Longest wait for something to come onto the screen, milliseconds. */
const PATIENCE = 15_000

export class Tmux {
  readonly #server = `dawnlist-test-${process.pid}-${Math.floor(performance.now())}`

  constructor(columns: number, rows: number, environment: Readonly<Record<string, string>> = {}) {
    const words = Object.entries(environment).flatMap(([name, value]) => ['-e', `${name}=${value}`])
    this.#tmux(
      '-f',
      '/dev/null',
      'new-session',
      '-d',
      '-x',
      String(columns),
      '-y',
      String(rows),
      ...words,
      'sh',
    )
  }

  #tmux(...words: readonly string[]): string {
    return execFileSync('tmux', ['-L', this.#server, ...words], { encoding: 'utf8' })
  }

  /** Presses keys by tmux's names: `Enter`, `C-c`. */
  keys(...keys: readonly string[]): void {
    this.#tmux('send-keys', ...keys)
  }

  /** Types characters, all in one go. */
  type(text: string): void {
    this.#tmux('send-keys', '-l', text)
  }

  /** Types a line into the shell. */
  line(text: string): void {
    this.type(text)
    this.keys('Enter')
  }

  get screen(): string {
    return this.#tmux('capture-pane', '-p')
  }

  /** Whether the program has the alternate screen. */
  get alternate(): boolean {
    return this.#tmux('display-message', '-p', '#{alternate_on}').trim() === '1'
  }

  resize(columns: number, rows: number): void {
    this.#tmux('resize-window', '-x', String(columns), '-y', String(rows))
  }

  /** A shell whose prompt is known, whatever the system gives it. */
  async shell(): Promise<void> {
    await this.until(/[#$%>] *$/m)
    this.line("PS1='shell''> '; clear")
    await this.until('shell>')
  }

  /** Waits until a text stands on the screen. */
  async until(text: string | RegExp): Promise<string> {
    const end = performance.now() + PATIENCE
    for (;;) {
      const { screen } = this
      if (typeof text === 'string' ? screen.includes(text) : text.test(screen)) return screen
      if (performance.now() > end) throw new Error(`"${text}" did not come:\n${screen}`)
      await pause(50)
    }
  }

  close(): void {
    spawnSync('tmux', ['-L', this.#server, 'kill-server'])
  }
}
