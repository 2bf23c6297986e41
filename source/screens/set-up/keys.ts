/** Keys of this screen besides moving about, help and leaving. */
import type { Binding } from '../binding.ts'

export const setUpKeys: readonly Binding[] = []
