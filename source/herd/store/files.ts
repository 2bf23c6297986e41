import { type BigIntStats, constants } from 'node:fs'
import { access, link, mkdir, open, readdir, realpath, rename, stat, unlink } from 'node:fs/promises'

/** What tells whether a file is still the one that was read. */
export interface Stamp {
  readonly inode: bigint
  readonly size: bigint
  readonly changed: bigint
  /** Permission bits. */
  readonly mode: number
  /** A file of bytes: no folder, no pipe, no device. */
  readonly plain: boolean
}

/** A file open for writing. */
export interface OpenFile {
  /** Writes from `start` on. @returns how many bytes were taken, which may be fewer */
  write(bytes: Buffer, start: number): Promise<number>
  stamp(): Promise<Stamp>
  /** Waits until what was written is on the disk itself. */
  sync(): Promise<void>
  close(): Promise<void>
}

/** All that the store asks of a file system, so that tests can put a failing one in its place. */
export interface Files {
  realPath(path: string): Promise<string>
  read(path: string): Promise<Buffer>
  /** The first bytes of a file, `length` at most. */
  readStart(path: string, length: number): Promise<Buffer>
  stamp(path: string): Promise<Stamp>
  /** Rejects where the file or folder may not be written. */
  mayWrite(path: string): Promise<void>
  /** Makes a new file, with these permission bits where given; rejects with EEXIST where there is one. */
  create(path: string, mode?: number): Promise<OpenFile>
  rename(from: string, to: string): Promise<void>
  /** Gives a file a second name; rejects with EEXIST where the name is taken. */
  link(from: string, to: string): Promise<void>
  remove(path: string): Promise<void>
  names(folder: string): Promise<string[]>
  makeFolder(path: string): Promise<void>
  /** Waits until the names in a folder are on the disk itself. */
  syncFolder(path: string): Promise<void>
}

const readSlice = 1024 * 1024

/** The files of this computer. */
export const diskFiles: Files = {
  realPath: (path) => realpath(path),
  async read(path) {
    const file = await open(path, 'r')
    try {
      const { size } = await file.stat()
      const bytes = Buffer.allocUnsafeSlow(size)
      let length = 0
      while (length < size) {
        const { bytesRead } = await file.read(bytes, length, Math.min(readSlice, size - length), length)
        if (bytesRead === 0) break
        length += bytesRead
      }
      return bytes.subarray(0, length)
    } finally {
      await file.close()
    }
  },
  async readStart(path, length) {
    const file = await open(path, 'r')
    try {
      const { bytesRead, buffer } = await file.read(Buffer.alloc(length), 0, length, 0)
      return buffer.subarray(0, bytesRead)
    } finally {
      await file.close()
    }
  },
  stamp: async (path) => stampOf(await stat(path, { bigint: true })),
  mayWrite: (path) => access(path, constants.W_OK),
  async create(path, mode) {
    const file = await open(path, 'wx')
    if (mode !== undefined) await file.chmod(mode).catch(systemCode)
    return {
      write: async (bytes, start) => (await file.write(bytes, start)).bytesWritten,
      stamp: async () => stampOf(await file.stat({ bigint: true })),
      sync: () => file.sync(),
      close: () => file.close(),
    }
  },
  rename: (from, to) => rename(from, to),
  link: (from, to) => link(from, to),
  remove: (path) => unlink(path),
  names: (folder) => readdir(folder),
  async makeFolder(path) {
    await mkdir(path, { recursive: true })
  },
  async syncFolder(path) {
    const folder = await open(path, 'r')
    try {
      await folder.sync()
    } finally {
      await folder.close()
    }
  },
}

const stampOf = (found: BigIntStats): Stamp => ({
  inode: found.ino,
  size: found.size,
  changed: found.mtimeNs,
  mode: Number(found.mode) & 0o777,
  plain: found.isFile(),
})

/** The code of a failed system call, `ENOSPC`; the error itself where it is none. */
export function systemCode(error: unknown): string {
  if (error instanceof Error && 'code' in error && typeof error.code === 'string') return error.code
  throw error
}
