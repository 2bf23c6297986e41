/** Drawings as SVG, in millimetres: the little that the charts need. */
import { htmlText } from '../html-text.ts'

export interface Point {
  readonly x: number
  readonly y: number
}

/** A straight scale from values to millimetres. */
export type Scale = (value: number) => number

/** @example scaleOf(0, 100, 60, 10)(50) // 35 */
export const scaleOf =
  (from: number, to: number, start: number, end: number): Scale =>
  (value) =>
    start + ((value - from) / (to - from)) * (end - start)

const mm = (value: number): string => String(Math.round(value * 100) / 100)

/** A drawing of so many millimetres. The title is read to who cannot see it. */
export const drawing = (width: number, height: number, title: string, parts: readonly string[]): string =>
  `<svg width="${mm(width)}mm" height="${mm(height)}mm" viewBox="0 0 ${mm(width)} ${mm(height)}" role="img"><title>${htmlText(title)}</title>${parts.join('')}</svg>`

export const line = (from: Point, to: Point, style: string): string =>
  `<line x1="${mm(from.x)}" y1="${mm(from.y)}" x2="${mm(to.x)}" y2="${mm(to.y)}" class="${style}"/>`

const points = (all: readonly Point[]): string => all.map(({ x, y }) => `${mm(x)},${mm(y)}`).join(' ')

export const polyline = (all: readonly Point[], style: string): string =>
  all.length < 2 ? '' : `<polyline points="${points(all)}" class="${style}"/>`

export const polygon = (all: readonly Point[], style: string): string =>
  all.length < 3 ? '' : `<polygon points="${points(all)}" class="${style}"/>`

export const bar = (x: number, y: number, width: number, height: number, style: string): string =>
  height <= 0 || width <= 0
    ? ''
    : `<rect x="${mm(x)}" y="${mm(y)}" width="${mm(width)}" height="${mm(height)}" class="${style}"/>`

/** A mark around a point, half of so many millimetres on either side. */
export const diamond = ({ x, y }: Point, size: number, style: string): string =>
  polygon(
    [
      { x, y: y - size },
      { x: x + size, y },
      { x, y: y + size },
      { x: x - size, y },
    ],
    style,
  )

export const dot = ({ x, y }: Point, radius: number, style: string): string =>
  `<circle cx="${mm(x)}" cy="${mm(y)}" r="${mm(radius)}" class="${style}"/>`

/** Words at a point; `style` says where the point lies: start, middle or end of them. */
export const words = ({ x, y }: Point, text: string, style: string): string =>
  `<text x="${mm(x)}" y="${mm(y)}" class="${style}">${htmlText(text)}</text>`

/** The corners of a curve that stays level until its next step. */
export function steps(all: readonly Point[], until: number): Point[] {
  const corners: Point[] = []
  for (const [i, point] of all.entries()) {
    corners.push(point, { x: all[i + 1]?.x ?? Math.max(point.x, until), y: point.y })
  }
  return corners
}
