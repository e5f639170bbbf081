import { findPhoto } from "#prisma/photos/photos";
import { readPhotograph } from "../../../../../../_data/photographs";
import { requireProduction } from "../../../../../../_data/requireProduction";

interface Part {
  readonly code: string;
  readonly photograph: string;
}

/** A photograph, to members only: as the one kind of picture that is kept, whatever it was sent as, and nothing in it runs. */
export const GET = async (request: Request, { params }: { readonly params: Promise<Part> }): Promise<Response> => {
  const { code, photograph } = await params;
  const { member, view } = await requireProduction("read", code);
  const isId = /^[\da-f]{8}(-[\da-f]{4}){3}-[\da-f]{12}$/.test(photograph);
  const found = isId ? await findPhoto(member.company, view.prepared.staging.production.code, photograph) : null;
  const size = new URL(request.url).searchParams.has("small") ? "small" : "whole";
  const data = found && (await readPhotograph(found.path, size));
  if (!data) return new Response("There is no such photograph.", { status: 404, headers: { "content-type": "text/plain; charset=utf-8" } });
  return new Response(new Blob([new Uint8Array(data)]), {
    headers: {
      "content-type": "image/jpeg",
      "x-content-type-options": "nosniff",
      "cross-origin-resource-policy": "same-origin",
      "cache-control": "private, max-age=3600",
    },
  });
};
