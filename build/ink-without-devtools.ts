/**
 * With DEV=true in the environment Ink looks for developer tools that the bundle does not carry. This plugin takes the
 * question out, and with it the code that would load them.
 */
export const inkWithoutDevtools = {
  name: 'ink-without-devtools',
  transform(code: string, id: string): { code: string; map: null } | null {
    if (!/[\\/]node_modules[\\/]ink[\\/]build[\\/](?:ink|reconciler)\.js$/.test(id)) return null
    return { code: code.replaceAll(`process.env['DEV'] === 'true'`, 'false'), map: null }
  },
}
