import { showDate } from "#lib/calendar/showDay";
import { productionHref } from "../_data/address";
import type { ProductionView } from "../_data/stagingPlan";
import { type Act, may } from "../_gate/may";
import type { Member } from "../_gate/member";
import { FindBox } from "./FindBox";
import { Frame } from "./Frame";
import { ProductionTape } from "./ProductionTape";
import type { Room } from "./Rail";
import { UndoBar } from "./UndoBar";

type RoomOf =
  | ""
  | "/casting"
  | "/plot"
  | "/garments"
  | "/workroom"
  | "/fittings"
  | "/purchase"
  | "/people"
  | "/constructions"
  | "/history"
  | "/settings"
  | "none";

/** Who may not do it does not see the room. */
const ROOMS: readonly (readonly [RoomOf, string, Act])[] = [
  ["", "Overview", "read"],
  ["/casting", "Casting", "read"],
  ["/plot", "Costume plot", "read"],
  ["/garments", "Garments", "read"],
  ["/workroom", "Workroom", "read"],
  ["/fittings", "Fittings", "read"],
  ["/purchase", "Cloth and buying", "shelf"],
  ["/people", "People", "read"],
  ["/constructions", "Constructions", "read"],
  ["/history", "History", "history"],
  ["/settings", "Settings", "settings"],
];

/** Whoever may do one of these has something to put back. */
const EDITORS: readonly Act[] = ["cast", "wardrobe", "measure", "workroom", "stock", "settings"];

/** The frame of a production's rooms: only those there are, and only to whom they are open. */
export const ProductionFrame = ({
  member,
  view,
  room,
  question = "",
  children,
}: {
  readonly member: Member;
  readonly view: ProductionView;
  /** `none` of them: what was found. */
  readonly room: RoomOf;
  /** What is looked for, in the find box. */
  readonly question?: string;
  readonly children: React.ReactNode;
}) => {
  const { production } = view.prepared.staging;
  const base = productionHref(production.code);
  // Who may not see money comes in by the shelf.
  const addressOf = (path: RoomOf) => base + (path === "/purchase" && !may(member.role, "money") ? "/purchase/shelf" : path);
  const rooms: Room[] = ROOMS.filter(([, , act]) => may(member.role, act)).map(([path, name]) => ({ href: addressOf(path), name }));
  if (may(member.role, "import")) rooms.push({ href: "/import", name: "Bring in files", end: true });
  return (
    <Frame
      member={member}
      heading={{ title: production.title, small: production.subtitle }}
      rooms={rooms}
      room={addressOf(room)}
      tools={
        <>
          <FindBox address={`${base}/find`} value={question} />
          {EDITORS.some((act) => may(member.role, act)) && <UndoBar production={production.code} />}
        </>
      }
      tape={<ProductionTape staging={view.prepared.staging} today={view.today} thick={room === ""} />}
      printed={showDate(view.today)}
    >
      {children}
    </Frame>
  );
};
