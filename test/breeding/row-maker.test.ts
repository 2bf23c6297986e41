import { describe, expect, test } from 'vitest'
import { defaultRates } from '../../source/breeding/chances/rates.ts'
import { inCalfWithoutReturn, returnsAfter, returnToday } from '../../source/breeding/chances.ts'
import { bullService, calving, cow, empty, heat, loss, maiden, planned, rowAt, service } from './support.ts'

const fresh = calving(-60)

describe('the chance of a row', () => {
  // The four days are those of the rules: heats seen 0.90, one return in twenty late, cows 0.55.
  test.each([
    [18, 0.0227],
    [21, 0.0519],
    [22, 0.0576],
    [24, 0.0536],
  ])('a cow served %i days ago comes again today: %d', (k, chance) => {
    expect(rowAt(k, cow(fresh, service(0)))?.chance).toBeCloseTo(chance, 4)
  })

  test('a first-calver has the shorter cycle, and a maiden holds better', () => {
    const young = returnsAfter('service', 21, defaultRates)
    expect(rowAt(20, cow(fresh, { lactation: 0 }, service(0)))?.chance).toBe(returnToday(0.55, 20, young))
    expect(rowAt(20, maiden(service(0)))?.chance).toBe(returnToday(0.65, 20, young))
  })

  test('after a heat that was not served she comes again for certain, today or another day', () => {
    expect(rowAt(24, cow(fresh, heat(3)))?.chance).toBe(
      returnToday(0, 21, returnsAfter('heat', 22, defaultRates)),
    )
    const young = returnsAfter('heat', 21, defaultRates)
    expect(rowAt(24, maiden(heat(3)))?.chance).toBe(returnToday(0, 21, young))
  })

  test('at a check, that she is in calf as the morning knows it', () => {
    const returns = returnsAfter('service', 22, defaultRates)
    expect(rowAt(35, cow(fresh, service(0)))?.chance).toBe(inCalfWithoutReturn(0.55, 34, returns))
  })

  test('elsewhere none', () => {
    expect(rowAt(50, cow(fresh))).toMatchObject({ section: 'sweep-bull', chance: undefined })
    expect(rowAt(10, cow(fresh, heat(8)))).toMatchObject({ section: 'take-care', chance: undefined })
    expect(rowAt(40, cow(fresh, service(0), empty(35)))).toMatchObject({
      section: 'no-heat-seen',
      chance: undefined,
    })
  })
})

describe('the moment of a row: minutes from midnight to the heat that is served', () => {
  test.each([
    ['this morning', heat(10, { time: '05:00' }), 300],
    ['last evening', heat(9, { time: '18:00' }), -360],
    ['a service of today as its heat', service(10, { time: '09:15' }), 555],
  ])('%s', (_, seen, moment) => {
    expect(rowAt(10, cow(fresh, seen))).toMatchObject({ section: 'serve', moment })
  })

  test('none where no heat is served', () => {
    expect(rowAt(10, cow(fresh, planned(0, 10)))).toMatchObject({ section: 'serve', moment: 0 })
    expect(rowAt(20, cow(fresh, service(0)))).toMatchObject({ section: 'repeat-heat-watch', moment: 0 })
    expect(rowAt(10, cow(fresh, heat(8)))).toMatchObject({ section: 'take-care', moment: 0 })
    expect(rowAt(45, cow(fresh, bullService(43), loss(44)))).toMatchObject({
      section: 'take-care',
      moment: 0,
    })
  })
})

test('what a row says of its animal', () => {
  expect(rowAt(22, cow(fresh, { number: '412' }, service(0)))).toMatchObject({
    animal: 'animal-412',
    number: '412',
    block: 'spring',
    since: 'service',
    days: 22,
    session: undefined,
    straw: undefined,
    also: undefined,
    done: false,
  })
})
