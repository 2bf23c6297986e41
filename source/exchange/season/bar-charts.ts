/** The smaller pictures of a season: pace, calving by week, shares with their intervals. */
import type { Figure } from '../../breeding/figures/figure.ts'
import type { SeasonFigures } from '../../breeding/figures/season-figures.ts'
import type { SeasonView } from '../../breeding/figures/season-view.ts'
import { paceTarget } from '../../breeding/figures/submission.ts'
import { bar, dot, drawing, line, type Point, polyline, type Scale, scaleOf, words } from './svg.ts'

const WIDTH = 90
const HEIGHT = 52
const LEFT = 11
const RIGHT = WIDTH - 3
const TOP = 4
const BOTTOM = HEIGHT - 8

function percentGrid(y: Scale): string[] {
  return [0, 25, 50, 75, 100].flatMap((percent) => [
    line({ x: LEFT, y: y(percent) }, { x: RIGHT, y: y(percent) }, percent === 0 ? 'axis' : 'grid'),
    words({ x: LEFT - 1.5, y: y(percent) + 1 }, `${percent} %`, 'small end'),
  ])
}

/** Days of the first three weeks. */
const DAYS = 21

/** Served in the first three weeks, beside what to aim for and the season before. */
export function paceChart({ figures }: SeasonView, before: SeasonFigures | undefined): string {
  const x = scaleOf(0, DAYS, LEFT, RIGHT)
  const y = scaleOf(0, 100, BOTTOM, TOP)
  const paceOf = ({ submission }: SeasonFigures): Point[] => [
    { x: x(0), y: y(0) },
    ...submission.pace.map(({ day, percent }) => ({ x: x(day + 1), y: y(percent ?? 0) })),
  ]
  const last = figures.submission.pace.at(-1)
  return drawing(WIDTH, HEIGHT, 'Served in the first three weeks', [
    ...percentGrid(y),
    ...[7, 14, 21].flatMap((day) => [
      line({ x: x(day), y: BOTTOM }, { x: x(day), y: BOTTOM + 1.6 }, 'axis'),
      words({ x: x(day), y: BOTTOM + 5 }, `day ${day}`, day === DAYS ? 'small end' : 'small middle'),
    ]),
    polyline(
      [
        { x: x(0), y: y(0) },
        { x: x(DAYS), y: y(paceTarget(DAYS - 1)) },
      ],
      'aim-line',
    ),
    words({ x: x(DAYS) - 1, y: y(paceTarget(DAYS - 1)) - 1.2 }, 'aim 90 %', 'small end'),
    ...(before === undefined ? [] : [polyline(paceOf(before), 'earlier')]),
    polyline(paceOf(figures), 'known'),
    ...(last?.percent === undefined ? [] : [dot({ x: x(last.day + 1), y: y(last.percent) }, 0.9, 'mark')]),
  ])
}

interface Week {
  readonly week: number
  readonly calved: number
  readonly toCome: number
  readonly next: number
}

function weeksOf({ figures, forecast }: SeasonView): Week[] {
  const now = new Map(figures.calving.weeks.map((one) => [one.week, one]))
  const next = new Map((forecast?.calvings ?? []).map((one) => [one.week, one.expected]))
  const weekOf = (week: number): Week => ({
    week,
    calved: now.get(week)?.calved ?? 0,
    toCome: now.get(week)?.expected ?? 0,
    next: next.get(week) ?? 0,
  })
  const all = [...new Set([...now.keys(), ...next.keys()])].map(weekOf)
  const some = all.filter((one) => one.calved + one.toCome >= 0.5 || one.next >= 0.5).map(({ week }) => week)
  if (some.length === 0) return []
  const first = Math.min(...some)
  return Array.from({ length: Math.max(...some) - first + 1 }, (_, i) => weekOf(first + i))
}

/** Calvings by week from the planned start: those of the calving before, and those expected in the next. */
export function calvingChart(view: SeasonView): string {
  const weeks = weeksOf(view)
  const most = Math.max(5, ...weeks.map(({ calved, toCome, next }) => Math.max(calved + toCome, next)))
  const y = scaleOf(0, most, BOTTOM, TOP)
  const slot = (RIGHT - LEFT) / Math.max(1, weeks.length)
  const every = Math.max(5, Math.ceil(most / 4 / 5) * 5)
  const parts: string[] = []
  for (let count = 0; count <= most; count += every) {
    parts.push(line({ x: LEFT, y: y(count) }, { x: RIGHT, y: y(count) }, count === 0 ? 'axis' : 'grid'))
    parts.push(words({ x: LEFT - 1.5, y: y(count) + 1 }, String(count), 'small end'))
  }
  for (const [i, { week, calved, toCome, next }] of weeks.entries()) {
    const left = LEFT + i * slot
    const wide = slot * 0.4
    parts.push(bar(left + slot * 0.1, y(calved), wide, BOTTOM - y(calved), 'full'))
    parts.push(bar(left + slot * 0.1, y(calved + toCome), wide, y(calved) - y(calved + toCome), 'to-come'))
    parts.push(bar(left + slot * 0.1 + wide, y(next), wide, BOTTOM - y(next), 'next'))
    parts.push(words({ x: left + slot / 2, y: BOTTOM + 4.2 }, String(week), 'small middle'))
  }
  return drawing(WIDTH, HEIGHT, 'Calvings by week from the planned start', parts)
}

/** Millimetres of a share's line. */
const SHARE_WIDTH = 30

/** A share as a dot with its interval on a line from 0 to 100 %. */
export function shareChart({ percent, low, high }: Figure): string {
  const x = scaleOf(0, 100, 1, SHARE_WIDTH - 1)
  const parts = [0, 50, 100].map((tick) => line({ x: x(tick), y: 0.3 }, { x: x(tick), y: 3.7 }, 'grid'))
  if (percent !== undefined && low !== undefined && high !== undefined) {
    parts.push(line({ x: x(low), y: 2 }, { x: x(high), y: 2 }, 'whisker'))
    parts.push(dot({ x: x(percent), y: 2 }, 1, 'mark'))
  }
  return drawing(SHARE_WIDTH, 4, percent === undefined ? 'not known' : `${Math.round(percent)} %`, parts)
}

/** A share as a bar. */
export const portionChart = (share: number): string =>
  drawing(50, 4, `${Math.round(100 * share)} %`, [bar(0, 0.6, 50 * share, 2.8, 'full')])
