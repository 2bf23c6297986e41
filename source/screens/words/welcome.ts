/** Words of the first screen. */
import type { WelcomeChoice } from '../../morning/welcome.ts'

export const welcomeWords = {
  title: 'dawnlist',
  job: 'The morning breeding list of a herd that calves in blocks: whom to serve, watch, check, leave to the bull.',
  choices: {
    sample: {
      label: 'Look at the sample herd',
      more: 'An invented farm on a morning of its fourth week of AI.',
    },
    'new-herd': {
      label: 'Begin a new herd',
      more: 'A file of your own; animals and seasons are added on the screen.',
    },
    'new-from-tables': {
      label: 'Begin a new herd from CSV tables',
      more: 'animals.csv and what else there is; what they would record is shown first.',
    },
  } satisfies Record<WelcomeChoice, { label: string; more: string }>,
  local:
    'Who may inseminate, scan or treat depends on local law: follow it, and your vet. The list is a reminder, not advice.',
  zone: 'The time zone is a name like Europe/Dublin or Pacific/Auckland.',
  report: 'What the tables would record',
  agree: 'Enter records the good rows and opens the herd. Esc goes back.',
  keys: {
    choose: 'Enter take it   Up Down choose   q leave',
    form: 'Enter go on   Tab next   Esc back',
    report: 'Enter record   Down more   Esc back',
  },
  tooSmall: 'The window is too small.',
} as const
