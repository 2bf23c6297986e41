/** policy.csv: the settings that the farm has changed. */
import { text, word } from '../cells.ts'
import { column, required } from '../columns.ts'

export const policyColumns = [required(column('key', word)), required(column('value', text))]
