/** Values of common practice without a source, marked CP, that several figures share; those of one subject stand beside it. */

/** m/s at which an aircraft leaves the runway. CP. */
export const taxiSpeed = 7;
/** m from ground contact within which jets float to touchdown. CP. */
export const touchdownBand = 300;
/** Nose attitude in degrees above the horizontal, unless the subject says otherwise. CP. */
export const noseAttitude = { approach: 3, ground: 0, climb: 8 } as const;
/** Times the kit's longest focal length up to which a sample is still worth cropping. CP. */
export const usableCrop = 1.5;
/** Factor of the aspect straight nose-on and straight tail-on; from side to side in between nothing is taken off. CP. */
export const aspectFactors = { noseOn: 0.25, fullFrom: 45, fullTo: 100, tailOn: 0.15 } as const;
/** Degrees of aspect between which a sample is of the pass: three-quarters from ahead to just past the beam. CP. */
export const passAspect = { from: 30, to: 120 } as const;
/** Share of the wanted fill from which a lens is long enough, and share of the frame that still leaves a margin. CP. */
export const leastFill = 0.75;
export const fullestFit = 0.95;
/** Sun altitude in degrees from which the light is called harsh, and from which it is top light. CP. */
export const harshFrom = 45;
export const topLitFrom = 60;
/** Light angles in degrees up to which the subject is front-lit and side-lit. CP. */
export const frontLitTo = 60;
export const sideLitTo = 110;
/** Elevation of the aircraft in degrees above which one looks at its underside. CP. */
export const undersideFrom = 30;
/** Degrees beyond the frame's half diagonal within which the sun glares into the lens. CP. */
export const glareMargin = 10;
/** Dot product of a flank's normal with the direction to the sun above which the flank is lit. CP. */
export const litFrom = 0.1;
/** Degrees from nose-on or tail-on within which no flank is seen. CP. */
export const noFlankWithin = 10;
/** Factor of the light score with the flank dark, and in civil twilight. CP. */
export const darkFlankFactor = 0.5;
export const twilightFactor = 0.2;
/** Bank in degrees at which the corners of a circuit are flown. CP. */
export const circuitBank = 25;
/** s in which an aircraft rolls into a turn or out of it. CP. */
export const rollSeconds = 3;
/** Degrees of bank from which one sees the top or the underside of an aircraft rather than its flank. CP. */
export const bankedFrom = 30;
/** m to each side of a taxi route's line that aircraft need: nobody stands there. CP. */
export const taxiHalfWidth = 12;
/** A runway shorter or longer than this, in m, is probably drawn wrongly. CP. */
export const oddLength = { shortest: 150, longest: 6000 } as const;
/** kt of mean wind under which the wind counts as calm (FAA JO 7110.65 3-5-1). */
export const calmBelowKt = 5;
/** Share of direct sun by the cover of a cloud layer. CP. */
export const cloudDirect = { FEW: 1, SCT: 0.8, BKN: 0.35, OVC: 0 } as const;
/** ft above which a layer is thin enough to count as one step less. CP. */
export const highCloudFt = 20_000;
/** Factor of the light of a clouded sky at sunset, and from which sun altitude in degrees it is all that it gets. CP. */
export const flatLight = { atHorizon: 0.2, full: 0.7, fullFrom: 6 } as const;
/** Share of direct sun from which the sun glares, and from which side and back light are darker. CP. */
export const shadowsFrom = { glare: 0.2, direction: 0.5 } as const;
/** m of span under which what is no jet counts as a light aircraft. CP. */
export const lightSpan = 18;
/**
 * kt of tailwind and crosswind, gusts included, up to which airfields keep a runway in use. 5 kt is ICAO Doc 4444
 * 7.2.6, as 15 kt of crosswind is, here for light aircraft; 20 kt for others is CP.
 */
export const runwayLimits = { tailwindKt: 5, crosswindKt: 20, lightCrosswindKt: 15 } as const;
/** kt of headwind by which two ends of a runway must differ before one of them is preferred. CP. */
export const eitherWithinKt = 1;
/** Shares of the longest runway from which others are as good, and from which parallels are used with it. CP. */
export const asLongFrom = 0.9;
export const parallelFrom = 0.6;
/** Degrees within which runways are parallel. CP. */
export const parallelWithin = 5;
/** m under which a field's longest runway leaves light aircraft every other one as well. CP. */
export const clubField = 1500;
/** A runway under this share of the longest and under so many m is for light aircraft. CP. */
export const lightStrip = { share: 0.6, length: 1300 } as const;
/**
 * EV at ISO 100 under a clear sky by the sun's altitude in degrees, straight lines in between. The exposure values from
 * 9 up are rows of ANSI PH2.7 ("full sun" 15, "just before sunset" 12 to 14, "at sunset" 12, "just after sunset" 9 to
 * 11); at which altitudes they are taken is CP: the row before sunset is spread from the horizon to 8.5
 * degrees; 20 degrees is some two hours after sunrise in middle latitudes, from where the table's direct sun holds. Civil dusk 6 and floodlit aprons at night 3 are from memory, not verified.
 */
export const clearSkyExposure = [
  [-9, 3],
  [-6, 6],
  [-4, 9],
  [-0.833, 12],
  [8.5, 14],
  [20, 15],
] as const;
/** Starting f-number for an aircraft that comes at an angle: this or a higher number. CP. */
export const startingAperture = 7.1;
/** Starting shutter in s for what has no blades to show: this or faster. CP. */
export const startingShutter = 1 / 200;
/** Degrees that a blade of a propeller and of a rotor sweeps while the shutter is open: less looks frozen. CP. */
export const propellerArc = 60;
export const rotorArc = 45;
/** Share of the pan rate by which the hand misses the aircraft when it follows. CP. */
export const panError = 0.1;
/** px of blur that pass for sharp, unless the user says otherwise. CP. */
export const sharpWithin = 2;
/** Circle of confusion: the sensor's diagonal divided by this, unless set. CP. */
export const confusionShare = 1500;
/** m from a mesh fence within which a lens at its widest aperture blurs the wires away. CP. */
export const meshWithin = 0.5;
/** m from a mesh fence within which one can step up to it and hold the lens to its wires. CP. */
export const meshBeside = 5;
/** What cameras and lenses can be set to: f-numbers, shutters in s, ISO. CP. */
export const cameraRange = { aperture: [1, 32], shutter: [1 / 8000, 30], iso: [100, 25_600] } as const;
/** ISO up to which nothing is given up for less of it: above, the lens opens first. CP. */
export const quietIso = 1600;
/** f-number up to which a lens is closed for too much light: beyond, dust and diffraction tell. CP. */
export const closedTo = 11;
/** ISO above which noise tells, and f-number above which diffraction does. CP. */
export const noisyFrom = 6400;
export const softFrom = 16;
/** A hand is steady for this many s divided by the 35 mm equivalent focal length in mm, with a stabiliser's two stops. CP. */
export const steadyStops = 4;
/** Total scores from which a picture is good, fair and poor; below that it is not worth waiting for. CP. */
export const scoreFrom = { good: 0.75, fair: 0.6, poor: 0.4 } as const;
/** Total score from which a wait is planned, and minutes that it must last at least. CP. */
export const worthwhileFrom = scoreFrom.fair;
export const shortestWindow = 15;
/** Minutes of less good light that do not end a window. CP. */
export const bridgedGap = 10;
/** Hours of perfect pictures that a move to another spot must bring beyond what the way costs. CP. */
export const moveWorth = 0.25;
/** Minutes round a movement in which a moment counts more in the plan, and how many times: anything due, something starred. CP. */
export const dueWithin = 10;
export const dueWeight = 2;
export const starredWeight = 4;
/** m/s on foot with a bag, and times by which ways are longer than the straight line. CP. */
export const walkingSpeed = 1.25;
export const detour = 1.3;
/** m of way from which one drives, m/s then, and minutes to get to the car, park and walk. CP. */
export const driveFrom = 1500;
export const drivingSpeed = 9;
/** m/s on the way from home, a bicycle with a bag and a car on country roads and through towns. CP. */
export const ridingSpeed = { foot: 1.25, bicycle: 4.5, car: 16 } as const;
export const parkingMinutes = 8;
/** m beyond a runway's end at which one can get round it. CP. */
export const roundRunwayEnd = 400;
/** mm from which and up to which people carry lenses: what needs more is no frame to plan for. CP. */
export const goodFrameLens = [20, 800] as const;

/** Seconds over which the speed of a recorded flight is taken: some points of a recorder that counts whole seconds (CP). */
export const recordedWindow = 8;

/** Where an aircraft's fin and tailplane end, behind its centre as a share of its length. CP. */
export const finBack = 0.45;
/** A tailplane that states no span: its share of the wing's. How far up its tips are, as a share of the height. CP. */
export const tailSpanShare = 0.34;
export const tailplaneUp = 0.1;
/** Points of a rotor's rim by which it is framed, and how far above the centre its disc is, as a share of the height. CP. */
export const pointsOfDisc = 12;
export const discUp = 0.4;

/** Total by which another part of a path must be better before one turns to it: less is no reason to move the camera. CP. */
export const staysWithin = 0.02;

/** Pictures an hour at a fence while something comes, and hours that a camera's battery lasts then. CP. */
export const framesPerHour = 300;
export const batteryHours = 2.5;

/** Degrees from the sun within which a heading carries the caution, and minutes for which a METAR holds. CP. */
export const sunCautionWithin = 15;
export const reportHolds = 90;
/** m within which one stands at a spot of the survey, whatever the position says more exactly. CP. */
export const atSpotWithin = 25;
/** m of a position's accuracy beyond which no figures are told for it, and m from the field beyond which one is not there. CP. */
export const roughFrom = 100;
export const awayFrom = 15_000;
/** Minutes ahead that a change of the light is looked for. CP. */
export const lightAhead = 120;

/** m/s by bicycle with a bag. CP. */
export const cyclingSpeed = 4.2;
/** m from a way's end within which it joins another way: maps leave gaps, and draw paths up to a road's edge. CP. */
export const waysJoinWithin = 12;
/** m that one goes across country from a spot to the nearest way, or to the car. CP. */
export const offWays = 250;

/** m above the ground of the skids in a hover and in hover taxi (FAA AIM 4-3-17: below 25 ft), m/s then (under 20 kt), all CP within that. */
export const hover = { height: 1.5, taxiHeight: 3, taxiSpeed: 8 } as const;

/** m behind a jet's departure end, and to each side, that its blast reaches. CP. */
export const blastLength = 200;
export const blastHalfWidth = 60;
