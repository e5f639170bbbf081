import { epochOf } from "#lib/calendar/zone";
import { visitsIn } from "#lib/fittings/visits";
import { ownAddress } from "../../../_data/ownAddress";
import { requireProduction } from "../../../_data/requireProduction";
import { fittingCalendar } from "../fittings/fittingCalendar";
import { fittingHref } from "../fittings/fittingsView";

/** The visits of the plan as a calendar; with `performer` those of one performer. */
export const GET = async (request: Request, { params }: { readonly params: Promise<{ readonly code: string }> }): Promise<Response> => {
  const { view } = await requireProduction("read", (await params).code);
  const { staging } = view.prepared;
  const { code, zone } = staging.production;
  const performer = new URL(request.url).searchParams.get("performer");
  const visits = view.plan ? visitsIn(view.plan).filter((visit) => performer === null || visit.performer === performer) : [];
  const here = await ownAddress();
  const text = fittingCalendar(visits, {
    staging,
    levelledAt: view.levelledAt ?? new Date(0),
    moment: (wall) => new Date(epochOf(wall, zone)),
    address: ({ fittings: [first] }) => (first ? here + fittingHref(code, first) : here),
  });
  return new Response(text, {
    headers: {
      "content-type": "text/calendar; charset=utf-8",
      "content-disposition": `attachment; filename="${`${code} fittings`.replaceAll(/[^\w .-]/g, "_")}.ics"`,
      "cache-control": "private, no-store",
    },
  });
};
