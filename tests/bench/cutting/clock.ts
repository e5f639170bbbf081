/** Milliseconds of the clock and of the processor since a call: the processor's are what the work takes on a machine that does nothing else. */
export const started = (): { readonly wall: () => number; readonly cpu: () => number } => {
  const at = performance.now();
  const from = process.cpuUsage();
  return {
    wall: () => performance.now() - at,
    cpu: () => {
      const { user, system } = process.cpuUsage(from);
      return (user + system) / 1000;
    },
  };
};

/** The value below which a part of the values lie; 0 of none. */
export const quantile = (values: readonly number[], part: number): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return rounded(sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? 0);
};

export const rounded = (value: number): number => Math.round(value * 1000) / 1000;
