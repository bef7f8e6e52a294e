/** How drawings look: lines, marks and words, by what they are. */

const liquids = [0, 1, 2, 3, 4, 5]
  .map(
    (tone) =>
      `.tone${tone} .liquid { fill: var(--liquid-${tone}); } .tone${tone} .matter { fill: var(--matter-${tone}); } .tone${tone} .grain, .tone${tone} .beam { stroke: var(--matter-${tone}); } .tone${tone} .layer { fill: var(--matter-${tone}); }`,
  )
  .join('\n');

export const drawingStyle = `
svg { overflow: visible; } svg text { font-size: 13px; paint-order: stroke; stroke: var(--paper); stroke-width: 3px; stroke-linejoin: round; fill: var(--ink); font-variant-numeric: tabular-nums; }
svg text.strong { font-weight: 650; } svg text.small { font-size: 11.5px; fill: var(--soft); }
.glass, .mark .walls { fill: none; stroke: var(--ink); stroke-width: 1.6; stroke-linecap: round; stroke-linejoin: round; }
.grain { fill: none; stroke-width: 1.2; opacity: .75; } .beam { fill: none; stroke-width: 2.4; opacity: .45; stroke-dasharray: 9 2; }
.struck { stroke: var(--ink); stroke-width: 1.6; fill: none; }
.matter { stroke: none; } .layer { opacity: .8; }
${liquids}
.plate, .mark .back { fill: var(--paper); } .mark .walls { stroke-width: 1.3; } .mark .full, .full { fill: var(--deep); }
.mark .crossed { fill: none; stroke: var(--ink); stroke-width: 1.5; stroke-linecap: round; }
.grid { stroke: var(--line); stroke-width: 1; fill: none; } .tick, .shelf { stroke: var(--soft); stroke-width: 1.2; fill: none; }
.frame { fill: none; stroke: var(--ink); stroke-width: 1.6; stroke-linejoin: round; } .thin { stroke-width: 1; stroke: var(--soft); }
.piece { fill: var(--deep); }
.curve, .course { fill: none; stroke: var(--deep); stroke-width: 2.6; stroke-linejoin: round; stroke-linecap: round; }
.span { fill: var(--span); } .span.pale { opacity: .45; }
.working { stroke: var(--accent); stroke-width: 2.4; fill: none; } svg text.working-words { fill: var(--accent); font-weight: 700; }
.break { stroke: var(--ink); stroke-width: 1.3; stroke-dasharray: 4 3; fill: none; } svg text.break-words { font-weight: 600; }
.pour { fill: none; stroke: var(--deep); stroke-width: 1.4; } .whisker { stroke: var(--ink); stroke-width: 1.3; fill: none; }
.mean { stroke: var(--accent); stroke-width: 3; fill: none; }
.stem { stroke: var(--deep); stroke-width: 1.4; fill: none; stroke-dasharray: 1 3; stroke-linecap: round; }
.drop { fill: var(--deep); stroke: var(--paper); stroke-width: 1; }
.aim { fill: var(--liquid-1); stroke: var(--soft); stroke-width: .8; } .missed { stroke: var(--accent); stroke-width: 3; stroke-linecap: round; fill: none; }
.score .on { fill: var(--deep); } .score .off { fill: none; stroke: var(--soft); stroke-width: 1; }
.neck .glass { stroke-width: 2; } .neck .full { fill: var(--liquid-2); } .neck .oil { fill: var(--accent); }
`;
