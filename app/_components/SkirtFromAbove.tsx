const RINGS = 12;
const FIRST = 132;
const STEP = 20;

/** One edge of gathered net: a circle with as many small waves as fit at 18 px each. */
const ring = (radius: number, index: number): string => {
  const waves = Math.round((2 * Math.PI * radius) / 18);
  const points = Array.from({ length: waves * 2 }, (_, i) => {
    const angle = (i * Math.PI) / waves + index * 0.37;
    const reach = radius + (i % 2 === 0 ? 4 : -4);
    return [reach * Math.cos(angle), reach * Math.sin(angle)] as const;
  });
  const middle = (i: number) => {
    const a = points[i % points.length] ?? [0, 0];
    const b = points[(i + 1) % points.length] ?? [0, 0];
    return `${((a[0] + b[0]) / 2).toFixed(1)} ${((a[1] + b[1]) / 2).toFixed(1)}`;
  };
  return `M${middle(points.length - 1)}${points.map((point, i) => `Q${point[0].toFixed(1)} ${point[1].toFixed(1)} ${middle(i)}`).join("")}Z`;
};

/** Decoration for the door: twelve layers of net from above, the hoop's casing dashed, the basque and the waist. */
export const SkirtFromAbove = () => (
  <svg viewBox="-370 -370 740 740" aria-hidden="true">
    {Array.from({ length: RINGS }, (_, i) => RINGS - 1 - i).map((index) => (
      <path
        key={index}
        d={ring(FIRST + index * STEP, index)}
        style={{ fill: "color-mix(in srgb, var(--c1) 4%, transparent)", stroke: "var(--c1)" }}
        strokeWidth="1.1"
      />
    ))}
    <circle r={FIRST + 6 * STEP - 10} fill="none" style={{ stroke: "var(--ink)" }} strokeWidth="1.6" strokeDasharray="8 5" />
    <ellipse rx="104" ry="97" style={{ fill: "var(--calico)", stroke: "var(--ink)" }} strokeWidth="1.6" />
    <ellipse rx="65" ry="54" style={{ fill: "var(--sheet)", stroke: "var(--ink)" }} strokeWidth="3" />
    <path d="M0 54V97" fill="none" style={{ stroke: "var(--ink)" }} strokeWidth="1.6" strokeDasharray="2 3" />
  </svg>
);
