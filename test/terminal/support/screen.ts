/** Drives the real program on a model of a terminal: keys are pressed by their meaning, the screen is read cell by cell. */
import './colours.ts'
import { EventEmitter } from 'node:events'
import type { Instance } from 'ink'
import type { Cell } from '../../../build/picture/cell.ts'
import { dayIso } from '../../../source/breeding/day.ts'
import type { Fact } from '../../../source/breeding/facts.ts'
import { asFacts } from '../../../source/herd/recording.ts'
import type { Now } from '../../../source/morning/now.ts'
import type { Herd } from '../../../source/screens/herd.ts'
import { bindingsNow } from '../../../source/screens/keys.ts'
import { startScreen } from '../../../source/screens/open.tsx'
import { Session } from '../../../source/screens/session.ts'
import { themeFor } from '../../../source/screens/theme.ts'
import type { KeyMeaning } from '../../../source/screens/words/keys.ts'
import { MemoryHerd } from './memory-herd.ts'
import { FakeInput, FakeOutput } from './streams.ts'

/** A screen draws and reckons in full, which takes seconds where the machine is busy. */

/** Bytes that a terminal sends for a key. */
const bytes: Readonly<Record<string, string>> = {
  space: ' ',
  enter: '\r',
  esc: '\u001b',
  tab: '\t',
  'shift+tab': '\u001b[Z',
  backspace: '\u007f',
  delete: '\u001b[3~',
  up: '\u001b[A',
  down: '\u001b[B',
  right: '\u001b[C',
  left: '\u001b[D',
  home: '\u001b[H',
  end: '\u001b[F',
  pageup: '\u001b[5~',
  pagedown: '\u001b[6~',
  'ctrl+c': '\u0003',
  'ctrl+z': '\u001a',
}
export const bytesOf = (key: string): string => bytes[key] ?? key

/** The instant of a wall time in Dublin's summer. */
export const instantOf = ({ day, time }: Now): Date => new Date(`${dayIso(day)}T${time}:00+01:00`)

export interface Settings {
  readonly columns?: number
  readonly rows?: number
  readonly now?: Now
  readonly colours?: boolean
  readonly ascii?: boolean
  readonly reader?: boolean
  readonly by?: string
  readonly herd?: Herd
  readonly platform?: string
  /** Leave the cautions and the question for initials open. */
  readonly opening?: boolean
}

export class Screen {
  readonly output: FakeOutput
  readonly input = new FakeInput()
  readonly session: Session
  readonly herd: Herd
  readonly instance: Instance
  readonly killed: string[] = []
  readonly process = new EventEmitter()
  /** Keys pressed so far. */
  pressed = 0
  now: Now
  #exit: Promise<unknown>

  constructor(facts: readonly Fact[], settings: Settings) {
    this.now = settings.now as Now
    this.output = new FakeOutput(settings.columns ?? 80, settings.rows ?? 24)
    this.herd = settings.herd ?? new MemoryHerd(facts, () => instantOf(this.now))
    this.session = new Session({
      herd: this.herd,
      now: () => this.now,
      stamp: (newFacts, by) =>
        asFacts(newFacts, { at: instantOf(this.now), ...(by === undefined ? {} : { by }) }),
      by: settings.by,
    })
    this.instance = startScreen({
      session: this.session,
      theme: themeFor({ colours: settings.colours ?? true, ascii: settings.ascii ?? false }),
      reader: settings.reader ?? false,
      stdin: this.input as never,
      stdout: this.output as never,
      process: {
        platform: settings.platform ?? 'linux',
        kill: (_pid, signal) => this.killed.push(signal),
        once: (signal, then) => this.process.once(signal, then),
        off: (signal, then) => this.process.off(signal, then),
        resized: () => this.output.emit('resize'),
      },
    })
    this.#exit = this.instance.waitUntilExit()
  }

  /** Waits until everything is drawn. */
  async settled(): Promise<void> {
    await this.instance.waitUntilRenderFlush()
    await this.output.settled()
  }

  /** Sends bytes as they are, in one chunk. */
  async send(chunk: string): Promise<void> {
    this.input.send(chunk)
    // A lone Esc might be the beginning of a longer key: Ink waits 20 ms before it takes it for itself.
    if (chunk.endsWith('\u001b')) await new Promise((resolve) => setTimeout(resolve, 30))
    await this.settled()
  }

  /** Presses the key of a meaning that works on the screen now. */
  async press(...meanings: readonly KeyMeaning[]): Promise<void> {
    for (const meaning of meanings) {
      const binding = bindingsNow(this.session.desk).find((one) => one.name === meaning)
      const key = binding?.keys[0]
      if (key === undefined) throw new Error(`no key for ${meaning} on this screen`)
      this.pressed += 1
      await this.send(bytesOf(key))
    }
  }

  /** Types characters one after another. */
  async type(text: string): Promise<void> {
    for (const character of text) {
      this.pressed += 1
      await this.send(character)
    }
  }

  async resize(columns: number, rows: number): Promise<void> {
    this.output.resize(columns, rows)
    await this.quiet()
  }

  /** Waits until nothing has been drawn for a while: what does not come from a key is drawn when there is time. */
  async quiet(): Promise<void> {
    let before = -1
    while (before !== this.output.written || this.session.desk.unsettled.length > 0) {
      before = this.output.written
      await new Promise((resolve) => setTimeout(resolve, 40))
      await this.settled()
    }
  }

  /** Waits until all that the screen shown needs is reckoned and drawn. */
  async reckoned(): Promise<void> {
    do {
      while (this.session.reckons) await new Promise((resolve) => setTimeout(resolve, 5))
      await this.quiet()
    } while (this.session.reckons)
  }

  /** The lines of the screen, spaces at their ends left out. */
  get lines(): readonly string[] {
    const { active } = this.output.terminal.buffer
    return Array.from({ length: this.output.rows }, (_, row) =>
      (active.getLine(active.baseY + row)?.translateToString(true, 0, this.output.columns) ?? '').trimEnd(),
    )
  }
  get text(): string {
    return this.lines.join('\n')
  }

  /** The first line that holds a text. */
  line(text: string): string {
    return this.lines.find((line) => line.includes(text)) ?? ''
  }

  /** The cells where a text stands first. */
  cellsOf(text: string): readonly Cell[] {
    const row = this.lines.findIndex((line) => line.includes(text))
    const from = this.lines[row]?.indexOf(text) ?? -1
    if (row < 0) throw new Error(`"${text}" is not on the screen:\n${this.text}`)
    return Array.from({ length: text.length }, (_, index) => this.cell(from + index, row))
  }

  cell(column: number, row: number): Cell {
    const { active } = this.output.terminal.buffer
    const cell = active.getLine(active.baseY + row)?.getCell(column)
    return {
      text: cell?.getChars() ?? '',
      colour: cell?.isFgDefault() === true ? -1 : (cell?.getFgColor() ?? -1),
      bold: cell?.isBold() !== 0,
      faint: cell?.isDim() !== 0,
      underlined: cell?.isUnderline() !== 0,
    }
  }

  /** The exit status, once the program has left. */
  exit(): Promise<unknown> {
    return this.#exit
  }

  async close(): Promise<void> {
    this.instance.unmount()
    await this.#exit
  }
}

const open = new Set<Screen>()

/** Opens the program on a herd; past the opening slip unless the test is about it. */
export async function openOn(facts: readonly Fact[], settings: Settings & { now: Now }): Promise<Screen> {
  const screen = new Screen(facts, settings)
  open.add(screen)
  await screen.settled()
  if (settings.opening !== true) {
    await screen.press('take')
    screen.pressed = 0
  }
  return screen
}

/** Closes what a test has left open. */
export async function closeAll(): Promise<void> {
  for (const screen of open) await screen.close()
  open.clear()
}
