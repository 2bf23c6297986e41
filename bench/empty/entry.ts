// Starts like the program itself, then draws next to nothing.
import module from 'node:module'

module.enableCompileCache?.()
await import('./screen.tsx')
