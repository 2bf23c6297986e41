/** Sentences about the herd file: what is wrong, and what to do. The path stands before each sentence. */
import { counted } from './counted.ts'
import { safeText } from './safe.ts'
import type { Sentences, Values } from './sentences.ts'

const text = (values: Values, name: string): string => safeText(String(values[name] ?? ''))

/** A path as it is typed in a command: in quotes where a shell would take it for several words. */
const typed = (values: Values, name: string): string => {
  const path = text(values, name)
  return /^[\w./:\\~-]+$/.test(path) ? path : `"${path}"`
}

/** What the system refused, as half a sentence. */
const reasons: Readonly<Record<string, string>> = {
  'disk-full': 'the disk is full',
  'no-permission': 'this user may not write there',
  'disk-read-only': 'the disk can only be read',
  'disk-error': 'the disk does not work properly',
  'too-many-open-files': 'too many files are open on this computer',
  'path-missing': 'the folder is not there',
  'path-taken': 'a file of that name is there already',
  'file-held': 'another program holds the file',
  'herd-damaged': 'it is damaged',
  'herd-empty': 'it is empty',
  'herd-newer': 'a newer dawnlist wrote it',
  'herd-edited': 'it was changed by hand',
  'fact-differs': 'it says something else about a fact that both have',
}

const reason = (values: Values): string => {
  const code = String(values.reason ?? '')
  return Object.hasOwn(reasons, code) ? (reasons[code] ?? '') : safeText(code)
}

/** Opening a file. */
export const openingSentences: Sentences = {
  'herd-missing':
    'there is no such file. Check the name; a new herd is made with: dawnlist new {path}. If the file was lost, day copies may be in the folder backups beside it: dawnlist restore {path}.',
  'herd-empty': 'the file is empty: whatever it held is gone. Bring it back with: dawnlist restore {path}.',
  'herd-no-file': 'this is a folder or a device, not a file. Name the herd file itself.',
  'herd-too-large':
    'the file has {megabytes} MB, and a herd file has {limit} MB at most. Is it the right file?',
  'herd-damaged': (values) =>
    `the file is damaged${Number(values.line) > 0 ? ` at line ${text(values, 'line')}` : ''} and cannot be read. Nothing was written. Bring it back with: dawnlist restore ${text(values, 'path')}.`,
  'herd-other-json': 'this is a JSON file, but no herd file. Name the herd file itself.',
  'header-field':
    'the first line is damaged: "{field}" is missing or wrong. Undo the change, or bring the file back with: dawnlist restore {path}.',
  'herd-newer':
    'a newer dawnlist wrote this file (format {found}; this one knows up to {known}). Nothing was written. Install the newer one here too.',
  'herd-format-unknown':
    'the file has format {found}, which this dawnlist (format {known}) cannot bring up to date.',
  'herd-invalid':
    'the file was changed by something else than dawnlist, and {count} things in it are wrong (below). Nothing was written. Correct them, or bring the file back with: dawnlist restore {path}.',
  'herd-edited':
    'the file was changed by something else than dawnlist, so it is only shown. Look it through; if it is right: dawnlist check {path} --accept-edits.',
  'herd-unedited': 'the file is as dawnlist wrote it: there are no edits to accept.',
  'herd-read-only': (values) =>
    `the herd is only shown, nothing can be recorded: ${reason(values)}. Ask whoever looks after this computer for the right to write to the file and its folder.`,
  'backups-there': (values) =>
    `${counted(values.count ?? '', 'day copy is', 'day copies are')} here of ${text(values, 'file')}, the newest of ${text(values, 'newest')}. To bring the herd back: dawnlist restore ${typed(values, 'file')}.`,
  'no-backup':
    'there is no whole day copy of {file} here. Look for a copy on a stick or another computer and name it with --from.',
  'herd-large':
    'the herd has {facts} facts; up to {limit} everything stays quick. Seasons older than two years are closed with: dawnlist archive {path}.',
  'restore-needless':
    'the file is whole, there is nothing to bring back. To put a copy in its place all the same, name the copy with --from.',
}

/** Saving. */
export const savingSentences: Sentences = {
  'herd-vanished':
    'the file is not there any more: moved, renamed or deleted. It is not made again by itself. Put it back, or save a copy under its name.',
  'herd-replaced':
    'another herd stands in the place of this one ({found} instead of {known}). Nothing was written. Put the right file back, or save a copy elsewhere.',
  'herd-older':
    'an older copy of this herd stands in its place (save {found}; this program knows save {known}). Nothing was written. To add what it lacks and go on, say yes here; with a command: --merge-older.',
  'herd-locked':
    'another program has been saving this herd for {seconds} seconds. Close the other dawnlist if it hangs; this one tries again.',
  'lock-failed':
    'two programs cannot be kept from saving at once here ({reason}). Nothing was written. Move the herd to a folder of this computer.',
  'herd-full': 'with this the file would have more than {limit} MB. Nothing was written.',
  'fact-differs':
    'the file says something else about one fact ({kind} of {date}, {id}) than this program, because it was edited. Nothing was written. Open the herd again; save a copy first if anything is not saved.',
  'write-short':
    'the disk took only part of the file, it is nearly full. The old file is untouched. Make room; it is tried again.',
  'disk-full': 'the disk is full. Nothing is lost so far: make room, it is tried again.',
  'no-permission': 'this user may not read or write here. Ask whoever looks after this computer.',
  'disk-read-only': 'this disk can only be read. Is a switch on the stick locked? Save a copy elsewhere.',
  'disk-error':
    'the disk reports an error ({reason}). Save a copy to another disk now, and have this one looked at.',
  'too-many-open-files': 'too many files are open on this computer. Close other programs; it is tried again.',
  'path-missing': 'there is no such file or folder.',
  'path-taken': 'a file of that name is there already, and it is not written over. Take another name.',
  'path-is-folder': 'this is a folder. Name a file.',
  'path-too-long': 'the name is too long for this disk.',
  'file-held': 'another program holds the file, a virus scanner or a backup perhaps. It is tried again.',
  'system-failure': 'the system refused ({reason}).',
  'backup-failed': (values) =>
    `the day copy could not be made: ${reason(values)}. The herd itself is saved. Put this right soon.`,
  'folder-sync-unsupported':
    'this kind of disk cannot confirm that the name of a file is safe against a power cut. The herd is saved; a disk of this computer is safer.',
  'copy-with-more': (values) =>
    `this copy of the herd holds ${counted(values.facts ?? '', 'fact')} that ${text(values, 'file')} lacks; a program that keeps two computers alike may have left it. To add them: dawnlist check ${typed(values, 'file')} --merge ${typed(values, 'path')}.`,
  'copy-unclear': (values) =>
    `this copy of the herd cannot be added to ${text(values, 'file')}: ${reason(values)}. Look at it with: dawnlist check ${typed(values, 'path')}.`,
}

/** A fact that is wrong. */
export const factSentences: Sentences = {
  'fact-no-object': 'this is {found}, where a fact should be. Remove it.',
  'kind-unknown': 'there is no kind of fact "{kind}". Correct the word, or remove the fact.',
  'field-missing': '"{field}" is missing. Add it.',
  'field-type': '"{field}" is "{found}", which is not of the right type ({expected}). Correct it.',
  'field-choice': '"{field}" is "{found}", and can be: {choices}. Correct it.',
  'field-empty': '"{field}" is empty. Fill it in.',
  'field-too-small': '"{field}" is {found}, and at least {limit} is possible. Correct it.',
  'field-too-large': '"{field}" is {found}, and at most {limit} is possible. Correct it.',
  'field-too-long': '"{field}" is longer than {limit} characters. Shorten it.',
  'field-too-deep': 'this is nested more than {limit} levels deep. Remove it.',
  'field-step': '"{field}" is {found}, and goes in steps of {step}. Correct it.',
  'field-number': '{found} is no number that can be kept. Correct it.',
  'field-id': '"{field}" is "{found}": an id has 1 to 100 letters, digits, and . : _ - after the first.',
  'field-date': '"{field}" is "{found}", which is no date of the calendar. Write it as 2026-05-28.',
  'field-time': '"{field}" is "{found}", which is no time of day. Write it as 05:30.',
  'field-time-of-day': '"{field}" is "{found}". Write a time as 05:30, or morning or evening.',
  'field-instant': '"{field}" is "{found}". Write the instant in UTC, as 2026-05-28T04:15:09.120Z.',
  'field-zone':
    '"{field}" is "{found}", a time zone that this computer does not know. Write it like Europe/Dublin.',
  'field-about-animal': '"{field}" is "{found}", where the id of an animal should be.',
  'field-calf-sex': '"{field}" is "{found}". Give a letter a calf, F or M (twins: FM).',
  'field-calf-sex-count': '"{field}" is "{found}", which is not one letter for each calf born.',
  'field-more-dead-than-born': '{found} calves dead are more than were born. Correct one of the two.',
  'field-milkings-order': 'the two milkings are not in order. Put the earlier one first.',
  'id-twice': 'the fact {id} is there twice. Remove one.',
  'id-other-content': 'two different facts have the id {id}. Give one of them another id.',
  'animal-unknown':
    'this {kind} is about an animal ({id}) that is not in the file. Correct the id, or add the animal.',
  'correction-unknown': 'this correction names a fact ({id}) that is not in the file. Correct the id.',
  'number-taken': 'another animal has the number {number} already. Give this one another number.',
  'number-shared': 'two animals have the number {number}. Give one of them another number.',
}

/** Every code of the herd file. */
export const herdSentences: Sentences = { ...openingSentences, ...savingSentences, ...factSentences }
