/** A garment the company already has and may pull or alter. */
export interface StockGarment {
  readonly number: string;
  readonly name: string;
  readonly construction: string | null;
  readonly location: string;
  readonly condition: "good" | "worn" | "repair" | "retired";
  readonly note: string;
}
