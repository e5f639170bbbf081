import type { Construction } from "#lib/constructions/construction";
import { differencesOf } from "#lib/constructions/differences";
import { Heads } from "../../../../_components/Heads";
import { Wide } from "../../../../_components/Wide";
import { plural } from "../../../../_data/plural";

/** Every figure and word in which a version differs from the one before it. */
export const Differences = ({ before, after }: { readonly before: Construction; readonly after: Construction }) => {
  const differences = differencesOf(before, after);
  return (
    <section className="part" aria-labelledby="differences">
      <header>
        <h2 id="differences">What version {after.version} changes</h2>
        <span className="small q">
          {plural(differences.length, "difference")} from version {before.version}
        </span>
      </header>
      {differences.length > 0 && (
        <Wide label="Differences">
          <table>
            <Heads of={["Where", `Version ${before.version}`, `Version ${after.version}`]} />
            <tbody>
              {differences.map(({ where, from, to }) => (
                <tr key={where}>
                  <th scope="row">{where.replaceAll(".", ", ")}</th>
                  <td className="q">{from ?? "not there"}</td>
                  <td className="b">{to ?? "not there"}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Wide>
      )}
    </section>
  );
};
