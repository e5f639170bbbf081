export const costumeHref = (base: string, costume: string): string => `${base}/costumes/${encodeURIComponent(costume)}`;
export const pieceHref = (base: string, piece: string): string => `${base}/pieces/${encodeURIComponent(piece)}`;
