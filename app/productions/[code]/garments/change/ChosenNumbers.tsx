import { plural } from "../../../../_data/plural";
import type { ChosenPieces } from "./chosenPieces";

/** As many as a sentence bears. */
const MOST = 8;

/** Which garments, and what else changes with them: garments of one line of the piece list are made alike. */
export const ChosenNumbers = ({
  chosen: { numbers, pieces, garments },
  base,
}: {
  readonly chosen: ChosenPieces;
  readonly base: string;
}) => {
  const more = garments.length - numbers.length;
  const shown = numbers.length > MOST ? `${numbers.slice(0, MOST).join(", ")} and ${numbers.length - MOST} more` : numbers.join(", ");
  return (
    <p className="say">
      {numbers.length > 1 && <>{shown}. </>}
      {pieces.length > 0 && (
        <>
          {pieces.length === 1
            ? `Of one line of the piece list: ${pieces[0]?.name}.`
            : `Of ${plural(pieces.length, "line")} of the piece list.`}{" "}
        </>
      )}
      {more > 0 && (
        <b>
          {plural(more, "other garment")} of {pieces.length === 1 ? "it" : "those lines"} {more === 1 ? "changes" : "change"} too.
        </b>
      )}{" "}
      <a href={`${base}/garments`}>All garments</a>
    </p>
  );
};
