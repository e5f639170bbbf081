import type { Lot } from "#lib/materials/material";
import type { Reservation } from "./movement";

/** The lots as one production may count on them: less by what is held for others. What is held for it is its own. */
export const lotsFor = (
  lots: readonly Lot[],
  held: readonly Pick<Reservation, "lot" | "production" | "quantity">[],
  production: string,
): readonly Lot[] => {
  const others = new Map<string, number>();
  for (const { lot, production: of, quantity } of held) if (of !== production) others.set(lot, (others.get(lot) ?? 0) + quantity);
  if (others.size === 0) return lots;
  return lots.map((lot) => ({ ...lot, quantity: Math.max(0, lot.quantity - (others.get(lot.code) ?? 0)) }));
};
