import type { Equivalent } from './entry.ts'

const herd = (name: string): string => `source/herd/${name}.ts`

/** Numbers that say how much is done between two breaths. */
const slices: readonly Equivalent[] = (
  [
    ['gate', 'const slice = «2000»', ['2001', '(1999)']],
    ['union', 'const slice = «2000»', ['2001', '(1999)']],
    ['salvage', 'await inSlices(linesOf(bytes), «200», (line) => {', ['201', '(199)']],
    ['format', 'const encodeSlice = «500»', ['501', '(499)']],
    ['format', 'const hashSlice = «1024» * 1024', ['1025', '(1023)']],
    ['format', 'const hashSlice = 1024 * «1024»', ['1025', '(1023)']],
    ['format', 'const decodeSlice = «128 * 1024»', ['(128) / (1024)']],
    ['format', 'const decodeSlice = «128» * 1024', ['129', '(127)']],
    ['format', 'const decodeSlice = 128 * «1024»', ['1025', '(1023)']],
    ['format', 'if (start > «0») await breathe()', ['1']],
    ['store/files', 'const readSlice = «1024» * 1024', ['1025', '(1023)']],
    ['store/files', 'const readSlice = 1024 * «1024»', ['1025', '(1023)']],
  ] as const
).map(([file, at, becomes]) => ({
  file: herd(file),
  at,
  becomes,
  why: 'a slice more or less: the work is the same',
}))

export const ofHerd: readonly Equivalent[] = [
  ...slices,
  {
    file: herd('format'),
    at: 'if («slice.length < encodeSlice» && place < facts.length - 1) return',
    becomes: ['(slice.length) <= (encodeSlice)', '(slice.length) >= (encodeSlice)'],
    why: 'the lines are the same in other pieces',
  },
  {
    file: herd('known-on'),
    at: 'const end = endOf(day, zone).toISOString().slice(0, «16»)',
    becomes: ['17'],
    why: 'an instant is longer than its minute, with a colon behind or without',
  },
  {
    file: herd('known-on'),
    at: 'return facts.filter(({ at }) => «at < end»)',
    becomes: ['(at) <= (end)'],
    why: 'an instant is longer than its minute',
  },
  {
    file: herd('format'),
    at: 'if (slice.length < encodeSlice && place < facts.length - «1») return',
    becomes: ['2'],
    why: 'the last fact is a slice of its own then',
  },
  ...[
    `const found = /^\\{"kind":"dawnlist","format":(\\d{1,6}),/.exec(bytes.toString('latin1', «0», longestHeader))`,
    `const found = headerPattern.exec(bytes.toString('latin1', «0», longestHeader))`,
  ].map((at) => ({
    file: herd('format'),
    at,
    becomes: ['(-1)'],
    why: 'before the first byte there is none',
  })),
  {
    file: herd('format'),
    at: 'const longestHeader = «256»',
    becomes: ['257', '(255)'],
    why: 'the longest first line there can be has 187 characters',
  },
  {
    file: herd('known-on'),
    at: 'const later = plusDays(day, «2»)',
    becomes: ['3'],
    why: 'from a later day the way back is longer, and ends at the same instant',
  },
  {
    file: herd('known-on'),
    at: 'const quarter = 15 * «60_000»',
    becomes: ['(59999)'],
    why: 'two seconds less in two days, where minutes count',
  },
  ...[
    [
      'if («zones.size < 1000») zones.set(name, exists)',
      ['(zones.size) <= (1000)', '(zones.size) >= (1000)'],
    ],
    ['if (zones.size < «1000») zones.set(name, exists)', ['1001', '(999)']],
    ['if (zones.size < 1000) «zones.set(name, exists)»', ['']],
    ['if (known !== undefined) «return known»', ['']],
    ['if (found !== undefined) «return found»', ['']],
    ['«formats.set(zone, format)»', ['']],
  ].map(([at, becomes]) => ({
    file: herd('zone'),
    at: at as string,
    becomes: becomes as string[],
    why: 'what is remembered only saves time',
  })),
  ...[
    ["bytes.toString('latin1', «0», 256),", ['(-1)']],
    ["bytes.toString('latin1', 0, «256»),", ['257', '(255)']],
  ].map(([at, becomes]) => ({
    file: herd('salvage'),
    at: at as string,
    becomes: becomes as string[],
    why: 'the revision stands among the first 60 characters',
  })),
  {
    file: herd('salvage'),
    at: '«return undefined»',
    becomes: [''],
    why: 'the end of a function gives nothing by itself',
  },
  ...[
    "const nothing: HerdFile = { format: «0», revision: 0, herdId: '', facts: [], lines: [] }",
    "const nothing: HerdFile = { format: 0, revision: «0», herdId: '', facts: [], lines: [] }",
  ].map((at) => ({
    file: herd('open'),
    at,
    becomes: ['1', '(-1)'],
    why: 'the herd that is read takes its place before anybody looks',
  })),
  {
    file: herd('restore'),
    at: 'const bytes = present?.bytes ?? Buffer.alloc(«0»)',
    becomes: ['1'],
    why: 'a byte of nought holds no fact either',
  },
  {
    file: herd('store/adapter'),
    at: '#edited = «false»',
    becomes: ['true'],
    why: 'the file that is read takes its place before anybody looks',
  },
  {
    file: herd('store/copy'),
    at: 'const saved = herd.lines.length > «0» ? herd.lines : await encodeLines(herd.facts)',
    becomes: ['1'],
    why: 'of one piece or many, the facts give these very lines',
  },
  {
    file: herd('store/lock'),
    at: 'const side = new Database(path, { timeout: «0» })',
    becomes: ['1', '(-1)'],
    why: 'a millisecond of waiting, and none',
  },
  {
    file: herd('store/locking'),
    at: 'for (let waited = «0»; waited < lockWait; waited += lockPause) {',
    becomes: ['1'],
    why: 'five hundred tries either way',
  },
  {
    file: herd('store/sweep'),
    at: '«return undefined»',
    becomes: [''],
    why: 'the end of a function gives nothing by itself',
  },
  {
    file: herd('schema'),
    at: ".refine((fact) => (fact.dead ?? «0») <= (fact.calves ?? 1), { path: ['dead'], error: 'more-dead-than-born' })",
    becomes: ['(-1)'],
    why: 'none dead is never more than were born',
  },
  {
    file: herd('migrations'),
    at: 'const step = «steps.find((each) => each.from === from)»',
    becomes: ['steps.findLast((each) => each.from === from)'],
    why: 'there is one step from a format',
  },
]
