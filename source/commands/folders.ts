/** The user's own folders, as each system has them. */
import { homedir } from 'node:os'
import { join } from 'node:path'

type Variables = Readonly<Record<string, string | undefined>>

/**
 * The folder for what the program keeps for its user.
 * Source: XDG Base Directory Specification 0.8; on Windows the folder for application data.
 *
 * @example dataFolder({ HOME: '/home/mk' }, 'linux') // '/home/mk/.local/share/dawnlist'
 */
export function dataFolder(env: Variables, platform: NodeJS.Platform): string {
  const home = env.HOME ?? env.USERPROFILE ?? homedir()
  const base =
    platform === 'win32'
      ? (env.APPDATA ?? join(home, 'AppData', 'Roaming'))
      : (env.XDG_DATA_HOME ?? join(home, '.local', 'share'))
  return join(base, 'dawnlist')
}
