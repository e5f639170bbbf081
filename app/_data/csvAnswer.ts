/** A CSV file to keep; never cached, since it shows what one member may see. */
export const csvAnswer = (name: string, text: string): Response =>
  new Response(text, {
    headers: {
      "content-type": "text/csv; charset=utf-8",
      "content-disposition": `attachment; filename="${name.replaceAll(/[^\w .-]/g, "_")}.csv"`,
      "cache-control": "private, no-store",
    },
  });
