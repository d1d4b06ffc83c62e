/** Work for the tests of the workbench that tells what it has in stock. */
export const run = (order: string, stock: readonly string[] | undefined): string =>
  `${order} with ${stock?.join(', ') ?? 'nothing'}`;
