/**
 * ink-table is CommonJS and requires ink, which is an ES module with a top-level await: Node refuses that.
 * This plugin, shared by the bundler and the test runner, turns its three requires into imports.
 */
export const inkTableEsm = {
  name: 'ink-table-esm',
  transform(code: string, id: string): { code: string; map: null } | null {
    if (!/[\\/]ink-table[\\/]dist[\\/]index\.js/.test(id)) return null
    const body = code
      .replace('require("react")', 'react')
      .replace('require("ink")', 'ink')
      .replace('require("object-hash")', 'objectHash')
    if (/\brequire\(/.test(body)) throw new Error(`${id} requires more than react, ink and object-hash`)
    const imports = `import react from 'react'; import * as ink from 'ink'; import objectHash from 'object-hash';`
    const exported = `export { Table as default, Header, Cell, Skeleton };`
    return { code: `${imports}\nconst exports = {};\n${body}\n${exported}\n`, map: null }
  },
}
