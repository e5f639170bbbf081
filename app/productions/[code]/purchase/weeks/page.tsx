import type { Metadata } from "next";
import { cutDays } from "#lib/planning/cutDays";
import { inWeeks } from "#lib/purchasing/inWeeks";
import { NotLevelled } from "../../../../_components/NotLevelled";
import { PrintThis } from "../../../../_components/PrintThis";
import { requireProduction } from "../../../../_data/requireProduction";
import { may } from "../../../../_gate/may";
import { BuyingFrame } from "../BuyingFrame";
import { buyingHref } from "../buyingPages";
import { SlipTable } from "./SlipTable";
import { slipsOf } from "./slipsOf";
import { WeekTable } from "./WeekTable";

type Asked = Readonly<Record<string, string | string[] | undefined>>;
type Props = { readonly params: Promise<{ readonly code: string }>; readonly searchParams: Promise<Asked> };

export const metadata: Metadata = { title: "Week by week" };

const MOST_DAYS = 90;

const Weeks = async ({ params, searchParams }: Props) => {
  const { member, view } = await requireProduction("shelf", (await params).code);
  const { plan, today } = view;
  const { staging } = view.prepared;
  const asked = await searchParams;
  const first = (name: string) => [asked[name] ?? ""].flat()[0] ?? "";
  const days = Math.min(MOST_DAYS, Math.max(0, Math.trunc(Number(first("days") || "7")) || 0));
  const needed = new Set((plan?.works ?? []).flatMap((work) => work.needs.map((need) => need.material)));
  const materials = staging.materials.filter((material) => needed.has(material.code));
  const material = materials.find((each) => each.code === first("material")) ?? materials[0];
  const { code } = staging.production;
  const frame = (children: React.ReactNode) => (
    <BuyingFrame member={member} view={view} page="/weeks">
      {children}
    </BuyingFrame>
  );
  if (!plan || !material)
    return frame(
      <>
        <div className="top">
          <h1>Week by week</h1>
        </div>
        {plan ? <p className="board">No garment needs anything yet.</p> : <NotLevelled code={code} canLevel={may(member.role, "level")} />}
      </>,
    );
  const cutOn = cutDays(plan.tasks);
  const { lots, offers, sets, production } = plan.staging;
  const weeks = inWeeks(material, { lots, offers, sets, lines: plan.purchase.lines }, plan.works, cutOn, today);
  return frame(
    <>
      <div className="top">
        <h1>Week by week</h1>
        <p className="say">What is here and what comes, against what is cut; and what waits if it comes late.</p>
        <div className="acts">
          <PrintThis>Print</PrintThis>
        </div>
      </div>
      <form className="acts no-print" action={buyingHref(code, "/weeks")}>
        <label>
          Material{" "}
          <select name="material" defaultValue={material.code}>
            {materials.map((each) => (
              <option key={each.code} value={each.code}>
                {each.name}
              </option>
            ))}
          </select>
        </label>
        <label>
          Late by <input type="number" name="days" min={0} max={MOST_DAYS} defaultValue={days} inputMode="numeric" /> days
        </label>
        <button type="submit" className="press second">
          Show
        </button>
      </form>
      <WeekTable material={material} weeks={weeks} lengths={production.lengths} />
      <SlipTable slips={slipsOf(plan, today, days)} plan={plan} days={days} />
    </>,
  );
};

export default Weeks;
