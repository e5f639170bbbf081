import { notFound } from "next/navigation";
import { loadSwatch } from "#prisma/stock/dyeBook";
import { requireProduction } from "../../../../../../_data/requireProduction";

const ID = /^[0-9a-f-]{36}$/;

/** The photograph of a swatch, as it was taken. */
export const GET = async (
  _request: Request,
  { params }: { readonly params: Promise<{ readonly code: string; readonly entry: string }> },
): Promise<Response> => {
  const { code, entry } = await params;
  const { member } = await requireProduction("shelf", code);
  const swatch = ID.test(entry) ? await loadSwatch(member.company, entry) : null;
  if (!swatch) notFound();
  return new Response(new Blob([new Uint8Array(swatch.bytes)]), {
    headers: { "content-type": swatch.type, "cache-control": "private, max-age=3600", "content-security-policy": "default-src 'none'" },
  });
};
