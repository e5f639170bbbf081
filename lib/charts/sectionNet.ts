/** A point of the picture; y grows downward. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** The top layer rises three degrees from the level; each layer under it falls two and a half more. */
const TOP_DEGREES = -3;
const FALL_DEGREES = 2.5;

/** Angle of a layer below the level, in radians; `below` counts layers from the top. */
export const layerAngle = (below: number): number => ((TOP_DEGREES + FALL_DEGREES * below) * Math.PI) / 180;

/** The point so far along a ray. */
export const along = (from: Point, angle: number, distance: number): Point => ({
  x: from.x + distance * Math.cos(angle),
  y: from.y + distance * Math.sin(angle),
});

const STEP = 6;
const SWING = 2.4;

/** Net seen from its edge: a zigzag about the ray, from the row to the edge. */
export const zigzag = (from: Point, angle: number, length: number): readonly Point[] => {
  const steps = Math.max(2, Math.round(length / STEP));
  return Array.from({ length: steps + 1 }, (_, index) => {
    const on = along(from, angle, (length * index) / steps);
    if (index === 0 || index === steps) return on;
    const swing = index % 2 === 0 ? SWING : -SWING;
    return { x: on.x - swing * Math.sin(angle), y: on.y + swing * Math.cos(angle) };
  });
};

/** The dagged edge: a small open point at the end of the net. */
export const dag = (end: Point): readonly Point[] => [{ x: end.x + 5, y: end.y - 4 }, end, { x: end.x + 5, y: end.y + 4 }];
