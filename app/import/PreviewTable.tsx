import type { Change } from "#lib/staging/change";
import { figures, Heads } from "../_components/Heads";
import { State, type StateCode } from "../_components/State";
import { plural } from "../_data/plural";
import type { Preview } from "./preview";

/** More are counted, not listed. */
const MOST_LISTED = 200;

const MARKS: Readonly<Record<Change["kind"], StateCode>> = { added: "done", removed: "cut", changed: "note", renumbered: "late" };

/** A new production by its files; one that is there by what changes in it. */
export const PreviewTable = ({ preview }: { readonly preview: Preview }) => {
  const { changes, revision, title, code } = preview;
  if (changes.length === 0)
    return (
      <p className="slip" role="status">
        {title} ({code}) is already exactly as these files say.
      </p>
    );
  const files = [...new Set(changes.map((change) => change.file))];
  return (
    <>
      <h2>{revision === null ? `${title} (${code}) is new` : `What changes in ${title} (${code})`}</h2>
      <table className="narrow">
        <caption>The files have no fault. Nothing is written yet.</caption>
        <Heads of={["File", figures("Added"), figures("Changed"), figures("Removed")]} />
        <tbody>
          {files.map((file) => {
            const of = (kind: Change["kind"]) => changes.filter((change) => change.file === file && change.kind === kind).length || "";
            return (
              <tr key={file}>
                <th scope="row">{file}</th>
                <td className="num">{of("added")}</td>
                <td className="num">{of("changed")}</td>
                <td className="num">{of("removed")}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {revision !== null && (
        <ul className="lines part">
          {changes.slice(0, MOST_LISTED).map((change) => (
            <li key={`${change.file} ${change.kind} ${change.name} ${change.field}`} className="small">
              <State code={MARKS[change.kind]}>{change.file}</State> {change.text}
            </li>
          ))}
          {changes.length > MOST_LISTED && <li className="small q">and {plural(changes.length - MOST_LISTED, "more change")}.</li>}
        </ul>
      )}
    </>
  );
};
