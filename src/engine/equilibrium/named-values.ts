/** The names of some values in their order, each with its place. */
export type Names = ReadonlyMap<string, number>;

export const namesOf = (entries: readonly { id: string }[]): Names =>
  new Map(entries.map(({ id }, place) => [id, place]));

/**
 * A number for each name, read like a map. Names are those of a compiled system and are shared by all its results; most results are asked
 * for one or two numbers, and only one that is gone through becomes a map of its own.
 */
export class NamedValues implements ReadonlyMap<string, number> {
  readonly names: Names;
  private readonly inOrder: readonly number[];

  constructor(names: Names, inOrder: readonly number[]) {
    this.names = names;
    this.inOrder = inOrder;
  }

  get(name: string): number | undefined {
    const place = this.names.get(name);
    return place === undefined ? undefined : this.inOrder[place];
  }

  has(name: string): boolean {
    return this.names.has(name);
  }

  get size(): number {
    return this.names.size;
  }

  keys(): MapIterator<string> {
    return this.names.keys();
  }

  values(): MapIterator<number> {
    return this.whole().values();
  }

  entries(): MapIterator<[string, number]> {
    return this.whole().entries();
  }

  [Symbol.iterator](): MapIterator<[string, number]> {
    return this.entries();
  }

  forEach(tell: (value: number, name: string, map: ReadonlyMap<string, number>) => void): void {
    for (const [name, place] of this.names) tell(this.inOrder[place], name, this);
  }

  private whole(): ReadonlyMap<string, number> {
    const map = new Map<string, number>();
    for (const [name, place] of this.names) map.set(name, this.inOrder[place]);
    return map;
  }
}
