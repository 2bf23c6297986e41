import { cautionsPage } from './cautions-page.ts'
import { commandsPage } from './commands-page.ts'
import { keysPage } from './keys-page.ts'
import { listSchema, listSchemaPath } from './list-schema.ts'
import { manPage } from './man-page.ts'
import { messagesPage } from './messages-page.ts'
import { reasonsPage } from './reasons-page.ts'
import { settingsPage } from './settings-page.ts'
import { versionsPage } from './versions-page.ts'

/** Every page that is made, and how. */
export const pages: ReadonlyArray<readonly [path: string, make: () => string]> = [
  ['docs/cautions.md', cautionsPage],
  ['docs/commands.md', commandsPage],
  ['docs/keys.md', keysPage],
  ['docs/messages.md', messagesPage],
  ['docs/reasons.md', reasonsPage],
  [listSchemaPath, listSchema],
  ['docs/settings.md', settingsPage],
  ['docs/versions.md', versionsPage],
  ['man/dawnlist.1', manPage],
]
