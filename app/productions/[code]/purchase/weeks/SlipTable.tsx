import { showDay } from "#lib/calendar/showDay";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { HeldUp, Slip } from "#lib/purchasing/ifSlips";
import { figures, Heads } from "../../../../_components/Heads";
import { State } from "../../../../_components/State";
import { Woven } from "../../../../_components/Woven";
import { garmentHref } from "../../../../_data/address";
import { nameOfMaterial } from "../../../../_data/names";
import { plural } from "../../../../_data/plural";

interface Props {
  readonly slips: readonly Slip[];
  readonly plan: StagingPlan;
  readonly days: number;
}

/** Every order and every lot on order: what waits, and what becomes late, when it comes so many days after its day. */
export const SlipTable = ({ slips, plan, days }: Props) => {
  const { code } = plan.staging.production;
  const waits = slips.filter(({ heldUp }) => heldUp.length > 0);
  const labels = (heldUp: readonly HeldUp[]) =>
    [...new Set(heldUp.map(({ garment }) => garment))].map((number) => (
      <span key={number}>
        <Woven number={number} href={garmentHref(code, number)} />{" "}
      </span>
    ));
  return (
    <section className="part" aria-labelledby="slips">
      <header>
        <h2 id="slips">If deliveries come {plural(days, "day")} late</h2>
        <span className="q small">what is still to buy being ordered today; late unless the workroom is levelled again</span>
      </header>
      {waits.length === 0 && (
        <p className="board">Nothing waits: {plural(slips.length, "delivery", "deliveries")} have the days to spare.</p>
      )}
      {waits.length > 0 && (
        <table className="stack">
          <Heads of={["Delivery", figures("May be cut"), "Become late", "Wait, with days to spare"]} />
          <tbody>
            {waits.map((slip) => {
              const late = slip.heldUp.filter((one) => one.late);
              const lateNumbers = new Set(late.map(({ garment }) => garment));
              return (
                <tr key={`${slip.material} ${slip.lot}`}>
                  <th scope="row">
                    {nameOfMaterial(plan.staging, slip.material)}{" "}
                    <span className="units">{slip.lot === null ? `from ${slip.supplier}` : `lot ${slip.lot}`}</span>
                  </th>
                  <td className="num" data-label="may be cut">
                    {showDay(slip.slipped)} <span className="units">not {showDay(slip.ready)}</span>
                  </td>
                  <td data-label="become late">
                    {late.length > 0 && (
                      <>
                        <State code="late">{plural(lateNumbers.size, "garment")}</State> {labels(late)}
                      </>
                    )}
                  </td>
                  <td data-label="wait">{labels(slip.heldUp.filter(({ garment }) => !lateNumbers.has(garment)))}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      )}
    </section>
  );
};
