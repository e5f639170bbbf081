import { showDate } from "#lib/calendar/showDay";
import { productionHref } from "../_data/address";
import type { ProductionView } from "../_data/stagingPlan";
import { type Act, may } from "../_gate/may";
import type { Member } from "../_gate/member";
import { Frame } from "./Frame";
import { ProductionTape } from "./ProductionTape";
import type { Room } from "./Rail";

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
  | "/settings";

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

/** The frame of a production's rooms: only those there are, and only to whom they are open. */
export const ProductionFrame = ({
  member,
  view,
  room,
  children,
}: {
  readonly member: Member;
  readonly view: ProductionView;
  readonly room: RoomOf;
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
      tape={<ProductionTape staging={view.prepared.staging} today={view.today} thick={room === ""} />}
      printed={showDate(view.today)}
    >
      {children}
    </Frame>
  );
};
