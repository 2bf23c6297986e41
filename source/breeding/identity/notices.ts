import type { AnimalRecordFact } from '../facts.ts'
import { notice, type Problem } from '../problem.ts'
import { earTagFits } from './ear-tag.ts'
import { electronicFits } from './electronic.ts'
import { readInternationalId } from './international.ts'

/**
 * What is odd about the identities of an animal. The three are kept apart and none is derived from another.
 *
 * @returns notices: ear-tag-odd, electronic-odd, international-odd, international-sex
 * @example identityNotices({ …, officialId: 'UK 123456 600001' })[0]?.code // 'ear-tag-odd'
 */
export function identityNotices(record: AnimalRecordFact): Problem[] {
  const { number, officialId, electronicId, internationalId, sex } = record
  const problems: Problem[] = []
  const found = (code: string, id: string): void => void problems.push(notice(code, '', { id }, number))
  if (officialId !== undefined && earTagFits(officialId) === false) found('ear-tag-odd', officialId)
  if (electronicId !== undefined && !electronicFits(electronicId)) found('electronic-odd', electronicId)
  if (internationalId === undefined) return problems
  const international = readInternationalId(internationalId)
  if (international === undefined) found('international-odd', internationalId)
  else if (international.sex !== sex) found('international-sex', internationalId)
  return problems
}
