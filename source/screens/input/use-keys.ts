/** Keys and pasted text as they come from the terminal. */
import { useInput, usePaste } from 'ink'
import { type KeyName, splitKeys } from './split.ts'

/** Calls back with keys that arrived together, in order, and with text that was pasted. */
export function useKeys(to: {
  readonly keys: (keys: readonly KeyName[]) => void
  readonly paste: (text: string) => void
}): void {
  useInput((input, key) => {
    const keys = splitKeys(input, key)
    if (keys.length > 0) to.keys(keys)
  })
  usePaste(to.paste)
}
