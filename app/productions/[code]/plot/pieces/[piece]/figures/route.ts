import { requireProduction } from "../../../../../../_data/requireProduction";
import { may } from "../../../../../../_gate/may";
import { askedPiece } from "../askedPiece";
import { figuresView } from "../figuresView";
import { findPiece } from "../findPiece";

/** The figures of a piece with other parameters, while they are typed. */
export const GET = async (
  request: Request,
  { params }: { readonly params: Promise<{ readonly code: string; readonly piece: string }> },
): Promise<Response> => {
  const { code, piece: part } = await params;
  const { member, view } = await requireProduction("wardrobe", code);
  const { staging } = view.prepared;
  const asked = askedPiece(staging, findPiece(view, part), Object.fromEntries(new URL(request.url).searchParams));
  return Response.json(figuresView(staging, asked, may(member.role, "money")), { headers: { "cache-control": "private, no-store" } });
};
