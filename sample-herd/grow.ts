/**
 * Grows the sample herd and writes it beside this file; prints what it comes to beside what is published.
 *
 *     node sample-herd/grow.ts             writes sample-herd.json
 *     node sample-herd/grow.ts --seed 7    another herd, printed only
 */
import { writeFileSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { figureLine } from './growing/figures/figure.ts'
import { figuresOf } from './growing/figures/figures.ts'
import { growHerd, LAST_MORNING, SEED } from './growing/herd.ts'
import { herdBytes } from './herd-bytes.ts'

const { values } = parseArgs({ options: { seed: { type: 'string' } } })
const seed = values.seed === undefined ? SEED : Number(values.seed)
const facts = growHerd(seed)

if (values.seed === undefined) {
  writeFileSync(new URL('sample-herd.json', import.meta.url), await herdBytes(facts, 'ottersallow'))
}
process.stdout.write(`seed ${seed}: ${facts.length} facts\n\n`)
for (const figure of figuresOf(facts, LAST_MORNING)) process.stdout.write(`${figureLine(figure)}\n`)
