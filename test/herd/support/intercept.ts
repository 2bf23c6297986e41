import type { Files, OpenFile } from '../../../source/herd/store/files.ts'

export type Call = keyof Files | keyof OpenFile

/** Files that tell of every call before it is done; what is thrown then is what the call gives. */
export function intercept(files: Files, before: (call: Call, path: string) => void): Files {
  const told =
    <A extends [string, ...unknown[]], R>(call: Call, work: (...args: A) => Promise<R>) =>
    async (...args: A): Promise<R> => {
      before(call, args[0])
      return work(...args)
    }
  return {
    realPath: told('realPath', (path: string) => files.realPath(path)),
    read: told('read', (path: string) => files.read(path)),
    readStart: told('readStart', (path: string, length: number) => files.readStart(path, length)),
    stamp: told('stamp', (path: string) => files.stamp(path)),
    mayWrite: told('mayWrite', (path: string) => files.mayWrite(path)),
    create: told('create', async (path: string, mode?: number) =>
      interceptFile(await files.create(path, mode), path, before),
    ),
    rename: told('rename', (from: string, to: string) => files.rename(from, to)),
    link: told('link', (from: string, to: string) => files.link(from, to)),
    remove: told('remove', (path: string) => files.remove(path)),
    names: told('names', (folder: string) => files.names(folder)),
    makeFolder: told('makeFolder', (path: string) => files.makeFolder(path)),
    syncFolder: told('syncFolder', (path: string) => files.syncFolder(path)),
  }
}

function interceptFile(file: OpenFile, path: string, before: (call: Call, path: string) => void): OpenFile {
  const told =
    <A extends unknown[], R>(call: Call, work: (...args: A) => Promise<R>) =>
    async (...args: A): Promise<R> => {
      before(call, path)
      return work(...args)
    }
  return {
    write: told('write', (bytes: Buffer, start: number) => file.write(bytes, start)),
    stamp: told('stamp', () => file.stamp()),
    sync: told('sync', () => file.sync()),
    close: told('close', () => file.close()),
  }
}
