const asks = '"function"!=typeof fetch?Promise.resolve()'

/**
 * Yoga, which lays Ink's screens out, carries its machine code as text and fetches it as if from a network; for that
 * Node first loads all of its network client. This plugin makes Yoga read the text where it stands.
 *
 * @throws Error where Yoga does not ask in the way known: the plugin has to be looked at again
 */
export const yogaWithoutFetch = {
  name: 'yoga-without-fetch',
  transform(code: string, id: string): { code: string; map: null } | null {
    if (!/[\\/]node_modules[\\/]yoga-layout[\\/]dist[\\/]binaries[\\/]/.test(id)) return null
    if (!code.includes(asks)) throw new Error(`yoga-layout has changed: ${id} does not hold ${asks}`)
    return { code: code.replace(asks, 'true?Promise.resolve()'), map: null }
  },
}
