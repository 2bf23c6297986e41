import type { Standing } from '../../breeding/standing.ts'
import { dayAndMonth } from '../../words/dates.ts'

/**
 * How an animal stands, in a few words.
 *
 * @example stateWords(standing) // 'served 9 May, 19 days ago'
 */
export function stateWords(standing: Standing): string {
  const { leftOn, inCalf, pregnancy, lastService, latestSureHeat, waitFrom, maiden, today } = standing
  if (leftOn !== undefined) return `left ${dayAndMonth(leftOn)}`
  const conceived = pregnancy?.conception?.day
  if (inCalf) return conceived === undefined ? 'in calf' : `in calf since ${dayAndMonth(conceived)}`
  const heat = latestSureHeat?.day
  const unserved = heat !== undefined && latestSureHeat?.service === undefined
  const calved =
    waitFrom === undefined ? (maiden ? 'maiden' : 'calving not known') : `calved ${today - waitFrom} days`
  if (lastService !== undefined)
    return `served ${dayAndMonth(lastService.day)}, ${today - lastService.day} days ago${unserved ? `, heat ${dayAndMonth(heat)}` : ''}`
  return unserved ? `${calved}, heat ${dayAndMonth(heat)} not served` : `${calved}, no sure heat`
}
