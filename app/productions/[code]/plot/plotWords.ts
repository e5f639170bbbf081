export const costumeHref = (base: string, costume: string): string => `${base}/costumes/${encodeURIComponent(costume)}`;
export const pieceHref = (base: string, piece: string): string => `${base}/pieces/${encodeURIComponent(piece)}`;

/** Minutes after curtain up as `0:53`. */
export const clock = (minutes: number): string => `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
