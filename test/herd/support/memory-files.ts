/**
 * A file system in memory that keeps what a program sees apart from what is on the disk itself. A sync of a file
 * moves its bytes to the disk, a sync of a folder its names. A power cut leaves the disk: of what was never synced
 * each piece is there, half there or not there, in any order.
 */
import { basename, dirname } from 'node:path'
import type { Files, OpenFile, Stamp } from '../../../source/herd/store/files.ts'

interface Inode {
  readonly number: bigint
  bytes: Buffer
  /** Bytes on the disk itself. */
  onDisk: Buffer
  changed: bigint
  mode: number
}

/** Where a name leads, now and on the disk; `pending` holds what it led to since the last sync, oldest first. */
interface Name {
  now: Inode | undefined
  onDisk: Inode | undefined
  pending: (Inode | undefined)[]
}

/** A number from 0 to 1, 1 excluded. */
export type Random = () => number

export const systemError = (code: string): Error => Object.assign(new Error(code), { code })

let clock = 0n

export class MemoryFiles implements Files {
  readonly #folders = new Map<string, Map<string, Name>>()
  #inodes = 0n

  constructor(folders: readonly string[] = ['/farm']) {
    for (const folder of folders) this.#folders.set(folder, new Map())
  }

  /** Puts a file there, on the disk itself. */
  place(path: string, bytes: Buffer, mode = 0o644): void {
    const inode = this.#newInode(mode)
    inode.bytes = bytes
    inode.onDisk = bytes
    this.#folder(path).set(basename(path), { now: inode, onDisk: inode, pending: [] })
  }

  /** The bytes a program sees; undefined where there is no file. */
  peek(path: string): Buffer | undefined {
    return this.#folders.get(dirname(path))?.get(basename(path))?.now?.bytes
  }

  /** Every path a program sees. */
  paths(): string[] {
    return [...this.#folders].flatMap(([folder, names]) =>
      [...names].filter(([, name]) => name.now !== undefined).map(([name]) => `${folder}/${name}`),
    )
  }

  /** What a power cut leaves. */
  afterPowerCut(random: Random): MemoryFiles {
    const left = new MemoryFiles([...this.#folders.keys()])
    const survivors = new Map<Inode, Buffer>()
    for (const [folder, names] of this.#folders) {
      for (const [name, entry] of names) {
        const choices = [entry.onDisk, ...entry.pending]
        const chosen = choices[Math.floor(random() * choices.length)]
        if (chosen === undefined) continue
        const bytes = survivors.get(chosen) ?? survivingBytes(chosen, random)
        survivors.set(chosen, bytes)
        left.place(`${folder}/${name}`, bytes, chosen.mode)
      }
    }
    return left
  }

  /** What killing the program leaves: all that it did, for the system lives on. */
  afterKill(): MemoryFiles {
    return this
  }

  async realPath(path: string): Promise<string> {
    this.#find(path)
    return path
  }
  async read(path: string): Promise<Buffer> {
    return Buffer.from(this.#find(path).bytes)
  }
  async readStart(path: string, length: number): Promise<Buffer> {
    return Buffer.from(this.#find(path).bytes.subarray(0, length))
  }
  async stamp(path: string): Promise<Stamp> {
    return stampOf(this.#find(path))
  }
  async mayWrite(path: string): Promise<void> {
    if (!this.#folders.has(path)) this.#find(path)
  }
  async create(path: string, mode = 0o644): Promise<OpenFile> {
    if (this.#folder(path).get(basename(path))?.now !== undefined) throw systemError('EEXIST')
    const inode = this.#newInode(mode)
    this.#point(path, inode)
    let room = Buffer.alloc(0)
    return {
      async write(bytes, start) {
        const before = inode.bytes.length
        const length = before + bytes.length - start
        // Twice as much as is needed, so that a file of many pieces is not copied for each of them.
        if (room.length < length) room = Buffer.concat([inode.bytes], 2 * length)
        bytes.copy(room, before, start)
        inode.bytes = room.subarray(0, length)
        inode.changed = ++clock
        return bytes.length - start
      },
      stamp: async () => stampOf(inode),
      async sync() {
        inode.onDisk = inode.bytes
      },
      close: async () => undefined,
    }
  }
  async rename(from: string, to: string): Promise<void> {
    const inode = this.#find(from)
    this.#point(from, undefined)
    this.#point(to, inode)
  }
  async link(from: string, to: string): Promise<void> {
    if (this.#folder(to).get(basename(to))?.now !== undefined) throw systemError('EEXIST')
    this.#point(to, this.#find(from))
  }
  async remove(path: string): Promise<void> {
    this.#find(path)
    this.#point(path, undefined)
  }
  async names(folder: string): Promise<string[]> {
    const names = this.#folders.get(folder)
    if (names === undefined) throw systemError('ENOENT')
    return [...names].filter(([, name]) => name.now !== undefined).map(([name]) => name)
  }
  async makeFolder(path: string): Promise<void> {
    if (!this.#folders.has(path)) this.#folders.set(path, new Map())
  }
  async syncFolder(path: string): Promise<void> {
    for (const name of this.#folders.get(path)?.values() ?? []) {
      name.onDisk = name.now
      name.pending = []
    }
  }

  #newInode(mode: number): Inode {
    this.#inodes += 1n
    return { number: this.#inodes, bytes: Buffer.alloc(0), onDisk: Buffer.alloc(0), changed: ++clock, mode }
  }

  #folder(path: string): Map<string, Name> {
    const folder = this.#folders.get(dirname(path))
    if (folder === undefined) throw systemError('ENOENT')
    return folder
  }

  #find(path: string): Inode {
    const inode = this.#folders.get(dirname(path))?.get(basename(path))?.now
    if (inode === undefined) throw systemError(this.#folders.has(path) ? 'EISDIR' : 'ENOENT')
    return inode
  }

  #point(path: string, inode: Inode | undefined): void {
    const folder = this.#folder(path)
    const name = folder.get(basename(path)) ?? { now: undefined, onDisk: undefined, pending: [] }
    name.now = inode
    name.pending.push(inode)
    folder.set(basename(path), name)
  }
}

const stampOf = ({ number, bytes, changed, mode }: Inode): Stamp => ({
  inode: number,
  size: BigInt(bytes.length),
  changed,
  mode,
  plain: true,
})

/** Bytes never synced come through whole, not at all, cut short, or as zeros from some place on. */
function survivingBytes(inode: Inode, random: Random): Buffer {
  if (inode.bytes.equals(inode.onDisk)) return inode.onDisk
  const kind = Math.floor(random() * 4)
  if (kind === 0) return inode.onDisk
  if (kind === 1) return inode.bytes
  const cut = Math.floor(random() * inode.bytes.length)
  if (kind === 2) return inode.bytes.subarray(0, cut)
  return Buffer.concat([inode.bytes.subarray(0, cut), Buffer.alloc(inode.bytes.length - cut)])
}
