/** The sections of the morning list, and the codes of what they say. What each code says stands in words/list.ts. */

/** Sections in screen order. An animal stands in at most one. */
export const sections = [
  'take-care',
  'serve',
  'second-service',
  'repeat-heat-watch',
  'pregnancy-check',
  'sweep-bull',
  'no-heat-seen',
  'heat-record',
] as const
export type Section = (typeof sections)[number]

/** Reasons of each section, in the order that they place an animal. */
export const reasonsOf = {
  'take-care': [
    'in-calf-heat',
    'served-in-calf',
    'overdue',
    'calving-unknown',
    'calved-under-30',
    'calved-30-41',
    'short-interval',
    'hold',
    'unserved-heat',
    'no-service-fits',
    'loss',
    'contradiction',
  ],
  serve: ['on-heat', 'fixed-time'],
  'second-service': ['on-heat', 'fixed-time'],
  'repeat-heat-watch': ['since-service', 'since-heat'],
  'pregnancy-check': ['due', 'unsure', 'heat-in-calf', 'served-in-calf', 'confirm', 'final'],
  'sweep-bull': ['chances', 'by-hand', 'late', 'window', 'keep-from-bull'],
  'no-heat-seen': ['cycling-not-seen', 'no-heat-24-days', 'empty', 'at-risk'],
  'heat-record': ['none-seen'],
} as const satisfies Record<Section, readonly string[]>
export type Reason = (typeof reasonsOf)[Section][number]

/** Warnings of Serve and of Second service, in order. */
const serveWarnings = ['suspect', 'late-return', 'unsure', 'outside-hours'] as const

/** Warnings of Pregnancy check. */
const checkWarnings = ['second-round'] as const

/** Warnings of Leave to the sweep bull. */
const bullWarnings = ['bull-return'] as const

/** Warnings about the straw that is proposed, in order. */
export const strawWarnings = [
  'no-straw',
  'straw-out',
  'related-6',
  'related-12',
  'parents-unknown',
  'not-easy-calving',
] as const

/** All of them, each from the rule that gives it. */
export const warnings = [...serveWarnings, ...checkWarnings, ...bullWarnings, ...strawWarnings] as const
export type Warning = (typeof warnings)[number]

/** What the days of a row are counted from. */
export type Since = 'service' | 'heat' | 'calving' | 'loss'
