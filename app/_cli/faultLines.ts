import { type Fault, faultText } from "#lib/exchange/fault";

/** Every fault on a line of its own, and how many there are. */
export const faultLines = (faults: readonly Fault[]): string =>
  [...faults.map(faultText), `${faults.length} ${faults.length === 1 ? "fault" : "faults"}. Nothing was written.`].join("\n");
