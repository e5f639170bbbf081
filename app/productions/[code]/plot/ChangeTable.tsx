import { type ChangePlace, isQuick, QUICK_MINUTES } from "#lib/running/changes";
import type { GroupedChange } from "#lib/running/groupedChanges";
import type { Staging } from "#lib/staging/staging";
import { State } from "../../../_components/State";
import { nameOfPerformer, nameOfRole } from "../../../_data/names";
import { listed, plural } from "../../../_data/plural";

const WHERE: Readonly<Record<ChangePlace, string>> = {
  wings: "in the wings, two dressers, rigged fastenings",
  booth: "in a booth beside the stage",
  "dressing room": "in the dressing room",
};

/** Every change of costume, the shortest time first: quick ones are to be rigged and rehearsed. */
export const ChangeTable = ({ changes, staging }: { readonly changes: readonly GroupedChange[]; readonly staging: Staging }) => (
  <section className="part" aria-labelledby="changes">
    <header>
      <h2 id="changes">Changes</h2>
      <p className="cap">
        Quick: up to {QUICK_MINUTES} minutes. Under one in the wings, up to five in a booth, over five in the dressing room (common
        practice, no source). Rehearse every quick change before the first dress; check where minors change.
      </p>
    </header>
    {changes.length === 0 ? (
      <p className="q">Nobody changes during the evening.</p>
    ) : (
      <table className="stack">
        <thead>
          <tr>
            <th scope="col">Who</th>
            <th scope="col">Out of</th>
            <th scope="col">Into</th>
            <th scope="col" className="num">
              Time
            </th>
            <th scope="col">Where</th>
          </tr>
        </thead>
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
            </tr>
          ))}
        </tbody>
      </table>
    )}
  </section>
);

const whereWords = ({ from, to, minutes, where }: GroupedChange): string => {
  if (from.scene === to.scene) return "within the scene: on stage, or underdressed";
  return minutes === 0 ? `straight on: ${WHERE[where]}` : WHERE[where];
};

const costume = ({ costumes }: Staging, code: string) => costumes.find((one) => one.code === code)?.name ?? code;
const scene = ({ scenes }: Staging, code: string) => scenes.find((one) => one.code === code)?.name ?? code;

const MOST = 3;

const who = ({ bodies, from, to }: GroupedChange, staging: Staging): string => {
  const names = bodies.flatMap(({ performer }) => (performer === null ? [] : [nameOfPerformer(staging, performer)]));
  const role = nameOfRole(staging, from.role === to.role ? from.role : to.role);
  if (bodies.length <= MOST && names.length === bodies.length) return listed(names);
  return `${role}: ${plural(bodies.length, "dancer")}`;
};
