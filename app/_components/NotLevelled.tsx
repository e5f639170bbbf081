import { productionHref } from "../_data/address";

/** What stands where dates would be, before the first levelling. */
export const NotLevelled = ({ code, canLevel }: { readonly code: string; readonly canLevel: boolean }) => (
  <section className="board">
    <h2>Not levelled yet</h2>
    <p className="q">
      Levelling gives every task a maker and a time, and every fitting an appointment. Until then garments and their needs are shown without
      days.
    </p>
    {canLevel ? (
      <p className="acts">
        <a className="press" href={`${productionHref(code)}/workroom`}>
          Go to the workroom
        </a>
      </p>
    ) : (
      <p>A supervisor or a cutter may level it.</p>
    )}
  </section>
);
