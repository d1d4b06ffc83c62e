import { targets, type Target } from './supplier-sheet.js';

/** What suppliers write over a column, in the two languages of the desk. Common practice, no published source. */
const headings: Readonly<Record<Target, RegExp>> = {
  sku: /\b(sku|number|no\.?|article|item|code|part)\b|رقم/i,
  price: /\b(price|net|list|cost)\b|سعر/i,
  name: /\b(name|description|title)\b|اسم|وصف/i,
  supplier: /\b(supplier|vendor)\b|مورد/i,
  stock: /\b(stock|on hand|available)\b|مخزون/i,
  massKg: /\b(mass|weight)\b|كتلة|وزن/i,
};

/** A first proposal of what each column means, each meaning once; the person at the desk decides. */
export function guessed(heads: readonly string[]): readonly (Target | undefined)[] {
  const taken = new Set<Target>();
  return heads.map((head) => {
    const found = targets.find((one) => !taken.has(one) && headings[one].test(head));
    if (found !== undefined) taken.add(found);
    return found;
  });
}
