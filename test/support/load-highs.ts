import loader, { type Highs } from 'highs';

/**
 * The package's types describe a CommonJS module, its code is loaded as an ES module whose default export is the loader.
 */
export const loadHighs = loader as unknown as () => Promise<Highs>;
