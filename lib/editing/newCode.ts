import type { Staging } from "#lib/staging/staging";
import { rowsOf } from "./rows";

const LONGEST = 40;

/** A short code for a new row out of its name, one that no row of the file has: `Orla Venn` becomes `orla-venn`, the next one `orla-venn-2`. */
export const newCode = (staging: Staging, file: string, name: string): string => {
  const taken = new Set(rowsOf(staging, file).map(({ code }) => code));
  const plain = name.normalize("NFKD").replaceAll(/\p{M}/gu, "").toLowerCase();
  const base =
    plain
      .replaceAll(/[^\p{L}\p{N}]+/gu, "-")
      .replaceAll(/^-+|-+$/g, "")
      .slice(0, LONGEST) || "new";
  for (let count = 1; ; count++) {
    const code = count === 1 ? base : `${base}-${count}`;
    if (!taken.has(code)) return code;
  }
};
