/** Cautions, in the program's own words: short where the danger is, in full once a day. They defer to law and vet. */
import type { Section } from '../breeding/sections.ts'

interface Caution {
  readonly short: string
  readonly full: string
  /** Who says so. */
  readonly source: string
}

export const cautions = {
  crush: {
    short: 'in a crush, arms out of the rails',
    full: 'Serving and checking: catch her in a crush and keep your arms out of the rails. Alone only when someone knows where you are and when you will be back.',
    source: 'WorkSafe New Zealand; Health and Safety Executive (UK)',
  },
  nitrogen: {
    short: 'nitrogen: air, eyes, dry gloves',
    full: 'Liquid nitrogen burns at -196 C and drives the air out of a room without warning: fresh air, eye protection, loose dry gloves, and never in a closed vehicle with people.',
    source: 'SDSU Extension; BCGA Code of Practice 30',
  },
  bull: {
    short: 'no bull is safe, never alone',
    full: 'No bull is safe, the quiet ones least of all. Never work him alone or on foot in the open, never bring him through the parlour, know your way out, tell someone, put up signs where the public may walk.',
    source:
      'Health and Safety Executive (UK) and HSENI; Health and Safety Authority (Ireland); WorkSafe New Zealand',
  },
  hygiene: {
    short: 'gloves, wash',
    full: 'Checks: gloves on and hands washed, against leptospirosis and Q fever.',
    source: 'WorkSafe New Zealand; WorkSafe Western Australia',
  },
  hormones: {
    short: 'hormones: check first, vet’s prescription',
    full: 'Prostaglandin ends a pregnancy: have her checked first. Women who are or may be pregnant and people with asthma keep clear of it. It needs the vet’s prescription.',
    source: 'UK data sheets for cloprostenol',
  },
  catching: {
    short: 'gloves, keep her apart, ring the vet',
    full: 'Treat every loss as catching: gloves, keep her apart, ring the vet. Pregnant women keep away from losses and calvings.',
    source: 'UK Health Security Agency',
  },
  law: {
    short: 'who may serve, scan or treat: local law, your vet',
    full: 'Who may inseminate, scan or treat depends on local law: follow it, and your vet.',
    source: 'Statutory Instrument 2010/2059 (Great Britain), and the like elsewhere',
  },
} as const satisfies Record<string, Caution>

export type CautionName = keyof typeof cautions

/** The cautions of a section. */
export const cautionsOf: Readonly<Record<Section, readonly CautionName[]>> = {
  'take-care': [],
  serve: ['crush', 'nitrogen'],
  'second-service': ['crush', 'nitrogen'],
  'repeat-heat-watch': [],
  'pregnancy-check': ['crush', 'hygiene'],
  'sweep-bull': ['bull'],
  'no-heat-seen': ['hormones'],
  'heat-record': [],
}
