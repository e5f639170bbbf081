import { encode } from "uqr";

/** The edge of white that a reader needs, in squares, is four by ISO/IEC 18004; white paper around it gives the rest. */
const EDGE = 2;

/** A square code of an address, 24 mm on paper: what is scanned at the table with a phone. */
export const SquareCode = ({ address, label }: { readonly address: string; readonly label: string }) => {
  const { data, size } = encode(address, { ecc: "M", border: EDGE });
  const path = data.flatMap((row, y) => row.flatMap((black, x) => (black ? [`M${x} ${y}h1v1h-1z`] : []))).join("");
  return (
    <svg
      viewBox={`0 0 ${size} ${size}`}
      role="img"
      aria-label={label}
      shapeRendering="crispEdges"
      style={{ width: "24mm", height: "24mm", background: "#fff", flex: "none" }}
    >
      <path d={path} fill="#000" />
    </svg>
  );
};
