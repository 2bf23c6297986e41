/** What a release must find, and how the version is set. Data in, data out. */

interface Before {
  readonly version: string
  /** Text of CHANGELOG.md. */
  readonly changes: string
  /** What `git status --porcelain` prints: empty where all is committed. */
  readonly status: string
  readonly branch: string
  readonly tags: readonly string[]
}

/**
 * What stands against a release, each in a sentence that says what to do; none where it may be made.
 *
 * @example obstacles({ ...good, version: '1.0' }) // ['"1.0" is no version. Write it as 1.0.1.']
 */
export function obstacles({ version, changes, status, branch, tags }: Before): readonly string[] {
  if (!/^(?:0|[1-9]\d*)(?:\.(?:0|[1-9]\d*)){2}$/.test(version))
    return [`"${version}" is no version. Write it as 1.0.1.`]
  const heading = new RegExp(`^## \\[${version.replaceAll('.', '\\.')}\\] - \\d{4}-\\d{2}-\\d{2}$`, 'm')
  return [
    ...(branch === 'main' ? [] : [`A release is made on main, and this is "${branch}".`]),
    ...(status === '' ? [] : ['Not everything is committed. Commit it, or put it aside.']),
    ...(heading.test(changes)
      ? []
      : [`CHANGELOG.md has no heading "## [${version}] - YYYY-MM-DD". Write one.`]),
    ...(tags.includes(`v${version}`) ? [`v${version} is tagged already. Take the next version.`] : []),
  ]
}

/**
 * The text of package.json or package-lock.json with another version of the program.
 *
 * @example withVersion('{"name":"dawnlist",\n  "version": "1.0.0"}', '1.0.1')
 */
export const withVersion = (text: string, version: string): string =>
  text.replace(/("name": "dawnlist",\s+"version": ")[^"]+"/g, `$1${version}"`)
