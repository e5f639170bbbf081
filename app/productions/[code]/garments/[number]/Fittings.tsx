import Link from "next/link";
import type { GarmentWork } from "#lib/breakdown/work";
import { showWall } from "#lib/calendar/showDay";
import type { Garment } from "#lib/casting/wardrobe";
import { answerTo } from "#lib/fittings/answer";
import type { StagingPlan } from "#lib/planning/stagingPlan";
import type { Staging } from "#lib/staging/staging";
import type { KeptAnswer } from "#prisma/fittings/answers";
import { figures, Heads } from "../../../../_components/Heads";
import { State } from "../../../../_components/State";
import { nameOfMaker } from "../../../../_data/names";
import { wearerName } from "../../../../_data/wearers";
import { Answered } from "../../fittings/FittingState";
import { fittingHref } from "../../fittings/fittingsView";

/** Its fittings, in order, with the appointment each has in the plan. */
export const Fittings = ({
  garment,
  work,
  plan,
  staging,
  answers,
}: {
  readonly garment: Garment;
  readonly work: GarmentWork;
  readonly plan: StagingPlan | null;
  readonly staging: Staging;
  /** How fittings went, the newest first. */
  readonly answers: readonly KeptAnswer[];
}) => {
  const appointment = (code: string, wearer: number) => {
    const node = plan?.nodes.findIndex(
      (each) => each.kind === "fitting" && each.garment === garment.number && each.fitting === code && each.wearer === wearer,
    );
    return plan?.fittings.find((fitting) => fitting.node === node);
  };
  return (
    <section className="part" aria-labelledby="fittings">
      <header>
        <h2 id="fittings">Fittings</h2>
      </header>
      <table className="stack">
        <Heads of={["Fitting", "Of", "With", figures("When")]} />
        <tbody>
          {work.fittings.map((fitting) => {
            const kept = appointment(fitting.code, fitting.wearer);
            const part = kept && plan?.nodes[kept.node]?.key.slice(garment.number.length + 1);
            const answer = kept && answerTo(answers, kept);
            const wearer = garment.wearers[fitting.wearer];
            return (
              <tr key={`${fitting.code} ${fitting.wearer}`}>
                <th scope="row" className="name">
                  {kept && part ? (
                    <Link href={fittingHref(staging.production.code, { garment: garment.number, part })} prefetch={false}>
                      {fitting.name[staging.production.words]}
                    </Link>
                  ) : (
                    fitting.name[staging.production.words]
                  )}{" "}
                  <span className="units">{fitting.minutes} min</span>
                </th>
                <td>{wearer && wearerName(wearer, staging)}</td>
                <td>{kept && nameOfMaker(staging, kept.fitter)}</td>
                <td className="num">
                  {answer && <Answered answer={answer} />}
                  {kept &&
                    !answer &&
                    (kept.start === null ? <State code="late">not placed</State> : <State code="fit">{showWall(kept.start)}</State>)}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
};
