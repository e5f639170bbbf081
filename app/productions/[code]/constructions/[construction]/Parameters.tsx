import type { Construction, Parameter } from "#lib/constructions/construction";
import type { Usage } from "#lib/words/words";
import { Heads } from "../../../../_components/Heads";
import { Wide } from "../../../../_components/Wide";

const limits = (parameter: Parameter, words: Usage): string => {
  if (parameter.kind === "yes-no") return "yes or no";
  if (parameter.kind === "choice") return parameter.options.map(({ code, label }) => `${label[words]} (${code})`).join(", ");
  return `${parameter.min} to ${parameter.max}`;
};

const said = ({ value }: Parameter): string => (typeof value === "boolean" ? (value ? "yes" : "no") : String(value));

/** What may differ from garment to garment, with what it is when nothing is said, and its limits. */
export const Parameters = ({ construction, words }: { readonly construction: Construction; readonly words: Usage }) =>
  construction.parameters.length > 0 && (
    <section className="part" aria-labelledby="parameters">
      <header>
        <h2 id="parameters">What may differ</h2>
        <span className="small q">Each garment may say its own; these hold when it says nothing.</span>
      </header>
      <Wide label="Parameters">
        <table>
          <Heads of={["Parameter", "In formulas", "Usually", "Limits"]} />
          <tbody>
            {construction.parameters.map((parameter) => (
              <tr key={parameter.code}>
                <th scope="row">{parameter.label[words]}</th>
                <td className="q">{parameter.code}</td>
                <td className="b fr">{said(parameter)}</td>
                <td className="fr">{limits(parameter, words)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Wide>
    </section>
  );
