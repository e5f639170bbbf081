import { garmentHref } from "../_data/address";
import { numberRanges, rangeText } from "../_data/numberRanges";
import { Woven } from "./Woven";

/** More that follow one another share a label. */
const MOST_APART = 3;

/** Numbers of garments as woven labels, each leading to its garment; many that follow one another stand on one. */
export const Numbers = ({ code, numbers }: { readonly code: string; readonly numbers: readonly string[] }) =>
  numberRanges(numbers).flatMap((range) =>
    range.length > MOST_APART
      ? [
          <span key={range[0]}>
            <Woven number={rangeText(range)} />{" "}
          </span>,
        ]
      : range.map((number) => (
          <span key={number}>
            <Woven number={number} href={garmentHref(code, number)} />{" "}
          </span>
        )),
  );
