import type { WantedMeasurement } from "#lib/measurements/wanted";
import type { Words } from "#lib/words/words";
import { State } from "../../../../../_components/State";

/** What garments made for a performer are cut by and no sheet says, and what stands in meanwhile. */
export const MissingList = ({ missing, words }: { readonly missing: readonly WantedMeasurement[]; readonly words: Words }) =>
  missing.length > 0 && (
    <section className="part" aria-labelledby="missing">
      <h2 id="missing">Missing for what is made</h2>
      <ul className="lines small">
        {missing.map(({ measurement, garments, from }) => (
          <li key={measurement}>
            <State code="wait">{words.measurements[measurement]}</State>{" "}
            <span className="q">
              for {garments.join(", ")}; {from === "size group" ? "the size group stands in" : "a median stands in: measure before cutting"}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
