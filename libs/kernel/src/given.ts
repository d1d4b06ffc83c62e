/** Members that are not undefined; an absent option stays absent. */
type Given<T> = { readonly [K in keyof T]?: Exclude<T[K], undefined> };
const isGiven = <T extends object>(members: object, all: T): members is Given<T> =>
  Object.keys(members).every((key) => key in all);

export function given<T extends object>(members: T): Given<T> {
  const present: object = Object.fromEntries(
    Object.entries(members).filter(([, value]) => value !== undefined),
  );
  return isGiven(present, members) ? present : {};
}
