/** Invented names and numbers: cow families, tags, the farm itself. */

export const FARM_NAME = 'Ottersallow Farm'
export const ZONE = 'Europe/Dublin'
export const MILKINGS = ['05:30', '15:30'] as const

/** Each cow family carries one name; a daughter takes her dam's with the next number. */
export const families: readonly string[] = [
  ...['Bramble', 'Sorrel', 'Teasel', 'Foxglove', 'Comfrey', 'Yarrow', 'Tansy', 'Sedge', 'Fescue', 'Vetch'],
  ...[
    'Campion',
    'Burdock',
    'Damson',
    'Medlar',
    'Quince',
    'Saffron',
    'Pimpernel',
    'Speedwell',
    'Larkspur',
    'Harebell',
  ],
  ...['Cowslip', 'Dapple', 'Pebble', 'Thimble', 'Bobbin', 'Ribbon', 'Button', 'Lantern', 'Puddle', 'Drizzle'],
  ...[
    'Ember',
    'Cinder',
    'Velvet',
    'Biscuit',
    'Treacle',
    'Nutmeg',
    'Acorn',
    'Catkin',
    'Thistledown',
    'Mothwing',
  ],
  ...['Snowberry', 'Oatmeal', 'Buttermilk', 'Sixpence', 'Candlewick', 'Moonbeam', 'Raindrop', 'Cobweb'],
]

/** An ear tag with a country code that no country has. */
export const officialId = (number: string): string => `XD 004217 5${number.padStart(5, '0')}`
/** 999 is the country code that ISO 11784 keeps for tests. */
export const electronicId = (number: string): string => `999000004217${number.padStart(3, '0')}`
/** Breed, invented country, sex, twelve characters: the shape of an international ID. */
export const internationalId = (breed: string, sex: 'F' | 'M', code: string): string =>
  `${breed}XDD${sex}${code.padStart(12, '0')}`

/** Initials of those who write things down: two milkers, the farmer, the vet. */
export const people = { farmer: 'OB', milker: 'TS', relief: 'NW', vet: 'VT' } as const

export const notes: readonly string[] = [
  'kicks on the near side, bring her in last',
  'new ear tag put in',
  'lame behind, trimmed',
  'slow milker, front left',
  'nervous in the crush',
  'milk fever at calving, treated',
  'leader of the herd, drafts herself',
  'one quarter dried off',
]
