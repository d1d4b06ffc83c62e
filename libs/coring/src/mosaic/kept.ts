/** Keeps what was made for an object and a key for as long as the object lives: divisions are compared over the same cavities. */
export function keeper<T>(): (owner: object, key: string, make: () => T) => T {
  const known = new WeakMap<object, Map<string, T>>();
  return (owner, key, make) => {
    const byKey = known.get(owner) ?? new Map<string, T>();
    const value = byKey.get(key) ?? make();
    known.set(owner, byKey.set(key, value));
    return value;
  };
}
