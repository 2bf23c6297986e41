/**
 * Before the first frame: what is typed while the program starts must not be echoed into it, nor may what was echoed
 * before shift it. So the terminal hands keys on as they are from now on, and the frame begins at the left.
 *
 * @param reader lines are appended for a screen reader, so that nothing needs to begin at the left
 */
export function takeTerminal(stdin: NodeJS.ReadStream, stdout: NodeJS.WriteStream, reader = false): void {
  stdin.setRawMode(true)
  if (!reader) stdout.write('\r')
}
