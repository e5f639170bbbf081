import { type ChangePlace, isQuick, QUICK_MINUTES } from "#lib/running/changes";
import type { DressedChange, Dressers } from "#lib/running/dressers";
import type { GroupedChange } from "#lib/running/groupedChanges";
import type { Staging } from "#lib/staging/staging";
import { figures, Heads } from "../../../_components/Heads";
import { State } from "../../../_components/State";
import { nameOfPerformer, nameOfRole } from "../../../_data/names";
import { listed, plural } from "../../../_data/plural";
import { clock } from "./plotWords";

const WHERE: Readonly<Record<ChangePlace, string>> = {
  wings: "in the wings, rigged fastenings",
  booth: "in a booth beside the stage",
  "dressing room": "in the dressing room",
};

type Change = GroupedChange<DressedChange>;

/** Every change of costume, the shortest time first: quick ones are to be rigged and rehearsed. */
export const ChangeTable = ({
  changes,
  evenings,
  staging,
}: {
  readonly changes: readonly Change[];
  readonly evenings: readonly (Dressers & { readonly cast: string })[];
  readonly staging: Staging;
}) => (
  <section className="part" aria-labelledby="changes">
    <header>
      <h2 id="changes">Changes</h2>
      <p className="cap">
        Quick: up to {QUICK_MINUTES} minutes. Under one in the wings, up to five in a booth, over five in the dressing room (common
        practice, no source). Rehearse every quick change before the first dress; check where minors change.
      </p>
    </header>
    {evenings.flatMap(({ cast, most, at }) =>
      at === null ? (
        []
      ) : (
        <p key={cast} className="small">
          With the {cast} cast <b>{plural(most, "dresser")}</b> {most === 1 ? "is" : "are"} busy at the worst moment, {clock(at)} after
          curtain up.
        </p>
      ),
    )}
    {changes.length === 0 ? (
      <p className="q">Nobody changes during the evening.</p>
    ) : (
      <table className="stack">
        <Heads of={["Who", "Out of", "Into", figures("Time"), "Where", "Dressers for each"]} />
        <tbody>
          {changes.map((change) => (
            <tr key={JSON.stringify([change.cast, change.from, change.to])}>
              <th scope="row" className="name b">
                {who(change, staging)} <span className="units">{change.cast} cast</span>
              </th>
              <td>
                {costume(staging, change.from.costume)} <span className="units">after {scene(staging, change.from.scene)}</span>
              </td>
              <td>
                {costume(staging, change.to.costume)} <span className="units">for {scene(staging, change.to.scene)}</span>
              </td>
              <td className="num">
                {isQuick(change) ? (
                  <State code={change.minutes < 1 ? "late" : "wait"}>{change.minutes} min</State>
                ) : (
                  <>
                    {change.minutes} min{change.overInterval && <span className="units"> with the interval</span>}
                  </>
                )}
              </td>
              <td className="q">{whereWords(change)}</td>
              <td>{hands(change)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    )}
  </section>
);

/** Who helps: one dancer's own hands count too. */
const hands = ({ dressers, needs }: Change): React.ReactNode => {
  const time = <span className="units"> {Math.ceil(needs / 60)} min alone</span>;
  if (dressers === null)
    return (
      <>
        <State code="late">two are too few</State>
        {time}
      </>
    );
  return dressers === 0 ? (
    <span className="q">none</span>
  ) : (
    <>
      {dressers}
      {time}
    </>
  );
};

const whereWords = ({ from, to, minutes, where }: Change): string => {
  if (from.scene === to.scene) return "within the scene: on stage, or underdressed";
  return minutes === 0 ? `straight on: ${WHERE[where]}` : WHERE[where];
};

const costume = ({ costumes }: Staging, code: string) => costumes.find((one) => one.code === code)?.name ?? code;
const scene = ({ scenes }: Staging, code: string) => scenes.find((one) => one.code === code)?.name ?? code;

const MOST = 3;

const who = ({ bodies, from, to }: Change, staging: Staging): string => {
  const names = bodies.flatMap(({ performer }) => (performer === null ? [] : [nameOfPerformer(staging, performer)]));
  const role = nameOfRole(staging, from.role === to.role ? from.role : to.role);
  if (bodies.length <= MOST && names.length === bodies.length) return listed(names);
  return `${role}: ${plural(bodies.length, "dancer")}`;
};
