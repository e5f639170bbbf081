import type { Clash } from "../_gate/outcome";
import { Heads } from "./Heads";
import { Wide } from "./Wide";

/** Theirs beside mine, cell by cell, and a choice: the form is sent again over theirs, or the page is opened with theirs. Inside the form. */
export const ClashTable = ({ clash }: { readonly clash: Clash }) => (
  <div className="part">
    <Wide label="Theirs and mine">
      <table className="stack">
        <caption>Where what they have kept differs from what you want.</caption>
        <Heads of={["Row", "Column", "Theirs, as it is now", "Mine"]} />
        <tbody>
          {clash.rows.flatMap(({ file, name, gone, cells }) =>
            (gone ? [{ column: "", theirs: "taken out", mine: "kept" }] : cells).map(({ column, theirs, mine }) => (
              <tr key={`${file} ${name} ${column}`}>
                <td className="name b">{name}</td>
                <td>{column.replaceAll("_", " ")}</td>
                <td data-label="Theirs">{theirs === "" ? "empty" : (theirs ?? "taken out")}</td>
                <td data-label="Mine" className="b">
                  {mine === "" ? "empty" : (mine ?? "taken out")}
                </td>
              </tr>
            )),
          )}
        </tbody>
      </table>
    </Wide>
    <div className="acts">
      <button type="submit" name="over" value={clash.over} className="press second">
        Keep mine
      </button>
      <button type="submit" name="step" value="theirs" className="press second" formNoValidate>
        Take theirs
      </button>
    </div>
  </div>
);
