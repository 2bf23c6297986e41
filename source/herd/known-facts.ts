import type { AnimalRecordFact, CorrectionFact, Fact } from '../breeding/facts.ts'
import { voidedBy } from '../breeding/voided.ts'

/** What new facts are held against: every id, and the animals with their numbers. */
export class KnownFacts {
  readonly #before: KnownFacts | undefined
  readonly #byId = new Map<string, Fact>()
  readonly #numbers = new Map<string, string>()
  readonly #records: AnimalRecordFact[] = []
  readonly #corrections: CorrectionFact[] = []
  readonly #archived = new Set<string>()

  /** @param before what is known already; stays as it is */
  constructor(before?: KnownFacts) {
    this.#before = before
  }

  /** Knows this fact too, whose shape may not be judged yet. Of two with one id the first stays. */
  add(fact: Fact): void {
    if (this.find(fact.id) === undefined) this.#byId.set(fact.id, fact)
    if (fact.kind === 'correction') this.#corrections.push(fact)
    if (fact.kind === 'archive' && Array.isArray(fact.took))
      for (const id of fact.took) this.#archived.add(id)
    if (fact.kind !== 'animal') return
    this.#records.push(fact)
    this.#numbers.set(fact.about, fact.number)
  }

  /** The fact with this id. */
  find(id: string): Fact | undefined {
    return this.#before?.find(id) ?? this.#byId.get(id)
  }

  /** Whether a fact with this id is known: it is here, or went to an archive. */
  has(id: string): boolean {
    return this.find(id) !== undefined || this.#archived.has(id) || this.#before?.has(id) === true
  }

  /** The number of an animal by her latest record; undefined where there is no such animal. */
  numberOf(animal: string): string | undefined {
    return this.#numbers.get(animal) ?? this.#before?.numberOf(animal)
  }

  /** The records that give an animal a number which another animal had before. A voided record gives none. */
  sharedNumbers(): AnimalRecordFact[] {
    const voided = voidedBy(this.#allCorrections())
    const latest = new Map<string, AnimalRecordFact>()
    for (const record of this.#allRecords()) {
      if (voided.has(record.id)) continue
      latest.delete(record.about)
      latest.set(record.about, record)
    }
    const taken = new Set<string>()
    return [...latest.values()].filter(({ number }) => taken.size === taken.add(number).size)
  }

  #allRecords(): AnimalRecordFact[] {
    return this.#before === undefined ? this.#records : [...this.#before.#allRecords(), ...this.#records]
  }

  #allCorrections(): CorrectionFact[] {
    return this.#before === undefined
      ? this.#corrections
      : [...this.#before.#allCorrections(), ...this.#corrections]
  }
}
