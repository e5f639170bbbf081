import type { GarmentWork } from "#lib/breakdown/work";
import type { Construction } from "#lib/constructions/construction";
import { showHours } from "#lib/units/hours";
import type { Usage, Words } from "#lib/words/words";
import { figures, Heads } from "../../../../_components/Heads";
import { OpenedLine } from "../../../../_components/OpenedLine";
import { Swatch } from "../../../../_components/Swatch";
import { Wide } from "../../../../_components/Wide";

/** Its tasks and fittings in order, with what each takes for the median body; the figures behind it in the opened line. */
export const Operations = ({
  construction,
  work,
  words,
  usage,
}: {
  readonly construction: Construction;
  readonly work: GarmentWork;
  readonly words: Words;
  readonly usage: Usage;
}) => {
  const nodes = [...construction.operations, ...construction.fittings];
  const nameOf = (code: string) => nodes.find((node) => node.code === code)?.name[usage].toLowerCase() ?? code;
  const waits = (codes: readonly { readonly on: string; readonly lagMinutes: number }[]) =>
    codes.map(({ on, lagMinutes }) => nameOf(on) + (lagMinutes > 0 ? `, and ${showHours(lagMinutes)}` : "")).join("; ");
  return (
    <section className="part" aria-labelledby="operations">
      <header>
        <h2 id="operations">{words.trade.work.replace(/^./, (letter) => letter.toUpperCase())}</h2>
        <span className="small q">Tasks of one garment for the median body, the first of its set.</span>
      </header>
      <Wide label="Tasks">
        <table className="stack">
          <Heads of={["Task", "Skill", "Machine", figures("Likely"), figures("Low to high"), "Waits for"]} />
          {construction.operations.map((operation) => {
            const made = work.operations.find(({ code }) => code === operation.code);
            return (
              <OpenedLine
                key={operation.code}
                name={<b>{operation.name[usage]}</b>}
                columns={6}
                cells={
                  <>
                    <td className="nb">
                      <Swatch skill={operation.skill} />
                      {words.skills[operation.skill]}
                    </td>
                    <td>{operation.machine ?? "by hand"}</td>
                    <td className="num b">{made ? showHours(made.minutes[1]) : ""}</td>
                    <td className="num q">{made ? `${showHours(made.minutes[0])} to ${showHours(made.minutes[2])}` : operation.when}</td>
                    <td>{waits(operation.waitsFor)}</td>
                  </>
                }
              >
                {made?.arithmetic ?? `Only when ${operation.when}.`}
                {operation.learning < 1000 && `\nEach doubling in a set takes ${operation.learning / 10}% of the time.`}
                {operation.batch && "\nGarments of a set may share the set-up."}
                {operation.straining && `\nStraining: rest ${operation.straining.rest} min after ${showHours(operation.straining.run)}.`}
              </OpenedLine>
            );
          })}
        </table>
      </Wide>
      {construction.fittings.length > 0 && (
        <ul className="lines">
          {construction.fittings.map((fitting) => (
            <li key={fitting.code}>
              <b>{fitting.name[usage]}</b>: {showHours(fitting.minutes)}
              {fitting.waitsFor.length > 0 && `, after ${waits(fitting.waitsFor)}`}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
};
