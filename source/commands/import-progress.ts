/** The progress of an import on one line of a terminal; nothing anywhere else. */
import type { Progress } from '../exchange/csv/import/progress.ts'
import { importProgress } from '../words/exchange.ts'
import type { Shell } from './command.ts'

/** Tells each step in the shell's place for what passes; undefined where it has none. */
export const progressIn = ({ passing }: Shell): Progress | undefined =>
  passing && ((step, done, all) => passing(importProgress(step, done, all)))
