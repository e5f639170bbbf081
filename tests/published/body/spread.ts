import type { Surveyed } from "./survey";
import type { Taking } from "./takings";

const SHOWN = ["hours", "net", "foundation"] as const;
const HEADINGS = { hours: "hours", net: "net, m", foundation: "coutil and the like, m" };

export const sumOf = (takings: readonly Taking[], kind: string): number => takings.reduce((sum, taking) => sum + (taking[kind] ?? 0), 0);

/** Median and the middle nine tenths, in a line for each construction: for reading, never asserted. */
export const spreadTable = (surveys: readonly Surveyed[]): string => {
  const head = ["construction".padEnd(18), ...SHOWN.map((kind) => `${HEADINGS[kind]}: median (5th to 95th)`.padEnd(40))].join("");
  const lines = surveys.map(({ construction, bodies }) =>
    [construction.padEnd(18), ...SHOWN.map((kind) => spread(bodies.flatMap((taking) => taking[kind] ?? [])).padEnd(40))].join("").trimEnd(),
  );
  return [head.trimEnd(), ...lines].join("\n");
};

const spread = (values: readonly number[]): string => {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))]!.toFixed(2);
  return sorted.length === 0 ? "-" : `${at(0.5)} (${at(0.05)} to ${at(0.95)})`;
};
