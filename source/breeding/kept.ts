/**
 * Keeps what was made for a key, so that it is made once: for what is asked again and again. When many are kept all are
 * let go and made anew.
 *
 * @param most how many are kept, 1 or more
 * @returns what was made for a key, by the function given with it where it is not kept
 * @example const double = keeping<number, number>(200); double(4, () => 8) // 8
 */
export function keeping<K, V>(most: number): (key: K, make: () => V) => V {
  const kept = new Map<K, V>()
  return (key, make) => {
    const found = kept.get(key)
    if (found !== undefined) return found
    const made = make()
    if (kept.size >= most) kept.clear()
    kept.set(key, made)
    return made
  }
}
