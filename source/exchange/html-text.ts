/** Text that stands in a page. */
import { safeText } from '../words/safe.ts'

/**
 * A text as HTML: nothing in it is markup, and nothing acts on a reader unseen.
 *
 * @example htmlText('a < b') // 'a &lt; b'
 */
export const htmlText = (text: string): string =>
  safeText(text)
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
