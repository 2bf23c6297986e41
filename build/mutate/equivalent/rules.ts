/** Of the rules of the morning list. */
import type { Equivalent } from './entry.ts'

const rule = (name: string): string => `source/breeding/rules/${name}.ts`

export const ofRules: readonly Equivalent[] = [
  {
    file: rule('no-heat-seen'),
    at: 'const from = long && standing.season !== undefined ? standing.season.matingStart + CYCLING_FROM : «0»',
    becomes: ['1', '(-1)'],
    why: 'no heat is as old as 1970',
  },
  {
    file: rule('no-heat-seen'),
    at: 'if (!mayBeServed(standing, policy.chances)) «return false»',
    becomes: [''],
    why: 'in the AI weeks the sweep bull comes first for her',
  },
  {
    file: rule('no-heat-seen'),
    at: 'if (!mayBeServed(standing, policy.chances)) return «false»',
    becomes: ['true'],
    why: 'in the AI weeks the sweep bull comes first for her',
  },
  {
    file: rule('pregnancy-check'),
    at: 'if (conceived === undefined || standing.due === undefined) «return false»',
    becomes: [''],
    why: 'no comparison with an unknown day holds',
  },
  {
    file: rule('pregnancy-check'),
    at: 'if («season === undefined || s === undefined» || standing.inCalf) return false',
    becomes: ['(season === undefined) && (s === undefined)'],
    why: 'a day of the season is known where the season is',
  },
  {
    file: rule('repeat-heat-watch'),
    at: '«return undefined»',
    becomes: [''],
    why: 'the end of a function gives nothing by itself',
  },
  {
    file: rule('serve'),
    at: 'const open = onHeat(standing) ? LATE_RETURN : «1»',
    becomes: ['(0)'],
    why: 'a service of today is not yet the last one',
  },
  {
    file: rule('serve'),
    at: 'if («reasons === undefined || serving === undefined») return undefined',
    becomes: ['(reasons === undefined) && (serving === undefined)'],
    why: 'where there is a reason there is a milking',
  },
  {
    file: rule('serve'),
    at: '? { session: service.session, hours: undefined, fromOnset: «false» }',
    becomes: ['true'],
    why: 'an onset is asked about only where hours are known',
  },
  {
    file: rule('take-care'),
    at: 'const PLAN_MISSED_FROM = «1»',
    becomes: ['(0)'],
    why: 'a plan of before today is a day old or more',
  },
  {
    file: rule('take-care'),
    at: 'if («pregnancy === undefined || conceived === undefined» || service === undefined) return undefined',
    becomes: ['(pregnancy === undefined) && (conceived === undefined)'],
    why: 'no comparison with an unknown day holds',
  },
  {
    file: rule('take-care'),
    at: 'return service.day - conceived >= «2» && standing.countingCheck === undefined',
    becomes: ['(1)'],
    why: 'a service a day after another is the same one',
  },
  {
    file: rule('sweep-bull'),
    at: "['late', «ready !== undefined && season !== undefined» && ready > season.aiEnd && ready <= season.bullEnd],",
    becomes: ['(ready !== undefined) || (season !== undefined)'],
    why: 'no comparison with an unknown day holds, and a day of the season is known only with the season',
  },
  {
    file: rule('sweep-bull'),
    at: '(«ready !== undefined && standing.season !== undefined» && ready > standing.season.bullEnd)',
    becomes: ['(ready !== undefined) || (standing.season !== undefined)'],
    why: 'no comparison with an unknown day holds, and a day of the season is known only with the season',
  },
]
