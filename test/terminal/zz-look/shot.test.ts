import '/work/main/test/terminal/support/colours.ts'
import { readFileSync, writeFileSync } from 'node:fs'
import { test } from 'vitest'
import { isoDay } from '/work/main/source/breeding/day.ts'
import { bytesOf, openOn } from '/work/main/test/terminal/support/screen.ts'
const file = process.env.HERD ?? '/work/main/sample-herd/sample-herd.json'
const { facts } = JSON.parse(readFileSync(file, 'utf8'))
const shots = (process.env.SHOTS ?? '').split(';').map((s) => s.trim()).filter(Boolean)
let out = ''
for (const shot of shots)
test(shot, async () => {
  const [size = '80x24', day = '2026-05-28', mode = 'c', ...keys] = shot.split(/\s+/)
  const [columns, rows] = size.split('x').map(Number)
  const screen = await openOn(facts, { now: { day: isoDay(day), time: '06:10' }, by: 'MK', columns, rows, ascii: mode.includes('a'), colours: !mode.includes('n') } as never)
  for (const key of keys) {
    await screen.send(bytesOf(key))
    for (let i = 0; screen.session.reckons && i < 2000; i++) await new Promise((r) => setTimeout(r, 5))
    await screen.quiet()
  }
  out += `##### ${shot}\n${screen.text}\n`
  writeFileSync(process.env.OUT ?? '/tmp/st/out.txt', out)
}, 60000)
