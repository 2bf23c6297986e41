/** Mutants that change nothing that can be seen, each with the reason. They do not count. */
import { ofBreeding } from './equivalent/breeding.ts'
import { ofChances } from './equivalent/chances.ts'
import type { Equivalent } from './equivalent/entry.ts'
import { ofHerd } from './equivalent/herd.ts'
import { ofList } from './equivalent/list.ts'
import { ofRules } from './equivalent/rules.ts'
import { ofSeason } from './equivalent/season.ts'
import { ofStraws } from './equivalent/straws.ts'

export const equivalents: readonly Equivalent[] = [
  ...ofBreeding,
  ...ofList,
  ...ofRules,
  ...ofStraws,
  ...ofSeason,
  ...ofChances,
  ...ofHerd,
]
