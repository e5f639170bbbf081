import type { Fault } from "#lib/exchange/fault";
import { plural } from "../_data/plural";
import { figures, Heads } from "./Heads";
import { Wide } from "./Wide";

/** Every fault at once: where it stands, what is wrong, how to mend it. */
export const FaultTable = ({ faults }: { readonly faults: readonly Fault[] }) => (
  <Wide label="Faults">
    <table className="stack">
      <caption>{plural(faults.length, "fault")}, by file and row of the spreadsheet (the heading is row 1).</caption>
      <Heads of={["File", figures("Row"), "Column", "What is wrong", "How to mend it"]} />
      <tbody>
        {faults.map((fault, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two faults may be alike in every word, and the list never changes.
          <tr key={i}>
            <td className="name b">{fault.file}</td>
            <td className="num">{fault.row}</td>
            <td>{fault.column}</td>
            <td>{fault.problem}</td>
            <td className="q">{fault.mend}</td>
          </tr>
        ))}
      </tbody>
    </table>
  </Wide>
);
