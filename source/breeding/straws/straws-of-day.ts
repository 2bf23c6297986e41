/** The straws of one day, and the choices among them; what they rest on is counted when it is first asked for. */
import type { HerdBook } from '../book.ts'
import type { Day } from '../day.ts'
import type { StrawKind } from '../facts.ts'
import type { Kinship } from '../kinship/herd-kinship.ts'
import type { Policy } from '../policy.ts'
import { strawWarnings, type Warning } from '../sections.ts'
import type { Serving } from '../session.ts'
import { sireOf } from '../sire.ts'
import type { Standing } from '../standing.ts'
import { type StrawCounts, strawCounts } from './counts.ts'
import { type KindProposal, proposeKind } from './kind.ts'
import { type Occasion, occasionToday } from './occasion.ts'
import {
  bestFirst,
  type Candidate,
  needsConfirming,
  placeReason,
  type RankedStraw,
  rankedStraw,
  related,
} from './rank.ts'
import { because, type InsteadReasonCode, type SireReasonCode, type StrawReason } from './reason.ts'
import type { SetAside } from './set-aside.ts'

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

/** Where the proposed kind is out, these are proposed; a sexed straw only where every condition holds. */
const kindsInstead: Readonly<Record<StrawKind, readonly StrawKind[]>> = {
  sexed: ['sexed', 'conventional', 'beef'],
  conventional: ['conventional', 'beef'],
  beef: ['beef', 'conventional'],
}

export class StrawsOfDay {
  readonly #book: HerdBook
  readonly #counts: StrawCounts
  readonly #kinship: Kinship
  readonly #aside: SetAside

  constructor(book: HerdBook, today: Day, kinship: Kinship, aside: SetAside) {
    this.#book = book
    this.#counts = strawCounts(book, today)
    this.#kinship = kinship
    this.#aside = aside
  }

  choose(standing: Standing, serving: Serving): StrawChoice {
    const { policy } = this.#book
    const { occasion, proposal } = this.#propose(standing, serving)
    const known = new Map<StrawKind, readonly Candidate[]>()
    const ofKind = (kind: StrawKind): readonly Candidate[] => {
      const found = known.get(kind) ?? this.#ofKind(kind, standing, occasion)
      known.set(kind, found)
      return found
    }
    const best = bestOf(kindsInstead[proposal.kind], ofKind, occasion, policy)
    const chosen = best && this.#placed(ofKind(best.straw), best, occasion, proposal)
    const instead = best?.straw === proposal.kind ? undefined : whyInstead(ofKind(proposal.kind), policy)
    return {
      straw: chosen && { sire: chosen.sire, straw: chosen.straw },
      warnings: warningsOf(chosen, instead, occasion, policy),
      proposal,
      chosen,
      instead: instead && because(instead),
    }
  }

  ranking(
    standing: Standing,
    serving: Serving | undefined,
    aside: SetAside,
  ): { readonly proposal: KindProposal; readonly ranked: readonly RankedStraw[] } {
    const { occasion, proposal } = this.#propose(standing, serving)
    const kinds = new Set<StrawKind>([...kindsInstead[proposal.kind], 'sexed'])
    const ranked = [...kinds].flatMap((kind) => {
      const ordered = this.#ofKind(kind, standing, occasion, aside)
      return ordered.map((one) => this.#placed(ordered, one, occasion, proposal))
    })
    return { proposal, ranked }
  }

  #placed(
    ordered: readonly Candidate[],
    one: Candidate,
    occasion: Occasion,
    { kind }: KindProposal,
  ): RankedStraw {
    const { policy } = this.#book
    const place = placeReason(ordered, ordered.indexOf(one), occasion, policy)
    return rankedStraw(one, occasion, policy, [because(standingOfKind(one.straw, kind)), place])
  }

  #propose(
    standing: Standing,
    serving: Serving | undefined,
  ): { readonly occasion: Occasion; readonly proposal: KindProposal } {
    const occasion = occasionToday(standing, serving)
    const heifersEnough = () => this.#counts.heifers(standing.season).enough
    return { occasion, proposal: proposeKind(occasion, { policy: this.#book.policy, heifersEnough }) }
  }

  /** The straws of a kind that are left, best first. */
  #ofKind(
    kind: StrawKind,
    standing: Standing,
    occasion: Occasion,
    aside: SetAside = this.#aside,
  ): readonly Candidate[] {
    const use = this.#counts.use(standing.season)
    const candidates: Candidate[] = []
    for (const { sire, straw, left: inStock } of this.#counts.stock().pools) {
      if (straw !== kind) continue
      const left = inStock - aside.straws(sire, kind)
      if (left <= 0) continue
      const { inbreeding, generations } = this.#kinship(standing.animal, sire)
      candidates.push({
        sire: sireOf(this.#book, sire),
        straw,
        left,
        used: use.by(sire) + aside.ofSire(sire),
        usedInAll: use.total + aside.total(),
        inbreeding,
        generations,
      })
    }
    return bestFirst(candidates, occasion, this.#book.policy)
  }
}

const standingOfKind = (kind: StrawKind, proposed: StrawKind): SireReasonCode =>
  kind === proposed ? 'proposed-kind' : kind === 'sexed' ? 'sexed-not-now' : 'other-kind'

/**
 * The best straw of the first kind that has one which need not be confirmed; for a maiden of the first kind with an
 * easy-calving sire, and only where there is none of any kind another.
 */
function bestOf(
  kinds: readonly StrawKind[],
  ofKind: (kind: StrawKind) => readonly Candidate[],
  { maiden }: Occasion,
  policy: Policy,
): Candidate | undefined {
  for (const mustBeEasy of maiden ? [true, false] : [false]) {
    for (const kind of kinds) {
      const found = ofKind(kind).find(
        (one) => !needsConfirming(one.inbreeding, policy) && (!mustBeEasy || one.sire.easyCalving === true),
      )
      if (found !== undefined) return found
    }
  }
  return undefined
}

/** Why no straw of the proposed kind was taken: none in stock, only close relatives, or none easy calving. */
function whyInstead(ofProposedKind: readonly Candidate[], policy: Policy): InsteadReasonCode {
  if (ofProposedKind.length === 0) return 'kind-out'
  const close = ofProposedKind.every((one) => needsConfirming(one.inbreeding, policy))
  return close ? 'kind-related' : 'kind-not-easy'
}

function warningsOf(
  chosen: RankedStraw | undefined,
  instead: InsteadReasonCode | undefined,
  occasion: Occasion,
  policy: Policy,
): readonly Warning[] {
  const holds: Record<(typeof strawWarnings)[number], boolean> = {
    'no-straw': chosen === undefined,
    'straw-out': chosen !== undefined && instead === 'kind-out',
    'related-6': chosen !== undefined && related(chosen.inbreeding, policy),
    'related-12': instead === 'kind-related',
    'parents-unknown': chosen?.reasons.some(({ code }) => code === 'parents-unknown') === true,
    'not-easy-calving': chosen !== undefined && occasion.maiden && !chosen.easyCalving,
  }
  return strawWarnings.filter((warning) => holds[warning])
}
