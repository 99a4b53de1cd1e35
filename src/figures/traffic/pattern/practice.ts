/** Values of what else is flown: each with its source, or marked CP (common practice, no source). */

/** m before and beyond a display line from which a pass is looked at. CP. */
export const displayRun = 2000;
/** m above the field at which a display passes unless somebody says better; published minima are lower. CP. */
export const displayHeight = 100;
/** Bank in degrees of a topside, an underside or a turning pass. CP. */
export const displayBank = 60;
/** Degrees through which a pass turns: past the crowd with its underside, round it with its top, and away from it. CP. */
export const displayTurn = { underside: 90, topside: 60, away: 90 } as const;
/** Rise over run of a climbing pass, and m above its level run at which it is over. CP. */
export const displayClimb = { slope: 0.5, most: 900 } as const;

/** Spans from centre to centre of neighbours in a formation, offered where nobody has said. CP. */
export const formationSpans = 2;

/** m above the field of the run-in to a break, and m/s (350 kt). From memory of military practice, CP; FAA P/CG "overhead maneuver" asks for 500 ft above the usual pattern. */
export const breakRunIn = { height: 457.2, speed: 180.06, from: 6000 } as const;
/** Bank in degrees of a break, at the mean of its first and its last speed. CP. */
export const breakBank = 60;
/** Times the approach speed that is flown downwind after a break, and down to the final turn. CP. */
export const downwindSpeed = 1.3;
/** s between the aircraft of a stream. CP. */
export const streamInterval = 5;
/** m before the threshold at least where the final turn after a break ends, and m above it there (FAA P/CG "overhead maneuver": 1/4 mile, 300 ft). */
export const rollOut = { from: 402.336, height: 91.44 } as const;
/** The circuit of tankers and airlifters: m above the field, m abeam, degrees of bank. CP. */
export const wideCircuit = { height: 457.2, abeam: 2778, bank: 25 } as const;
/** The circuit of gliders: m above the field abeam the threshold (FAA-H-8083-13: 800 to 1,000 ft at the initial point, from memory), m abeam (CP), degrees of bank (CP). */
export const gliderCircuit = { height: 250, abeam: 400, bank: 35 } as const;
/** Degrees of a glider's approach with half its air brakes. CP. */
export const gliderApproach = 7;
/** A launch behind a tug: rise over run, m/s. CP. */
export const aerotow = { gradient: 0.06, speed: 32, run: 300 } as const;
/** A launch by winch: degrees of climb at most, m of the run by which it is reached, share of the cable at which it is let go, m/s. CP. */
export const winchLaunch = { climb: 40, rotation: 150, release: 0.72, speed: 30 } as const;
/** Offset localizer: degrees (ICAO Doc 8168 straight-in up to 5, from memory), m before the threshold where it meets the centreline (at least 1,400 m there, from memory). */
export const offsetLocalizer = { offset: 3, meets: 1400 } as const;
/** Circling: m above the field (between the minima of categories B and C, CP), m abeam (CP), degrees of bank (ICAO Doc 8168: 20, from memory). */
export const circlingShape = { height: 200, abeam: 1852, bank: 20 } as const;

/** Degrees of a helicopter's approach to a point: within the 6 of 14 CFR 36 appendix H and the 8 to 12 of FAA-H-8083-21A. */
export const helicopterApproach = 8;
/** m before a helipad from which an approach is looked at, and beyond it to which a departure is. CP. */
export const helipadRun = 2500;
/** m in which a helicopter slows down to a hover, and gathers speed from one. CP. */
export const hoverRun = 400;
