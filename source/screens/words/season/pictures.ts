/** Words in and beside the season's pictures. */

export const pictureWords = {
  curve: 'In calf by day of the season',
  curveKnown: 'known',
  curveAhead: 'expected',
  curveBand: '19 in 20, ahead 8 in 10',
  curveAim: 'aim 78 % in six weeks',
  curveLater: 'The curve ends where too much is not known; ahead of it stands the forecast.',
  pace: 'Served by day of the first three weeks',
  paceServed: 'served',
  paceAim: 'aim',
  noPace: 'Mating has not begun.',
  calvedWeeks: 'Calving before the season, by week',
  calvedTo: (date: string): string => `planned start ${date}`,
  week: (week: number): string => `week ${week}`,
  calvingsAhead: 'Calvings to come from this season, by week',
  cumulative: (share: number): string => `${Math.round(share)} %`,
  returns: 'Days between two services',
  none: 'Nothing yet.',
  today: 'today',
  aiEnds: 'AI ends',
  bullOut: 'bull out',
} as const
