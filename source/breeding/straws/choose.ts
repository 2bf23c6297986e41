/** Which straw an animal is served with. */
import type { AnimalRecord, HerdBook } from '../book.ts'
import type { Day } from '../day.ts'
import type { StrawKind } from '../facts.ts'
import { type Warning, warnings as warningsInOrder } from '../list.ts'
import type { Policy } from '../policy.ts'
import type { Serving } from '../session.ts'
import { sireOf } from '../sire.ts'
import type { Standing } from '../standing.ts'
import { type StrawCounts, strawCounts } from './counts.ts'
import { type KindProposal, proposeKind } from './kind.ts'
import { kinshipIn } from './kinship-in.ts'
import { type Occasion, occasionToday } from './occasion.ts'
import { type RankedStraw, rankStraws, related } from './rank.ts'
import { because, type InsteadReasonCode, type SireReasonCode, type StrawReason } from './reason.ts'
import { nothingSetAside, type SetAside } from './set-aside.ts'

export interface StrawChoice {
  /** Undefined where nothing in stock fits; the warnings then say so. */
  readonly straw: { readonly sire: string; readonly straw: StrawKind } | undefined
  readonly warnings: readonly Warning[]
  /** The kind that she should have, and why; the straw may be another where that kind is out. */
  readonly proposal: KindProposal
  /** The straw with what speaks for and against it. */
  readonly chosen: RankedStraw | undefined
  /** Why it is another kind, or none, where that is so. */
  readonly instead: StrawReason<InsteadReasonCode> | undefined
}

/** Inbreeding of the calf of a dam and a sire, 0-1, and the generations of ancestors known of both. */
export type Kinship = (
  dam: AnimalRecord,
  sire: string,
) => { readonly inbreeding: number; readonly generations: number }

/** Where the proposed kind is out, these are proposed; a sexed straw only where every condition holds. */
const kindsInstead: Readonly<Record<StrawKind, readonly StrawKind[]>> = {
  sexed: ['sexed', 'conventional', 'beef'],
  conventional: ['conventional', 'beef'],
  beef: ['beef', 'conventional'],
}

/**
 * One chooser for the list of a day: stock and use are counted once, when the first animal asks. The kind is proposed
 * by the conditions of kind.ts, the sire by the order of rank.ts. A maiden gets an easy-calving sire of another kind
 * before one of the proposed kind that is not.
 *
 * Warnings: `no-straw` nothing in stock fits; `straw-out` the kind that she should have is out; `related-6` the calf
 * would be inbred above 6.25 %; `related-12` of the kind that she should have only sires are left that must be
 * confirmed first; `parents-unknown` her sire or dam is not named; `not-easy-calving` a maiden, and only such sires
 * are in stock.
 *
 * @param book the herd book, @param today the list's day, its own facts included
 * @returns the choice for an animal at the session where she is served
 * @example strawChooser(book, today)(standing, serving).straw // { sire: 'S17', straw: 'sexed' }
 */
export function strawChooser(
  book: HerdBook,
  today: Day,
  kinship: Kinship = kinshipIn(book),
): (standing: Standing, serving: Serving) => StrawChoice {
  const straws = new StrawsOfDay(book, strawCounts(book, today), kinship, nothingSetAside())
  return (standing, serving) => straws.choose(standing, serving)
}

/**
 * The straws for a whole list: what is proposed for one animal is set aside, so that the next ones get what is left
 * and the sires are used evenly, also on a printed list.
 *
 * @param rows the animals still to be served, in the order of the list
 * @returns their choices, in the same order
 * @example allotStraws(book, today, rows)[1]?.straw // { sire: 'S18', straw: 'sexed' }
 */
export function allotStraws(
  book: HerdBook,
  today: Day,
  rows: readonly { readonly standing: Standing; readonly serving: Serving }[],
  kinship: Kinship = kinshipIn(book),
): readonly StrawChoice[] {
  const aside = nothingSetAside()
  const straws = new StrawsOfDay(book, strawCounts(book, today), kinship, aside)
  return rows.map(({ standing, serving }) => {
    const choice = straws.choose(standing, serving)
    if (choice.straw !== undefined) aside.add(choice.straw.sire, choice.straw.straw)
    return choice
  })
}

/**
 * Every straw in stock ranked for an animal, kinds that are proposed first: for her own page.
 *
 * @returns for a standing, and the session where she is served if there is one
 * @example strawRanking(book, today)(standing, undefined).ranked[0]?.sire // 'S17'
 */
export function strawRanking(
  book: HerdBook,
  today: Day,
  kinship: Kinship = kinshipIn(book),
): (
  standing: Standing,
  serving: Serving | undefined,
) => { readonly proposal: KindProposal; readonly ranked: readonly RankedStraw[] } {
  const straws = new StrawsOfDay(book, strawCounts(book, today), kinship, nothingSetAside())
  return (standing, serving) => straws.ranking(standing, serving)
}

/** The straws of one day, and the choices among them. */
class StrawsOfDay {
  readonly #book: HerdBook
  readonly #counts: StrawCounts
  readonly #kinship: Kinship
  readonly #aside: SetAside

  constructor(book: HerdBook, counts: StrawCounts, kinship: Kinship, aside: SetAside) {
    this.#book = book
    this.#counts = counts
    this.#kinship = kinship
    this.#aside = aside
  }

  choose(standing: Standing, serving: Serving): StrawChoice {
    const { occasion, proposal } = this.#propose(standing, serving)
    const byKind = new Map<StrawKind, readonly RankedStraw[]>()
    const fitting = (kind: StrawKind): readonly RankedStraw[] => {
      const found = byKind.get(kind) ?? this.#ofKind(kind, standing, occasion, proposal)
      byKind.set(kind, found)
      return found
    }
    const kinds = kindsInstead[proposal.kind]
    const chosen =
      firstOf(kinds, fitting, (one) => one.easyCalving || !occasion.maiden) ??
      firstOf(kinds, fitting, () => true)
    const instead = chosen?.straw === proposal.kind ? undefined : whyInstead(fitting(proposal.kind))
    return {
      straw: chosen === undefined ? undefined : { sire: chosen.sire, straw: chosen.straw },
      warnings: warningsOf(chosen, instead, occasion, this.#book.policy),
      proposal,
      chosen,
      instead: instead === undefined ? undefined : because(instead),
    }
  }

  ranking(standing: Standing, serving: Serving | undefined) {
    const { occasion, proposal } = this.#propose(standing, serving)
    const kinds = new Set([...kindsInstead[proposal.kind], 'sexed'] as const)
    const ranked = [...kinds].flatMap((kind) => this.#ofKind(kind, standing, occasion, proposal))
    return { proposal, ranked }
  }

  #propose(standing: Standing, serving: Serving | undefined) {
    const occasion = occasionToday(standing, serving)
    const heifersEnough = () => this.#counts.heifers(standing.season).enough
    return { occasion, proposal: proposeKind(occasion, { policy: this.#book.policy, heifersEnough }) }
  }

  #ofKind(
    kind: StrawKind,
    standing: Standing,
    occasion: Occasion,
    proposal: KindProposal,
  ): readonly RankedStraw[] {
    const use = this.#counts.use(standing.season)
    const candidates = this.#counts.stock().pools.flatMap((pool) => {
      const left = pool.left - this.#aside.straws(pool.sire, kind)
      if (pool.straw !== kind || left <= 0) return []
      const kin = this.#kinship(standing.animal, pool.sire)
      return {
        sire: sireOf(this.#book, pool.sire),
        straw: kind,
        left,
        used: use.by(pool.sire) + this.#aside.ofSire(pool.sire),
        usedInAll: use.total + this.#aside.total(),
        ...kin,
      }
    })
    return rankStraws(candidates, occasion, this.#book.policy, placeOf(kind, proposal.kind))
  }
}

const placeOf = (kind: StrawKind, proposed: StrawKind): SireReasonCode =>
  kind === proposed ? 'proposed-kind' : kind === 'sexed' ? 'sexed-not-now' : 'other-kind'

/** The best straw of the first kind that has one which may be proposed. */
function firstOf(
  kinds: readonly StrawKind[],
  fitting: (kind: StrawKind) => readonly RankedStraw[],
  suits: (straw: RankedStraw) => boolean,
): RankedStraw | undefined {
  for (const kind of kinds) {
    const found = fitting(kind).find((one) => !one.needsConfirming && suits(one))
    if (found !== undefined) return found
  }
  return undefined
}

/** Why no straw of the proposed kind was taken: none in stock, only close relatives, or none easy calving. */
function whyInstead(ofProposedKind: readonly RankedStraw[]): InsteadReasonCode {
  if (ofProposedKind.length === 0) return 'kind-out'
  return ofProposedKind.every((one) => one.needsConfirming) ? 'kind-related' : 'kind-not-easy'
}

function warningsOf(
  chosen: RankedStraw | undefined,
  instead: InsteadReasonCode | undefined,
  occasion: Occasion,
  policy: Policy,
): readonly Warning[] {
  const holds: Partial<Record<Warning, boolean>> = {
    'no-straw': chosen === undefined,
    'straw-out': chosen !== undefined && instead === 'kind-out',
    'related-6': chosen !== undefined && related(chosen.inbreeding, policy),
    'related-12': instead === 'kind-related',
    'parents-unknown': chosen?.reasons.some(({ code }) => code === 'parents-unknown') === true,
    'not-easy-calving': chosen !== undefined && occasion.maiden && !chosen.easyCalving,
  }
  return warningsInOrder.filter((warning) => holds[warning] === true)
}
