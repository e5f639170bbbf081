/** The lists of a construction whose rows may be copied and taken out. */
export const ROW_LISTS = ["parameters", "layers", "drivers", "operations", "fittings", "needs"] as const;
export type RowList = (typeof ROW_LISTS)[number];

/** A row copied or taken out, in the order it was done. */
export interface RowAct {
  readonly act: "copy" | "drop";
  readonly list: RowList;
  readonly at: number;
}

/** Reads `copy:operations:3`; null when it is not one. */
export const readRowAct = (text: string): RowAct | null => {
  const [act, list, at] = text.split(":");
  const known = ROW_LISTS.find((one) => one === list);
  return (act === "copy" || act === "drop") && known && /^\d{1,3}$/.test(at ?? "") ? { act, list: known, at: Number(at) } : null;
};

export const writeRowAct = ({ act, list, at }: RowAct): string => `${act}:${list}:${at}`;
