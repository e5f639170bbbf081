import type { Metadata } from "next";
import { showDay } from "#lib/calendar/showDay";
import { cutDays } from "#lib/planning/cutDays";
import { clothOnRolls } from "#lib/purchasing/rolls";
import { NotLevelled } from "../../../../_components/NotLevelled";
import { PrintThis } from "../../../../_components/PrintThis";
import { plural } from "../../../../_data/plural";
import { showQuantity } from "../../../../_data/quantity";
import { requireProduction } from "../../../../_data/requireProduction";
import { may } from "../../../../_gate/may";
import { BuyingFrame } from "../BuyingFrame";
import { ClothOfCorps } from "./ClothOfCorps";

type Props = { readonly params: Promise<{ readonly code: string }> };

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { view } = await requireProduction("measurements", (await params).code);
  return { title: `Net of a corps, ${view.prepared.staging.production.title}` };
};

const Corps = async ({ params }: Props) => {
  const { member, view } = await requireProduction("measurements", (await params).code);
  const { code, lengths } = view.prepared.staging.production;
  const cloths = view.plan ? clothOnRolls(view.plan, ["net"], cutDays(view.plan.tasks)) : [];
  const rolls = cloths.reduce((sum, cloth) => sum + cloth.rolls.length, 0);
  const gross = cloths.reduce((sum, cloth) => sum + cloth.gross, 0);
  const days = cloths.flatMap(({ cutBy }) => cutBy ?? []).sort();
  return (
    <BuyingFrame member={member} view={view} page="/corps">
      <div className="top">
        <h1>Net of a corps</h1>
        <p className="say">
          <b>{showQuantity(gross, "length", lengths)}</b> of {plural(cloths.length, "net")} off <b>{plural(rolls, "roll")}</b>, for{" "}
          {plural(new Set(cloths.flatMap(({ garments }) => garments)).size, "garment")}
          {days.length > 0 && `, the last of it cut by ${showDay(days.at(-1) as (typeof days)[number])}`}.
        </p>
        <div className="acts">
          <PrintThis>Print</PrintThis>
        </div>
      </div>
      {!view.plan && <NotLevelled code={code} canLevel={may(member.role, "level")} />}
      {view.plan && cloths.length === 0 && <p className="board">No garment of this production needs net.</p>}
      {cloths.map((cloth) => (
        <ClothOfCorps key={cloth.material.code} cloth={cloth} view={view} />
      ))}
    </BuyingFrame>
  );
};

export default Corps;
