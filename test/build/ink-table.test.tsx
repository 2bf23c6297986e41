import { Text } from 'ink'
import Table, { Cell, Header, Skeleton } from 'ink-table'
import { render } from 'ink-testing-library'
import { expect, test } from 'vitest'

test('the converted ink-table draws a table on the same ink and react as the program', () => {
  const columns: Array<'straw' | 'left'> = ['straw', 'left']
  const { lastFrame } = render(
    <Table
      data={[{ straw: 'A1', left: 12 }]}
      columns={columns}
      padding={1}
      header={({ children }) => <Text>{children}</Text>}
      cell={Cell}
      skeleton={Skeleton}
    />,
  )
  expect(lastFrame()).toBe(
    ['┌───────┬──────┐', '│ straw │ left │', '├───────┼──────┤', '│ A1    │ 12   │', '└───────┴──────┘'].join(
      '\n',
    ),
  )
  expect(Header).toBeTypeOf('function')
})
