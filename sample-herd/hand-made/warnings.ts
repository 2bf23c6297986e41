/** Warnings: one case each. */
import { but, type Case, check, cow, heat, served, servedByBull } from './case.ts'

const maiden = (number: string, shows: Case['shows'], name: string): Case => ({
  ...but(cow(number, shows, name, 'serving', 0), { born: '2025-02-20', lactation: 0, ready: true }),
  facts: [heat(0)],
})

export const warningCases: readonly Case[] = [
  cow('181', 'suspect', 'suspect heat', 'serving', 100, heat(0, 'morning', 'suspect')),
  cow('182', 'second-round', 'served 40 days ago', 'bull', 100, served(40)),
  cow('183', 'late-return', 'back after 27 days', 'serving', 100, served(27), heat(0)),
  cow('184', 'unsure', 'unsure scan, on heat', 'serving', 100, served(33), check(2, 'unsure'), heat(0)),
  cow('185', 'bull-return', 'back after the bull', 'bull', 100, servedByBull(22), heat(1)),
  cow('186', 'outside-hours', 'on heat since yesterday before milking', 'serving', 100, heat(1, '04:50')),
  but(cow('191', 'no-straw', 'half sister of every sire in the flask', 'serving', 100, heat(0)), {
    sire: 'K0',
  }),
  but(cow('192', 'straw-out', 'meant for beef, no beef straw left', 'serving', 100, heat(0)), {
    plan: 'beef',
  }),
  but(cow('193', 'related-6', 'twice kin to every sire in the flask', 'serving', 100, heat(0)), {
    sire: 'K3',
    dam: '199',
  }),
  but(cow('194', 'related-12', 'another half sister', 'serving', 100, heat(0)), { sire: 'K0' }),
  {
    ...cow('195', 'parents-unknown', 'nobody knows her parents', 'serving', 100, heat(0)),
    record: { born: '2021-03-01', block: 'serving', lactation: 1, plan: 'dairy' },
  },
  maiden('196', 'not-easy-calving', 'maiden, no easy sire left'),
]
