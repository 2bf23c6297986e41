/** What a command needs to open the screen; imported only then, so that no other command loads Ink. */
export { openScreen } from './open.tsx'
export { Session } from './session.ts'
export { asciiOnly, wantsColours, wantsReader } from './terminal.ts'
export { themeFor } from './theme.ts'
export { openFirstScreen } from './welcome/welcome.tsx'
