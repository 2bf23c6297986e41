import fc from 'fast-check'
import { expect, test } from 'vitest'
import { seasonContent } from '../../../source/exchange/season/content.ts'
import { seasonHtml } from '../../../source/exchange/season/html.ts'
import { anyMorning } from '../../breeding/histories.ts'
import { calving, cow, pregnant, service } from '../../breeding/support.ts'
import { seasonAt, seasonOf } from './any.ts'

const void_ = new Set(['meta', '!doctype', 'br', 'line', 'polyline', 'polygon', 'rect', 'circle'])

/** Names of the elements, each closed in its turn; throws where one is not. */
function elements(page: string): string[] {
  const open: string[] = []
  const all: string[] = []
  for (const [, closing, name = '', inside = ''] of page.matchAll(
    /<(\/?)([!a-z][a-z0-9]*)((?:[^>"]|"[^"]*")*)>/gi,
  )) {
    if (closing === '/') {
      if (open.pop() !== name) throw new Error(`</${name}> closes nothing`)
      continue
    }
    all.push(name)
    if (!void_.has(name.toLowerCase()) && !inside.endsWith('/')) open.push(name)
  }
  if (open.length > 0) throw new Error(`${open.join(' ')} never closed`)
  return all
}

test('any season is a whole page that asks no network and runs nothing', () => {
  fc.assert(
    fc.property(anyMorning(6), (morning) => {
      const view = seasonOf(morning)
      const page = seasonHtml(seasonContent(view, [{ aiWeeks: 1 }]))
      const names = new Set(elements(page))
      for (const name of ['script', 'link', 'img', 'iframe', 'object', 'a'])
        expect(names.has(name)).toBe(false)
      expect(page).not.toMatch(/https?:|url\(|@import|src=|href=| on[a-z]+=/i)
      expect(page).not.toMatch(/NaN|undefined|Infinity|\[object/)
      expect(page).toContain("default-src 'none'")
      expect(page.match(/<svg /g)?.length).toBeGreaterThanOrEqual(3)
    }),
    { numRuns: 60 },
  )
})

test('names from the file are text, whatever they hold', () => {
  const evil = '<img src=x onerror=alert(1)>"&\u202e'
  const animals = [
    cow({ number: evil }, calving(10)),
    cow(calving(-70), service(2, { sire: evil, inseminator: evil }), pregnant(40)),
  ]
  const pages = [seasonAt(12, animals), seasonAt(60, animals)].map((view) =>
    seasonHtml(seasonContent(view, [])),
  )
  for (const page of pages) {
    expect(elements(page)).not.toContain('img')
    expect(page).not.toMatch(/[\u202e]/)
    expect(page).toContain('&lt;img src=x onerror=alert(1)&gt;&quot;&amp;&lt;202E&gt;')
  }
})

test('the picture shows what is expected until the final check, then what is known', () => {
  const animals = Array.from({ length: 30 }, (_, i) => cow(calving(-70), service(i % 21), pregnant(70)))
  const picture = (s: number): string =>
    /<svg [^>]*><title>In calf by day of conception<\/title>.*?<\/svg>/s.exec(
      seasonHtml(seasonContent(seasonAt(s, animals), [])),
    )?.[0] ?? ''
  expect(picture(10)).toContain('class="band"')
  expect(picture(10)).not.toContain('class="known"')
  expect(picture(90)).toContain('class="known"')
  expect(picture(110)).not.toContain('class="band"')
  expect(picture(110)).toContain('>100 %<')
})
