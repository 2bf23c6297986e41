/** `dawnlist completion SHELL`: a script for a shell, made from the table of commands. */
import { fault } from '../breeding/problem.ts'
import type { Command, Run } from './command.ts'
import { bashScript } from './completion/bash.ts'
import { fishScript } from './completion/fish.ts'
import { type Shell, shells } from './completion/shells.ts'
import { zshScript } from './completion/zsh.ts'

const scripts: Readonly<Record<Shell, (commands: readonly Command[]) => string>> = {
  bash: bashScript,
  zsh: zshScript,
  fish: fishScript,
}

export const run: Run = async (given, shell, commands) => {
  const asked = shells.find((name) => name === given.args.SHELL)
  if (asked === undefined) {
    shell.tell([fault('completion-shell', '', { shell: given.args.SHELL ?? '', shells: shells.join(', ') })])
    return 2
  }
  shell.print(scripts[asked](commands))
  return 0
}
