import { Woven } from "../../../../_components/Woven";
import { lotHref } from "./lotHref";

/** The code of a lot, as its label on the shelf; it leads to the lot. */
export const LotLabel = ({ code, lot }: { readonly code: string; readonly lot: string }) => (
  <Woven number={lot} href={lotHref(code, lot)} />
);
