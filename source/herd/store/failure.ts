import { fault, type Problem } from '../../breeding/problem.ts'
import { Refusal } from '../herd-file.ts'
import { systemCode } from './files.ts'

const codes: Readonly<Record<string, string>> = {
  ENOSPC: 'disk-full',
  EDQUOT: 'disk-full',
  EACCES: 'no-permission',
  EPERM: 'no-permission',
  EROFS: 'disk-read-only',
  EIO: 'disk-error',
  EMFILE: 'too-many-open-files',
  ENFILE: 'too-many-open-files',
  ENOENT: 'path-missing',
  ENOTDIR: 'path-missing',
  EEXIST: 'path-taken',
  EISDIR: 'path-is-folder',
  EBUSY: 'file-held',
  ENAMETOOLONG: 'path-too-long',
}

/**
 * What a failed call of the system means to the user.
 *
 * @param path the file or folder that the call was about
 * @throws the error itself where it is no failure of the system but of this program
 */
export function failure(error: unknown, path: string): Problem {
  if (error instanceof Refusal)
    return error.problems[0] ?? fault('system-failure', path, { reason: error.message })
  const reason = systemCode(error)
  return fault(codes[reason] ?? 'system-failure', path, { reason })
}

/** Does something with a file; a failure of the system becomes a refusal that names the file. */
export async function attempt<T>(path: string, work: () => Promise<T>): Promise<T> {
  try {
    return await work()
  } catch (error) {
    if (error instanceof Refusal) throw error
    throw new Refusal(failure(error, path))
  }
}
