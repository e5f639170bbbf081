/** Keeps the values computed last, the least recently used going first. */
export const keepFew = <Value>(most: number) => {
  const kept = new Map<string, Value>();
  return async (key: string, compute: () => Promise<Value>): Promise<Value> => {
    const known = kept.get(key);
    const value = known ?? (await compute());
    kept.delete(key);
    kept.set(key, value);
    const oldest = kept.keys().next().value;
    if (kept.size > most && oldest !== undefined) kept.delete(oldest);
    return value;
  };
};
