/** The weaves of the skills (p1 to p8), what hangs below the chalk line and closed days: once a page, referred to by id. */
export const Patterns = () => (
  <svg width="0" height="0" aria-hidden="true" style={{ position: "absolute" }}>
    <defs>
      <pattern id="p1" width="8" height="8" patternUnits="userSpaceOnUse">
        <rect width="8" height="8" style={{ fill: "var(--c1-pale)" }} />
        <path d="M0 0L8 8M8 0L0 8" style={{ stroke: "var(--c1)" }} strokeWidth="1.1" />
      </pattern>
      <pattern id="p2" width="8" height="8" patternUnits="userSpaceOnUse">
        <rect width="8" height="8" style={{ fill: "var(--c2-pale)" }} />
        <path d="M2.5 .5v4M.5 2.5h4" style={{ stroke: "var(--c2)" }} strokeWidth="1.2" />
        <circle cx="6.5" cy="6.5" r="1.1" style={{ fill: "var(--c2)" }} />
      </pattern>
      <pattern id="p3" width="8" height="8" patternUnits="userSpaceOnUse">
        <rect width="8" height="8" style={{ fill: "var(--c3-pale)" }} />
        <path d="M2 0v8M6 0v8" style={{ stroke: "var(--c3)" }} strokeWidth="1.9" />
      </pattern>
      <pattern id="p4" width="8" height="8" patternUnits="userSpaceOnUse">
        <rect width="8" height="8" style={{ fill: "var(--c4-pale)" }} />
        <path d="M-2 2L2 -2M0 8L8 0M6 10L10 6" style={{ stroke: "var(--c4)" }} strokeWidth="1.8" />
      </pattern>
      <pattern id="p5" width="8" height="8" patternUnits="userSpaceOnUse">
        <rect width="8" height="8" style={{ fill: "var(--c5-pale)" }} />
        <path d="M0 2q2-3 4 0t4 0M0 6q2-3 4 0t4 0" style={{ stroke: "var(--c5)" }} strokeWidth="1.2" fill="none" />
      </pattern>
      <pattern id="p6" width="8" height="8" patternUnits="userSpaceOnUse">
        <rect width="8" height="8" style={{ fill: "var(--c6-pale)" }} />
        <path d="M0 2h4.6M4 6h4.6M-.4 6h.6" style={{ stroke: "var(--c6)" }} strokeWidth="1.7" />
      </pattern>
      <pattern id="p7" width="8" height="8" patternUnits="userSpaceOnUse">
        <rect width="8" height="8" style={{ fill: "var(--c7-pale)" }} />
        <circle cx="2" cy="2" r="1.45" style={{ fill: "var(--c7)" }} />
        <circle cx="6" cy="6" r="1.45" style={{ fill: "var(--c7)" }} />
      </pattern>
      <pattern id="p8" width="8" height="8" patternUnits="userSpaceOnUse">
        <rect width="8" height="8" style={{ fill: "var(--c8-pale)" }} />
        <path d="M0 5L4 1L8 5M0 9L4 5L8 9" style={{ stroke: "var(--c8)" }} strokeWidth="1.3" fill="none" />
      </pattern>
      <pattern id="pover" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(35)">
        <rect width="9" height="9" style={{ fill: "var(--madder)" }} />
        <path d="M0 4.5h9" style={{ stroke: "var(--sheet)" }} strokeWidth="1.1" opacity=".55" />
      </pattern>
      <pattern id="pshut" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path d="M0 0v6" style={{ stroke: "var(--hair)" }} strokeWidth="2" />
      </pattern>
    </defs>
  </svg>
);
