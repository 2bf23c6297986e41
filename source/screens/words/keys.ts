/** Words of the key table: what a key does in a few words for the foot of the screen, and in a sentence for the help. */
import type { Section } from '../../breeding/sections.ts'

export const keyNames: Readonly<Record<string, string>> = {
  space: 'Space',
  enter: 'Enter',
  esc: 'Esc',
  tab: 'Tab',
  'shift+tab': 'Shift+Tab',
  backspace: 'Backspace',
  delete: 'Delete',
  up: 'Up',
  down: 'Down',
  left: 'Left',
  right: 'Right',
  pageup: 'PgUp',
  pagedown: 'PgDn',
  home: 'Home',
  end: 'End',
  'ctrl+c': 'Ctrl+C',
  'ctrl+z': 'Ctrl+Z',
  digits: '0-9',
  letters: 'any letter',
}

/** What the usual key records in a section. */
export const usualWords: Readonly<Record<Section, string>> = {
  'take-care': 'decide',
  serve: 'served',
  'second-service': 'served',
  'repeat-heat-watch': 'looked, none',
  'pregnancy-check': 'in calf',
  'sweep-bull': 'with the bull',
  'no-heat-seen': 'examined',
  'heat-record': 'heat seen',
}

interface KeyWords {
  readonly label: string
  readonly help: string
}

export const keyWords = {
  usual: {
    label: 'usual',
    help: 'Records the usual thing of the row: served with the proposed straw, looked and none seen, in calf, with the bull, examined. A danger is asked about first.',
  },
  'fill-in': { label: 'change first', help: 'Opens the form of the row, to change what is recorded.' },
  'heat-now': {
    label: 'heat',
    help: 'A heat seen now, standing and sure: of the row, or of the number just typed.',
  },
  heat: { label: 'heat form', help: 'A heat with its time, how it was seen, sure or suspect.' },
  service: { label: 'served', help: 'A service by AI: straw, batch, inseminator, milking.' },
  'in-calf': {
    label: 'in calf',
    help: 'A check that found her in calf; days of age may follow, Enter records.',
  },
  'not-in-calf': { label: 'empty', help: 'A check that found her empty; Enter records.' },
  check: { label: 'check form', help: 'A pregnancy check with everything about it.' },
  'look-all': {
    label: 'looked at all',
    help: 'Looked at the whole repeat-heat watch and none was seen: ticks every row of it not ticked yet.',
  },
  examined: { label: 'vet', help: 'Examined by the vet: finding, treatment, a fixed-time service planned.' },
  hold: { label: 'hold', help: 'Health hold, until a day or until further notice.' },
  'to-bull': {
    label: 'to the bull',
    help: 'Left to the sweep bull: no straw is proposed for her this season.',
  },
  'with-bull': { label: 'with the bull', help: 'Put with the bull, or taken from him (W).' },
  'from-bull': { label: 'from the bull', help: 'Taken from the bull.' },
  'bull-service': { label: 'bull served', help: 'A bull’s service that was seen.' },
  note: { label: 'note', help: 'A note about her.' },
  block: { label: 'moved block', help: 'Moved to another calving block.' },
  bar: { label: 'do not breed', help: 'Do not breed her; where that stands already, lifts it.' },
  calving: { label: 'calved', help: 'A calving: ease, calves, their sex, how many were dead.' },
  loss: { label: 'loss', help: 'A pregnancy lost.' },
  left: { label: 'left herd', help: 'She has left the herd.' },
  score: { label: 'condition', help: 'Body condition, 1 to 5 in quarters.' },
  dry: { label: 'dried off', help: 'Dried off.' },
  menu: { label: 'record', help: 'Shows all that can be recorded about her, with its key.' },
  void: {
    label: 'strike out',
    help: 'Strikes out the fact pointed at: it no longer counts, and stays on record as struck out.',
  },
  undo: {
    label: 'take back',
    help: 'Takes back the last thing recorded, whole; again takes back the one before, also after a restart.',
  },
  redo: { label: 'put back', help: 'Puts back what was taken back last.' },
  up: { label: 'up', help: 'One row up.' },
  down: { label: 'down', help: 'One row down.' },
  'page-up': { label: 'page up', help: 'A page up.' },
  'page-down': { label: 'page down', help: 'A page down.' },
  first: { label: 'top', help: 'To the first row.' },
  last: { label: 'end', help: 'To the last row.' },
  'next-section': { label: 'next section', help: 'To the next section.' },
  'previous-section': { label: 'section before', help: 'To the section before.' },
  number: {
    label: 'number',
    help: 'Typing a number goes to that animal, on the list or not; the end of an ear tag will do. A key typed after it is about her.',
  },
  rub: { label: 'correct', help: 'Takes the last digit away.' },
  'open-animal': { label: 'her page', help: 'Opens the page of the animal.' },
  search: { label: 'name', help: 'Finds an animal by a part of her name, number or ear tag.' },
  unfold: { label: 'fold', help: 'Opens and closes the list of animals that run with the bull.' },
  'day-before': { label: 'day before', help: 'The list of the day before.' },
  'day-after': {
    label: 'day after',
    help: 'The list of the day after: what will come, as far as is known today.',
  },
  today: { label: 'today', help: 'Back to today’s list.' },
  'known-then': {
    label: 'known then',
    help: 'A past list as it was known at the end of its day, and as it is known now.',
  },
  'some-day': { label: 'a date', help: 'The list of any date.' },
  initials: { label: 'initials', help: 'Changes the initials of who records.' },
  help: { label: 'help', help: 'This page.' },
  back: { label: 'back', help: 'One step back.' },
  quit: { label: 'leave', help: 'Leaves the program. Everything that reads "saved" is on the disk.' },
  'leave-unsaved': { label: 'leave, lose them', help: 'Leaves although facts are not saved.' },
  'whole-notice': {
    label: 'all of it',
    help: 'All that is said above the keys, where it is longer than its two lines.',
  },
  copy: { label: 'save a copy', help: 'Saves a copy of the whole herd as a new file elsewhere.' },
  'over-older': {
    label: 'save over the older copy',
    help: 'Where an older copy of the herd stands in the place of the file: adds what it lacks and saves.',
  },
  'more-about': {
    label: 'more about her',
    help: 'From her facts to what they come to: services with their intervals, what each check counted for, her parents, the straws for her; and back.',
  },
  'change-fact': {
    label: 'change',
    help: 'Opens the fact pointed at in its form; the old one stays on record as changed.',
  },
  go: { label: 'go to', help: 'To another screen: season, straws, bulls, the scanning visit, set-up.' },
  'go-ahead': { label: 'the days ahead', help: 'The next two weeks, scanning days and key dates.' },
  'go-season': { label: 'the season', help: 'Figures, curve and forecast of the season.' },
  'go-scanning': {
    label: 'scanning visit',
    help: 'Results one number after another, in the order of the crush.',
  },
  'go-straws': { label: 'straws', help: 'Flasks, stock and needs, and the nitrogen.' },
  'go-bulls': { label: 'bulls', help: 'Bulls needed and on hand, services seen.' },
  'bull-out': {
    label: 'bull in, bull out',
    help: 'The move of the bulls. Pointed at one that is with animals: he alone comes out, lame or worn out; Tab then puts another in for him.',
  },
  'go-turn-out': { label: 'bull in, bull out', help: 'The move to the bull weeks, and out of them.' },
  'go-set-up': { label: 'set-up', help: 'Farm, seasons, policy and animals.' },
  'change-entry': { label: 'change', help: 'Opens the entry in a form.' },
  'add-entry': { label: 'add', help: 'A new season; on the animals, a new animal.' },
  'next-year': { label: 'a year on', help: 'A season like the one pointed at, a year later.' },
  'strike-entry': { label: 'strike out', help: 'Strikes a season out; puts a setting back to its default.' },
  'next-part': { label: 'next part', help: 'To the next part of the screen.' },
  'previous-part': { label: 'part before', help: 'To the part before.' },
  'decide-block': {
    label: 'to other block',
    help: 'Among the empties: she goes to the other block, as of today; the next row follows.',
  },
  'decide-bar': {
    label: 'not bred',
    help: 'Among the empties: not to be bred any more, to be culled. Why she stands there goes on record; X asks for another reason.',
  },
  'decide-bull': {
    label: 'bull',
    help: 'Among the empties: left to the sweep bull, no straw is proposed for her this season.',
  },
  'her-page': { label: 'her page', help: 'Opens the page of the animal pointed at.' },
  delivered: { label: 'delivered', help: 'Straws delivered: how many, into which flask and canister.' },
  counted: { label: 'counted', help: 'A count of the straws pointed at: from then on it is their number.' },
  spoiled: { label: 'spoiled', help: 'Straws spoiled or thrown away.' },
  nitrogen: { label: 'nitrogen', help: 'The depth of the liquid nitrogen, measured.' },
  whole: { label: 'tell more', help: 'Tells all about the line pointed at: the serving card of its straws.' },
  'number-here': {
    label: 'number',
    help: 'Typing a number and Enter opens the page of that animal; the end of an ear tag will do.',
  },
  'look-into': {
    label: 'look into it',
    help: 'Looks into the line pointed at: a question, the animals of a figure, a change to try, her page.',
  },
  'try-more': { label: 'turn', help: 'In the forecast: more of the line pointed at.' },
  'try-less': { label: 'turn', help: 'In the forecast: less of the line pointed at.' },
  'as-planned': { label: 'as planned', help: 'In the forecast: back to the plan.' },
  'his-page': { label: 'his page', help: 'Opens the page of the bull pointed at.' },
  'used-up': { label: 'used up', help: 'Shows the lots that are used up, and folds them away.' },
  'open-day': { label: 'that day’s list', help: 'Opens the list of the day pointed at, to look at.' },
  'plan-visit': { label: 'plan a visit', help: 'Plans a scanning visit on the day pointed at.' },
  'move-visit': {
    label: 'move it here',
    help: 'Moves the planned visit that is nearest to the day pointed at.',
  },
  'cancel-visit': { label: 'out of the plan', help: 'Takes the planned visit pointed at out of the plan.' },
  'other-block': { label: 'other block', help: 'The next block.' },
  'record-move': { label: 'record', help: 'Records the move as it stands, all at once.' },
  'toggle-move': {
    label: 'leave out',
    help: 'Leaves the animal or the bull pointed at, or the number typed, out of the move, or takes it in again.',
  },
  'all-or-none': {
    label: 'all, none',
    help: 'Leaves all animals out, to take in some by their numbers; again takes all in.',
  },
  'move-later': { label: 'a day later', help: 'The move a day later; what that does is said.' },
  'move-earlier': { label: 'a day earlier', help: 'The move a day earlier.' },
  'move-day': {
    label: 'which day',
    help: 'The day of the move, typed: also one that has been, where it is recorded late.',
  },
  'ai-longer': { label: 'AI a week longer', help: 'AI goes on for a week; the bull comes out as planned.' },
  'other-way': { label: 'in, out', help: 'The bull goes in, or he comes out.' },
  'scan-number': {
    label: 'number',
    help: 'The number of the animal in the crush; the end of an ear tag will do.',
  },
  'scan-in-calf': { label: 'in calf', help: 'In calf; digits typed after it are the age in days.' },
  'scan-empty': { label: 'empty', help: 'Empty.' },
  'scan-unsure': { label: 'unsure', help: 'Unsure: she is checked again.' },
  'scan-twins': { label: 'twins', help: 'Twins; again takes it away.' },
  'scan-enter': {
    label: 'record, next',
    help: 'Records the result and begins the next number. On a line below it takes that line up again: to correct it, or to settle it.',
  },
  'scan-keep': {
    label: 'for later',
    help: 'Keeps what is typed for later; it counts for no animal until it is settled.',
  },
  'scan-strike': {
    label: 'strike out',
    help: 'Strikes out the result pointed at, or drops the one that was kept.',
  },
  'scan-method': { label: 'method', help: 'The next method: ultrasound, hand, milk, blood.' },
  'scan-day-before': { label: 'day before', help: 'The visit was a day earlier.' },
  'scan-day-after': { label: 'day after', help: 'The visit was a day later; today at the latest.' },
  interrupt: { label: 'leave', help: 'Leaves the program at once.' },
  suspend: { label: 'suspend', help: 'Back to the command line for a while; fg brings the screen back.' },
  'next-field': { label: 'next', help: 'To the next field.' },
  'previous-field': { label: 'back', help: 'To the field before.' },
  'turn-on': { label: 'other', help: 'The next choice, straw or day.' },
  'turn-back': { label: 'other', help: 'The choice, straw or day before.' },
  accept: { label: 'record', help: 'Records.' },
  agree: { label: 'yes, record', help: 'Records it all the same.' },
  take: { label: 'take it', help: 'Takes what was typed.' },
  cancel: { label: 'leave it', help: 'Records nothing.' },
  put: { label: 'type', help: 'Types into the field.' },
} as const satisfies Record<string, KeyWords>

export type KeyMeaning = keyof typeof keyWords

export const helpWords = {
  groups: {
    record: 'Recording',
    more: 'More to record, about the row or the number typed',
    move: 'Moving about',
    day: 'Other days',
    program: 'The program',
  },
  capitals: 'In these lists a capital letter is typed with Shift.',
  local:
    'Who may inseminate, scan or treat depends on local law: follow it, and your vet. The list is a reminder, not advice.',
} as const
