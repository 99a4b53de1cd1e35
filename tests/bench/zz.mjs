// tests/bench/sweep.bench.ts
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

// src/figures/geometry/angles.ts
var RAD = Math.PI / 180;
var DEG = 180 / Math.PI;
function wrap360(deg) {
  const wrapped = (deg % 360 + 360) % 360;
  return wrapped === 360 ? 0 : wrapped;
}
function acosDeg(cosine) {
  return Math.acos(Math.max(-1, Math.min(1, cosine))) * DEG;
}

// src/figures/geometry/earth.ts
var A = 6378137;
var F = 1 / 298.257223563;
var E2 = F * (2 - F);
var dot = (a, b) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
var minus = (a, b) => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
var along = (a, b, t) => [
  a[0] + b[0] * t,
  a[1] + b[1] * t,
  a[2] + b[2] * t
];
function earthCentred([lng, lat], height) {
  const sinLat = Math.sin(lat * RAD);
  const cosLat = Math.cos(lat * RAD);
  const n = A / Math.sqrt(1 - E2 * sinLat * sinLat);
  const r = (n + height) * cosLat;
  return [r * Math.cos(lng * RAD), r * Math.sin(lng * RAD), (n * (1 - E2) + height) * sinLat];
}
function frameAt(position2) {
  const [lng, lat] = position2;
  const [sinLat, cosLat] = [Math.sin(lat * RAD), Math.cos(lat * RAD)];
  const [sinLng, cosLng] = [Math.sin(lng * RAD), Math.cos(lng * RAD)];
  const w = 1 - E2 * sinLat * sinLat;
  return {
    position: position2,
    origin: earthCentred(position2, 0),
    east: [-sinLng, cosLng, 0],
    north: [-sinLat * cosLng, -sinLat * sinLng, cosLat],
    up: [cosLat * cosLng, cosLat * sinLng, sinLat],
    meridianRadius: A * (1 - E2) / (w * Math.sqrt(w)),
    normalRadius: A / Math.sqrt(w)
  };
}
function radiusAlong(frame, east, north) {
  return 1 / (north * north / frame.meridianRadius + east * east / frame.normalRadius);
}
function placed(frame, x, y, height) {
  const s = Math.hypot(x, y);
  if (s === 0) return along(frame.origin, frame.up, height);
  const [e, n] = [x / s, y / s];
  const radius = radiusAlong(frame, e, n);
  const arc = s / radius;
  const out = (radius + height) * Math.sin(arc);
  const up = height * Math.cos(arc) - 2 * radius * Math.sin(arc / 2) ** 2;
  return along(along(along(frame.origin, frame.east, out * e), frame.north, out * n), frame.up, up);
}
function inFrame(frame, point) {
  const d = minus(point, frame.origin);
  return [dot(d, frame.east), dot(d, frame.north), dot(d, frame.up)];
}
function mapped(frame, position2) {
  const [e, n] = inFrame(frame, earthCentred(position2, 0));
  const out = Math.hypot(e, n);
  if (out === 0) return [0, 0];
  const radius = radiusAlong(frame, e / out, n / out);
  const scale = Math.asin(Math.min(1, out / radius)) * radius / out;
  return [e * scale, n * scale];
}
function positionOf([x, y, z]) {
  const p = Math.hypot(x, y);
  const b = A * (1 - F);
  const theta = Math.atan2(z * A, p * b);
  const ep2 = E2 / (1 - E2);
  const lat = Math.atan2(z + ep2 * b * Math.sin(theta) ** 3, p - E2 * A * Math.cos(theta) ** 3);
  return [Math.atan2(y, x) * DEG, lat * DEG];
}
function groundLine(from, to) {
  const frame = frameAt(from);
  const d = minus(earthCentred(to, 0), frame.origin);
  const chord = Math.hypot(d[0], d[1], d[2]);
  if (chord < 1e-6) return { distance: 0, azimuth: null };
  const [e, n] = [dot(d, frame.east), dot(d, frame.north)];
  const out = Math.hypot(e, n);
  const radius = out > 0 ? radiusAlong(frame, e / out, n / out) : frame.normalRadius;
  return {
    distance: 2 * radius * Math.asin(Math.min(1, chord / (2 * radius))),
    azimuth: wrap360(Math.atan2(e, n) * DEG)
  };
}

// node_modules/suncalc/index.js
var { PI, sin, cos, tan, asin, atan2: atan, acos, sqrt, abs, round } = Math;
var rad = PI / 180;
var dayMs = 1e3 * 60 * 60 * 24;
var J1970 = 2440588;
var J2000 = 2451545;
function toDays(date2) {
  return date2.valueOf() / dayMs - 0.5 + J1970 - J2000;
}
function deltaT(d) {
  const y = 2e3 + d / 365.2425;
  let t;
  if (y < 1920) {
    t = y - 1900;
    return -2.79 + t * (1.494119 + t * (-0.0598939 + t * (61966e-7 - t * 197e-6)));
  }
  if (y < 1941) {
    t = y - 1920;
    return 21.2 + t * (0.84493 + t * (-0.0761 + t * 20936e-7));
  }
  if (y < 1961) {
    t = y - 1950;
    return 29.07 + t * (0.407 + t * (-1 / 233 + t / 2547));
  }
  if (y < 1986) {
    t = y - 1975;
    return 45.45 + t * (1.067 + t * (-1 / 260 - t / 718));
  }
  if (y < 2005) {
    t = y - 2e3;
    return 63.86 + t * (0.3345 + t * (-0.060374 + t * (17275e-7 + t * (651814e-9 + t * 2373599e-11))));
  }
  if (y < 2050) {
    t = y - 2e3;
    return 62.92 + t * (0.32217 + t * 5589e-6);
  }
  t = (y - 1820) / 100;
  return -20 + 32 * t * t - 0.5628 * (2150 - y);
}
function toDaysTT(d) {
  return d + deltaT(d) / 86400;
}
function azimuth(H, phi, dec) {
  return (atan(sin(H), cos(H) * sin(phi) - tan(dec) * cos(phi)) / rad + 540) % 360;
}
function altitude(H, phi, dec) {
  return asin(sin(phi) * sin(dec) + cos(phi) * cos(dec) * cos(H));
}
function siderealTime(d, lw) {
  return rad * (280.46061837 + 360.98564736629 * d) - lw;
}
function astroRefraction(h) {
  if (h < 0) h = 0;
  return 2967e-7 / tan(h + 312536e-8 / (h + 0.08901179));
}
function sunCoords(d) {
  const t = d / 36525;
  const L0 = rad * (280.46646 + t * (36000.76983 + t * 3032e-7));
  const M = rad * (357.52911 + t * (35999.05029 - t * 1537e-7));
  const sinM = sin(M);
  const cosM = cos(M);
  const C = rad * ((1.914602 - t * (4817e-6 + t * 14e-6)) * sinM + // equation of center
  (0.019993 - 101e-6 * t) * 2 * sinM * cosM + 289e-6 * sinM * (3 - 4 * sinM * sinM));
  const Om = rad * (125.04 - 1934.136 * t);
  const L = L0 + C - rad * (569e-5 + 478e-5 * sin(Om));
  const e = rad * (23.439291 - t * (0.0130042 + t * (16e-8 - t * 504e-9))) + rad * 256e-5 * cos(Om);
  return {
    ra: atan(cos(e) * sin(L), cos(L)),
    // 25.6
    dec: asin(sin(e) * sin(L))
    // 25.7
  };
}
function getPosition(date2, lat, lng) {
  const lw = rad * -lng;
  const phi = rad * lat;
  const d = toDays(date2);
  const c = sunCoords(toDaysTT(d));
  const H = siderealTime(d, lw) - c.ra;
  const h = altitude(H, phi, c.dec);
  return {
    azimuth: azimuth(H, phi, c.dec),
    // apparent (refraction-corrected) altitude in degrees
    altitude: (h + astroRefraction(h)) / rad
  };
}
var moonLon = new Int32Array([
  0,
  0,
  1,
  0,
  6288774,
  -20905355,
  2,
  0,
  -1,
  0,
  1274027,
  -3699111,
  2,
  0,
  0,
  0,
  658314,
  -2955968,
  0,
  0,
  2,
  0,
  213618,
  -569925,
  0,
  1,
  0,
  0,
  -185116,
  48888,
  0,
  0,
  0,
  2,
  -114332,
  -3149,
  2,
  0,
  -2,
  0,
  58793,
  246158,
  2,
  -1,
  -1,
  0,
  57066,
  -152138,
  2,
  0,
  1,
  0,
  53322,
  -170733,
  2,
  -1,
  0,
  0,
  45758,
  -204586,
  0,
  1,
  -1,
  0,
  -40923,
  -129620,
  1,
  0,
  0,
  0,
  -34720,
  108743,
  0,
  1,
  1,
  0,
  -30383,
  104755,
  2,
  0,
  0,
  -2,
  15327,
  10321,
  0,
  0,
  1,
  2,
  -12528,
  0,
  0,
  0,
  1,
  -2,
  10980,
  79661,
  4,
  0,
  -1,
  0,
  10675,
  -34782,
  0,
  0,
  3,
  0,
  10034,
  -23210,
  4,
  0,
  -2,
  0,
  8548,
  -21636,
  2,
  1,
  -1,
  0,
  -7888,
  24208,
  2,
  1,
  0,
  0,
  -6766,
  30824,
  1,
  0,
  -1,
  0,
  -5163,
  -8379,
  1,
  1,
  0,
  0,
  4987,
  -16675,
  2,
  -1,
  1,
  0,
  4036,
  -12831,
  2,
  0,
  2,
  0,
  3994,
  -10445,
  4,
  0,
  0,
  0,
  3861,
  -11650,
  2,
  0,
  -3,
  0,
  3665,
  14403,
  0,
  1,
  -2,
  0,
  -2689,
  -7003,
  2,
  0,
  -1,
  2,
  -2602,
  0,
  2,
  -1,
  -2,
  0,
  2390,
  10056,
  1,
  0,
  1,
  0,
  -2348,
  6322,
  2,
  -2,
  0,
  0,
  2236,
  -9884,
  0,
  1,
  2,
  0,
  -2120,
  5751,
  0,
  2,
  0,
  0,
  -2069,
  0,
  2,
  -2,
  -1,
  0,
  2048,
  -4950,
  2,
  0,
  1,
  -2,
  -1773,
  4130,
  2,
  0,
  0,
  2,
  -1595,
  0,
  4,
  -1,
  -1,
  0,
  1215,
  -3958,
  0,
  0,
  2,
  2,
  -1110,
  0,
  3,
  0,
  -1,
  0,
  -892,
  3258,
  2,
  1,
  1,
  0,
  -810,
  2616,
  4,
  -1,
  -2,
  0,
  759,
  -1897,
  0,
  2,
  -1,
  0,
  -713,
  -2117,
  2,
  2,
  -1,
  0,
  -700,
  2354,
  2,
  1,
  -2,
  0,
  691,
  0,
  2,
  -1,
  0,
  -2,
  596,
  0,
  4,
  0,
  1,
  0,
  549,
  -1423,
  0,
  0,
  4,
  0,
  537,
  -1117,
  4,
  -1,
  0,
  0,
  520,
  -1571,
  1,
  0,
  -2,
  0,
  -487,
  -1739,
  2,
  1,
  0,
  -2,
  -399,
  0,
  0,
  0,
  2,
  -2,
  -381,
  -4421,
  1,
  1,
  1,
  0,
  351,
  0,
  3,
  0,
  -2,
  0,
  -340,
  0,
  4,
  0,
  -3,
  0,
  330,
  0,
  2,
  -1,
  2,
  0,
  327,
  0,
  0,
  2,
  1,
  0,
  -323,
  1165,
  1,
  1,
  -1,
  0,
  299,
  0,
  2,
  0,
  3,
  0,
  294,
  0,
  2,
  0,
  -1,
  -2,
  0,
  8752
]);
var moonLat = new Int32Array([
  0,
  0,
  0,
  1,
  5128122,
  0,
  0,
  1,
  1,
  280602,
  0,
  0,
  1,
  -1,
  277693,
  2,
  0,
  0,
  -1,
  173237,
  2,
  0,
  -1,
  1,
  55413,
  2,
  0,
  -1,
  -1,
  46271,
  2,
  0,
  0,
  1,
  32573,
  0,
  0,
  2,
  1,
  17198,
  2,
  0,
  1,
  -1,
  9266,
  0,
  0,
  2,
  -1,
  8822,
  2,
  -1,
  0,
  -1,
  8216,
  2,
  0,
  -2,
  -1,
  4324,
  2,
  0,
  1,
  1,
  4200,
  2,
  1,
  0,
  -1,
  -3359,
  2,
  -1,
  -1,
  1,
  2463,
  2,
  -1,
  0,
  1,
  2211,
  2,
  -1,
  -1,
  -1,
  2065,
  0,
  1,
  -1,
  -1,
  -1870,
  4,
  0,
  -1,
  -1,
  1828,
  0,
  1,
  0,
  1,
  -1794,
  0,
  0,
  0,
  3,
  -1749,
  0,
  1,
  -1,
  1,
  -1565,
  1,
  0,
  0,
  1,
  -1491,
  0,
  1,
  1,
  1,
  -1475,
  0,
  1,
  1,
  -1,
  -1410,
  0,
  1,
  0,
  -1,
  -1344,
  1,
  0,
  0,
  -1,
  -1335,
  0,
  0,
  3,
  1,
  1107,
  4,
  0,
  0,
  -1,
  1021,
  4,
  0,
  -1,
  1,
  833,
  0,
  0,
  1,
  -3,
  777,
  4,
  0,
  -2,
  1,
  671,
  2,
  0,
  0,
  -3,
  607,
  2,
  0,
  2,
  -1,
  596,
  2,
  -1,
  1,
  -1,
  491,
  2,
  0,
  -2,
  1,
  -451,
  0,
  0,
  3,
  -1,
  439,
  2,
  0,
  2,
  1,
  422,
  2,
  0,
  -3,
  -1,
  421,
  2,
  1,
  -1,
  1,
  -366,
  2,
  1,
  0,
  1,
  -351,
  4,
  0,
  0,
  1,
  331,
  2,
  -1,
  1,
  1,
  315,
  2,
  -2,
  0,
  -1,
  302,
  0,
  0,
  1,
  3,
  -283,
  2,
  1,
  1,
  -1,
  -229,
  1,
  1,
  0,
  -1,
  223,
  1,
  1,
  0,
  1,
  223,
  0,
  1,
  -2,
  -1,
  -220,
  2,
  1,
  -1,
  -1,
  -220,
  1,
  0,
  1,
  1,
  -185,
  2,
  -1,
  -2,
  -1,
  181,
  0,
  1,
  2,
  1,
  -177,
  4,
  0,
  -2,
  -1,
  176,
  4,
  -1,
  -1,
  -1,
  166,
  1,
  0,
  1,
  -1,
  -164,
  4,
  0,
  1,
  -1,
  132,
  1,
  0,
  -1,
  -1,
  -119,
  4,
  -1,
  0,
  -1,
  115,
  2,
  -2,
  0,
  1,
  107
]);

// src/figures/light/sun.ts
function sunAt([lng, lat], instant2) {
  const { azimuth: azimuth2, altitude: altitude2 } = getPosition(new Date(instant2), lat, lng);
  const geometricAltitude = withoutRefraction(altitude2);
  return { azimuth: azimuth2, altitude: geometricAltitude + refraction(geometricAltitude), geometricAltitude };
}
function libraryRefraction(trueAltitude) {
  const h = Math.max(0, trueAltitude) * RAD;
  return 2967e-7 / Math.tan(h + 312536e-8 / (h + 0.08901179)) / RAD;
}
function withoutRefraction(apparent) {
  let h = apparent;
  for (let i = 0; i < 6; i++) h = apparent - libraryRefraction(h);
  return h;
}
function refraction(trueAltitude) {
  const h = Math.max(-1, trueAltitude);
  const full = 1.02 / Math.tan((h + 10.3 / (h + 5.11)) * RAD) / 60;
  return trueAltitude < -1 ? full * (trueAltitude + 90) / 89 : full;
}
var sunriseAltitude = -0.833;
var civilTwilightAltitude = -6;

// src/figures/light/sun-there.ts
function sunThere(sun, hidden = false) {
  const [sin2, cos2] = [Math.sin(sun.azimuth * RAD), Math.cos(sun.azimuth * RAD)];
  const level = Math.cos(sun.altitude * RAD);
  return {
    sun,
    east: sin2 * level,
    north: cos2 * level,
    up: Math.sin(sun.altitude * RAD),
    levelEast: sin2,
    levelNorth: cos2,
    hidden
  };
}

// src/figures/sight/site-frame.ts
var last = null;
function siteFrame([lng, lat]) {
  if (last?.lng !== lng || last.lat !== lat) last = { lng, lat, frame: frameAt([lng, lat]) };
  return last.frame;
}
function siteCoordinates(frame, point) {
  const [e, n, u] = inFrame(frame, point);
  const out = Math.hypot(e, n);
  if (out === 0) return [0, 0, u];
  const radius = radiusAlong(frame, e / out, n / out);
  const scale = radius * Math.atan2(out, radius + u) / out;
  const beyond = out * out + u * (2 * radius + u);
  return [e * scale, n * scale, beyond / (Math.hypot(out, radius + u) + radius)];
}

// src/figures/optics/framing.ts
var landscape = { portrait: false, part: "whole" };
var framingOf = (subject, body, fill, hold = landscape) => ({
  length: subject.length,
  span: subject.span,
  height: subject.height,
  radius: Math.max(
    subject.length / 2,
    subject.span / 2,
    Math.hypot(0.45 * subject.length, subject.height / 2)
  ),
  fill,
  sensorWidth: hold.portrait ? body.sensorHeight : body.sensorWidth,
  sensorHeight: hold.portrait ? body.sensorWidth : body.sensorHeight,
  part: hold.part
});
var diagonal35 = Math.hypot(36, 24);
var halfDiagonal = (focalLength, { sensorWidth, sensorHeight }) => Math.atan(Math.hypot(sensorWidth, sensorHeight) / (2 * focalLength)) * 180 / Math.PI;

// src/figures/practice.ts
var taxiSpeed = 7;
var noseAttitude = { approach: 3, ground: 0, climb: 8 };
var usableCrop = 1.5;
var aspectFactors = { noseOn: 0.25, fullFrom: 45, fullTo: 100, tailOn: 0.15 };
var leastFill = 0.75;
var fullestFit = 0.95;
var harshFrom = 45;
var topLitFrom = 60;
var frontLitTo = 60;
var sideLitTo = 110;
var undersideFrom = 30;
var glareMargin = 10;
var litFrom = 0.1;
var noFlankWithin = 10;
var darkFlankFactor = 0.5;
var twilightFactor = 0.2;
var circuitBank = 25;
var startingShutter = 1 / 200;
var cameraRange = { aperture: [1, 32], shutter: [1 / 8e3, 30], iso: [100, 25600] };
var scoreFrom = { good: 0.75, fair: 0.6, poor: 0.4 };
var worthwhileFrom = scoreFrom.fair;

// src/figures/optics/lens-fit.ts
var rounding = 1e-9;
var takenAt = ({ shortest, longest }, needed) => Math.max(shortest, Math.min(longest, needed));
var fillAt = (range, needed, fill) => fill * (takenAt(range, needed) / needed);
function fitOf(filled, fill) {
  if (filled < leastFill * fill - rounding) return "too-short";
  if (filled <= Math.max(fullestFit, fill) + rounding) return "fits";
  return filled <= 1 + rounding ? "tight" : "too-long";
}
function ranked(filled, fill) {
  const fit = fitOf(filled, fill);
  if (fit === "too-short") return filled / (leastFill * fill);
  return fit === "too-long" ? 1 / filled : 1;
}
var beside = (filled, fill) => Math.max(0, leastFill * fill - filled, filled - Math.max(fullestFit, fill));
function settingFor(settings, needed, fill) {
  const bare2 = settings[0];
  if (fitOf(fillAt(bare2, needed, fill), fill) !== "too-short") return bare2;
  let nearest = bare2;
  for (const setting of settings) {
    const filled = fillAt(setting, needed, fill);
    if (fitOf(filled, fill) === "fits") return setting;
    if (beside(filled, fill) < beside(fillAt(nearest, needed, fill), fill) - rounding) nearest = setting;
  }
  return nearest;
}
function lossOf(extender, filled, fill) {
  const fit = fitOf(filled, fill);
  if (fit === "too-short" || fit === "too-long") return 4 - ranked(filled, fill);
  const off = Math.abs(filled - fill);
  return off + (fit === "tight" ? 2 : extender === null ? 0 : 1);
}
var lossRounding = rounding;

// src/figures/optics/reach.ts
function rangesOf(lens) {
  const alone = { shortest: lens.shortest, longest: lens.longest, extender: null };
  const extended = lens.extenders.toSorted((a, b) => a - b).map((x) => ({ shortest: lens.shortest * x, longest: lens.longest * x, extender: x }));
  return [alone, ...extended];
}
function reachOf(kit) {
  const lenses = kit.lenses.map(rangesOf);
  const ranges = lenses.flat();
  const longest = Math.max(0, ...ranges.map((r) => r.longest));
  const shortest = ranges.length > 0 ? Math.min(...ranges.map((r) => r.shortest)) : 0;
  return { lenses, ranges, fill: kit.fill, shortest, longest, usableTo: usableCrop * longest };
}
function reachFactor({ ranges, fill }, needed) {
  let best = 0;
  for (const range of ranges) best = Math.max(best, ranked(fillAt(range, needed, fill), fill));
  return best * best;
}
function takenWith(reach, needed) {
  let [taken, least] = [0, Infinity];
  for (const settings of reach.lenses) {
    const setting = settingFor(settings, needed, reach.fill);
    const loss = lossOf(setting.extender, fillAt(setting, needed, reach.fill), reach.fill);
    if (loss >= least - lossRounding) continue;
    taken = takenAt(setting, needed);
    least = loss;
  }
  return taken;
}
function farReach({ longest }, least) {
  const fits = longest / leastFill;
  return least > fits ? (fits / least) ** 2 : 1;
}

// src/figures/remembered.ts
function remembered(compute) {
  const memory = /* @__PURE__ */ new WeakMap();
  return (key2, ...args) => {
    const known2 = memory.get(key2);
    if (known2 && args.every((arg, i) => same(arg, known2.args[i]))) return known2.answer;
    const answer = compute(key2, ...args);
    memory.set(key2, { args, answer });
    return answer;
  };
}
function same(a, b) {
  if (a === b) return true;
  return Array.isArray(a) && Array.isArray(b) && a.length === b.length && a.every((entry2, i) => entry2 === b[i]);
}
function rememberedLast(compute) {
  let known2 = null;
  return (...args) => {
    const { args: before } = known2 ?? { args: [] };
    if (known2 && args.every((arg, i) => same(arg, before[i]))) return known2.answer;
    known2 = { args, answer: compute(...args) };
    return known2.answer;
  };
}

// node_modules/flatqueue/index.js
var FlatQueue = class {
  /**
   * Creates an empty queue. If `capacity` is provided, the queue is backed by fixed-size typed
   * arrays for better performance and memory use, but can't grow beyond `capacity`. `values` uses
   * `ValuesArray` (default `Float64Array`) and `ids` uses `IdsArray` (default `Uint32Array`); pass
   * narrower constructors like `Uint16Array` if your values or ids are known to fit them.
   *
   * @param {number} [capacity]
   * @param {TypedArrayConstructor} [ValuesArray]
   * @param {TypedArrayConstructor} [IdsArray]
   */
  constructor(capacity = Infinity, ValuesArray = Float64Array, IdsArray = Uint32Array) {
    const fixed = capacity !== Infinity;
    this.ids = fixed ? (
      /** @type {T[]} */
      /** @type {unknown} */
      new IdsArray(capacity)
    ) : [];
    this.values = fixed ? (
      /** @type {number[]} */
      /** @type {unknown} */
      new ValuesArray(capacity)
    ) : [];
    this.capacity = capacity;
    this.length = 0;
  }
  /** Removes all items from the queue. */
  clear() {
    this.length = 0;
  }
  /**
   * Adds `item` to the queue with the specified `priority`.
   *
   * `priority` must be a number. Items are sorted and returned from low to high priority. Multiple items
   * with the same priority value can be added to the queue, but there is no guaranteed order between these items.
   *
   * For fixed-capacity queues, throws a `RangeError` if the queue is already full.
   *
   * @param {T} item
   * @param {number} priority
   */
  push(item, priority) {
    if (this.length === this.capacity) throw new RangeError("Queue is at capacity.");
    let pos = this.length++;
    while (pos > 0) {
      const parent = pos - 1 >> 1;
      const parentValue = this.values[parent];
      if (priority >= parentValue) break;
      this.ids[pos] = this.ids[parent];
      this.values[pos] = parentValue;
      pos = parent;
    }
    this.ids[pos] = item;
    this.values[pos] = priority;
  }
  /**
   * Removes and returns the item from the head of this queue, which is one of
   * the items with the lowest priority. If this queue is empty, returns `undefined`.
   */
  pop() {
    if (this.length === 0) return void 0;
    const ids = this.ids, values = this.values, top = ids[0], last2 = --this.length;
    if (last2 > 0) {
      const id = ids[last2];
      const value = values[last2];
      let pos = 0;
      const halfLen = last2 >> 1;
      while (pos < halfLen) {
        const left = (pos << 1) + 1;
        const right = left + 1;
        const child = left + (+(right < last2) & +(values[right] < values[left]));
        if (values[child] >= value) break;
        ids[pos] = ids[child];
        values[pos] = values[child];
        pos = child;
      }
      ids[pos] = id;
      values[pos] = value;
    }
    return top;
  }
  /** Returns the item from the head of this queue without removing it. If this queue is empty, returns `undefined`. */
  peek() {
    return this.length > 0 ? this.ids[0] : void 0;
  }
  /**
   * Returns the priority value of the item at the head of this queue without
   * removing it. If this queue is empty, returns `undefined`.
   */
  peekValue() {
    return this.length > 0 ? this.values[0] : void 0;
  }
  /**
   * Shrinks the internal arrays to `this.length`. No-op for queues with fixed capacity.
   *
   * `pop()` and `clear()` calls don't free memory automatically to avoid unnecessary resize operations.
   * This also means that items that have been added to the queue can't be garbage collected until
   * a new item is pushed in their place, or this method is called.
   */
  shrink() {
    if (Array.isArray(this.ids)) this.ids.length = this.length;
    if (Array.isArray(this.values)) this.values.length = this.length;
  }
};

// node_modules/flatbush/index.js
var ARRAY_TYPES = [Int8Array, Uint8Array, Uint8ClampedArray, Int16Array, Uint16Array, Int32Array, Uint32Array, Float32Array, Float64Array];
var VERSION = 3;
var Flatbush = class _Flatbush {
  /**
   * Recreate a Flatbush index from raw `ArrayBuffer` or `SharedArrayBuffer` data.
   * @param {ArrayBufferLike} data
   * @param {number} [byteOffset=0] byte offset to the start of the Flatbush buffer in the referenced ArrayBuffer.
   * @returns {Flatbush} index
   */
  static from(data, byteOffset = 0) {
    if (byteOffset % 8 !== 0) {
      throw new Error("byteOffset must be 8-byte aligned.");
    }
    if (!data || data.byteLength === void 0 || "buffer" in data) {
      throw new Error("Data must be an instance of ArrayBuffer or SharedArrayBuffer.");
    }
    const [magic, versionAndType] = new Uint8Array(data, byteOffset + 0, 2);
    if (magic !== 251) {
      throw new Error("Data does not appear to be in a Flatbush format.");
    }
    const version = versionAndType >> 4;
    if (version !== VERSION) {
      throw new Error(`Got v${version} data when expected v${VERSION}.`);
    }
    const ArrayType = ARRAY_TYPES[versionAndType & 15];
    if (!ArrayType) {
      throw new Error("Unrecognized array type.");
    }
    const [nodeSize] = new Uint16Array(data, byteOffset + 2, 1);
    const [numItems] = new Uint32Array(data, byteOffset + 4, 1);
    return new _Flatbush(numItems, nodeSize, ArrayType, void 0, data, byteOffset);
  }
  /**
   * Create a Flatbush index that will hold a given number of items.
   * @param {number} numItems
   * @param {number} [nodeSize=16] Size of the tree node (16 by default).
   * @param {TypedArrayConstructor} [ArrayType=Float64Array] The array type used for coordinates storage (`Float64Array` by default).
   * @param {ArrayBufferConstructor | SharedArrayBufferConstructor} [ArrayBufferType=ArrayBuffer] The array buffer type used to store data (`ArrayBuffer` by default).
   * @param {ArrayBufferLike} [data] (Only used internally)
   * @param {number} [byteOffset=0] (Only used internally)
   */
  constructor(numItems, nodeSize = 16, ArrayType = Float64Array, ArrayBufferType = ArrayBuffer, data, byteOffset = 0) {
    if (numItems === void 0) throw new Error("Missing required argument: numItems.");
    if (isNaN(numItems) || numItems <= 0) throw new Error(`Unexpected numItems value: ${numItems}.`);
    this.numItems = +numItems;
    this.nodeSize = Math.min(Math.max(+nodeSize, 2), 65535);
    this.byteOffset = byteOffset;
    let n = numItems;
    let numNodes = n;
    this._levelBounds = [n * 4];
    do {
      n = Math.ceil(n / this.nodeSize);
      numNodes += n;
      this._levelBounds.push(numNodes * 4);
    } while (n !== 1);
    this.ArrayType = ArrayType;
    this.IndexArrayType = numNodes < 16384 ? Uint16Array : Uint32Array;
    const arrayTypeIndex = ARRAY_TYPES.indexOf(ArrayType);
    const nodesByteSize = numNodes * 4 * ArrayType.BYTES_PER_ELEMENT;
    if (arrayTypeIndex < 0) {
      throw new Error(`Unexpected typed array class: ${ArrayType}.`);
    }
    const BoxCtor = ArrayType;
    const IdxCtor = this.IndexArrayType;
    if (data) {
      this.data = data;
      this._boxes = new BoxCtor(data, byteOffset + 8, numNodes * 4);
      this._indices = new IdxCtor(data, byteOffset + 8 + nodesByteSize, numNodes);
      this._pos = numNodes * 4;
      this.minX = this._boxes[this._pos - 4];
      this.minY = this._boxes[this._pos - 3];
      this.maxX = this._boxes[this._pos - 2];
      this.maxY = this._boxes[this._pos - 1];
    } else {
      const data2 = this.data = new ArrayBufferType(8 + nodesByteSize + numNodes * this.IndexArrayType.BYTES_PER_ELEMENT);
      this._boxes = new BoxCtor(data2, 8, numNodes * 4);
      this._indices = new IdxCtor(data2, 8 + nodesByteSize, numNodes);
      this._pos = 0;
      this.minX = Infinity;
      this.minY = Infinity;
      this.maxX = -Infinity;
      this.maxY = -Infinity;
      new Uint8Array(data2, 0, 2).set([251, (VERSION << 4) + arrayTypeIndex]);
      new Uint16Array(data2, 2, 1)[0] = this.nodeSize;
      new Uint32Array(data2, 4, 1)[0] = numItems;
    }
    this._queue = new FlatQueue();
  }
  /**
   * Add a given rectangle to the index.
   * @param {number} minX
   * @param {number} minY
   * @param {number} maxX
   * @param {number} maxY
   * @returns {number} A zero-based, incremental number that represents the newly added rectangle.
   */
  add(minX, minY, maxX = minX, maxY = minY) {
    const pos = this._pos;
    const index = pos >> 2;
    const boxes = this._boxes;
    this._indices[index] = index;
    boxes[pos] = minX;
    boxes[pos + 1] = minY;
    boxes[pos + 2] = maxX;
    boxes[pos + 3] = maxY;
    this._pos = pos + 4;
    if (minX < this.minX) this.minX = minX;
    if (minY < this.minY) this.minY = minY;
    if (maxX > this.maxX) this.maxX = maxX;
    if (maxY > this.maxY) this.maxY = maxY;
    return index;
  }
  /** Perform indexing of the added rectangles. */
  finish() {
    if (this._pos >> 2 !== this.numItems) {
      throw new Error(`Added ${this._pos >> 2} items when expected ${this.numItems}.`);
    }
    const boxes = this._boxes;
    if (this.numItems <= this.nodeSize) {
      boxes[this._pos++] = this.minX;
      boxes[this._pos++] = this.minY;
      boxes[this._pos++] = this.maxX;
      boxes[this._pos++] = this.maxY;
      return;
    }
    const { numItems, minX, minY, nodeSize, _indices: indices, _levelBounds: levelBounds } = this;
    const width = this.maxX - minX || 1;
    const height = this.maxY - minY || 1;
    const hilbertValues = new Int32Array(numItems);
    const hilbertMax = (1 << 16) - 1;
    const sx = hilbertMax / width;
    const sy = hilbertMax / height;
    for (let i = 0, pos2 = 0; i < numItems; i++) {
      const itemMinX = boxes[pos2++];
      const itemMinY = boxes[pos2++];
      const itemMaxX = boxes[pos2++];
      const itemMaxY = boxes[pos2++];
      const x = sx * ((itemMinX + itemMaxX) / 2 - minX) | 0;
      const y = sy * ((itemMinY + itemMaxY) / 2 - minY) | 0;
      hilbertValues[i] = hilbert(x, y);
    }
    sort(hilbertValues, boxes, indices, 0, numItems - 1, nodeSize);
    let pos = numItems * 4;
    for (let i = 0, readPos = 0; i < levelBounds.length - 1; i++) {
      const end = levelBounds[i];
      while (readPos < end) {
        const nodeIndex = readPos;
        let nodeMinX = boxes[readPos++];
        let nodeMinY = boxes[readPos++];
        let nodeMaxX = boxes[readPos++];
        let nodeMaxY = boxes[readPos++];
        for (let j = 1; j < nodeSize && readPos < end; j++) {
          nodeMinX = Math.min(nodeMinX, boxes[readPos++]);
          nodeMinY = Math.min(nodeMinY, boxes[readPos++]);
          nodeMaxX = Math.max(nodeMaxX, boxes[readPos++]);
          nodeMaxY = Math.max(nodeMaxY, boxes[readPos++]);
        }
        indices[pos >> 2] = nodeIndex;
        boxes[pos++] = nodeMinX;
        boxes[pos++] = nodeMinY;
        boxes[pos++] = nodeMaxX;
        boxes[pos++] = nodeMaxY;
      }
    }
    this._pos = pos;
  }
  /**
   * Search the index by a bounding box.
   * @param {number} minX
   * @param {number} minY
   * @param {number} maxX
   * @param {number} maxY
   * @param {(index: number, x0: number, y0: number, x1: number, y1: number) => boolean} [filterFn] An optional function that is called on every found item; if supplied, only items for which this function returns true will be included in the results array.
   * @returns {number[]} An array of indices of items intersecting or touching the given bounding box.
   */
  search(minX, minY, maxX, maxY, filterFn) {
    if (this._pos !== this._boxes.length) {
      throw new Error("Data not yet indexed - call index.finish().");
    }
    const { _boxes: boxes, _levelBounds: levelBounds, _indices: indices, nodeSize } = this;
    const numItems4 = this.numItems * 4;
    let nodeIndex = boxes.length - 4;
    let level = levelBounds.length - 1;
    const q = [];
    const results = [];
    let contained = false;
    while (nodeIndex !== void 0) {
      const end = Math.min(nodeIndex + nodeSize * 4, levelBounds[level]);
      const isNode = nodeIndex >= numItems4;
      if (contained) {
        this._collectContained(nodeIndex, end, level, numItems4, results, filterFn);
      } else {
        for (let pos = nodeIndex; pos < end; pos += 4) {
          const x0 = boxes[pos];
          if (maxX < x0) continue;
          const y0 = boxes[pos + 1];
          if (maxY < y0) continue;
          const x1 = boxes[pos + 2];
          if (minX > x1) continue;
          const y1 = boxes[pos + 3];
          if (minY > y1) continue;
          const index = indices[pos >> 2] | 0;
          if (isNode) {
            const c = +(minX <= x0 && minY <= y0 && maxX >= x1 && maxY >= y1);
            q.push(index | c, level - 1);
          } else if (filterFn === void 0 || filterFn(index, x0, y0, x1, y1)) {
            results.push(index);
          }
        }
      }
      level = /** @type {number} */
      q.pop();
      nodeIndex = q.pop();
      if (nodeIndex !== void 0) {
        contained = (nodeIndex & 1) === 1;
        nodeIndex &= ~1;
      }
    }
    return results;
  }
  /**
   * Collect all leaves of a subtree that's fully inside the query, skipping intersection tests.
   * Because the tree is packed bottom-up, those leaves occupy one contiguous block of the leaf
   * level, so we skip traversal entirely: descend to the first leaf, then sweep the flat range.
   * @param {number} nodeIndex
   * @param {number} end
   * @param {number} level
   * @param {number} numItems4
   * @param {number[]} results
   * @param {((index: number, x0: number, y0: number, x1: number, y1: number) => boolean) | undefined} filterFn
   */
  _collectContained(nodeIndex, end, level, numItems4, results, filterFn) {
    const boxes = this._boxes;
    const indices = this._indices;
    let pos = nodeIndex;
    for (let l = level; l > 0; l--) pos = indices[pos >> 2];
    const leafEnd = Math.min(pos + (end - nodeIndex) * this.nodeSize ** level, numItems4);
    if (filterFn === void 0) {
      for (; pos < leafEnd; pos += 4) results.push(indices[pos >> 2] | 0);
    } else {
      for (; pos < leafEnd; pos += 4) {
        const index = indices[pos >> 2] | 0;
        if (filterFn(index, boxes[pos], boxes[pos + 1], boxes[pos + 2], boxes[pos + 3])) results.push(index);
      }
    }
  }
  /**
   * Check whether any item intersects or touches a bounding box, stopping at the first match.
   * @param {number} minX
   * @param {number} minY
   * @param {number} maxX
   * @param {number} maxY
   * @param {(index: number, x0: number, y0: number, x1: number, y1: number) => boolean} [filterFn] An optional function that is called on found items; if supplied, only items for which this function returns true count as a match.
   * @returns {boolean} Whether a matching item was found.
   */
  collides(minX, minY, maxX, maxY, filterFn) {
    if (this._pos !== this._boxes.length) {
      throw new Error("Data not yet indexed - call index.finish().");
    }
    const { _boxes: boxes, _levelBounds: levelBounds, _indices: indices, nodeSize } = this;
    const numItems4 = this.numItems * 4;
    let nodeIndex = boxes.length - 4;
    let level = levelBounds.length - 1;
    const q = [];
    while (nodeIndex !== void 0) {
      const end = Math.min(nodeIndex + nodeSize * 4, levelBounds[level]);
      const isNode = nodeIndex >= numItems4;
      for (let pos = nodeIndex; pos < end; pos += 4) {
        const x0 = boxes[pos];
        if (maxX < x0) continue;
        const y0 = boxes[pos + 1];
        if (maxY < y0) continue;
        const x1 = boxes[pos + 2];
        if (minX > x1) continue;
        const y1 = boxes[pos + 3];
        if (minY > y1) continue;
        const index = indices[pos >> 2] | 0;
        if (isNode) {
          q.push(index, level - 1);
        } else if (filterFn === void 0 || filterFn(index, x0, y0, x1, y1)) {
          return true;
        }
      }
      level = /** @type {number} */
      q.pop();
      nodeIndex = q.pop();
    }
    return false;
  }
  /**
   * Search items in order of distance from the given point.
   * @param {number} x
   * @param {number} y
   * @param {number} [maxResults=Infinity]
   * @param {number} [maxDistance=Infinity]
   * @param {(index: number) => boolean} [filterFn] An optional function for filtering the results.
   * @returns {number[]} An array of indices of items found.
   */
  neighbors(x, y, maxResults = Infinity, maxDistance = Infinity, filterFn) {
    if (this._pos !== this._boxes.length) {
      throw new Error("Data not yet indexed - call index.finish().");
    }
    const { _boxes: boxes, _levelBounds: levelBounds, _indices: indices, _queue: q, nodeSize } = this;
    const numItems4 = this.numItems * 4;
    const nodeSize4 = nodeSize * 4;
    const results = [];
    const maxDistSquared = maxDistance * maxDistance;
    const trackNearest = maxResults === 1;
    let bound = maxDistSquared;
    q.push(boxes.length - 4 << 1, 0);
    while (q.length) {
      const top = q.ids[0];
      if (top & 1) {
        q.pop();
        results.push(top >> 1);
        if (results.length === maxResults) break;
        continue;
      }
      q.pop();
      const nodeIndex = top >> 1;
      const isLeafLevel = nodeIndex < numItems4;
      const end = Math.min(nodeIndex + nodeSize4, upperBound(nodeIndex, levelBounds));
      for (let pos = nodeIndex; pos < end; pos += 4) {
        const minX = boxes[pos];
        const minY = boxes[pos + 1];
        const maxX = boxes[pos + 2];
        const maxY = boxes[pos + 3];
        const dx = Math.max(Math.max(minX - x, x - maxX), 0);
        const dy = Math.max(Math.max(minY - y, y - maxY), 0);
        const dist = dx * dx + dy * dy;
        if (dist > bound) continue;
        const childIndex = indices[pos >> 2] | 0;
        if (isLeafLevel) {
          if (filterFn === void 0 || filterFn(childIndex)) {
            q.push(childIndex << 1 | 1, dist);
            if (trackNearest && dist < bound) bound = dist;
          }
        } else {
          q.push(childIndex << 1, dist);
        }
      }
    }
    q.clear();
    return results;
  }
};
function upperBound(value, arr) {
  let i = 0;
  let j = arr.length - 1;
  while (i < j) {
    const m = i + j >> 1;
    if (arr[m] > value) {
      j = m;
    } else {
      i = m + 1;
    }
  }
  return arr[i];
}
function sort(values, boxes, indices, left, right, nodeSize) {
  const stack = [left, right];
  while (stack.length) {
    const r = stack.pop() || 0;
    const l = stack.pop() || 0;
    if (r - l <= nodeSize && Math.floor(l / nodeSize) >= Math.floor(r / nodeSize)) continue;
    const a = values[l];
    const b = values[l + r >> 1];
    const c = values[r];
    const pivot = a > b !== a > c ? a : b < a !== b < c ? b : c;
    let i = l - 1;
    let j = r + 1;
    while (true) {
      do
        i++;
      while (values[i] < pivot);
      do
        j--;
      while (values[j] > pivot);
      if (i >= j) break;
      swap(values, boxes, indices, i, j);
    }
    stack.push(l, j, j + 1, r);
  }
}
function swap(values, boxes, indices, i, j) {
  const temp = values[i];
  values[i] = values[j];
  values[j] = temp;
  const k = 4 * i;
  const m = 4 * j;
  const a = boxes[k];
  const b = boxes[k + 1];
  const c = boxes[k + 2];
  const d = boxes[k + 3];
  boxes[k] = boxes[m];
  boxes[k + 1] = boxes[m + 1];
  boxes[k + 2] = boxes[m + 2];
  boxes[k + 3] = boxes[m + 3];
  boxes[m] = a;
  boxes[m + 1] = b;
  boxes[m + 2] = c;
  boxes[m + 3] = d;
  const e = indices[i];
  indices[i] = indices[j];
  indices[j] = e;
}
function hilbert(x, y) {
  let a = x ^ y;
  let b = 65535 ^ a;
  let c = 65535 ^ (x | y);
  let d = x & (y ^ 65535);
  let A2 = a | b >> 1;
  let B = a >> 1 ^ a;
  let C = c ^ (c >> 1 ^ b & d >> 1);
  let D = d ^ (a & c >> 1 ^ d >> 1);
  a = A2 & A2 >> 2 ^ B & B >> 2;
  b = A2 & B >> 2 ^ B & (A2 ^ B) >> 2;
  c = C ^ (A2 & C >> 2 ^ B & D >> 2);
  d = D ^ (B & C >> 2 ^ (A2 ^ B) & D >> 2);
  A2 = a & a >> 4 ^ b & b >> 4;
  B = a & b >> 4 ^ b & (a ^ b) >> 4;
  C = c ^ (a & c >> 4 ^ b & d >> 4);
  D = d ^ (b & c >> 4 ^ (a ^ b) & d >> 4);
  c = C ^ (A2 & C >> 8 ^ B & D >> 8);
  d = D ^ (B & C >> 8 ^ (A2 ^ B) & D >> 8);
  c ^= c >> 1;
  d ^= d >> 1;
  a = x ^ y;
  b = d | 65535 ^ (a | c);
  a = (a | a << 8) & 16711935;
  a = (a | a << 4) & 252645135;
  a = (a | a << 2) & 858993459;
  a = (a | a << 1) & 1431655765;
  b = (b | b << 8) & 16711935;
  b = (b | b << 4) & 252645135;
  b = (b | b << 2) & 858993459;
  b = (b | b << 1) & 1431655765;
  return ((b << 1 | a) >>> 0) - 2147483648;
}

// src/survey/schema/sights.ts
var sights = {
  solid: { inLeaf: "hides", bare: "hides", level: true, looks: "wall", width: 0 },
  mesh: { inLeaf: "veils", bare: "veils", level: true, looks: "wires", width: 0 },
  leaf: { inLeaf: "hides", bare: "opens", level: false, looks: "leaves", width: 0 },
  // Twigs without leaves veil more than they hide; a clipped field hedge is about a metre across. CP.
  hedge: { inLeaf: "hides", bare: "veils", level: false, looks: "leaves", width: 1 }
};
var sightKinds = Object.keys(sights);
var sightOf = (sight) => sights[sight];
var isLeafy = (sight) => sights[sight].inLeaf !== sights[sight].bare;
var leafSeason = {
  north: [4, 5, 6, 7, 8, 9, 10],
  south: [10, 11, 12, 1, 2, 3, 4]
};

// src/figures/sight/curvature.ts
var refractionCoefficient = 0.13;
var sinkPerSquareMetre = ({ meridianRadius, normalRadius }, k = refractionCoefficient) => (1 - k) / (2 * Math.sqrt(meridianRadius * normalRadius));

// src/figures/geometry/along-runway.ts
var shortestRunway = 1;
var lines = /* @__PURE__ */ new WeakMap();
function lineOf(runway) {
  const known2 = lines.get(runway);
  if (known2 !== void 0) return known2;
  const { distance: length2, azimuth: azimuth2 } = groundLine(runway.line[0], runway.line[1]);
  const radians = (azimuth2 ?? 0) * Math.PI / 180;
  const line = azimuth2 === null || length2 < shortestRunway ? null : {
    frame: frameAt(runway.line[0]),
    azimuth: azimuth2,
    length: length2,
    east: Math.sin(radians),
    north: Math.cos(radians)
  };
  lines.set(runway, line);
  return line;
}
function alongRunway(runway, position2) {
  const line = lineOf(runway);
  if (!line) return null;
  const [x, y] = mapped(line.frame, position2);
  return {
    station: x * line.east + y * line.north,
    offset: x * line.north - y * line.east,
    length: line.length,
    azimuth: line.azimuth
  };
}

// src/figures/traffic/samples.ts
var sampleStep = 20;
var mostSamples = 5e4;
function stationsBetween(from, to) {
  const sign = Math.sign(to - from);
  if (sign === 0) return [from];
  const stations = [from];
  const edge = 1e-6;
  const step = sampleStep * Math.max(1, Math.ceil(Math.abs(to - from) / sampleStep / mostSamples));
  const steps = Math.abs(to - from) / step + 1;
  const first = sign > 0 ? Math.ceil((from + edge) / step) : Math.floor((from - edge) / step);
  for (let k = 0; k <= steps; k++) {
    const station = (first + sign * k) * step;
    if (sign * (to - station) <= edge) break;
    stations.push(station);
  }
  return [...stations, to];
}
function sampled(stations, stateAt2, headingKnown = true) {
  const count2 = stations.length;
  const samples = {
    count: count2,
    station: Float64Array.from(stations),
    centre: new Float64Array(3 * count2),
    forward: new Float64Array(3 * count2),
    up: new Float64Array(3 * count2),
    slope: new Float64Array(count2),
    attitude: new Float64Array(count2),
    height: new Float64Array(count2),
    share: new Float64Array(count2),
    speed: new Float64Array(count2),
    headingKnown
  };
  stations.forEach((station, i) => {
    const state = stateAt2(station);
    samples.centre.set(state.centre, 3 * i);
    samples.forward.set(state.forward, 3 * i);
    samples.up.set(state.up, 3 * i);
    samples.slope[i] = state.slope;
    samples.attitude[i] = state.attitude * RAD;
    samples.height[i] = state.height;
    samples.speed[i] = state.speed;
    const before = stations[i - 1] ?? station;
    const after = stations[i + 1] ?? station;
    samples.share[i] = Math.abs(after - before) / 2;
  });
  return samples;
}
function axesAt(frame, x, y, east, north) {
  const s = Math.hypot(x, y);
  const direction = along(along([0, 0, 0], frame.east, east), frame.north, north);
  if (s === 0) return { forward: direction, up: frame.up };
  const [e, n] = [x / s, y / s];
  const outward = along(along([0, 0, 0], frame.east, e), frame.north, n);
  const arc = s / radiusAlong(frame, e, n);
  const [sin2, cos2] = [Math.sin(arc), Math.cos(arc)];
  const radial = e * east + n * north;
  const tilted = along(along([0, 0, 0], outward, cos2 - 1), frame.up, -sin2);
  return {
    forward: along(direction, tilted, radial),
    up: along(along([0, 0, 0], frame.up, cos2), outward, sin2)
  };
}
function levelled(direction, up) {
  const level = along(direction, up, -dot(direction, up));
  const length2 = Math.hypot(level[0], level[1], level[2]);
  return length2 > 0 ? [level[0] / length2, level[1] / length2, level[2] / length2] : level;
}

// src/figures/traffic/runway-geometry.ts
var longestFlown = 2e4;
function endElevations(runway, fieldElevation2) {
  const [a, b] = [runway.ends[0].elevation, runway.ends[1].elevation];
  return [a ?? b ?? fieldElevation2, b ?? a ?? fieldElevation2];
}
function endGeometry(runway, end, fieldElevation2) {
  const here = runway.line[end];
  const { distance: length2, azimuth: azimuth2 } = groundLine(here, runway.line[end === 0 ? 1 : 0]);
  if (azimuth2 === null || length2 < shortestRunway || length2 > longestFlown) return null;
  const elevations = endElevations(runway, fieldElevation2);
  const elevation = elevations[end];
  const slope = (elevations[end === 0 ? 1 : 0] - elevation) / length2;
  const displaced = Math.min(runway.ends[end].displaced, length2);
  return {
    runway,
    end,
    frame: frameAt(here),
    bearing: azimuth2,
    east: Math.sin(azimuth2 * RAD),
    north: Math.cos(azimuth2 * RAD),
    length: length2,
    displaced,
    slope,
    elevation,
    thresholdElevation: elevation + slope * displaced
  };
}
var pavementAt = (geometry, t) => geometry.elevation + geometry.slope * t;
function onCentreline(geometry, t, centreHeight) {
  const [x, y] = [t * geometry.east, t * geometry.north];
  return {
    centre: placed(geometry.frame, x, y, centreHeight),
    ...axesAt(geometry.frame, x, y, geometry.east, geometry.north)
  };
}

// src/figures/sight/terrain.ts
var terrainIn = remembered((grid, frame) => {
  const { columns, rows, heights, stepLng, stepLat } = grid;
  const [lng, lat] = frame.position;
  const { meridianRadius, normalRadius } = frame;
  const tan2 = Math.tan(lat * RAD);
  const perNorth = DEG / meridianRadius / stepLat;
  const perEast = DEG / (normalRadius * Math.cos(lat * RAD)) / stepLng;
  const bend = -tan2 / (2 * normalRadius);
  const spread2 = tan2 / normalRadius;
  const middleColumn = ((lng - grid.west + 180) % 360 + 360) % 360 / stepLng - 180 / stepLng;
  const middleRow = (grid.north - lat) / stepLat;
  const heightAt = (east, north) => {
    const x = middleColumn + east * perEast * (1 + spread2 * north);
    const y = middleRow - (north + bend * east * east) * perNorth;
    if (!(x >= -0.5 && y >= -0.5 && x <= columns - 0.5 && y <= rows - 0.5)) return NaN;
    const column = x <= 0 ? 0 : x >= columns - 1 ? Math.max(0, columns - 2) : Math.floor(x);
    const row = y <= 0 ? 0 : y >= rows - 1 ? Math.max(0, rows - 2) : Math.floor(y);
    const u = Math.max(0, Math.min(1, x - column));
    const v = Math.max(0, Math.min(1, y - row));
    const at = row * columns + column;
    const right = columns > 1 ? 1 : 0;
    const down = rows > 1 ? columns : 0;
    const a = heights[at];
    const b = heights[at + right];
    const c = heights[at + down];
    const d = heights[at + down + right];
    const height = (a + (b - a) * u) * (1 - v) + (c + (d - c) * u) * v;
    return height === height ? height : ofTheKnown(a, b, c, d, u, v);
  };
  let highest = -Infinity;
  for (const height of heights) if (height > highest) highest = height;
  return {
    frame,
    heightAt,
    highest,
    // Half a cell: no crest between two samples is stepped over.
    step: Math.max(1, Math.min(meridianRadius * stepLat / DEG, 1 / perEast) / 2)
  };
});
function ofTheKnown(a, b, c, d, u, v) {
  let [sum, weights] = [0, 0];
  const corners = [
    [a, (1 - u) * (1 - v)],
    [b, u * (1 - v)],
    [c, (1 - u) * v],
    [d, u * v]
  ];
  for (const [height, weight] of corners) {
    if (Number.isNaN(height)) continue;
    sum += height * weight;
    weights += weight;
  }
  return weights > 0 ? sum / weights : NaN;
}
function terrainAt(terrain, position2) {
  const height = terrain.heightAt(...mapped(terrain.frame, position2));
  return Number.isNaN(height) ? null : height;
}

// src/figures/sight/ground.ts
function groundUnder(spot, runways, field, terrain = null) {
  if (spot.ground !== null) return { elevation: spot.ground, from: "stated" };
  return groundAt(spot.position, runways, field, terrain);
}
function groundAt(position2, runways, field, terrain) {
  const known2 = terrain && terrainAt(terrain, position2);
  if (known2 !== null) return { elevation: known2, from: "terrain" };
  let nearest = null;
  for (const runway of runways) {
    const place = alongRunway(runway, position2);
    if (!place) continue;
    const t = Math.max(0, Math.min(place.length, place.station));
    const distance = Math.hypot(place.offset, place.station - t);
    if (nearest && nearest.distance <= distance) continue;
    const [a, b] = endElevations(runway, field);
    nearest = { distance, elevation: a + (b - a) * t / place.length };
  }
  return nearest ? { elevation: nearest.elevation, from: "runway" } : { elevation: field, from: "site" };
}

// src/figures/sight/outline.ts
var longestCorner = 3;
var outlineOf = remembered(({ rings, line, width, sight }) => {
  if (rings.length > 0) return { chains: rings, closed: true };
  const across = width ?? sightOf(sight).width;
  const band = across > 0 ? bandRound(line, across) : null;
  return band ? { chains: [band], closed: true } : { chains: [line], closed: false };
});
function bandRound(line, width) {
  const [first] = line;
  if (!first) return null;
  const frame = frameAt(first);
  const points3 = [];
  for (const [x, y] of line.map((position2) => mapped(frame, position2))) {
    const last2 = points3.at(-1);
    if (!last2 || Math.hypot(x - last2[0], y - last2[1]) > 0.01) points3.push([x, y]);
  }
  if (points3.length < 2) return null;
  const lefts = points3.slice(1).map(([x, y], i) => {
    const [x0, y0] = points3[i];
    const length2 = Math.hypot(x - x0, y - y0);
    return [-(y - y0) / length2, (x - x0) / length2];
  });
  const edge = (half) => points3.map(([x, y], i) => {
    const [ax, ay] = lefts[i - 1] ?? lefts[i];
    const [bx, by] = lefts[i] ?? lefts[i - 1];
    const [sx, sy] = [ax + bx, ay + by];
    const squared = sx * sx + sy * sy;
    const out = squared > 0 ? Math.min(2 / squared, longestCorner / Math.sqrt(squared)) : 0;
    return positionOf(placed(frame, x + half * out * sx, y + half * out * sy, 0));
  });
  const left = edge(width / 2);
  return [...left, ...edge(-width / 2).reverse(), left[0]];
}

// src/figures/sight/top-edges.ts
var perEdge = 6;
var topEdges = remembered(
  (obstacle, frame, runways, field, terrain) => {
    const { chains: outline, closed: closed2 } = outlineOf(obstacle);
    const flat = obstacle.rings.length > 0 && sightOf(obstacle.sight).level;
    const depth = obstacle.underside > 0 ? obstacle.height - obstacle.underside : Infinity;
    const step = terrain && !flat && obstacle.base === null ? terrain.step : Infinity;
    const chains = outline.map((chain) => inPieces(chain, frame, step));
    const ground = (position2) => obstacle.base ?? groundAt(position2, runways, field, terrain).elevation;
    const feet = chains.map((chain) => chain.map(ground));
    const lowest = Math.min(...feet.map((chain) => Math.min(...chain)));
    const count2 = chains.reduce((sum, chain) => sum + Math.max(0, chain.length - 1), 0);
    const edges = new Float64Array(count2 * perEdge);
    let [west, south, east, north, top] = [Infinity, Infinity, -Infinity, -Infinity, -Infinity];
    let k = 0;
    chains.forEach((chain, c) => {
      let before = null;
      chain.forEach((position2, i) => {
        const [x, y] = mapped(frame, position2);
        const z = (flat ? lowest : feet[c]?.[i] ?? lowest) + obstacle.height;
        west = Math.min(west, x);
        east = Math.max(east, x);
        south = Math.min(south, y);
        north = Math.max(north, y);
        top = Math.max(top, z);
        if (before) {
          edges.set([...before, x, y, z], k);
          k += perEdge;
        }
        before = [x, y, z];
      });
    });
    return { edges, count: count2, west, south, east, north, top, closed: closed2, depth };
  }
);
function inPieces(chain, frame, step) {
  if (step === Infinity) return chain;
  const out = [];
  let before = null;
  for (const vertex of chain) {
    if (before) {
      const [x0, y0] = mapped(frame, before);
      const [x1, y1] = mapped(frame, vertex);
      const pieces = Math.min(1e3, Math.ceil(Math.hypot(x1 - x0, y1 - y0) / step));
      for (let i = 1; i < pieces; i++) {
        const t = i / pieces;
        out.push(positionOf(placed(frame, x0 + (x1 - x0) * t, y0 + (y1 - y0) * t, 0)));
      }
    }
    out.push(vertex);
    before = vertex;
  }
  return out;
}
function isWithin({ edges, count: count2 }, x, y) {
  let inside = false;
  for (let k = 0; k < count2 * perEdge; k += perEdge) {
    const [x0, y0] = [edges[k], edges[k + 1]];
    const [x1, y1] = [edges[k + 3], edges[k + 4]];
    if (y0 > y !== y1 > y && x < x0 + (y - y0) * (x1 - x0) / (y1 - y0)) inside = !inside;
  }
  return inside;
}

// src/figures/sight/surroundings.ts
var surroundings = rememberedLast(
  (obstacles, runways, field, frame, terrain) => {
    if (obstacles.length === 0 && !terrain) return null;
    const tops = obstacles.map((obstacle) => topEdges(obstacle, frame, runways, field, terrain));
    const index = tops.length > 0 ? new Flatbush(tops.length) : null;
    for (const { west, south, east, north } of tops) index?.add(west, south, east, north);
    index?.finish();
    return {
      frame,
      sink: sinkPerSquareMetre(frame),
      obstacles,
      tops,
      highestTop: tops.reduce((highest, { top }) => Math.max(highest, top), -Infinity),
      terrain,
      leafy: obstacles.some((o) => isLeafy(o.sight)),
      near: (west, south, east, north) => index?.search(west, south, east, north) ?? []
    };
  }
);
var open = 0;
var blocks = 1;
var mesh = 2;
var numberFor = { opens: open, hides: blocks, veils: mesh };
function standing({ obstacles, frame }, month) {
  return Uint8Array.from(obstacles, (obstacle) => {
    const { inLeaf, bare: bare2 } = sightOf(obstacle.sight);
    return numberFor[monthsInLeaf(obstacle, frame.position).includes(month) ? inLeaf : bare2];
  });
}
function monthsInLeaf({ leafMonths }, [, lat]) {
  if (leafMonths.length > 0) return leafMonths;
  return lat >= 0 ? leafSeason.north : leafSeason.south;
}

// src/figures/geometry/compass.ts
var points = [
  "north",
  "north-east",
  "east",
  "south-east",
  "south",
  "south-west",
  "west",
  "north-west"
];
function compassPoint(bearing) {
  return points[Math.round(wrap360(bearing) / 45) % 8];
}

// src/figures/traffic/arrival.ts
var arrivalBegins = 1e4;
function arrivalProfile(geometry, subject) {
  const { runway, end, slope, displaced, length: length2, thresholdElevation } = geometry;
  const glideSlope = Math.tan((subject.approachAngle ?? runway.ends[end].glide) * RAD);
  const crossing = subject.crossingHeight ?? runway.ends[end].crossingHeight;
  const landingDistance = length2 - displaced;
  const closing = glideSlope + slope;
  const flare = closing > 0 ? Math.min(crossing / closing, landingDistance) : landingDistance;
  const rollOut = Math.min(flare + subject.landingRun, landingDistance);
  return {
    contact: -flare,
    end: -rollOut,
    glideSlope,
    wheelsAt: (station) => station >= -flare ? thresholdElevation + crossing + station * glideSlope : pavementAt(geometry, displaced - station)
  };
}
function arrivalState(geometry, subject, profile, station) {
  const airborne = station > profile.contact;
  const centreHeight = profile.wheelsAt(station) + subject.height / 2;
  return {
    ...onCentreline(geometry, geometry.displaced - station, centreHeight),
    slope: airborne ? -profile.glideSlope : geometry.slope,
    attitude: airborne ? subject.approachAttitude ?? noseAttitude.approach : noseAttitude.ground,
    height: centreHeight - geometry.thresholdElevation,
    speed: airborne ? subject.approachSpeed : rollingSpeed(subject, profile, station)
  };
}
function rollingSpeed(subject, { contact, end }, station) {
  const done = contact === end ? 0 : (contact - station) / (contact - end);
  const [v0, v1] = [subject.approachSpeed, Math.min(taxiSpeed, subject.approachSpeed)];
  return Math.sqrt(v0 * v0 + (v1 * v1 - v0 * v0) * done);
}
function arrivalSamples(geometry, subject) {
  const profile = arrivalProfile(geometry, subject);
  return sampled(
    stationsBetween(arrivalBegins, profile.end),
    (station) => arrivalState(geometry, subject, profile, station)
  );
}

// src/figures/traffic/departure.ts
var departureEnds = 6e3;
var liftOff = (geometry, subject) => Math.min(subject.groundRun, geometry.length);
function departureState(geometry, subject, station) {
  const run = liftOff(geometry, subject);
  const airborne = station > run;
  const wheels = airborne ? pavementAt(geometry, run) + subject.climbGradient * (station - run) : pavementAt(geometry, station);
  const centreHeight = wheels + subject.height / 2;
  return {
    ...onCentreline(geometry, station, centreHeight),
    slope: airborne ? subject.climbGradient : geometry.slope,
    attitude: airborne ? subject.climbAttitude ?? noseAttitude.climb : noseAttitude.ground,
    height: centreHeight - geometry.elevation,
    // Constant acceleration from standstill to lift-off.
    speed: airborne || run === 0 ? subject.climbSpeed : subject.climbSpeed * Math.sqrt(station / run)
  };
}
function departureSamples(geometry, subject) {
  return sampled(
    stationsBetween(0, geometry.length + departureEnds),
    (station) => departureState(geometry, subject, station)
  );
}

// src/figures/traffic/circuit.ts
var foot = 0.3048;
var nauticalMile = 1852;
var abeam = 0.75 * nauticalMile;
var crosswindBelow = 300 * foot;
var gravity = 9.80665;
function circuitHeight(subject) {
  return (subject.propulsion === "jet" ? 1500 : subject.propulsion === "rotor" ? 500 : 1e3) * foot;
}
function leg(u, v, du, dv, length2) {
  return { length: length2, at: (s) => ({ u: u + du * s, v: v + dv * s, du, dv }) };
}
function corner(u, v, du, dv, radius) {
  const [nu, nv] = [-dv, du];
  return {
    length: radius * Math.PI / 2,
    at: (s) => {
      const [sin2, cos2] = [Math.sin(s / radius), Math.cos(s / radius)];
      return {
        u: u + radius * (du * sin2 + nu * (1 - cos2)),
        v: v + radius * (dv * sin2 + nv * (1 - cos2)),
        du: du * cos2 + nu * sin2,
        dv: dv * cos2 + nv * sin2
      };
    }
  };
}
function circuitSamples(geometry, subject, fieldElevation2) {
  const profile = arrivalProfile(geometry, subject);
  const top = fieldElevation2 + circuitHeight(subject);
  const radius = Math.min(subject.approachSpeed ** 2 / (gravity * Math.tan(circuitBank * RAD)), 0.45 * abeam);
  const run = liftOff(geometry, subject);
  const lifted = pavementAt(geometry, run);
  const climbed = Math.max(0, (top - crosswindBelow - lifted) / subject.climbGradient);
  const start = run - geometry.displaced;
  const turnAt = Math.max(start + climbed, geometry.length - geometry.displaced);
  const pieces = [
    leg(start, 0, 1, 0, turnAt - start),
    corner(turnAt, 0, 1, 0, radius),
    leg(turnAt + radius, radius, 0, 1, abeam - 2 * radius),
    corner(turnAt + radius, abeam - radius, 0, 1, radius),
    leg(turnAt, abeam, -1, 0, turnAt + abeam),
    corner(-abeam, abeam, -1, 0, radius),
    leg(-abeam - radius, abeam - radius, 0, -1, abeam - 2 * radius),
    corner(-abeam - radius, radius, 0, -1, radius),
    // The base turn began 0.75 NM out, and the turn on to final ends there: final is as long.
    leg(-abeam, 0, 1, 0, abeam)
  ];
  const total = pieces.reduce((sum, piece) => sum + piece.length, 0);
  const finalFrom = abeam;
  const descendFrom = finalFrom + 2 * (radius * Math.PI) / 2 + (abeam - 2 * radius) + abeam;
  const sinkTo = Math.min(profile.wheelsAt(finalFrom), top);
  const wheelsAt = (station) => {
    if (station <= finalFrom) {
      const wheels2 = profile.wheelsAt(station);
      return wheels2 < top ? { wheels: wheels2, slope: -profile.glideSlope } : { wheels: top, slope: 0 };
    }
    if (station <= descendFrom) {
      const slope = (top - sinkTo) / (descendFrom - finalFrom);
      return { wheels: sinkTo + slope * (station - finalFrom), slope: -slope };
    }
    const wheels = lifted + subject.climbGradient * (total - station);
    return wheels < top ? { wheels, slope: subject.climbGradient } : { wheels: top, slope: 0 };
  };
  const side = geometry.runway.ends[geometry.end].circuit === "left" ? 1 : -1;
  return sampled(stationsBetween(total, profile.end), (station) => {
    if (station <= 0) return arrivalState(geometry, subject, profile, station);
    const { u, v, du, dv } = along2(pieces, total - station);
    const { wheels, slope } = wheelsAt(station);
    return stateAt(geometry, subject, { u, v: side * v, du, dv: side * dv, wheels, slope });
  });
}
function along2(pieces, distance) {
  let from = 0;
  for (const piece of pieces) {
    if (distance <= from + piece.length) return piece.at(Math.max(0, distance - from));
    from += piece.length;
  }
  const last2 = pieces[pieces.length - 1];
  return last2.at(last2.length);
}
function stateAt(geometry, subject, place) {
  const { east, north, frame, displaced, thresholdElevation } = geometry;
  const t = place.u + displaced;
  const [x, y] = [t * east - place.v * north, t * north + place.v * east];
  const centreHeight = place.wheels + subject.height / 2;
  const climbing = place.slope > 0;
  return {
    centre: placed(frame, x, y, centreHeight),
    ...axesAt(frame, x, y, place.du * east - place.dv * north, place.du * north + place.dv * east),
    slope: place.slope,
    attitude: climbing ? subject.climbAttitude ?? noseAttitude.climb : subject.approachAttitude ?? noseAttitude.approach,
    height: centreHeight - thresholdElevation,
    speed: climbing ? subject.climbSpeed : subject.approachSpeed
  };
}

// src/figures/traffic/flight-path.ts
function flightPathSamples(path, subject, datum) {
  const lift = path.source === "drawn" ? subject.height / 2 : 0;
  const course = { line: path.line, heights: path.heights.map((height) => height + lift) };
  return courseSamples(course, datum, (slope) => ({
    attitude: slope > 0 ? subject.climbAttitude ?? noseAttitude.climb : subject.approachAttitude ?? noseAttitude.approach,
    speed: slope > 0 ? subject.climbSpeed : subject.approachSpeed
  }));
}
function courseSamples({ line, heights }, datum, moving) {
  const legs = legsOf(line);
  const last2 = legs.at(-1);
  if (!last2) return null;
  let at = 0;
  return sampled(stationsBetween(0, last2.to), (station) => {
    while (at < legs.length - 1 && station > (legs[at] ?? last2).to) at++;
    const leg2 = legs[at] ?? last2;
    const length2 = leg2.to - leg2.from;
    const t = (station - leg2.from) / length2;
    const [h0, h1] = [heights[leg2.index], heights[leg2.index + 1]];
    const height = h0 + (h1 - h0) * t;
    const slope = (h1 - h0) / length2;
    const up = levelUp(leg2, t);
    return {
      centre: placed(leg2.frame, leg2.x * t, leg2.y * t, height),
      up,
      forward: levelled(leg2.direction, up),
      slope,
      height: height - datum,
      ...moving(slope)
    };
  });
}
function legsOf(line) {
  const legs = [];
  let from = 0;
  for (let index = 0; index + 1 < line.length; index++) {
    const [a, b] = [line[index], line[index + 1]];
    const { distance } = groundLine(a, b);
    if (distance < 1e-3) continue;
    const frame = frameAt(a);
    const [x, y] = mapped(frame, b);
    legs.push({
      index,
      from,
      to: from + distance,
      frame,
      x,
      y,
      direction: minus(earthCentred(b, 0), frame.origin)
    });
    from += distance;
  }
  return legs;
}
function levelUp({ frame, x, y }, t) {
  const low = placed(frame, x * t, y * t, 0);
  return minus(placed(frame, x * t, y * t, 1), low);
}

// src/figures/geometry/middle-of.ts
function middleOf(ring) {
  const [first] = ring;
  if (!first) return null;
  const frame = frameAt(first);
  const corners = ring.map((position2) => mapped(frame, position2));
  let [area, x, y] = [0, 0, 0];
  for (const [i, [x1, y1]] of corners.entries()) {
    const [x0, y0] = corners[(i + corners.length - 1) % corners.length] ?? [x1, y1];
    const cross = x0 * y1 - x1 * y0;
    area += cross / 2;
    x += (x0 + x1) * cross / 6;
    y += (y0 + y1) * cross / 6;
  }
  if (Math.abs(area) < 1) return null;
  const [cx, cy] = [x / area, y / area];
  const stretches = crossings(corners, cy);
  const around = stretches.find(([from, to]) => from <= cx && cx <= to);
  const widest = stretches.reduce((a, b) => b[1] - b[0] > a[1] - a[0] ? b : a, stretches[0] ?? [cx, cx]);
  return positionOf(placed(frame, around ? cx : (widest[0] + widest[1]) / 2, cy, 0));
}
function crossings(corners, y) {
  const at = [];
  for (const [i, [x1, y1]] of corners.entries()) {
    const [x0, y0] = corners[(i + corners.length - 1) % corners.length] ?? [x1, y1];
    if (y0 > y !== y1 > y) at.push(x0 + (y - y0) / (y1 - y0) * (x1 - x0));
  }
  at.sort((a, b) => a - b);
  const out = [];
  for (let i = 0; i + 1 < at.length; i += 2) out.push([at[i], at[i + 1]]);
  return out;
}

// src/figures/traffic/on-the-ground.ts
var groundAt2 = (position2, runways, field) => groundUnder({ ground: null, position: position2 }, runways, field).elevation;
function taxiSamples({ line }, direction, subject, runways, field) {
  const way = direction === "forward" ? line : line.toReversed();
  let length2 = 0;
  for (const [i, position2] of way.entries()) length2 += groundLine(way[i - 1] ?? position2, position2).distance;
  if (length2 > longestFlown) return null;
  const heights = way.map((position2) => groundAt2(position2, runways, field) + subject.height / 2);
  return courseSamples({ line: way, heights }, field, () => ({
    attitude: noseAttitude.ground,
    speed: Math.min(taxiSpeed, subject.approachSpeed)
  }));
}
function parkedSamples({ rings, heading }, subject, runways, field) {
  const position2 = middleOf(rings[0] ?? []);
  if (!position2) return null;
  const frame = frameAt(position2);
  const centreHeight = groundAt2(position2, runways, field) + subject.height / 2;
  const facing = (heading ?? 0) * RAD;
  const samples = sampled(
    [0],
    () => ({
      centre: placed(frame, 0, 0, centreHeight),
      ...axesAt(frame, 0, 0, Math.sin(facing), Math.cos(facing)),
      slope: 0,
      attitude: noseAttitude.ground,
      height: centreHeight - field,
      speed: 0
    }),
    heading !== null
  );
  samples.share[0] = 1;
  return samples;
}

// src/figures/traffic/paths.ts
var runwayPathKinds = ["arrival", "departure", "circuit"];
function fieldElevation(contents) {
  if (contents.site.elevation !== null) return contents.site.elevation;
  const known2 = contents.runways.flatMap((r) => r.ends.map((e) => e.elevation)).filter((e) => e !== null);
  return known2.length > 0 ? Math.max(...known2) : 0;
}
var cache = /* @__PURE__ */ new WeakMap();
function runwayPath(runway, end, kind, subject, elevation) {
  let cached = cache.get(runway);
  if (cached?.subject !== subject || cached.elevation !== elevation) {
    cached = { subject, elevation, paths: /* @__PURE__ */ new Map() };
    cache.set(runway, cached);
  }
  const key2 = `${kind}/${end}`;
  const known2 = cached.paths.get(key2);
  if (known2 !== void 0) return known2;
  const geometry = endGeometry(runway, end, elevation);
  const build = {
    arrival: arrivalSamples,
    departure: departureSamples,
    circuit: (g, s) => circuitSamples(g, s, elevation)
  };
  const path = geometry && {
    ref: runwayRef(runway, end, kind),
    name: `${endName(runway, end)} ${kind}`,
    samples: build[kind](geometry, subject)
  };
  cached.paths.set(key2, path);
  return path;
}
var endName = (runway, end) => runway.ends[end].designator || `end ${end + 1}`;
function endPath(runway, end) {
  const [a, b] = [runway.ends[0].designator, runway.ends[1].designator];
  return `${runway.id}/${a === b ? `${a}#${end}` : runway.ends[end].designator}`;
}
function runwayRef(runway, end, kind) {
  return { path: `${endPath(runway, end)}/${kind}`, kind, runway: runway.id, end };
}
var flightPath = remembered((flight, subject, elevation) => {
  const samples = flightPathSamples(flight, subject, elevation);
  const ref = { path: flight.id, kind: "flight-path", runway: null, end: null };
  return samples && { ref, name: flight.name || "flight path", samples };
});
var taxiPaths = remembered(
  (route, subject, runways, elevation) => ["forward", "backward"].flatMap((direction) => {
    const samples = taxiSamples(route, direction, subject, runways, elevation);
    const ref = { path: `${route.id}/${direction}`, kind: "taxi", runway: null, end: null };
    return samples ? [{ ref, name: taxiName(route, direction), samples }] : [];
  })
);
function taxiName({ name, line }, direction) {
  const ends = [line[0], line[line.length - 1]];
  const { azimuth: azimuth2 } = groundLine(...direction === "forward" ? ends : [ends[1], ends[0]]);
  const way = azimuth2 === null ? direction === "forward" ? "as drawn" : "the other way round" : `to the ${compassPoint(azimuth2)}`;
  return `${name || "Taxi route"} ${way}`;
}
var parkedPath = remembered(
  (apron, subject, runways, elevation) => {
    const samples = parkedSamples(apron, subject, runways, elevation);
    const ref = { path: apron.id, kind: "parked", runway: null, end: null };
    return samples && { ref, name: `Parked on ${apron.name || "the apron"}`, samples };
  }
);
function pathsOf(contents, wanted) {
  const elevation = fieldElevation(contents);
  const paths = [];
  for (const runway of contents.runways) {
    for (const end of [0, 1]) {
      if (runway.ends[end].closed) continue;
      for (const kind of runwayPathKinds) {
        if (!wanted(kind, runway.id, end)) continue;
        const path = runwayPath(runway, end, kind, contents.subject, elevation);
        if (path) paths.push(path);
      }
    }
  }
  for (const flight of contents.flightPaths) {
    if (!wanted("flight-path", null, null)) continue;
    const path = flightPath(flight, contents.subject, elevation);
    if (path) paths.push(path);
  }
  const { subject, runways } = contents;
  if (wanted("taxi", null, null))
    for (const route of contents.taxiRoutes) paths.push(...taxiPaths(route, subject, runways, elevation));
  if (wanted("parked", null, null))
    for (const apron of contents.aprons) {
      const path = parkedPath(apron, subject, runways, elevation);
      if (path) paths.push(path);
    }
  return paths;
}

// src/figures/outlook.ts
var rememberedOutlook = remembered(
  (subject, runways, elevation, body, kit, around, timeZone) => ({
    runways,
    fieldElevation: elevation,
    framing: framingOf(subject, body, kit.fill),
    reach: reachOf(kit),
    around,
    timeZone
  })
);
function outlookOf(contents, terrain = null) {
  const { runways, subject, body, kit, site } = contents;
  const around = aroundOf(contents, terrain);
  return rememberedOutlook(subject, runways, fieldElevation(contents), body, kit, around, site.timeZone);
}
function aroundOf(contents, terrain) {
  const frame = siteFrame(contents.site.reference);
  const ground = terrain && terrainIn(terrain, frame);
  return surroundings(contents.obstacles, contents.runways, fieldElevation(contents), frame, ground);
}

// node_modules/valibot/dist/index.mjs
var store$4;
var DEFAULT_CONFIG = {
  lang: void 0,
  message: void 0,
  abortEarly: void 0,
  abortPipeEarly: void 0
};
// @__NO_SIDE_EFFECTS__
function getGlobalConfig(config$1) {
  if (!config$1 && !store$4) return DEFAULT_CONFIG;
  return {
    lang: config$1?.lang ?? store$4?.lang,
    message: config$1?.message,
    abortEarly: config$1?.abortEarly ?? store$4?.abortEarly,
    abortPipeEarly: config$1?.abortPipeEarly ?? store$4?.abortPipeEarly
  };
}
var store$3;
// @__NO_SIDE_EFFECTS__
function getGlobalMessage(lang) {
  return store$3?.get(lang);
}
var store$2;
// @__NO_SIDE_EFFECTS__
function getSchemaMessage(lang) {
  return store$2?.get(lang);
}
var store$1;
// @__NO_SIDE_EFFECTS__
function getSpecificMessage(reference, lang) {
  return store$1?.get(reference)?.get(lang);
}
// @__NO_SIDE_EFFECTS__
function _stringify(input) {
  const type = typeof input;
  if (type === "string") return `"${input}"`;
  if (type === "number" || type === "bigint" || type === "boolean") return `${input}`;
  if (type === "object" || type === "function") return (input && Object.getPrototypeOf(input)?.constructor?.name) ?? "null";
  return type;
}
function _addIssue(context, label, dataset, config$1, other) {
  const input = other && "input" in other ? other.input : dataset.value;
  const expected = other?.expected ?? context.expects ?? null;
  const received = other?.received ?? /* @__PURE__ */ _stringify(input);
  const issue = {
    kind: context.kind,
    type: context.type,
    input,
    expected,
    received,
    message: `Invalid ${label}: ${expected ? `Expected ${expected} but r` : "R"}eceived ${received}`,
    requirement: context.requirement,
    path: other?.path,
    issues: other?.issues,
    lang: config$1.lang,
    abortEarly: config$1.abortEarly,
    abortPipeEarly: config$1.abortPipeEarly
  };
  const isSchema = context.kind === "schema";
  const message$1 = other?.message ?? context.message ?? /* @__PURE__ */ getSpecificMessage(context.reference, issue.lang) ?? (isSchema ? /* @__PURE__ */ getSchemaMessage(issue.lang) : null) ?? config$1.message ?? /* @__PURE__ */ getGlobalMessage(issue.lang);
  if (message$1 !== void 0) issue.message = typeof message$1 === "function" ? message$1(issue) : message$1;
  if (isSchema) dataset.typed = false;
  if (dataset.issues) dataset.issues.push(issue);
  else dataset.issues = [issue];
}
// @__NO_SIDE_EFFECTS__
function _joinExpects(values$1, separator) {
  const list = [...new Set(values$1)];
  if (list.length > 1) return `(${list.join(` ${separator} `)})`;
  return list[0] ?? "never";
}
function _standardSchema(schema2) {
  schema2["~standard"] = {
    version: 1,
    vendor: "valibot",
    validate: (value$1) => schema2["~run"]({ value: value$1 }, /* @__PURE__ */ getGlobalConfig())
  };
  return schema2;
}
// @__NO_SIDE_EFFECTS__
function getDotPath(issue) {
  if (issue.path) {
    let key2 = "";
    for (const item of issue.path) if (typeof item.key === "string" || typeof item.key === "number") if (key2) key2 += `.${item.key}`;
    else key2 += item.key;
    else return null;
    return key2;
  }
  return null;
}
// @__NO_SIDE_EFFECTS__
function check(requirement, message$1) {
  return {
    kind: "validation",
    type: "check",
    reference: check,
    async: false,
    expects: null,
    requirement,
    message: message$1,
    "~run"(dataset, config$1) {
      if (dataset.typed && !this.requirement(dataset.value)) _addIssue(this, "input", dataset, config$1);
      return dataset;
    }
  };
}
// @__NO_SIDE_EFFECTS__
function finite(message$1) {
  return {
    kind: "validation",
    type: "finite",
    reference: finite,
    async: false,
    expects: null,
    requirement: Number.isFinite,
    message: message$1,
    "~run"(dataset, config$1) {
      if (dataset.typed && !this.requirement(dataset.value)) _addIssue(this, "finite", dataset, config$1);
      return dataset;
    }
  };
}
// @__NO_SIDE_EFFECTS__
function gtValue(requirement, message$1) {
  return {
    kind: "validation",
    type: "gt_value",
    reference: gtValue,
    async: false,
    expects: `>${requirement instanceof Date ? requirement.toJSON() : /* @__PURE__ */ _stringify(requirement)}`,
    requirement,
    message: message$1,
    "~run"(dataset, config$1) {
      if (dataset.typed && !(dataset.value > this.requirement)) _addIssue(this, "value", dataset, config$1, { received: dataset.value instanceof Date ? dataset.value.toJSON() : /* @__PURE__ */ _stringify(dataset.value) });
      return dataset;
    }
  };
}
// @__NO_SIDE_EFFECTS__
function integer(message$1) {
  return {
    kind: "validation",
    type: "integer",
    reference: integer,
    async: false,
    expects: null,
    requirement: Number.isInteger,
    message: message$1,
    "~run"(dataset, config$1) {
      if (dataset.typed && !this.requirement(dataset.value)) _addIssue(this, "integer", dataset, config$1);
      return dataset;
    }
  };
}
// @__NO_SIDE_EFFECTS__
function length(requirement, message$1) {
  return {
    kind: "validation",
    type: "length",
    reference: length,
    async: false,
    expects: `${requirement}`,
    requirement,
    message: message$1,
    "~run"(dataset, config$1) {
      if (dataset.typed && dataset.value.length !== this.requirement) _addIssue(this, "length", dataset, config$1, { received: `${dataset.value.length}` });
      return dataset;
    }
  };
}
// @__NO_SIDE_EFFECTS__
function maxLength(requirement, message$1) {
  return {
    kind: "validation",
    type: "max_length",
    reference: maxLength,
    async: false,
    expects: `<=${requirement}`,
    requirement,
    message: message$1,
    "~run"(dataset, config$1) {
      if (dataset.typed && dataset.value.length > this.requirement) _addIssue(this, "length", dataset, config$1, { received: `${dataset.value.length}` });
      return dataset;
    }
  };
}
// @__NO_SIDE_EFFECTS__
function maxValue(requirement, message$1) {
  return {
    kind: "validation",
    type: "max_value",
    reference: maxValue,
    async: false,
    expects: `<=${requirement instanceof Date ? requirement.toJSON() : /* @__PURE__ */ _stringify(requirement)}`,
    requirement,
    message: message$1,
    "~run"(dataset, config$1) {
      if (dataset.typed && !(dataset.value <= this.requirement)) _addIssue(this, "value", dataset, config$1, { received: dataset.value instanceof Date ? dataset.value.toJSON() : /* @__PURE__ */ _stringify(dataset.value) });
      return dataset;
    }
  };
}
// @__NO_SIDE_EFFECTS__
function minValue(requirement, message$1) {
  return {
    kind: "validation",
    type: "min_value",
    reference: minValue,
    async: false,
    expects: `>=${requirement instanceof Date ? requirement.toJSON() : /* @__PURE__ */ _stringify(requirement)}`,
    requirement,
    message: message$1,
    "~run"(dataset, config$1) {
      if (dataset.typed && !(dataset.value >= this.requirement)) _addIssue(this, "value", dataset, config$1, { received: dataset.value instanceof Date ? dataset.value.toJSON() : /* @__PURE__ */ _stringify(dataset.value) });
      return dataset;
    }
  };
}
// @__NO_SIDE_EFFECTS__
function nonEmpty(message$1) {
  return {
    kind: "validation",
    type: "non_empty",
    reference: nonEmpty,
    async: false,
    expects: "!0",
    message: message$1,
    "~run"(dataset, config$1) {
      if (dataset.typed && dataset.value.length === 0) _addIssue(this, "length", dataset, config$1, { received: "0" });
      return dataset;
    }
  };
}
// @__NO_SIDE_EFFECTS__
function transform(operation) {
  return {
    kind: "transformation",
    type: "transform",
    reference: transform,
    async: false,
    operation,
    "~run"(dataset) {
      dataset.value = this.operation(dataset.value);
      return dataset;
    }
  };
}
// @__NO_SIDE_EFFECTS__
function getFallback(schema2, dataset, config$1) {
  return typeof schema2.fallback === "function" ? schema2.fallback(dataset, config$1) : schema2.fallback;
}
// @__NO_SIDE_EFFECTS__
function getDefault(schema2, dataset, config$1) {
  return typeof schema2.default === "function" ? schema2.default(dataset, config$1) : schema2.default;
}
// @__NO_SIDE_EFFECTS__
function array(item, message$1) {
  return _standardSchema({
    kind: "schema",
    type: "array",
    reference: array,
    expects: "Array",
    async: false,
    item,
    message: message$1,
    "~run"(dataset, config$1) {
      const input = dataset.value;
      if (Array.isArray(input)) {
        dataset.typed = true;
        dataset.value = [];
        for (let key2 = 0; key2 < input.length; key2++) {
          const value$1 = input[key2];
          const itemDataset = this.item["~run"]({ value: value$1 }, config$1);
          if (itemDataset.issues) {
            const pathItem = {
              type: "array",
              origin: "value",
              input,
              key: key2,
              value: value$1
            };
            for (const issue of itemDataset.issues) {
              if (issue.path) issue.path.unshift(pathItem);
              else issue.path = [pathItem];
              dataset.issues?.push(issue);
            }
            if (!dataset.issues) dataset.issues = itemDataset.issues;
            if (config$1.abortEarly) {
              dataset.typed = false;
              break;
            }
          }
          if (!itemDataset.typed) dataset.typed = false;
          dataset.value.push(itemDataset.value);
        }
      } else _addIssue(this, "type", dataset, config$1);
      return dataset;
    }
  });
}
// @__NO_SIDE_EFFECTS__
function boolean(message$1) {
  return _standardSchema({
    kind: "schema",
    type: "boolean",
    reference: boolean,
    expects: "boolean",
    async: false,
    message: message$1,
    "~run"(dataset, config$1) {
      if (typeof dataset.value === "boolean") dataset.typed = true;
      else _addIssue(this, "type", dataset, config$1);
      return dataset;
    }
  });
}
// @__NO_SIDE_EFFECTS__
function nullish(wrapped, default_) {
  return _standardSchema({
    kind: "schema",
    type: "nullish",
    reference: nullish,
    expects: `(${wrapped.expects} | null | undefined)`,
    async: false,
    wrapped,
    default: default_,
    "~run"(dataset, config$1) {
      if (dataset.value === null || dataset.value === void 0) {
        if (this.default !== void 0) dataset.value = /* @__PURE__ */ getDefault(this, dataset, config$1);
        if (dataset.value === null || dataset.value === void 0) {
          dataset.typed = true;
          return dataset;
        }
      }
      return this.wrapped["~run"](dataset, config$1);
    }
  });
}
// @__NO_SIDE_EFFECTS__
function number(message$1) {
  return _standardSchema({
    kind: "schema",
    type: "number",
    reference: number,
    expects: "number",
    async: false,
    message: message$1,
    "~run"(dataset, config$1) {
      if (typeof dataset.value === "number" && !isNaN(dataset.value)) dataset.typed = true;
      else _addIssue(this, "type", dataset, config$1);
      return dataset;
    }
  });
}
// @__NO_SIDE_EFFECTS__
function object(entries$1, message$1) {
  return _standardSchema({
    kind: "schema",
    type: "object",
    reference: object,
    expects: "Object",
    async: false,
    entries: entries$1,
    message: message$1,
    "~run"(dataset, config$1) {
      const input = dataset.value;
      if (input && typeof input === "object") {
        dataset.typed = true;
        dataset.value = {};
        for (const key2 in this.entries) {
          const valueSchema = this.entries[key2];
          if (key2 in input || (valueSchema.type === "exact_optional" || valueSchema.type === "optional" || valueSchema.type === "nullish") && valueSchema.default !== void 0) {
            const value$1 = key2 in input ? input[key2] : /* @__PURE__ */ getDefault(valueSchema);
            const valueDataset = valueSchema["~run"]({ value: value$1 }, config$1);
            if (valueDataset.issues) {
              const pathItem = {
                type: "object",
                origin: "value",
                input,
                key: key2,
                value: value$1
              };
              for (const issue of valueDataset.issues) {
                if (issue.path) issue.path.unshift(pathItem);
                else issue.path = [pathItem];
                dataset.issues?.push(issue);
              }
              if (!dataset.issues) dataset.issues = valueDataset.issues;
              if (config$1.abortEarly) {
                dataset.typed = false;
                break;
              }
            }
            if (!valueDataset.typed) dataset.typed = false;
            dataset.value[key2] = valueDataset.value;
          } else if (valueSchema.fallback !== void 0) dataset.value[key2] = /* @__PURE__ */ getFallback(valueSchema);
          else if (valueSchema.type !== "exact_optional" && valueSchema.type !== "optional" && valueSchema.type !== "nullish") {
            _addIssue(this, "key", dataset, config$1, {
              input: void 0,
              expected: `"${key2}"`,
              path: [{
                type: "object",
                origin: "key",
                input,
                key: key2,
                value: input[key2]
              }]
            });
            if (config$1.abortEarly) break;
          }
        }
      } else _addIssue(this, "type", dataset, config$1);
      return dataset;
    }
  });
}
// @__NO_SIDE_EFFECTS__
function picklist(options, message$1) {
  return _standardSchema({
    kind: "schema",
    type: "picklist",
    reference: picklist,
    expects: /* @__PURE__ */ _joinExpects(options.map(_stringify), "|"),
    async: false,
    options,
    message: message$1,
    "~run"(dataset, config$1) {
      if (this.options.includes(dataset.value)) dataset.typed = true;
      else _addIssue(this, "type", dataset, config$1);
      return dataset;
    }
  });
}
// @__NO_SIDE_EFFECTS__
function string(message$1) {
  return _standardSchema({
    kind: "schema",
    type: "string",
    reference: string,
    expects: "string",
    async: false,
    message: message$1,
    "~run"(dataset, config$1) {
      if (typeof dataset.value === "string") dataset.typed = true;
      else _addIssue(this, "type", dataset, config$1);
      return dataset;
    }
  });
}
// @__NO_SIDE_EFFECTS__
function tuple(items, message$1) {
  return _standardSchema({
    kind: "schema",
    type: "tuple",
    reference: tuple,
    expects: "Array",
    async: false,
    items,
    message: message$1,
    "~run"(dataset, config$1) {
      const input = dataset.value;
      if (Array.isArray(input)) {
        dataset.typed = true;
        dataset.value = [];
        for (let key2 = 0; key2 < this.items.length; key2++) {
          const value$1 = input[key2];
          const itemDataset = this.items[key2]["~run"]({ value: value$1 }, config$1);
          if (itemDataset.issues) {
            const pathItem = {
              type: "array",
              origin: "value",
              input,
              key: key2,
              value: value$1
            };
            for (const issue of itemDataset.issues) {
              if (issue.path) issue.path.unshift(pathItem);
              else issue.path = [pathItem];
              dataset.issues?.push(issue);
            }
            if (!dataset.issues) dataset.issues = itemDataset.issues;
            if (config$1.abortEarly) {
              dataset.typed = false;
              break;
            }
          }
          if (!itemDataset.typed) dataset.typed = false;
          dataset.value.push(itemDataset.value);
        }
      } else _addIssue(this, "type", dataset, config$1);
      return dataset;
    }
  });
}
// @__NO_SIDE_EFFECTS__
function _subIssues(datasets) {
  let issues;
  if (datasets) for (const dataset of datasets) if (issues) for (const issue of dataset.issues) issues.push(issue);
  else issues = dataset.issues;
  return issues;
}
// @__NO_SIDE_EFFECTS__
function union(options, message$1) {
  return _standardSchema({
    kind: "schema",
    type: "union",
    reference: union,
    expects: /* @__PURE__ */ _joinExpects(options.map((option) => option.expects), "|"),
    async: false,
    options,
    message: message$1,
    "~run"(dataset, config$1) {
      let validDataset;
      let typedDatasets;
      let untypedDatasets;
      for (const schema2 of this.options) {
        const optionDataset = schema2["~run"]({ value: dataset.value }, config$1);
        if (optionDataset.typed) if (optionDataset.issues) if (typedDatasets) typedDatasets.push(optionDataset);
        else typedDatasets = [optionDataset];
        else {
          validDataset = optionDataset;
          break;
        }
        else if (untypedDatasets) untypedDatasets.push(optionDataset);
        else untypedDatasets = [optionDataset];
      }
      if (validDataset) return validDataset;
      if (typedDatasets) {
        if (typedDatasets.length === 1) return typedDatasets[0];
        _addIssue(this, "type", dataset, config$1, { issues: /* @__PURE__ */ _subIssues(typedDatasets) });
        dataset.typed = true;
      } else if (untypedDatasets?.length === 1) return untypedDatasets[0];
      else _addIssue(this, "type", dataset, config$1, { issues: /* @__PURE__ */ _subIssues(untypedDatasets) });
      return dataset;
    }
  });
}
// @__NO_SIDE_EFFECTS__
function unknown() {
  return _standardSchema({
    kind: "schema",
    type: "unknown",
    reference: unknown,
    expects: "unknown",
    async: false,
    "~run"(dataset) {
      dataset.typed = true;
      return dataset;
    }
  });
}
// @__NO_SIDE_EFFECTS__
function pipe(...pipe$1) {
  return _standardSchema({
    ...pipe$1[0],
    pipe: pipe$1,
    "~run"(dataset, config$1) {
      for (const item of pipe$1) if (item.kind !== "metadata") {
        if (dataset.issues && (item.kind === "schema" || item.kind === "transformation")) {
          dataset.typed = false;
          break;
        }
        if (!dataset.issues || !config$1.abortEarly && !config$1.abortPipeEarly) dataset = item["~run"](dataset, config$1);
      }
      return dataset;
    }
  });
}
// @__NO_SIDE_EFFECTS__
function safeParse(schema2, input, config$1) {
  const dataset = schema2["~run"]({ value: input }, /* @__PURE__ */ getGlobalConfig(config$1));
  return {
    typed: dataset.typed,
    success: !dataset.issues,
    output: dataset.value,
    issues: dataset.issues
  };
}

// src/survey/json.ts
function isObject(value) {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
function beginning(text2, length2) {
  const last2 = text2.charCodeAt(length2 - 1);
  return text2.slice(0, last2 >= 55296 && last2 < 56320 ? length2 - 1 : length2);
}
var mostShown = 40;
function shown(value) {
  if (value === void 0) return "nothing";
  const text2 = begun(value, mostShown + 1);
  return text2.length > mostShown ? `${beginning(text2, mostShown - 3)}...` : text2;
}
function begun(value, least) {
  if (typeof value === "string") return JSON.stringify(value.length > least ? value.slice(0, least) : value);
  if (typeof value !== "object" || value === null) return String(JSON.stringify(value) ?? "null");
  const list = Array.isArray(value);
  let text2 = list ? "[" : "{";
  for (const key2 in value) {
    if (text2.length >= least) return text2;
    if (!Object.hasOwn(value, key2)) continue;
    if (text2.length > 1) text2 += ",";
    if (!list) text2 += `${begun(key2, least)}:`;
    text2 += begun(value[key2], least - text2.length);
  }
  return text2 + (list ? "]" : "}");
}

// src/survey/fields.ts
function readFields(entries, value, path, doubt) {
  const source = isObject(value) ? value : {};
  if (value !== void 0 && !isObject(value))
    doubt(`${path || "properties"}: expected an object, got ${shown(value)}`);
  const out = {};
  for (const [key2, schema2] of Object.entries(entries)) {
    const given = Object.hasOwn(source, key2) ? source[key2] : void 0;
    const parsed = safeParse(schema2, given);
    if (parsed.success) {
      out[key2] = parsed.output;
      if (typeof given === "string" && typeof parsed.output === "string" && parsed.output.length < given.length)
        doubt(
          `${[path, key2].filter(Boolean).join(".")}: ${given.length} characters; the first ${parsed.output.length} are used`
        );
      continue;
    }
    const fallback = getDefault(schema2);
    out[key2] = fallback;
    const issue = parsed.issues[0];
    const at = [path, key2, getDotPath(issue) ?? ""].filter(Boolean).join(".");
    doubt(`${at}: ${issue.message}, got ${shown(issue.input)}; ${shown(fallback ?? null)} is used instead`);
  }
  return out;
}
var finite2 = (what) => pipe(number(`expected ${what}`), finite(`expected ${what}`));
function numberField(min, max, fallback) {
  const what = `expected a number from ${min} to ${max}`;
  return nullish(
    pipe(finite2(`a number from ${min} to ${max}`), minValue(min, what), maxValue(max, what)),
    fallback
  );
}
var longestName = 300;
var longestNotes = 2e4;
function boundedText(most, fallback) {
  const cut = (text2) => text2.length > most ? beginning(text2, most) : text2;
  return nullish(pipe(string("expected text"), transform(cut)), fallback);
}
var textField = (fallback) => boundedText(longestName, fallback);
var notesField = (fallback) => boundedText(longestNotes, fallback);
function choiceField(options, fallback) {
  return nullish(picklist(options, `expected one of ${options.join(", ")}`), fallback);
}
function flagField(fallback) {
  return nullish(boolean("expected true or false"), fallback);
}
function numbersField(min, max) {
  const what = `expected numbers from ${min} to ${max}`;
  return nullish(
    array(
      pipe(finite2(`numbers from ${min} to ${max}`), minValue(min, what), maxValue(max, what)),
      what
    ),
    []
  );
}

// src/survey/schema/when.ts
var firstYear = 1900;
var lastYear = 2199;
var isLeap = (year) => year % 4 === 0 && year % 100 !== 0 || year % 400 === 0;
var daysIn = (year, month) => month === 2 ? isLeap(year) ? 29 : 28 : [4, 6, 9, 11].includes(month) ? 30 : 31;
function isDate(text2) {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text2)?.map(Number) ?? [];
  if (year === void 0 || month === void 0 || day === void 0) return false;
  return year >= firstYear && year <= lastYear && month >= 1 && month <= 12 && day >= 1 && day <= daysIn(year, month);
}
var isClock = (text2) => /^([01]\d|2[0-3]):[0-5]\d$/.test(text2);
var instantForm = /^(\d{4}-\d{2}-\d{2})[T ]([01]\d|2[0-3]):([0-5]\d)(?::([0-5]\d)(?:\.(\d{1,9}))?)?(?:Z|([+-])([01]\d|2[0-3])(?::?([0-5]\d))?)$/;
function instantMs(text2) {
  const [, date2 = "", hour, minute, second, fraction, sign, hours, minutes2] = instantForm.exec(text2) ?? [];
  if (!isDate(date2)) return null;
  const [year, month, day] = date2.split("-").map(Number);
  const ms = fraction === void 0 ? 0 : Math.floor(Number(`0.${fraction}`) * 1e3);
  const clock2 = Date.UTC(year, month - 1, day, Number(hour), Number(minute), Number(second ?? 0), ms);
  const offset = (Number(hours ?? 0) * 60 + Number(minutes2 ?? 0)) * 6e4;
  return clock2 - (sign === "-" ? -offset : offset);
}
var dateWords = `expected a date of the calendar like 2026-06-21, from ${firstYear} to ${lastYear}`;
var clockWords = "expected a time of day like 18:30";
var instantWords = "expected an instant that exists, like 2026-06-21T17:00:00Z";
var date = pipe(string(dateWords), check(isDate, dateWords));
var clock = pipe(string(clockWords), check(isClock, clockWords));
var instant = pipe(
  string(instantWords),
  check((text2) => instantMs(text2) !== null, instantWords)
);
var dateField = nullish(date, null);
var clockField = (fallback) => nullish(clock, fallback);
var instantField = nullish(instant, null);
function readTimes(given, positions2, doubt) {
  if (given === void 0 || given === null) return null;
  const unread = (reason) => {
    doubt(`times: ${reason}; they are not used, and its speed stays unknown`);
    return null;
  };
  if (!Array.isArray(given)) return unread(`expected a list of instants, got ${shown(given)}`);
  const list = given;
  if (list.length !== positions2)
    return unread(`expected ${positions2} instants, one a position, got ${list.length}`);
  const missing = list.filter((time) => time === null).length;
  if (missing > 0) return unread(`${missing} of ${positions2} positions have no instant`);
  const read2 = [];
  for (const [i, time] of list.entries()) {
    const ms = typeof time === "string" ? instantMs(time) : null;
    if (ms === null)
      return unread(`at ${i}, expected an instant like 2026-06-21T17:00:00Z, got ${shown(time)}`);
    if (ms < (read2.at(-1) ?? -Infinity))
      return unread(`at ${i}, the instant lies before the one ahead of it`);
    read2.push(ms);
  }
  return read2;
}

// src/survey/schema/places.ts
var noGoFields = { name: textField(""), reason: notesField("") };
var readNoGoProperties = (p, doubt) => readFields(noGoFields, p, "", doubt);
var apronFields = { name: textField(""), heading: numberField(0, 360, null) };
var readApronProperties = (p, doubt) => readFields(apronFields, p, "", doubt);
var obstacleFields = {
  name: textField(""),
  height: numberField(0, 1e3, 3),
  base: numberField(-500, 9e3, null),
  sight: choiceField(sightKinds, "solid"),
  underside: numberField(0, 1e3, 0),
  width: numberField(0, 100, null),
  leafMonths: numbersField(1, 12),
  /** What the height of one that was brought in rests on; null for the user's own word. */
  heightFrom: choiceField(["map", "levels", "assumed"], null),
  standOn: flagField(false)
};
function readObstacleProperties(p, doubt) {
  const fields = readFields(obstacleFields, p, "", doubt);
  if (fields.underside === 0 || fields.underside < fields.height) return fields;
  doubt(
    `underside: ${fields.underside} m is not below the top at ${fields.height} m; it hides down to its foot`
  );
  return { ...fields, underside: 0 };
}
var flightPathFields = {
  name: textField(""),
  heights: numbersField(-1e3, 3e4),
  source: textField("drawn")
};
var readFlightPathProperties = (p, positions2, doubt) => ({
  ...readFields(flightPathFields, p, "", doubt),
  times: readTimes(p["times"], positions2, doubt)
});
var groundUses = [
  "road",
  "path",
  "parking",
  "green",
  "water",
  "rail",
  "motorway",
  "aerodrome"
];
var groundUseFields = {
  name: textField(""),
  use: choiceField(groundUses, "road"),
  access: choiceField(["public", "permitted", "ask", "forbidden", "unknown"], "unknown")
};
var readGroundUseProperties = (p, doubt) => readFields(groundUseFields, p, "", doubt);

// src/survey/schema/runway.ts
var endFields = {
  designator: textField(""),
  elevation: numberField(-500, 9e3, null),
  displaced: numberField(0, 5e3, 0),
  glide: numberField(1, 12, 3),
  crossingHeight: numberField(0, 60, 15.24),
  circuit: choiceField(["left", "right"], "left"),
  closed: flagField(false)
};
var runwayFields = {
  name: textField(""),
  width: numberField(1, 500, 30),
  surface: textField(""),
  /** What the data that a runway came from leave in doubt, in plain words, until the user has checked it. */
  doubts: nullish(
    pipe(
      array(string(), "expected a list of sentences"),
      maxLength(100, "expected up to 100 sentences")
    ),
    []
  )
};
function readRunwayProperties(properties, doubt) {
  const given = properties["ends"];
  if (given !== void 0 && !Array.isArray(given))
    doubt("ends: expected a list of two ends; defaults are used instead");
  const list = Array.isArray(given) ? given : [];
  if (list.length > 2) doubt(`ends: expected two ends, got ${list.length}; the first two are used`);
  const end = (i) => readFields(endFields, list[i], `ends.${i}`, doubt);
  return { ...readFields(runwayFields, properties, "", doubt), ends: [end(0), end(1)] };
}
var endIndexField = picklist([0, 1], "expected 0 or 1");

// src/survey/schema/standing-spot.ts
var accessStates = ["public", "permitted", "ask", "forbidden", "unknown"];
var accessFields = {
  status: choiceField(accessStates, "unknown"),
  contact: notesField(null),
  hours: notesField(null),
  ladder: nullish(union([boolean(), string()], "expected text, true or false"), null),
  parking: notesField(null),
  checkedOn: dateField
};
var permissionFields = {
  askedOn: dateField,
  answer: choiceField(["waiting", "granted", "refused"], "waiting"),
  by: textField(null),
  from: dateField,
  until: dateField,
  reference: textField(null)
};
function readAccess(value, doubt) {
  const fields = readFields(accessFields, value ?? void 0, "access", doubt);
  const given = isObject(value) ? value["permission"] : void 0;
  if (given === void 0 || given === null) return { ...fields, permission: null };
  const permission = readFields(permissionFields, given, "access.permission", doubt);
  const { from, until } = permission;
  if (from !== null && until !== null && until < from)
    doubt(`access.permission.until: ${until} lies before its first day, ${from}; it covers no day`);
  return { ...fields, permission };
}
var standingEyeHeight = 1.7;
var spotFields = {
  name: textField(""),
  eyeHeight: numberField(0, 500, standingEyeHeight),
  ground: numberField(-500, 9e3, null),
  notes: notesField("")
};
function readSpotProperties(properties, doubt) {
  return {
    ...readFields(spotFields, properties, "", doubt),
    access: readAccess(properties["access"], doubt)
  };
}

// src/survey/kinds.ts
var kinds = {
  runway: {
    word: "runway",
    many: "Runways",
    shapes: ["LineString"],
    most: 100,
    list: "runways",
    read: ({ id, line, properties }, { doubt }) => {
      if (line.length > 2)
        doubt(
          `geometry.coordinates: a runway has two ends, got ${line.length} positions; the first and the last are used`
        );
      const ends = [line[0], line[line.length - 1]];
      return { id, line: ends, ...readRunwayProperties(properties, doubt) };
    }
  },
  "standing-spot": {
    word: "standing spot",
    many: "Standing spots",
    shapes: ["Point"],
    most: 500,
    list: "spots",
    read: ({ id, position: position2, properties }, { doubt }) => ({
      id,
      position: position2,
      ...readSpotProperties(properties, doubt)
    })
  },
  "taxi-route": {
    word: "taxi route",
    many: "Taxi routes",
    shapes: ["LineString"],
    most: 1e3,
    list: "taxiRoutes",
    read: ({ id, line, properties }, { doubt }) => ({
      id,
      line,
      ...readApronProperties(properties, doubt)
    })
  },
  apron: {
    word: "apron",
    many: "Aprons",
    shapes: ["Polygon"],
    most: 1e3,
    list: "aprons",
    read: ({ id, rings, properties }, { doubt }) => ({
      id,
      rings,
      ...readApronProperties(properties, doubt)
    })
  },
  "no-go": {
    word: "no-go area",
    many: "No-go areas",
    shapes: ["Polygon"],
    most: 1e3,
    list: "noGoAreas",
    read: ({ id, rings, properties }, { doubt }) => ({
      id,
      rings,
      ...readNoGoProperties(properties, doubt)
    })
  },
  obstacle: {
    word: "obstacle",
    many: "Obstacles",
    shapes: ["Polygon", "LineString"],
    most: 2e4,
    list: "obstacles",
    read: ({ id, rings, line, properties }, { doubt }) => ({
      id,
      rings,
      line,
      ...readObstacleProperties(properties, doubt)
    })
  },
  "flight-path": {
    word: "flight path",
    many: "Flight paths",
    shapes: ["LineString"],
    most: 300,
    list: "flightPaths",
    read: ({ id, line, properties }, { doubt, aside }) => {
      const value = { id, line, ...readFlightPathProperties(properties, line.length, doubt) };
      if (value.heights.length === line.length) return value;
      aside(`heights: expected ${line.length} heights, one per position, got ${value.heights.length}`);
      return null;
    }
  },
  /** Roads, paths, parking, greens, water ...: what people may stand on or not, drawn faintly. */
  "ground-use": {
    word: "ground use",
    many: "Roads, paths and greens",
    shapes: ["LineString", "Polygon"],
    most: 5e3,
    list: "groundUses",
    read: ({ id, rings, line, properties }, { doubt }) => ({
      id,
      rings,
      line,
      ...readGroundUseProperties(properties, doubt)
    })
  },
  /** What was photographed, when and with what: kept as it stands until there is a log to read it. */
  "log-entry": {
    word: "log entry",
    many: "Log",
    shapes: ["Point"],
    most: 2e4,
    list: "logEntries",
    read: null
  }
};
var isKind = (kind) => typeof kind === "string" && Object.hasOwn(kinds, kind);
var isReadable = (kind) => kinds[kind].read !== null;
var readableKinds = Object.keys(kinds).filter(isReadable);

// src/survey/geometry.ts
var Broken = class extends Error {
};
function position(value, path, index = null) {
  const at = () => index === null ? path : `${path}.${index}`;
  if (!Array.isArray(value) || value.length < 2)
    throw new Broken(`${at()}: expected [longitude, latitude], got ${shown(value)}`);
  const lng = value[0];
  const lat = value[1];
  if (typeof lng !== "number" || !(Math.abs(lng) <= 180))
    throw new Broken(`${at()}: longitude ${shown(lng)} is not within \xB1180 degrees`);
  if (typeof lat !== "number" || !(Math.abs(lat) <= 90))
    throw new Broken(`${at()}: latitude ${shown(lat)} is not within \xB190 degrees`);
  return [lng, lat];
}
function positions(value, path, least) {
  if (!Array.isArray(value)) throw new Broken(`${path}: expected a list of positions, got ${shown(value)}`);
  const list = value.map((p, i) => position(p, path, i));
  if (list.length < least)
    throw new Broken(`${path}: expected at least ${least} positions, got ${list.length}`);
  return list;
}
function readShape(geometry, shapes) {
  if (!isObject(geometry)) return { ok: false, reason: "geometry: missing" };
  const shape = shapes.find((s) => s === geometry["type"]);
  if (!shape)
    return { ok: false, reason: `geometry: expected ${shapes.join(" or ")}, got ${shown(geometry["type"])}` };
  const value = geometry["coordinates"];
  const path = "geometry.coordinates";
  try {
    const read2 = {
      Point: () => position(value, path),
      LineString: () => positions(value, path, 2),
      Polygon: () => {
        if (!Array.isArray(value) || value.length === 0)
          throw new Broken(`${path}: expected a list of rings, got ${shown(value)}`);
        return value.map(
          (ring, i) => closed(positions(ring, `${path}.${i}`, 3), `${path}.${i}`)
        );
      }
    };
    return { ok: true, shape, coordinates: read2[shape]() };
  } catch (error) {
    if (error instanceof Broken) return { ok: false, reason: error.message };
    throw error;
  }
}
function closed(ring, path) {
  const first = ring[0];
  const last2 = ring[ring.length - 1];
  const out = first[0] === last2[0] && first[1] === last2[1] ? ring : [...ring, first];
  if (out.length < 4) throw new Broken(`${path}: expected a ring of at least three corners`);
  return out;
}
function tidyPosition([lng, lat]) {
  const wrapped = lng > 180 || lng < -180 ? ((lng + 180) % 360 + 360) % 360 - 180 : lng;
  return [round7(wrapped), round7(Math.max(-90, Math.min(90, lat)))];
}
var round7 = (x) => Math.round(x * 1e7) / 1e7 + 0;
function signedArea(ring) {
  let sum = 0;
  for (let i = 1; i < ring.length; i++) {
    const [x0, y0] = ring[i - 1];
    const [x1, y1] = ring[i];
    const dx = (x1 - x0 + 540) % 360 - 180;
    sum -= dx * (y0 + y1);
  }
  return sum;
}
function windRings(rings) {
  return rings.map((ring, i) => {
    const area = signedArea(ring);
    return area !== 0 && area > 0 !== (i === 0) ? [...ring].reverse() : ring;
  });
}

// src/survey/read-feature.ts
function kindOf(feature) {
  const kind = feature.properties?.["kind"];
  return isKind(kind) ? kind : null;
}
var readings = /* @__PURE__ */ new WeakMap();
function readFeature(feature) {
  const seen = readings.get(feature);
  if (seen) return seen;
  const reading = read(feature);
  readings.set(feature, reading);
  return reading;
}
function read(feature) {
  const { id } = feature;
  const kind = kindOf(feature);
  if (kind === null) return { kind: null, problems: [] };
  const row = kinds[kind];
  const shape = readShape(feature.geometry, row.shapes);
  if (!shape.ok) return { kind: null, problems: [{ id, reason: shape.reason, used: false }] };
  if (row.read === null) return { kind: null, problems: [] };
  const problems = [];
  const say = {
    doubt: (reason) => void problems.push({ id, reason, used: true }),
    aside: (reason) => void problems.push({ id, reason, used: false })
  };
  const rings = shape.shape === "Polygon" ? shape.coordinates : [];
  const line = shape.shape === "LineString" ? shape.coordinates : [];
  const position2 = line[0] ?? rings[0]?.[0] ?? shape.coordinates;
  const given = { id, properties: feature.properties ?? {}, position: position2, line, rings };
  const value = row.read(given, say);
  return value === null ? { kind: null, problems } : { kind, value, problems };
}

// src/survey/schema/kit.ts
var positive = (max, unit) => {
  const what = `expected a number above 0 and up to ${max} ${unit}`;
  return pipe(number(what), finite(what), gtValue(0, what), maxValue(max, what));
};
var pixels = pipe(positive(1e5, "pixels"), integer("expected a whole number of pixels"));
var factors = "expected factors from 1 to 4";
var key = pipe(string("expected text"), nonEmpty("expected a key that is not empty"));
var bodyFields = {
  key,
  name: textField(""),
  sensorWidth: positive(200, "mm"),
  sensorHeight: positive(200, "mm"),
  pixelsWide: pixels,
  pixelsHigh: pixels
};
var lensFields = {
  key,
  name: textField(""),
  shortest: positive(5e3, "mm"),
  longest: positive(5e3, "mm"),
  widestAperture: positive(64, "(f-number)"),
  widestApertureLong: nullish(positive(64, "(f-number)")),
  extenders: nullish(
    array(
      pipe(number(factors), finite(factors), minValue(1, factors), maxValue(4, factors)),
      factors
    ),
    []
  )
};
var lensRangeDoubt = ({ shortest, longest }) => shortest <= longest ? null : `expected no less than the shortest focal length, ${shortest} mm`;
var kitFields = { fill: numberField(0.05, 1, 0.8) };

// src/survey/schema/subject.ts
var within = (min, max, unit) => {
  const what = `expected a number from ${min} to ${max} ${unit}`;
  return pipe(number(what), finite(what), minValue(min, what), maxValue(max, what));
};
var subjectFields = {
  key: pipe(string("expected text"), nonEmpty("expected a key that is not empty")),
  name: textField(""),
  length: within(0.5, 150, "m"),
  span: within(0.5, 150, "m"),
  height: within(0.2, 50, "m"),
  propulsion: picklist(
    ["jet", "propeller", "rotor", "none"],
    "expected one of jet, propeller, rotor, none"
  ),
  wing: textField(null),
  engines: numberField(0, 12, null),
  approachSpeed: within(1, 400, "m/s"),
  climbSpeed: within(1, 400, "m/s"),
  groundRun: within(0, 6e3, "m"),
  landingRun: within(0, 6e3, "m"),
  climbGradient: within(1e-3, 3, "(rise over run)"),
  approachAngle: numberField(1, 60, null),
  crossingHeight: numberField(0, 200, null),
  approachAttitude: numberField(-30, 30, null),
  climbAttitude: numberField(-30, 45, null),
  rpm: numberField(1, 2e4, null),
  blades: numberField(1, 12, null),
  seaplane: nullish(boolean("expected true or false")),
  tailSpan: numberField(0.1, 100, null)
};

// src/survey/kit-lists.ts
var schemas = {
  bodies: object(bodyFields),
  lenses: object(lensFields),
  subjects: object(subjectFields)
};
function readEntry(list, value) {
  const parsed = safeParse(schemas[list], value);
  if (!parsed.success) {
    const misfits = /* @__PURE__ */ new Map();
    for (const issue of parsed.issues) {
      const key2 = issue.path?.[0]?.key;
      const member = typeof key2 === "string" ? key2 : "";
      if (!misfits.has(member))
        misfits.set(member, { member, expected: bare(issue.message), got: issue.input });
    }
    return { ok: false, misfits: [...misfits.values()] };
  }
  const entry2 = parsed.output;
  const doubt = list === "lenses" ? lensRangeDoubt(entry2) : null;
  return doubt === null ? { ok: true, entry: entry2 } : { ok: false, misfits: [{ member: "longest", expected: bare(doubt), got: entry2.longest }] };
}
var bare = (message) => message.replace(/^expected /, "");

// src/survey/starter/kit.ts
var starterKit = {
  fill: 0.8,
  bodies: [
    {
      key: "full-frame",
      name: "Full frame, 24 MP",
      sensorWidth: 36,
      sensorHeight: 24,
      pixelsWide: 6e3,
      pixelsHigh: 4e3
    },
    {
      key: "aps-c",
      name: "APS-C, 24 MP",
      sensorWidth: 23.5,
      sensorHeight: 15.6,
      pixelsWide: 6e3,
      pixelsHigh: 4e3
    },
    {
      key: "four-thirds",
      name: "Four Thirds, 20 MP",
      sensorWidth: 17.3,
      sensorHeight: 13,
      pixelsWide: 5184,
      pixelsHigh: 3888
    },
    {
      key: "one-inch",
      name: "1-inch type, 20 MP",
      sensorWidth: 13.2,
      sensorHeight: 8.8,
      pixelsWide: 5472,
      pixelsHigh: 3648
    }
  ],
  lenses: [
    {
      key: "standard-zoom",
      name: "24\u201370 mm f/2.8",
      shortest: 24,
      longest: 70,
      widestAperture: 2.8,
      extenders: []
    },
    {
      key: "tele-zoom",
      name: "70\u2013200 mm f/2.8",
      shortest: 70,
      longest: 200,
      widestAperture: 2.8,
      extenders: []
    },
    {
      key: "long-zoom",
      name: "100\u2013400 mm f/5.6",
      shortest: 100,
      longest: 400,
      widestAperture: 5.6,
      extenders: []
    }
  ]
};

// src/survey/starter/subjects/entry.ts
var entry = (stated) => ({
  wing: null,
  engines: null,
  approachAngle: null,
  crossingHeight: null,
  approachAttitude: null,
  climbAttitude: null,
  rpm: null,
  blades: null,
  tailSpan: null,
  ...stated
});
var jet = (stated) => entry({
  ...stated,
  propulsion: "jet",
  climbAttitude: Math.round(Math.atan(stated.climbGradient) * 180 / Math.PI) + 5
});
var propeller = (stated) => entry({ ...stated, propulsion: "propeller" });
var helicopter = (stated) => entry({ ...stated, propulsion: "rotor", approachAngle: 8, approachAttitude: 5, climbAttitude: -5 });
var glider = (stated) => entry({
  ...stated,
  propulsion: "none",
  engines: 0,
  approachAngle: 5.5,
  approachAttitude: 0,
  climbAttitude: 5
});

// src/survey/starter/subjects/business-jets.ts
var businessJets = [
  // span and height F; length from memory
  jet({
    key: "C525",
    name: "C525 \u2014 light business jet",
    length: 12.98,
    span: 14.26,
    height: 4.2,
    wing: "low",
    engines: 2,
    approachSpeed: 55,
    climbSpeed: 82,
    groundRun: 750,
    landingRun: 600,
    climbGradient: 0.19
  }),
  // span O and F, length O, height F
  jet({
    key: "C550",
    name: "C550 \u2014 light business jet",
    length: 14.39,
    span: 15.9,
    height: 4.57,
    wing: "low",
    engines: 2,
    approachSpeed: 57,
    climbSpeed: 82,
    groundRun: 800,
    landingRun: 650,
    climbGradient: 0.19
  }),
  // span (without winglets) and height F; length from memory
  jet({
    key: "F2TH",
    name: "F2TH \u2014 large business jet",
    length: 20.2,
    span: 19.3,
    height: 7.06,
    wing: "low",
    engines: 2,
    approachSpeed: 57,
    climbSpeed: 88,
    groundRun: 1100,
    landingRun: 650,
    climbGradient: 0.2
  }),
  // O; its 7.82 m "fuselage height" is the overall height
  jet({
    key: "GLF6",
    name: "GLF6 \u2014 large business jet",
    length: 30.41,
    span: 30.36,
    height: 7.82,
    wing: "low",
    engines: 2,
    approachSpeed: 60,
    climbSpeed: 90,
    groundRun: 1250,
    landingRun: 800,
    climbGradient: 0.21
  })
];

// src/survey/starter/subjects/classes.ts
var classes = [
  jet({
    key: "any-narrow-body",
    name: "Narrow-body jet \u2014 typical size",
    length: 38,
    span: 34.5,
    height: 12,
    wing: "low",
    engines: 2,
    approachSpeed: 71,
    climbSpeed: 83,
    groundRun: 1750,
    landingRun: 1300,
    climbGradient: 0.135
  }),
  jet({
    key: "any-wide-body",
    name: "Wide-body jet \u2014 typical size",
    length: 64,
    span: 61,
    height: 17,
    wing: "low",
    engines: 2,
    approachSpeed: 73,
    climbSpeed: 88,
    groundRun: 2200,
    landingRun: 1500,
    climbGradient: 0.11
  }),
  jet({
    key: "any-regional-jet",
    name: "Regional jet \u2014 typical size",
    length: 32,
    span: 27,
    height: 9.5,
    wing: "low",
    engines: 2,
    approachSpeed: 65,
    climbSpeed: 81,
    groundRun: 1250,
    landingRun: 850,
    climbGradient: 0.155
  }),
  jet({
    key: "any-business-jet",
    name: "Business jet \u2014 typical size",
    length: 17,
    span: 17,
    height: 5.5,
    wing: "low",
    engines: 2,
    approachSpeed: 57,
    climbSpeed: 85,
    groundRun: 950,
    landingRun: 650,
    climbGradient: 0.2
  }),
  jet({
    key: "any-fast-jet",
    name: "Military fast jet \u2014 typical size",
    length: 15.5,
    span: 10.5,
    height: 4.9,
    wing: "mid",
    engines: 1,
    approachSpeed: 72,
    climbSpeed: 125,
    groundRun: 600,
    landingRun: 1100,
    climbGradient: 0.3
  }),
  helicopter({
    key: "any-helicopter",
    name: "Helicopter \u2014 typical size",
    length: 12.5,
    span: 10.5,
    height: 3.4,
    engines: 1,
    approachSpeed: 32,
    climbSpeed: 32,
    groundRun: 50,
    landingRun: 40,
    climbGradient: 0.2,
    rpm: 395,
    blades: 3
  }),
  helicopter({
    key: "any-large-helicopter",
    name: "Large helicopter \u2014 typical size",
    length: 19.5,
    span: 16.2,
    height: 5,
    engines: 2,
    approachSpeed: 36,
    climbSpeed: 38,
    groundRun: 60,
    landingRun: 50,
    climbGradient: 0.2,
    rpm: 265,
    blades: 4
  }),
  glider({
    key: "any-glider",
    name: "Glider \u2014 typical size",
    length: 7.5,
    span: 16.5,
    height: 1.45,
    wing: "mid",
    approachSpeed: 27,
    climbSpeed: 30,
    groundRun: 250,
    landingRun: 150,
    climbGradient: 0.075
  })
];

// src/survey/starter/subjects/code-letters.ts
var codeLetters = [
  propeller({
    key: "any-code-a",
    name: "Code A, span under 15 m \u2014 light propeller aircraft",
    length: 8.5,
    span: 11.5,
    height: 2.8,
    wing: "low",
    engines: 1,
    approachSpeed: 36,
    climbSpeed: 42,
    groundRun: 320,
    landingRun: 230,
    climbGradient: 0.1,
    rpm: 2500,
    blades: 3
  }),
  propeller({
    key: "any-code-b",
    name: "Code B, span 15 to 24 m \u2014 commuter with two propellers",
    length: 16,
    span: 18.5,
    height: 5.2,
    wing: "low",
    engines: 2,
    approachSpeed: 53,
    climbSpeed: 64,
    groundRun: 750,
    landingRun: 520,
    climbGradient: 0.13,
    rpm: 1700,
    blades: 4
  }),
  jet({
    key: "any-code-c",
    name: "Code C, span 24 to 36 m \u2014 jet with one aisle",
    length: 38,
    span: 34,
    height: 12,
    wing: "low",
    engines: 2,
    approachSpeed: 71,
    climbSpeed: 83,
    groundRun: 1750,
    landingRun: 1300,
    climbGradient: 0.135
  }),
  jet({
    key: "any-code-d",
    name: "Code D, span 36 to 52 m \u2014 jet of middle size",
    length: 52,
    span: 46,
    height: 15.5,
    wing: "low",
    engines: 2,
    approachSpeed: 71,
    climbSpeed: 85,
    groundRun: 1950,
    landingRun: 1400,
    climbGradient: 0.125
  }),
  jet({
    key: "any-code-e",
    name: "Code E, span 52 to 65 m \u2014 jet with two aisles",
    length: 65,
    span: 61,
    height: 17.5,
    wing: "low",
    engines: 2,
    approachSpeed: 73,
    climbSpeed: 88,
    groundRun: 2200,
    landingRun: 1500,
    climbGradient: 0.11
  }),
  jet({
    key: "any-code-f",
    name: "Code F, span 65 to 80 m \u2014 the largest, four engines",
    length: 74,
    span: 74,
    height: 21.5,
    wing: "low",
    engines: 4,
    approachSpeed: 74,
    climbSpeed: 90,
    groundRun: 2500,
    landingRun: 1650,
    climbGradient: 0.1
  })
];

// src/survey/starter/subjects/light-singles.ts
var lightSingles = [
  // span A; length and height from memory
  propeller({
    key: "C172",
    name: "C172 \u2014 light single",
    length: 8.28,
    span: 11,
    height: 2.72,
    wing: "high",
    engines: 1,
    approachSpeed: 33,
    climbSpeed: 38,
    groundRun: 290,
    landingRun: 175,
    climbGradient: 0.095,
    rpm: 2700,
    blades: 2
  }),
  // all from memory; F has span and height of an older sister, within 10 %
  propeller({
    key: "C152",
    name: "C152 \u2014 light single",
    length: 7.3,
    span: 10.2,
    height: 2.6,
    wing: "high",
    engines: 1,
    approachSpeed: 28,
    climbSpeed: 34,
    groundRun: 220,
    landingRun: 145,
    climbGradient: 0.1,
    rpm: 2550,
    blades: 2
  }),
  // span and height F; length from memory
  propeller({
    key: "C182",
    name: "C182 \u2014 light single",
    length: 8.84,
    span: 10.97,
    height: 2.84,
    wing: "high",
    engines: 1,
    approachSpeed: 34,
    climbSpeed: 41,
    groundRun: 240,
    landingRun: 180,
    climbGradient: 0.115,
    rpm: 2400,
    blades: 3
  }),
  // length A; span (the tapered wing) and height from memory
  propeller({
    key: "P28A",
    name: "P28A \u2014 light single",
    length: 7.25,
    span: 10.7,
    height: 2.22,
    wing: "low",
    engines: 1,
    approachSpeed: 34,
    climbSpeed: 40,
    groundRun: 310,
    landingRun: 190,
    climbGradient: 0.085,
    rpm: 2700,
    blades: 2
  }),
  // all from memory
  propeller({
    key: "SR22",
    name: "SR22 \u2014 light single",
    length: 7.92,
    span: 11.68,
    height: 2.7,
    wing: "low",
    engines: 1,
    approachSpeed: 41,
    climbSpeed: 47,
    groundRun: 330,
    landingRun: 340,
    climbGradient: 0.135,
    rpm: 2700,
    blades: 3
  }),
  // all from memory
  propeller({
    key: "DA40",
    name: "DA40 \u2014 light single",
    length: 8.06,
    span: 11.94,
    height: 1.97,
    wing: "low",
    engines: 1,
    approachSpeed: 36,
    climbSpeed: 38,
    groundRun: 280,
    landingRun: 250,
    climbGradient: 0.11,
    rpm: 2700,
    blades: 3
  }),
  // all from memory
  propeller({
    key: "DR40",
    name: "DR40 \u2014 light single",
    length: 6.96,
    span: 8.72,
    height: 2.23,
    wing: "low",
    engines: 1,
    approachSpeed: 33,
    climbSpeed: 44,
    groundRun: 250,
    landingRun: 220,
    climbGradient: 0.09,
    rpm: 2700,
    blades: 2
  })
];

// src/survey/starter/subjects/narrow-body-jets.ts
var narrowBodyJets = [
  // length O; span (without sharklets) and height from memory, F within 2 %
  jet({
    key: "A320",
    name: "A320 \u2014 narrow-body jet",
    length: 37.57,
    span: 34.1,
    height: 11.76,
    wing: "low",
    engines: 2,
    approachSpeed: 70,
    climbSpeed: 82,
    groundRun: 1700,
    landingRun: 1300,
    climbGradient: 0.14
  }),
  // span, length, height A
  jet({
    key: "A21N",
    name: "A21N \u2014 narrow-body jet",
    length: 44.51,
    span: 35.8,
    height: 12.1,
    wing: "low",
    engines: 2,
    approachSpeed: 72,
    climbSpeed: 85,
    groundRun: 1850,
    landingRun: 1400,
    climbGradient: 0.13
  }),
  // span O and F (without winglets), length O, height F
  jet({
    key: "B738",
    name: "B738 \u2014 narrow-body jet",
    length: 39.47,
    span: 34.32,
    height: 12.55,
    wing: "low",
    engines: 2,
    approachSpeed: 74,
    climbSpeed: 85,
    groundRun: 1800,
    landingRun: 1400,
    climbGradient: 0.135
  }),
  // span F and O, length O, height F
  jet({
    key: "B752",
    name: "B752 \u2014 narrow-body jet",
    length: 47.3,
    span: 38.05,
    height: 13.56,
    wing: "low",
    engines: 2,
    approachSpeed: 70,
    climbSpeed: 85,
    groundRun: 1500,
    landingRun: 1250,
    climbGradient: 0.17
  }),
  // span and length O; height from memory
  jet({
    key: "E190",
    name: "E190 \u2014 regional jet",
    length: 36.24,
    span: 28.72,
    height: 10.57,
    wing: "low",
    engines: 2,
    approachSpeed: 66,
    climbSpeed: 82,
    groundRun: 1350,
    landingRun: 850,
    climbGradient: 0.15
  }),
  // all from memory: O repeats the sizes of a smaller sister here and is not used
  jet({
    key: "E75L",
    name: "E75L \u2014 regional jet",
    length: 31.68,
    span: 28.65,
    height: 9.86,
    wing: "low",
    engines: 2,
    approachSpeed: 64,
    climbSpeed: 80,
    groundRun: 1200,
    landingRun: 800,
    climbGradient: 0.16
  }),
  // span and length O; height from memory
  jet({
    key: "E145",
    name: "E145 \u2014 regional jet",
    length: 29.87,
    span: 20.04,
    height: 6.76,
    wing: "low",
    engines: 2,
    approachSpeed: 66,
    climbSpeed: 82,
    groundRun: 1300,
    landingRun: 850,
    climbGradient: 0.15
  })
];

// src/survey/starter/subjects/piston-twins.ts
var pistonTwins = [
  // span F, height within its range in F; length from memory
  propeller({
    key: "BE58",
    name: "BE58 \u2014 piston twin",
    length: 9.09,
    span: 11.52,
    height: 2.9,
    wing: "low",
    engines: 2,
    approachSpeed: 49,
    climbSpeed: 54,
    groundRun: 430,
    landingRun: 430,
    climbGradient: 0.155,
    rpm: 2700,
    blades: 3
  }),
  // all from memory
  propeller({
    key: "DA42",
    name: "DA42 \u2014 piston twin",
    length: 8.56,
    span: 13.42,
    height: 2.49,
    wing: "low",
    engines: 2,
    approachSpeed: 43,
    climbSpeed: 47,
    groundRun: 380,
    landingRun: 320,
    climbGradient: 0.125,
    rpm: 2300,
    blades: 3
  }),
  // span and height F; length from memory
  propeller({
    key: "PA31",
    name: "PA31 \u2014 piston twin",
    length: 9.94,
    span: 12.4,
    height: 3.96,
    wing: "low",
    engines: 2,
    approachSpeed: 49,
    climbSpeed: 55,
    groundRun: 410,
    landingRun: 500,
    climbGradient: 0.115,
    rpm: 2575,
    blades: 3
  })
];

// src/survey/starter/subjects/propeller-classes.ts
var propellerClasses = [
  propeller({
    key: "any-turboprop-twin",
    name: "Turboprop twin, airliner \u2014 typical size",
    length: 26,
    span: 26.5,
    height: 7.6,
    wing: "high",
    engines: 2,
    approachSpeed: 58,
    climbSpeed: 66,
    groundRun: 950,
    landingRun: 700,
    climbGradient: 0.11,
    rpm: 1200,
    blades: 6
  }),
  propeller({
    key: "any-turboprop-single",
    name: "Turboprop single \u2014 typical size",
    length: 13,
    span: 16,
    height: 4.4,
    wing: "low",
    engines: 1,
    approachSpeed: 42,
    climbSpeed: 57,
    groundRun: 430,
    landingRun: 290,
    climbGradient: 0.12,
    rpm: 1800,
    blades: 4
  }),
  propeller({
    key: "any-piston-twin",
    name: "Piston twin \u2014 typical size",
    length: 9.2,
    span: 12.2,
    height: 3,
    wing: "low",
    engines: 2,
    approachSpeed: 47,
    climbSpeed: 52,
    groundRun: 410,
    landingRun: 420,
    climbGradient: 0.135,
    rpm: 2600,
    blades: 3
  }),
  propeller({
    key: "any-light-single",
    name: "Light single \u2014 typical size",
    length: 8,
    span: 10.8,
    height: 2.6,
    wing: "high",
    engines: 1,
    approachSpeed: 33,
    climbSpeed: 38,
    groundRun: 280,
    landingRun: 180,
    climbGradient: 0.095,
    rpm: 2600,
    blades: 2
  }),
  propeller({
    key: "any-biplane",
    name: "Open biplane \u2014 typical size",
    length: 7.3,
    span: 8.9,
    height: 2.7,
    wing: "two wings",
    engines: 1,
    approachSpeed: 28,
    climbSpeed: 32,
    groundRun: 180,
    landingRun: 160,
    climbGradient: 0.08,
    rpm: 2200,
    blades: 2
  }),
  propeller({
    key: "any-ultralight",
    name: "Ultralight \u2014 typical size",
    length: 6.4,
    span: 9.2,
    height: 2.2,
    wing: "high",
    engines: 1,
    approachSpeed: 25,
    climbSpeed: 29,
    groundRun: 120,
    landingRun: 120,
    climbGradient: 0.14,
    rpm: 2300,
    blades: 3
  })
];

// src/survey/starter/subjects/rotors-and-gliders.ts
var rotorsAndGliders = [
  // all from memory
  helicopter({
    key: "R44",
    name: "R44 \u2014 light helicopter",
    length: 11.66,
    span: 10.06,
    height: 3.28,
    engines: 1,
    approachSpeed: 31,
    climbSpeed: 31,
    groundRun: 50,
    landingRun: 40,
    climbGradient: 0.16,
    rpm: 405,
    blades: 2
  }),
  // all from memory
  helicopter({
    key: "AS50",
    name: "AS50 \u2014 light helicopter",
    length: 12.94,
    span: 10.69,
    height: 3.34,
    engines: 1,
    approachSpeed: 33,
    climbSpeed: 30,
    groundRun: 50,
    landingRun: 40,
    climbGradient: 0.25,
    rpm: 390,
    blades: 3
  }),
  // all from memory
  helicopter({
    key: "EC35",
    name: "EC35 \u2014 twin-engined helicopter",
    length: 12.16,
    span: 10.2,
    height: 3.51,
    engines: 2,
    approachSpeed: 33,
    climbSpeed: 33,
    groundRun: 50,
    landingRun: 40,
    climbGradient: 0.22,
    rpm: 395,
    blades: 4
  }),
  // all from memory
  glider({
    key: "AS21",
    name: "AS21 \u2014 two-seat glider",
    length: 8.35,
    span: 17,
    height: 1.55,
    wing: "mid",
    approachSpeed: 25,
    climbSpeed: 30,
    groundRun: 260,
    landingRun: 140,
    climbGradient: 0.07
  }),
  // all from memory
  glider({
    key: "DUOD",
    name: "DUOD \u2014 two-seat glider",
    length: 8.62,
    span: 20,
    height: 1.6,
    wing: "mid",
    approachSpeed: 28,
    climbSpeed: 31,
    groundRun: 280,
    landingRun: 170,
    climbGradient: 0.07
  }),
  // all from memory
  glider({
    key: "LS4",
    name: "LS4 \u2014 single-seat glider",
    length: 6.83,
    span: 15,
    height: 1.26,
    wing: "mid",
    approachSpeed: 27,
    climbSpeed: 30,
    groundRun: 230,
    landingRun: 150,
    climbGradient: 0.08
  })
];

// src/survey/starter/subjects/turboprops.ts
var turboprops = [
  // span and height F; length from memory
  propeller({
    key: "AT76",
    name: "AT76 \u2014 turboprop twin",
    length: 27.17,
    span: 27.05,
    height: 7.65,
    wing: "high",
    engines: 2,
    approachSpeed: 58,
    climbSpeed: 66,
    groundRun: 950,
    landingRun: 650,
    climbGradient: 0.1,
    rpm: 1200,
    blades: 6
  }),
  // all from memory
  propeller({
    key: "DH8D",
    name: "DH8D \u2014 turboprop twin",
    length: 32.83,
    span: 28.42,
    height: 8.34,
    wing: "high",
    engines: 2,
    approachSpeed: 63,
    climbSpeed: 70,
    groundRun: 1050,
    landingRun: 850,
    climbGradient: 0.13,
    rpm: 1020,
    blades: 6
  }),
  // span and height F; length from memory
  propeller({
    key: "DHC6",
    name: "DHC6 \u2014 turboprop twin",
    length: 15.77,
    span: 19.81,
    height: 5.94,
    wing: "high",
    engines: 2,
    approachSpeed: 39,
    climbSpeed: 45,
    groundRun: 260,
    landingRun: 200,
    climbGradient: 0.16,
    rpm: 2040,
    blades: 3
  }),
  // span and height F; length from memory
  propeller({
    key: "BE20",
    name: "BE20 \u2014 turboprop twin",
    length: 13.36,
    span: 16.61,
    height: 4.57,
    wing: "low",
    engines: 2,
    approachSpeed: 53,
    climbSpeed: 65,
    groundRun: 570,
    landingRun: 540,
    climbGradient: 0.17,
    rpm: 2e3,
    blades: 4
  }),
  // span read in stored code; length and height from memory
  propeller({
    key: "PC12",
    name: "PC12 \u2014 turboprop single",
    length: 14.4,
    span: 16.28,
    height: 4.26,
    wing: "low",
    engines: 1,
    approachSpeed: 44,
    climbSpeed: 61,
    groundRun: 450,
    landingRun: 290,
    climbGradient: 0.14,
    rpm: 1700,
    blades: 5
  }),
  // span and height F; length (short body) from memory
  propeller({
    key: "C208",
    name: "C208 \u2014 turboprop single",
    length: 11.46,
    span: 15.88,
    height: 4.51,
    wing: "high",
    engines: 1,
    approachSpeed: 40,
    climbSpeed: 54,
    groundRun: 400,
    landingRun: 280,
    climbGradient: 0.1,
    rpm: 1900,
    blades: 3
  })
];

// src/survey/starter/subjects/wide-body-jets.ts
var wideBodyJets = [
  // span and length O; height from memory
  jet({
    key: "A333",
    name: "A333 \u2014 wide-body jet",
    length: 63.67,
    span: 60.3,
    height: 16.8,
    wing: "low",
    engines: 2,
    approachSpeed: 71,
    climbSpeed: 87,
    groundRun: 2e3,
    landingRun: 1500,
    climbGradient: 0.11
  }),
  // span and length O; height from memory
  jet({
    key: "A359",
    name: "A359 \u2014 wide-body jet",
    length: 66.8,
    span: 64.75,
    height: 17.05,
    wing: "low",
    engines: 2,
    approachSpeed: 72,
    climbSpeed: 88,
    groundRun: 2200,
    landingRun: 1500,
    climbGradient: 0.11
  }),
  // span and length O; height from memory
  jet({
    key: "B789",
    name: "B789 \u2014 wide-body jet",
    length: 62.81,
    span: 60.12,
    height: 17,
    wing: "low",
    engines: 2,
    approachSpeed: 74,
    climbSpeed: 88,
    groundRun: 2200,
    landingRun: 1500,
    climbGradient: 0.11
  }),
  // span and length O; height from memory
  jet({
    key: "B77W",
    name: "B77W \u2014 wide-body jet",
    length: 73.86,
    span: 64.8,
    height: 18.5,
    wing: "low",
    engines: 2,
    approachSpeed: 77,
    climbSpeed: 92,
    groundRun: 2400,
    landingRun: 1650,
    climbGradient: 0.1
  }),
  // span and length O, height F
  jet({
    key: "B744",
    name: "B744 \u2014 wide-body jet, four engines",
    length: 70.66,
    span: 64.4,
    height: 19.6,
    wing: "low",
    engines: 4,
    approachSpeed: 77,
    climbSpeed: 92,
    groundRun: 2400,
    landingRun: 1700,
    climbGradient: 0.09
  }),
  // span and length O, height F
  jet({
    key: "A388",
    name: "A388 \u2014 wide-body jet, two decks",
    length: 72.72,
    span: 79.75,
    height: 24.1,
    wing: "low",
    engines: 4,
    approachSpeed: 71,
    climbSpeed: 88,
    groundRun: 2400,
    landingRun: 1650,
    climbGradient: 0.09
  })
];

// src/survey/starter/subjects.ts
var starterSubjects = [
  ...narrowBodyJets,
  ...wideBodyJets,
  ...businessJets,
  ...turboprops,
  ...pistonTwins,
  ...lightSingles,
  ...rotorsAndGliders,
  ...classes,
  ...propellerClasses,
  ...codeLetters
];

// src/survey/read-kit.ts
var starterLists = {
  bodies: starterKit.bodies,
  lenses: starterKit.lenses,
  subjects: starterSubjects
};
var mostEntries = 500;
function readList(list, value, path, doubt, aside) {
  const starter = starterLists[list];
  if (value === void 0 || value === null) return starter;
  if (!Array.isArray(value)) {
    doubt(`${path}: expected a list, got ${shown(value)}; the starter list is used instead`);
    return starter;
  }
  if (value.length === 0) doubt(`${path}: the list is empty; the starter list is used instead`);
  const seen = /* @__PURE__ */ new Set();
  const read2 = [];
  if (value.length > mostEntries)
    aside(`${path}: ${value.length} entries; the first ${mostEntries} are read`);
  for (const [i, given] of value.slice(0, mostEntries).entries()) {
    const reading = readEntry(list, given);
    if (!reading.ok) {
      const [misfit] = reading.misfits;
      const at = [path, i, misfit?.member ?? ""].filter((s) => s !== "").join(".");
      aside(`${at}: expected ${misfit?.expected ?? "something else"}, got ${shown(misfit?.got)}`);
      continue;
    }
    const { key: key2 } = reading.entry;
    if (seen.has(key2)) aside(`${path}.${i}.key: "${key2}" is there already; the first one is used`);
    else read2.push(reading.entry);
    seen.add(key2);
  }
  return read2.length > 0 ? read2 : starter;
}
function readKit(value, doubt, aside) {
  if (value === void 0 || value === null) return starterKit;
  const source = isObject(value) ? value : {};
  const { fill } = readFields(kitFields, value, "sunside.kit", doubt);
  const bodies = readList("bodies", source["bodies"], "sunside.kit.bodies", doubt, aside);
  const lenses = readList("lenses", source["lenses"], "sunside.kit.lenses", doubt, aside);
  return { fill, bodies, lenses };
}
function readSubjects(value, doubt, aside) {
  return readList("subjects", value, "sunside.subjects", doubt, aside);
}

// src/survey/schema/movement.ts
var movementFields = {
  id: pipe(string("expected an id"), nonEmpty("expected an id")),
  date: dateField,
  time: clock,
  use: picklist(["arrival", "departure"], "expected arrival or departure"),
  type: textField(""),
  subject: textField(null),
  flight: textField(""),
  place: textField(""),
  runway: textField(""),
  starred: flagField(false)
};
var schema = object(movementFields);
var mostMovements = 2e3;
function readMovements(value, aside) {
  if (value === void 0 || value === null) return [];
  if (!Array.isArray(value)) {
    aside(`sunside.movements: expected a list, got ${shown(value)}`);
    return [];
  }
  const seen = /* @__PURE__ */ new Set();
  if (value.length > mostMovements)
    aside(`sunside.movements: ${value.length} movements; the first ${mostMovements} are read`);
  return value.slice(0, mostMovements).flatMap((given, i) => {
    const read2 = safeParse(schema, isObject(given) ? given : {});
    if (!read2.success) {
      const issue = read2.issues[0];
      aside(
        `sunside.movements.${i}.${getDotPath(issue) ?? ""}: ${issue.message}, got ${shown(issue.input)}`
      );
      return [];
    }
    if (seen.has(read2.output.id)) {
      aside(`sunside.movements.${i}.id: "${read2.output.id}" is there already; the first one is used`);
      return [];
    }
    seen.add(read2.output.id);
    return [read2.output];
  });
}

// src/survey/schema/plan.ts
var text = string("expected text");
var minutes = pipe(
  number("expected minutes"),
  minValue(0, "expected minutes"),
  maxValue(600, "expected minutes")
);
var move = object({ between: tuple([text, text], "expected the ids of two spots"), minutes });
var chosen = object({ spot: text, path: text, from: instant, to: instant });
var planFields = {
  moves: nullish(array(move, "expected a list of {between, minutes}"), []),
  chosen: nullish(array(chosen, "expected a list of {spot, path, from, to}"), [])
};
var readPlan = (value, doubt) => readFields(planFields, value ?? void 0, "sunside.plan", doubt);

// src/survey/schema/site.ts
var megahertz = "expected a frequency from 0.1 to 1000 MHz";
var frequency = object({
  use: string("expected text"),
  name: nullish(string("expected text")),
  mhz: pipe(number(megahertz), minValue(0.1, megahertz), maxValue(1e3, megahertz))
});
var within2 = (bound, what) => {
  const message = `expected a ${what} within \xB1${bound} degrees`;
  return pipe(number(message), minValue(-bound, message), maxValue(bound, message));
};
var longitude = within2(180, "longitude");
var latitude = within2(90, "latitude");
var siteFields = {
  name: textField(""),
  icao: textField(null),
  elevation: numberField(-500, 9e3, null),
  timeZone: textField("UTC"),
  reference: nullish(tuple([longitude, latitude], "expected [longitude, latitude] in degrees"), null),
  frequencies: nullish(
    pipe(
      array(frequency, "expected a list of frequencies"),
      maxLength(100, "expected up to 100 frequencies")
    ),
    []
  )
};
var readSite = (value, doubt) => readFields(siteFields, value, "sunside.site", doubt);
var minutesWords = "expected minutes from -720 to 720";
var momentRule = object(
  {
    event: picklist(["sunrise", "sunset", "noon"], "expected one of sunrise, sunset, noon"),
    minutes: nullish(
      pipe(number(minutesWords), minValue(-720, minutesWords), maxValue(720, minutesWords)),
      0
    )
  },
  "expected {event, minutes}"
);
var momentFields = {
  date: dateField,
  a: clockField("08:00"),
  b: clockField("18:00"),
  aRule: nullish(momentRule, null),
  bRule: nullish(momentRule, null)
};
var readMoments = (value, doubt) => readFields(momentFields, value, "sunside.moments", doubt);
var endOfRunway = object({ runway: string(), end: endIndexField });
var endsInUse = nullish(array(endOfRunway, "expected a list of {runway, end}"), []);
var configurationFields = {
  name: textField(""),
  arrivals: endsInUse,
  departures: endsInUse,
  hours: textField(null),
  maxTailwindKt: numberField(0, 50, 5),
  maxCrosswindKt: numberField(0, 100, 15)
};
var mostConfigurations = 200;
var flowFields = {
  configurations: nullish(array(unknown(), "expected a list"), []),
  calm: nullish(union([string(), number()], "expected the name of a configuration"), null)
};
function readFlow(value, doubt) {
  const flow = readFields(flowFields, value, "sunside.flow", doubt);
  if (flow.configurations.length > mostConfigurations)
    doubt(
      `sunside.flow.configurations: ${flow.configurations.length} entries; the first ${mostConfigurations} are read`
    );
  const configurations = flow.configurations.slice(0, mostConfigurations).map((c, i) => readFields(configurationFields, c, `sunside.flow.configurations.${i}`, doubt));
  const calm = configurations.findIndex((c, i) => c.name === flow.calm || i === flow.calm);
  if (flow.calm !== null && calm === -1)
    doubt(`sunside.flow.calm: there is no configuration ${shown(flow.calm)}; none is used for calm wind`);
  return { configurations, calm: calm === -1 ? null : calm };
}
var currentFields = {
  subject: textField(null),
  body: textField(null),
  lenses: nullish(array(string(), "expected a list of keys"), null)
};
var readCurrent = (value, doubt) => readFields(currentFields, value, "sunside.current", doubt);

// src/survey/schema/rules.ts
var ruleStates = ["allowed", "ask", "forbidden", "unknown"];
var rulesFields = {
  photography: choiceField(ruleStates, "unknown"),
  radio: choiceField(ruleStates, "unknown"),
  ladders: choiceField(ruleStates, "unknown"),
  tripods: choiceField(ruleStates, "unknown"),
  office: textField(null),
  phone: textField(null),
  email: textField(null),
  hours: textField(null),
  notes: notesField(null),
  checkedOn: dateField,
  source: textField(null)
};
var readRules = (value, doubt) => readFields(rulesFields, value ?? void 0, "sunside.rules", doubt);

// src/survey/schema/sky.ts
var skyFields = {
  direct: numberField(0, 1, 1),
  visibility: numberField(50, 1e5, 1e4)
};
var mostDays = 3660;
function readSky(value, doubt, aside) {
  if (value === void 0 || value === null) return [];
  if (!Array.isArray(value)) {
    aside(`sunside.sky: expected a list of {date, direct, visibility}, got ${shown(value)}`);
    return [];
  }
  if (value.length > mostDays) aside(`sunside.sky: ${value.length} days; the first ${mostDays} are read`);
  const seen = /* @__PURE__ */ new Set();
  return value.slice(0, mostDays).flatMap((given, i) => {
    const stated = isObject(given) ? given["date"] : void 0;
    const day = safeParse(date, stated);
    if (!day.success) {
      aside(`sunside.sky.${i}.date: ${day.issues[0].message}, got ${shown(stated)}`);
      return [];
    }
    if (seen.has(day.output)) {
      aside(`sunside.sky.${i}.date: ${day.output} is there already; the first one is used`);
      return [];
    }
    seen.add(day.output);
    return [{ date: day.output, ...readFields(skyFields, given, `sunside.sky.${i}`, doubt) }];
  });
}

// src/survey/schema/weather.ts
var windFields = {
  from: instantField,
  to: instantField,
  direction: numberField(0, 360, null),
  speedKt: numberField(0, 250, 0),
  gustKt: numberField(0, 300, null),
  variesFrom: numberField(0, 360, null),
  variesTo: numberField(0, 360, null),
  likelihood: choiceField(["throughout", "becoming", "at-times", "chance"], "throughout"),
  probability: numberField(0, 100, null)
};
var weatherFields = {
  text: textField(""),
  entered: instantField,
  source: choiceField(["typed", "report"], "typed"),
  /** Whether a typed wind was told from magnetic north. */
  magnetic: flagField(false),
  station: textField(null),
  observed: instantField,
  issued: instantField,
  forecastFrom: instantField,
  forecastTo: instantField,
  remarks: nullish(array(string("expected text"), "expected a list of sentences"), []),
  follow: flagField(false)
};
var mostWinds = 200;
function readWeatherMember(value, doubt) {
  if (value === void 0 || value === null) return null;
  const given = isObject(value) ? value["winds"] : void 0;
  const list = Array.isArray(given) ? given : [];
  const winds = list.slice(0, mostWinds).map((w, i) => readFields(windFields, w, `sunside.weather.winds.${i}`, doubt));
  return winds.length === 0 ? null : { ...readFields(weatherFields, value, "sunside.weather", doubt), winds };
}

// src/survey/schema/wind-record.ts
var speedClasses = [5, 8, 11, 14, 17, 20, 25, 30];
var directions = 37;
var monthHours = 288;
var cells = 1 + speedClasses.length * directions;
var count = numberField(0, 1e9, 0);
var recordFields = {
  source: textField(""),
  /** Dates of the first and the last observation, "2021-01-01". */
  from: dateField,
  to: dateField,
  /** The zone whose clock the hours are of. */
  timeZone: textField("UTC"),
  observations: count,
  unread: count
};
var classWind = object({ meanKt: number(), strongestKt: number() });
var lists = pipe(
  array(pipe(array(pipe(number(), integer(), minValue(0))), maxLength(2 * cells))),
  length(monthHours),
  check(
    (all) => all.every((list) => list.length % 2 === 0 && list.every((n, i) => i % 2 === 1 || n < cells)),
    "expected cells and counts in turn"
  )
);
var classList = pipe(array(classWind), length(speedClasses.length));
function readWindRecord(value, doubt) {
  if (value === void 0 || value === null) return null;
  const given = isObject(value) ? value : {};
  const counts = safeParse(lists, given["counts"]);
  const classes2 = safeParse(classList, given["classes"]);
  if (!counts.success || !classes2.success) {
    doubt("sunside.windRecord: the counts cannot be made out; bring the record in again");
    return null;
  }
  const fields = readFields(recordFields, value, "sunside.windRecord", doubt);
  return { ...fields, classes: classes2.output, counts: counts.output };
}

// src/survey/contents.ts
var known = /* @__PURE__ */ new WeakMap();
function readMembers(sunside) {
  const seen = known.get(sunside);
  if (seen) return seen;
  const problems = [];
  const doubt = (reason) => void problems.push({ id: null, reason, used: true });
  const aside = (reason) => void problems.push({ id: null, reason, used: false });
  const kit = readKit(sunside["kit"], doubt, aside);
  const subjects = readSubjects(sunside["subjects"], doubt, aside);
  const current = readCurrent(sunside["current"], doubt);
  const pick = (list, key2, what) => {
    const found = list.find((item) => item.key === key2);
    if (key2 !== null && !found)
      doubt(`sunside.current.${what}: there is no "${key2}"; the first of the list is used`);
    return found ?? list[0];
  };
  const members = {
    site: readSite(sunside["site"], doubt),
    kit,
    subjects,
    subject: pick(subjects, current.subject, "subject"),
    body: pick(kit.bodies, current.body, "body"),
    lenses: current.lenses ? kit.lenses.filter((lens) => current.lenses?.includes(lens.key)) : kit.lenses,
    moments: readMoments(sunside["moments"], doubt),
    sky: readSky(sunside["sky"], doubt, aside),
    rules: readRules(sunside["rules"], doubt),
    ...readFlow(sunside["flow"], doubt),
    weather: readWeatherMember(sunside["weather"], doubt),
    windRecord: readWindRecord(sunside["windRecord"], doubt),
    movements: readMovements(sunside["movements"], aside),
    plan: readPlan(sunside["plan"], doubt),
    problems
  };
  known.set(sunside, members);
  return members;
}
function readContents(survey) {
  const members = readMembers(isObject(survey.sunside) ? survey.sunside : {});
  const problems = [...members.problems];
  const lists2 = new Map(readableKinds.map((kind) => [kind, []]));
  const beyond = /* @__PURE__ */ new Map();
  for (const feature of survey.features) {
    const reading = readFeature(feature);
    if (reading.kind !== null) {
      const list = lists2.get(reading.kind) ?? [];
      if (list.length >= kinds[reading.kind].most) {
        beyond.set(reading.kind, (beyond.get(reading.kind) ?? 0) + 1);
        continue;
      }
      list.push(reading.value);
    }
    problems.push(...reading.problems);
  }
  for (const [kind, count2] of beyond)
    problems.push({
      id: null,
      reason: `${count2} more features of the kind "${kind}": the first ${kinds[kind].most} are read`,
      used: false
    });
  const byList = Object.fromEntries(
    [...lists2].map(([kind, list]) => [kinds[kind].list, list])
  );
  const reference = members.site.reference ?? byList.runways[0]?.line[0] ?? byList.spots[0]?.position ?? [0, 0];
  return { ...members, ...byList, site: { ...members.site, reference }, problems };
}

// src/sweep/practice.ts
var leastSide = 4e3;
var mostSide = 12e3;
var roomRound = 3e3;

// src/sweep/area.ts
function areaAbout(runways, frame, cell, side) {
  const places = runways.flatMap((r) => r.line.map((position2) => mapped(frame, position2)));
  const [xs, ys] = [places.map(([x]) => x), places.map(([, y]) => y)];
  const [west, east] = [Math.min(...xs), Math.max(...xs)];
  const [south, north] = [Math.min(...ys), Math.max(...ys)];
  const wanted = side ?? Math.min(mostSide, Math.max(leastSide, Math.max(east - west, north - south) + roomRound));
  const whole = Math.ceil(wanted / cell - 1e-9);
  const count2 = Math.max(1, whole * cell > mostSide ? Math.floor(mostSide / cell + 1e-9) : whole);
  const all = count2 * cell;
  return {
    frame,
    west: (west + east) / 2 - all / 2,
    south: (south + north) / 2 - all / 2,
    side: all,
    cell,
    count: count2
  };
}
var decimals = 1e7;
var round72 = (degrees) => Math.round(degrees * decimals) / decimals;
function printedPosition(frame, x, y) {
  const [lng, lat] = positionOf(placed(frame, x, y, 0));
  return [round72(lng), round72(lat)];
}
var middleOf2 = ({ west, south, cell, count: count2 }, index) => [
  west + (index % count2 + 0.5) * cell,
  south + (Math.floor(index / count2) + 0.5) * cell
];
var cellPosition = (area, index) => printedPosition(area.frame, ...middleOf2(area, index));

// src/figures/light-on-view.ts
var cosNoFlank = Math.cos(noFlankWithin * RAD);
var sinUnderside = Math.sin(undersideFrom * RAD);

// src/figures/glare-on-view.ts
var cosNoGlare = Math.cos((90 - glareMargin) * RAD);
function glaresInto(cosPhase, needed, { sun }, framing, reach) {
  if (sun.geometricAltitude <= sunriseAltitude || cosPhase >= cosNoGlare) return false;
  const fromAxis = 180 - acosDeg(cosPhase);
  const focal = Number.isNaN(needed) ? reach.shortest : takenWith(reach, needed);
  return focal > 0 && fromAxis < halfDiagonal(focal, framing) + glareMargin;
}

// src/figures/score.ts
var clamp01 = (x) => x < 0 ? 0 : x > 1 ? 1 : x;
var ramp = (x, a, ya, b, yb) => ya + (yb - ya) * clamp01((x - a) / (b - a));
function lightCeiling(sunAltitude) {
  if (sunAltitude < civilTwilightAltitude) return 0;
  if (sunAltitude < sunriseAltitude) return twilightFactor;
  return ramp(sunAltitude, harshFrom, 1, topLitFrom, 0.6);
}
function lightFactor(sunAltitude, angle, flankLit) {
  const ceiling = lightCeiling(sunAltitude);
  if (sunAltitude < sunriseAltitude) return ceiling;
  const byAngle = angle <= sideLitTo ? ramp(angle, frontLitTo, 1, sideLitTo, 0.6) : ramp(angle, sideLitTo, 0.6, 180, 0.2);
  return ceiling * byAngle * (flankLit === false ? darkFlankFactor : 1);
}
function aspectFactor(aspect) {
  if (aspect === null) return 1;
  const { noseOn, fullFrom, fullTo, tailOn } = aspectFactors;
  return aspect < fullFrom ? ramp(aspect, 0, noseOn, fullFrom, 1) : ramp(aspect, fullTo, 1, 180, tailOn);
}
var hazeOf = (slantRange, elevation) => ({
  range: 0.7 * clamp01((slantRange - 500) / 1500),
  elevation: clamp01((10 - elevation) / 8)
});
var hazeByAltitude = (sunAltitude) => clamp01(sunAltitude / 30);

// node_modules/temporal-polyfill/chunks/root.js
var NativeTemporal = globalThis.Temporal;

// node_modules/temporal-utils/dist/errorMessages.js
var expectedPositive = (entityName, num) => `Non-positive ${entityName}: ${num}`;
var expectedFinite = (entityName, num) => `Non-finite ${entityName}: ${num}`;
var forbiddenBigIntToNumber = (entityName) => `Cannot convert bigint to ${entityName}`;
var invalidObject = "Invalid object";
var numberOutOfRange = (entityName, val, min, max) => invalidEntity(entityName, val) + `; must be between ${min}-${max}`;
var invalidEntity = (fieldName, val) => `Invalid ${fieldName}: ${val}`;

// node_modules/temporal-utils/dist/utils.js
var nanoInMicro = 1e3;
var nanoInMilli = 1e6;
var nanoInSec = 1e9;
var nanoInMinute = 6e10;
var nanoInHour = 36e11;
function normalizeOptions(options) {
  if (options === void 0) {
    return /* @__PURE__ */ Object.create(null);
  }
  return requireObjectLike(options);
}
function toFiniteNumber(arg, entityName = "number") {
  if (typeof arg === "bigint") {
    throw new TypeError(forbiddenBigIntToNumber(entityName));
  }
  arg = Number(arg);
  if (!Number.isFinite(arg)) {
    throw new RangeError(expectedFinite(entityName, arg));
  }
  return arg;
}
function toIntegerWithTrunc(arg, entityName) {
  return Math.trunc(toFiniteNumber(arg, entityName)) || 0;
}
function toPositiveIntegerWithTruncation(arg, entityName) {
  return requireNumberIsPositive(toIntegerWithTrunc(arg, entityName), entityName);
}
function requireNumberIsPositive(num, entityName = "number") {
  if (num <= 0) {
    throw new RangeError(expectedPositive(entityName, num));
  }
  return num;
}
function constrainToRange(num, min, max) {
  return Math.min(Math.max(num, min), max);
}
function isObjectLike(arg) {
  return arg !== null && (typeof arg === "object" || typeof arg === "function");
}
function requireObjectLike(arg) {
  if (!isObjectLike(arg)) {
    throw new TypeError(invalidObject);
  }
  return arg;
}

// node_modules/temporal-polyfill/chunks/internal.js
var invalidEntity2 = invalidEntity;
var missingField = (fieldName) => `Missing ${fieldName}`;
var invalidBag = "Invalid bag";
var invalidChoice = (fieldName, val, choiceMap) => invalidEntity(fieldName, val) + "; must be " + Object.keys(choiceMap).join();
var forbiddenValueOf = "Cannot use valueOf";
var invalidCallingContext = "Invalid calling context";
var missingYear = (allowEra) => "Missing year" + (allowEra ? "/era/eraYear" : "");
var invalidLeapMonth = "Invalid leap month";
var invalidCalendar = (calendarId) => invalidEntity("Calendar", calendarId);
var exoticCalendarRequired = (calendarId, remedy) => `Unknown calendar ${calendarId}; might need ${remedy}`;
var invalidTimeZone = (calendarId) => invalidEntity("TimeZone", calendarId);
var outOfBoundsDate = "Out-of-bounds date";
var failedParse = (s) => `Cannot parse: ${s}`;
var constrainToRange2 = constrainToRange;
var isObjectLike2 = isObjectLike;
function throwRangeError(message) {
  throw new RangeError(message);
}
function throwTypeError(message) {
  throw new TypeError(message);
}
function clampProp(props, propName, min, max, overflow) {
  return clampEntity(propName, ((props2, propName2) => {
    const propVal = props2[propName2];
    return void 0 === propVal && throwTypeError(missingField(propName2)), propVal;
  })(props, propName), min, max, overflow);
}
function clampEntity(entityName, num, min, max, overflow, choices) {
  const clamped = constrainToRange2(num, min, max);
  return overflow && num !== clamped && throwRangeError(((entityName2, val, min2, max2, choices2) => choices2 ? numberOutOfRange(entityName2, choices2[val], choices2[min2], choices2[max2]) : numberOutOfRange(entityName2, val, min2, max2))(entityName, num, min, max, choices)), clamped;
}
function memoize(generator, MapClass = Map, maxSize = 1e4) {
  const map = new MapClass();
  return (key2, ...otherArgs) => {
    if (map.has(key2)) {
      return map.get(key2);
    }
    map.size >= maxSize && map.clear();
    const val = generator(key2, ...otherArgs);
    return map.set(key2, val), val;
  };
}
var createNameDescriptors = (name) => createPropDescriptors({
  name
}, 1);
var createPropDescriptors = (propVals, readonly) => mapProps((value) => ({
  value,
  configurable: 1,
  writable: !readonly
}), propVals);
var createStringTagDescriptors = (value) => ({
  [Symbol.toStringTag]: {
    value,
    configurable: 1
  }
});
function mapProps(transformer, props) {
  const res = {};
  for (const propName in props) {
    res[propName] = transformer(props[propName], propName);
  }
  return res;
}
function zipPropsConst(propNames, propVal) {
  const res = {};
  for (const propName of propNames) {
    res[propName] = propVal;
  }
  return res;
}
function createPropGetters(propNames) {
  const getters = {};
  for (const propName of propNames) {
    getters[propName] = (slots) => slots[propName];
  }
  return getters;
}
function pluckProps(propNames, props, dest = /* @__PURE__ */ Object.create(null)) {
  for (const propName of propNames) {
    dest[propName] = props[propName];
  }
  return dest;
}
function allPropsEqual(propNames, props0, props1) {
  for (const propName of propNames) {
    if (props0[propName] !== props1[propName]) {
      return 0;
    }
  }
  return 1;
}
function zeroOutProps(propNames, clearUntilI, props) {
  const copy = {
    ...props
  };
  for (let i = 0; i < clearUntilI; i++) {
    copy[propNames[i]] = 0;
  }
  return copy;
}
function bindArgs(f, ...boundArgs) {
  return (...dynamicArgs) => f(...boundArgs, ...dynamicArgs);
}
function noop() {
}
function capitalize(s) {
  return s[0].toUpperCase() + s.substring(1);
}
function sortStrings(...strss) {
  return [].concat(...strss).sort();
}
function createRegExp(meat) {
  return new RegExp(`^${meat}$`);
}
function parseSubsecNano(fracStr) {
  return parseInt(fracStr.padEnd(9, "0"));
}
function parseInt0(s) {
  return void 0 === s ? 0 : parseInt(s);
}
function padNumber(digits, num) {
  return String(num).padStart(digits, "0");
}
var padNumber2 = /* @__PURE__ */ bindArgs(padNumber, 2);
function compareNumbers(a, b) {
  return Math.sign(a - b);
}
function compareBigInts(a, b) {
  return a < b ? -1 : a > b ? 1 : 0;
}
function divFloorBigInt(num, denom) {
  const whole = num / denom;
  return num % denom < 0n ? whole - 1n : whole;
}
function divModFloorBigInt(num, divisor) {
  const quotient = divFloorBigInt(num, divisor);
  return [quotient, num - quotient * divisor];
}
function divModFloor(num, divisor) {
  return [Math.floor(num / divisor), modFloor(num, divisor)];
}
function modFloor(num, divisor) {
  return (num % divisor + divisor) % divisor;
}
function divTrunc(num, divisor) {
  return Math.trunc(num / divisor) || 0;
}
function modTrunc(num, divisor) {
  return num % divisor || 0;
}
function fabricateNearHalfFraction(halfCompare, sign = 1) {
  return sign * (0.5 + halfCompare / 5);
}
function hasHalf(num) {
  return 0.5 === Math.abs(num % 1);
}
var isoCalendarId = "iso8601";
var gregoryCalendarId = "gregory";
var gregoryEraOrigins = {
  "bce": -1,
  "ce": 0
};
function normalizeEraName(era) {
  const normalized = era.normalize("NFD").toLowerCase().replace(/[^a-z0-9]/g, "");
  return "bc" === normalized || "b" === normalized ? "bce" : "ad" === normalized || "a" === normalized ? "ce" : normalized;
}
var isoCalendarImpl = void 0;
var gregoryCalendarImpl = 0;
function getCalendarSlotId(calendar) {
  return calendar === isoCalendarImpl ? "iso8601" : 0 === calendar ? "gregory" : calendar.id;
}
var monthCodeRegExp = /^M(\d{2})(L?)$/;
function parseMonthCode(monthCode) {
  const m = monthCodeRegExp.exec(monthCode);
  return m || throwRangeError(((monthCode2) => `Invalid monthCode: ${monthCode2}`)(monthCode)), [parseInt(m[1]), Boolean(m[2])];
}
function formatMonthCode(monthCodeNumber, isLeapMonth) {
  return "M" + padNumber2(monthCodeNumber) + (isLeapMonth ? "L" : "");
}
function monthCodeNumberToMonth(monthCodeNumber, isLeapMonth, leapMonth) {
  return monthCodeNumber + (isLeapMonth || leapMonth && monthCodeNumber >= leapMonth ? 1 : 0);
}
var unitNameMap = {
  nanosecond: 0,
  microsecond: 1,
  millisecond: 2,
  second: 3,
  minute: 4,
  hour: 5,
  day: 6,
  week: 7,
  month: 8,
  year: 9
};
var unitNamesAsc = /* @__PURE__ */ Object.keys(unitNameMap);
var nanoInMicro2 = nanoInMicro;
var nanoInMilli2 = nanoInMilli;
var nanoInSec2 = nanoInSec;
var nanoInMinute2 = nanoInMinute;
var nanoInHour2 = nanoInHour;
var nanoInUtcDay = 864e11;
var unitNanoMap = [1, nanoInMicro2, nanoInMilli2, nanoInSec2, nanoInMinute2, nanoInHour2, nanoInUtcDay];
var bigNanoInMicro = /* @__PURE__ */ BigInt(nanoInMicro2);
var bigNanoInMilli = /* @__PURE__ */ BigInt(nanoInMilli2);
var bigNanoInSec = /* @__PURE__ */ BigInt(nanoInSec2);
var bigNanoInMinute = /* @__PURE__ */ BigInt(nanoInMinute2);
var bigNanoInHour = /* @__PURE__ */ BigInt(nanoInHour2);
var bigNanoInUtcDay = /* @__PURE__ */ BigInt(nanoInUtcDay);
function divideBigNanoToExactNumber(bigNano, divisorNano) {
  const days = Number(bigNano / bigNanoInUtcDay);
  const timeNano = Number(bigNano % bigNanoInUtcDay);
  return days * (nanoInUtcDay / divisorNano) + (Math.trunc(timeNano / divisorNano) + timeNano % divisorNano / divisorNano);
}
var timeFieldNamesAsc = /* @__PURE__ */ unitNamesAsc.slice(0, 6);
var timeGetters = /* @__PURE__ */ createPropGetters(timeFieldNamesAsc);
var yearFieldNamesAsc = ["year"];
var dayFieldNamesAsc = ["day"];
var calendarDateFieldNamesAsc = ["day", "month", "year"];
var offsetFieldNames = ["offset"];
var timeZoneFieldNames = ["timeZone"];
var eraYearFieldNames = ["era", "eraYear"];
var allYearFieldNames = ["era", "eraYear", "year"];
var monthFieldNames = ["month", "monthCode"];
var monthDayFieldNames = ["day", "month", "monthCode"];
var timeFieldNamesAlpha = /* @__PURE__ */ sortStrings(timeFieldNamesAsc);
var yearFieldNamesWithEraAlpha = /* @__PURE__ */ sortStrings(eraYearFieldNames, yearFieldNamesAsc);
var yearMonthFieldNamesAlpha = /* @__PURE__ */ sortStrings(monthFieldNames, yearFieldNamesAsc);
var yearMonthFieldNamesWithEraAlpha = /* @__PURE__ */ sortStrings(eraYearFieldNames, yearMonthFieldNamesAlpha);
var yearMonthCodeFieldNamesAlpha = /* @__PURE__ */ sortStrings(["monthCode"], yearFieldNamesAsc);
var yearMonthCodeFieldNamesWithEraAlpha = /* @__PURE__ */ sortStrings(eraYearFieldNames, yearMonthCodeFieldNamesAlpha);
var monthCodeDayFieldNamesAlpha = /* @__PURE__ */ sortStrings(dayFieldNamesAsc, ["monthCode"]);
var dateFieldNamesAlpha = /* @__PURE__ */ sortStrings(dayFieldNamesAsc, yearMonthFieldNamesAlpha);
var dateFieldNamesWithEraAlpha = /* @__PURE__ */ sortStrings(dayFieldNamesAsc, eraYearFieldNames, yearMonthFieldNamesAlpha);
var dateTimeFieldNamesAlpha = /* @__PURE__ */ sortStrings(dateFieldNamesAlpha, timeFieldNamesAsc);
var dateTimeFieldNamesWithEraAlpha = /* @__PURE__ */ sortStrings(dateFieldNamesWithEraAlpha, timeFieldNamesAsc);
var dateTimeAndOffsetFieldNamesAlpha = /* @__PURE__ */ sortStrings(dateFieldNamesAlpha, timeFieldNamesAsc, offsetFieldNames);
var dateTimeAndOffsetFieldNamesWithEraAlpha = /* @__PURE__ */ sortStrings(dateFieldNamesWithEraAlpha, timeFieldNamesAsc, offsetFieldNames);
var dateTimeAndZoneFieldNamesAlpha = /* @__PURE__ */ sortStrings(dateFieldNamesAlpha, timeFieldNamesAsc, offsetFieldNames, timeZoneFieldNames);
var dateTimeAndZoneFieldNamesWithEraAlpha = /* @__PURE__ */ sortStrings(dateFieldNamesWithEraAlpha, timeFieldNamesAsc, offsetFieldNames, timeZoneFieldNames);
var yearMonthCodeDayFieldNamesAlpha = /* @__PURE__ */ sortStrings(dayFieldNamesAsc, yearMonthCodeFieldNamesAlpha);
var yearMonthCodeDayFieldNamesWithEraAlpha = /* @__PURE__ */ sortStrings(dayFieldNamesAsc, eraYearFieldNames, yearMonthCodeFieldNamesAlpha);
var timeFieldDefaults = /* @__PURE__ */ zipPropsConst(timeFieldNamesAsc, 0);
function validateTimeFields(timeFields) {
  return constrainTimeFields(timeFields, 1), timeFields;
}
var maxValues = {
  hour: 23,
  minute: 59,
  second: 59
};
function constrainTimeFields(timeFields, overflow) {
  const constrainedFields = {};
  for (const fieldName of timeFieldNamesAsc) {
    constrainedFields[fieldName] = clampEntity(fieldName, timeFields[fieldName], 0, maxValues[fieldName] || 999, overflow);
  }
  return constrainedFields;
}
function timeFieldsToNano(timeFields) {
  return timeFieldsToSec(timeFields) * nanoInSec2 + timeFieldsToSubsecNano(timeFields);
}
function timeFieldsToMilli(timeFields) {
  return 1e3 * timeFieldsToSec(timeFields) + timeFields.millisecond;
}
function timeFieldsToSec(timeFields) {
  return 3600 * timeFields.hour + 60 * timeFields.minute + timeFields.second;
}
function timeFieldsToSubsecNano(timeFields) {
  return timeFields.millisecond * nanoInMilli2 + timeFields.microsecond * nanoInMicro2 + timeFields.nanosecond;
}
function nanoToTimeAndDay(nano) {
  const [dayDelta, timeNano] = divModFloor(nano, nanoInUtcDay);
  return [nanoToTimeFields(timeNano), dayDelta];
}
function nanoToTimeFields(timeNano) {
  const [timeMilli, nanoAfterMilli] = divModFloor(timeNano, nanoInMilli2);
  const [microsecond, nanosecond] = divModFloor(nanoAfterMilli, nanoInMicro2);
  return milliToTimeFields(timeMilli, microsecond, nanosecond);
}
function milliToTimeFields(timeMilli, microsecond = 0, nanosecond = 0) {
  const [hour, milliAfterHour] = divModFloor(timeMilli, 36e5);
  const [minute, milliAfterMinute] = divModFloor(milliAfterHour, 6e4);
  const [second, millisecond] = divModFloor(milliAfterMinute, 1e3);
  return {
    hour,
    minute,
    second,
    millisecond,
    microsecond,
    nanosecond
  };
}
function epochNanoToSecMod(epochNano) {
  const [epochSec, nano] = divModFloorBigInt(epochNano, bigNanoInSec);
  return [Number(epochSec), Number(nano)];
}
function epochNanoToMilli(epochNano) {
  return Number(divFloorBigInt(epochNano, bigNanoInMilli));
}
function isoDateTimeToEpochNano(isoDateTime) {
  return isoDateToEpochNano(isoDateTime) + BigInt(timeFieldsToNano(isoDateTime));
}
function isoDateTimeToEpochMilli(isoDateTime) {
  return isoDateToEpochMilli(isoDateTime) + timeFieldsToMilli(isoDateTime);
}
function isoDateToEpochNano(isoDate) {
  return BigInt(isoDateToEpochDays(isoDate)) * bigNanoInUtcDay;
}
function isoDateToEpochMilli(isoDate) {
  return 864e5 * isoDateToEpochDays(isoDate);
}
function isoDateToEpochDays(isoDate) {
  return isoPartsToEpochDays(isoDate.year, isoDate.month, isoDate.day);
}
function isoPartsToEpochDays(isoYear, isoMonth = 1, isoDay = 1) {
  const monthIndex = isoMonth - 1;
  return isoYear += Math.floor(monthIndex / 12), isoMonth = modFloor(monthIndex, 12), Date.UTC(isoYear % 400 - 400, isoMonth, 0) / 864e5 + 146097 * (divTrunc(isoYear, 400) + 1) + isoDay;
}
function epochNanoToIsoDateTime(epochNano) {
  const [epochDays, nanoAfterDay] = divModFloorBigInt(epochNano, bigNanoInUtcDay);
  return {
    ...epochDaysToIsoDate(Number(epochDays)),
    ...nanoToTimeFields(Number(nanoAfterDay))
  };
}
function epochDaysToIsoDate(epochDays) {
  const legacyDate = new Date(864e5 * modFloor(epochDays, 146097));
  return {
    year: legacyDate.getUTCFullYear() + 400 * Math.floor(epochDays / 146097),
    month: legacyDate.getUTCMonth() + 1,
    day: legacyDate.getUTCDate()
  };
}
var isoEpochFirstLeapYear = 1972;
function computeIsoMonthCodeParts(month) {
  return [month, 0];
}
function computeIsoYearMonthFieldsForMonthDay(monthCodeNumber, isLeapMonth) {
  if (!isLeapMonth) {
    return {
      year: 1972,
      month: monthCodeNumber
    };
  }
}
function computeIsoFieldsFromParts(year, month, day) {
  return {
    year,
    month,
    day
  };
}
function computeIsoDaysInMonth(year, month) {
  switch (month) {
    case 2:
      return computeIsoInLeapYear(year) ? 29 : 28;
    case 4:
    case 6:
    case 9:
    case 11:
      return 30;
  }
  return 31;
}
function computeIsoDaysInYear(year) {
  return computeIsoInLeapYear(year) ? 366 : 365;
}
function computeIsoInLeapYear(year) {
  return year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
}
function addIsoMonths(year, month, monthDelta) {
  return year += divTrunc(monthDelta, 12), (month += modTrunc(monthDelta, 12)) < 1 ? (year--, month += 12) : month > 12 && (year++, month -= 12), {
    year,
    month
  };
}
function diffIsoMonthSlots(year0, month0, year1, month1) {
  return 12 * (year1 - year0) + month1 - month0;
}
function computeIsoDayOfWeek(isoDate) {
  return modFloor(isoPartsToEpochDays(isoDate.year, isoDate.month, isoDate.day) + 4, 7) || 7;
}
function computeIsoDayOfYear(isoDate) {
  return isoPartsToEpochDays(isoDate.year, isoDate.month, isoDate.day) - isoPartsToEpochDays(isoDate.year) + 1;
}
function computeIsoWeekFields(isoDate) {
  let yearOfWeek = isoDate.year;
  let weekOfYear = Math.floor((computeIsoDayOfYear(isoDate) - computeIsoDayOfWeek(isoDate) + 10) / 7);
  let weeksInYear = computeIsoWeeksInYear(yearOfWeek);
  return weekOfYear < 1 ? weekOfYear = weeksInYear = computeIsoWeeksInYear(--yearOfWeek) : weekOfYear > weeksInYear && (weekOfYear = 1, weeksInYear = computeIsoWeeksInYear(++yearOfWeek)), {
    weekOfYear,
    yearOfWeek,
    De: weeksInYear
  };
}
function computeIsoWeeksInYear(year) {
  const y0DayOfWeek = computeIsoDayOfWeek({
    year,
    month: 1,
    day: 1
  });
  return 4 === y0DayOfWeek || 3 === y0DayOfWeek && computeIsoInLeapYear(year) ? 53 : 52;
}
function computeGregoryEraFields({ year }) {
  return year < 1 ? {
    era: "bce",
    eraYear: 1 - year
  } : {
    era: "ce",
    eraYear: year
  };
}
function validateIsoDateTimeFields(isoDateTime) {
  return validateIsoDateFields(isoDateTime), validateTimeFields(isoDateTime);
}
function validateIsoDateFields(isoInternals) {
  return constrainIsoDateFields(isoInternals, 1), isoInternals;
}
function constrainIsoDateFields(isoDate, overflow) {
  const { year } = isoDate;
  const month = clampProp(isoDate, "month", 1, 12, overflow);
  return {
    year,
    month,
    day: clampProp(isoDate, "day", 1, computeIsoDaysInMonth(year, month), overflow)
  };
}
function computeCalendarDateFields(calendar, isoDate) {
  return calendar ? calendar.de(isoDate) : isoDate;
}
function computeCalendarMonthCodeParts(calendar, year, month) {
  return calendar ? calendar.L(year, month) : computeIsoMonthCodeParts(month);
}
function computeCalendarEraFields(calendar, isoDate) {
  return 0 === calendar ? computeGregoryEraFields(isoDate) : calendar && calendar.h?.(isoDate) || {};
}
function computeCalendarIsoFieldsFromParts(calendar, year, month, day) {
  return calendar ? calendar.fe(year, month, day) : computeIsoFieldsFromParts(year, month, day);
}
function computeCalendarMonthsInYearForYear(calendar, year) {
  return calendar ? calendar.j(year) : 12;
}
function computeCalendarDaysInMonthForYearMonth(calendar, year, month) {
  return calendar ? calendar.o(year, month) : computeIsoDaysInMonth(year, month);
}
function computeCalendarMonthCode(calendar, isoDate) {
  const { year, month } = computeCalendarDateFields(calendar, isoDate);
  const [monthCodeNumber, isLeapMonth] = computeCalendarMonthCodeParts(calendar, year, month);
  return formatMonthCode(monthCodeNumber, isLeapMonth);
}
function computeCalendarInLeapYear(calendar, isoDate) {
  const { year } = computeCalendarDateFields(calendar, isoDate);
  return calendar ? calendar.q(year) : computeIsoInLeapYear(year);
}
function computeCalendarMonthsInYear(calendar, isoDate) {
  const { year } = computeCalendarDateFields(calendar, isoDate);
  return computeCalendarMonthsInYearForYear(calendar, year);
}
function computeCalendarDaysInMonth(calendar, isoDate) {
  const { year, month } = computeCalendarDateFields(calendar, isoDate);
  return computeCalendarDaysInMonthForYearMonth(calendar, year, month);
}
function computeCalendarDaysInYear(calendar, isoDate) {
  const { year } = computeCalendarDateFields(calendar, isoDate);
  return calendar ? calendar.i(year) : computeIsoDaysInYear(year);
}
function computeCalendarDayOfYear(calendar, isoDate) {
  if (!calendar) {
    return computeIsoDayOfYear(isoDate);
  }
  const { year } = computeCalendarDateFields(calendar, isoDate);
  const yearStartIsoDate = computeCalendarIsoFieldsFromParts(calendar, year, 1, 1);
  return isoDateToEpochDays(isoDate) - isoDateToEpochDays(yearStartIsoDate) + 1;
}
function computeCalendarWeekOfYear(calendar, isoDate) {
  return calendar === isoCalendarImpl ? computeIsoWeekFields(isoDate).weekOfYear : void 0;
}
function computeCalendarYearOfWeek(calendar, isoDate) {
  return calendar === isoCalendarImpl ? computeIsoWeekFields(isoDate).yearOfWeek : void 0;
}
var durationFieldNamesAsc = /* @__PURE__ */ unitNamesAsc.map((unitName) => unitName + "s");
var durationGetters = /* @__PURE__ */ createPropGetters(durationFieldNamesAsc);
var durationFieldNamesAlpha = /* @__PURE__ */ sortStrings(durationFieldNamesAsc);
var durationTimeFieldNamesAsc = /* @__PURE__ */ durationFieldNamesAsc.slice(0, 6);
var durationDateFieldNamesAsc = /* @__PURE__ */ durationFieldNamesAsc.slice(6);
var durationCalendarFieldNamesAsc = /* @__PURE__ */ durationDateFieldNamesAsc.slice(1);
var durationFieldDefaults = /* @__PURE__ */ zipPropsConst(durationFieldNamesAsc, 0);
var durationTimeFieldDefaults = /* @__PURE__ */ zipPropsConst(durationTimeFieldNamesAsc, 0);
var clearDurationFields = /* @__PURE__ */ bindArgs(zeroOutProps, durationFieldNamesAsc);
function requirePropDefined(optionName, optionVal) {
  return null == optionVal && throwRangeError(missingField(optionName)), optionVal;
}
var requireString = /* @__PURE__ */ bindArgs(requireType, "string");
function requireType(typeName, arg, entityName = typeName) {
  return typeof arg !== typeName && throwTypeError(invalidEntity2(entityName, arg)), arg;
}
function requireNumberIsInteger(num, entityName = "number") {
  return Number.isInteger(num) || throwRangeError(((entityName2, num2) => `Non-integer ${entityName2}: ${num2}`)(entityName, num)), num || 0;
}
function toString(arg) {
  return "symbol" == typeof arg && throwTypeError("Cannot convert Symbol to string"), String(arg);
}
function toPrimitiveWithStringHint(arg) {
  if (!isObjectLike(arg)) {
    return arg;
  }
  const exoticToPrimitive = arg[Symbol.toPrimitive];
  if (null != exoticToPrimitive) {
    "function" != typeof exoticToPrimitive && throwTypeError();
    const primitive = Reflect.apply(exoticToPrimitive, arg, ["string"]);
    return isObjectLike(primitive) && throwTypeError(), primitive;
  }
  return Date.prototype[Symbol.toPrimitive].call(arg, "string");
}
function toBigInt(bi) {
  return "boolean" == typeof bi ? BigInt(bi ? 1 : 0) : "string" == typeof bi ? BigInt(bi) : ("bigint" != typeof bi && throwTypeError(`Invalid bigint: ${bi}`), bi);
}
function toStrictInteger(arg, entityName) {
  return requireNumberIsInteger(toFiniteNumber(arg, entityName), entityName);
}
var smallestUnitStr = "smallestUnit";
var overflowMap = {
  constrain: 0,
  reject: 1
};
var epochDisambigMap = {
  compatible: 0,
  reject: 1,
  earlier: 2,
  later: 3
};
var offsetDisambigMap = {
  reject: 0,
  use: 1,
  prefer: 2,
  ignore: 3
};
var calendarDisplayMap = {
  auto: 0,
  never: 1,
  critical: 2,
  always: 3
};
var timeZoneDisplayMap = {
  auto: 0,
  never: 1,
  critical: 2
};
var offsetDisplayMap = {
  auto: 0,
  never: 1
};
var roundingModeMap = {
  floor: 0,
  halfFloor: 1,
  ceil: 2,
  halfCeil: 3,
  trunc: 4,
  halfTrunc: 5,
  expand: 6,
  halfExpand: 7,
  halfEven: 8
};
var roundingModeFuncs = [Math.floor, (num) => hasHalf(num) ? Math.floor(num) : Math.round(num), Math.ceil, (num) => hasHalf(num) ? Math.ceil(num) : Math.round(num), Math.trunc, (num) => hasHalf(num) ? Math.trunc(num) || 0 : Math.round(num), (num) => num < 0 ? Math.floor(num) : Math.ceil(num), (num) => Math.sign(num) * Math.round(Math.abs(num)) || 0, (num) => hasHalf(num) ? (num = Math.trunc(num) || 0) + num % 2 : Math.round(num)];
var directionMap = {
  previous: -1,
  next: 1
};
function coerceRoundingIncInteger(options) {
  const roundingInc = options.roundingIncrement;
  if (void 0 === roundingInc) {
    return 1;
  }
  const integer2 = toIntegerWithTrunc(roundingInc, "roundingIncrement");
  return (integer2 < 1 || integer2 > 10 ** 9) && throwRangeError(invalidEntity2("roundingIncrement", integer2)), integer2;
}
function coerceFractionalSecondDigits(options) {
  let subsecDigits = options.fractionalSecondDigits;
  if (void 0 !== subsecDigits) {
    if ("number" != typeof subsecDigits) {
      if ("auto" === toString(subsecDigits)) {
        return;
      }
      throwRangeError(invalidEntity2("fractionalSecondDigits", subsecDigits));
    }
    subsecDigits = clampEntity("fractionalSecondDigits", Math.floor(subsecDigits), 0, 9, 1);
  }
  return subsecDigits;
}
function coerceUnitOption(optionName, options, minUnit = 0, ensureDefined) {
  let unitStr = options[optionName];
  if (void 0 === unitStr) {
    return ensureDefined ? minUnit : void 0;
  }
  if (unitStr = toString(unitStr), "auto" === unitStr) {
    return ensureDefined ? minUnit : null;
  }
  let unit = unitNameMap[unitStr];
  return void 0 === unit && (unit = durationFieldNamesAsc.indexOf(unitStr)), unit < 0 && throwRangeError(invalidChoice(optionName, unitStr, unitNameMap)), unit;
}
function coerceChoiceOption(optionName, enumNameMap, options, defaultChoice = 0) {
  const enumArg = options[optionName];
  if (void 0 === enumArg) {
    return defaultChoice;
  }
  const enumStr = toString(enumArg);
  const enumNum = enumNameMap[enumStr];
  return void 0 === enumNum && throwRangeError(invalidChoice(optionName, enumStr, enumNameMap)), enumNum;
}
var coerceSmallestUnit = /* @__PURE__ */ bindArgs(coerceUnitOption, smallestUnitStr);
var coerceLargestUnit = /* @__PURE__ */ bindArgs(coerceUnitOption, "largestUnit");
var coerceTotalUnit = /* @__PURE__ */ bindArgs(coerceUnitOption, "unit");
var coerceOverflow = /* @__PURE__ */ bindArgs(coerceChoiceOption, "overflow", overflowMap);
var coerceEpochDisambig = /* @__PURE__ */ bindArgs(coerceChoiceOption, "disambiguation", epochDisambigMap);
var coerceOffsetDisambig = /* @__PURE__ */ bindArgs(coerceChoiceOption, "offset", offsetDisambigMap);
var coerceCalendarDisplay = /* @__PURE__ */ bindArgs(coerceChoiceOption, "calendarName", calendarDisplayMap);
var coerceTimeZoneDisplay = /* @__PURE__ */ bindArgs(coerceChoiceOption, "timeZoneName", timeZoneDisplayMap);
var coerceOffsetDisplay = /* @__PURE__ */ bindArgs(coerceChoiceOption, "offset", offsetDisplayMap);
var coerceRoundingMode = /* @__PURE__ */ bindArgs(coerceChoiceOption, "roundingMode", roundingModeMap);
var coerceDirection = /* @__PURE__ */ bindArgs(coerceChoiceOption, "direction", directionMap);
function normalizeOptionsOrString(options, optionName) {
  return "string" == typeof options ? ((optionName2, optionVal) => {
    const res = /* @__PURE__ */ Object.create(null);
    return res[optionName2] = optionVal, res;
  })(optionName, options) : requireObjectLike(options);
}
function validateRoundingInc(roundingInc, smallestUnit, allowManyLargeUnits, solarMode) {
  const upUnitNano = solarMode ? nanoInUtcDay : unitNanoMap[smallestUnit + 1];
  if (upUnitNano) {
    const incNano = roundingInc * unitNanoMap[smallestUnit];
    (upUnitNano % incNano || !solarMode && incNano === upUnitNano) && throwRangeError(invalidEntity2("roundingIncrement", roundingInc));
  } else {
    !allowManyLargeUnits && roundingInc > 1 && throwRangeError(invalidEntity2("roundingIncrement", roundingInc));
  }
  return roundingInc;
}
function validateUnitRange(optionName, unit, minUnit, maxUnit) {
  return null != unit && clampEntity(optionName, unit, minUnit, maxUnit, 1, unitNamesAsc), unit;
}
function checkLargestSmallestUnit(largestUnit, smallestUnit) {
  smallestUnit > largestUnit && throwRangeError("smallestUnit > largestUnit");
}
function refineDiffOptions(roundingModeInvert, options, defaultLargestUnit, maxUnit = 9, minUnit = 0, defaultRoundingMode = 4) {
  options = normalizeOptions(options);
  let largestUnit = coerceLargestUnit(options, minUnit);
  let roundingInc = coerceRoundingIncInteger(options);
  let roundingMode = coerceRoundingMode(options, defaultRoundingMode);
  let smallestUnit = coerceSmallestUnit(options, minUnit, 1);
  return largestUnit = validateUnitRange("largestUnit", largestUnit, minUnit, maxUnit), smallestUnit = validateUnitRange(smallestUnitStr, smallestUnit, minUnit, maxUnit), null == largestUnit ? largestUnit = Math.max(defaultLargestUnit, smallestUnit) : checkLargestSmallestUnit(largestUnit, smallestUnit), roundingInc = validateRoundingInc(roundingInc, smallestUnit, 1), roundingModeInvert && (roundingMode = ((roundingMode2) => roundingMode2 < 4 ? (roundingMode2 + 2) % 4 : roundingMode2)(roundingMode)), [largestUnit, smallestUnit, roundingInc, roundingMode];
}
function refineRoundingOptions(options, maxUnit = 6, solarMode) {
  let roundingInc = coerceRoundingIncInteger(options = normalizeOptionsOrString(options, smallestUnitStr));
  const roundingMode = coerceRoundingMode(options, 7);
  let smallestUnit = coerceSmallestUnit(options);
  return smallestUnit = requirePropDefined(smallestUnitStr, smallestUnit), smallestUnit = validateUnitRange(smallestUnitStr, smallestUnit, 0, maxUnit), roundingInc = validateRoundingInc(roundingInc, smallestUnit, void 0, solarMode), [smallestUnit, roundingInc, roundingMode];
}
function combineDateAndTime(isoDate, time) {
  return pluckProps(calendarDateFieldNamesAsc, isoDate, pluckProps(timeFieldNamesAsc, time));
}
var epochNanoMax = /* @__PURE__ */ BigInt(1e8) * bigNanoInUtcDay;
var epochNanoMin = /* @__PURE__ */ BigInt(-1e8) * bigNanoInUtcDay;
var plainDateEpochNanoMin = epochNanoMin - bigNanoInUtcDay;
function checkIsoYearMonthInBounds(isoDate) {
  const isoYearMonthIndex = 12 * isoDate.year + isoDate.month;
  return (isoYearMonthIndex < -3261848 || isoYearMonthIndex > 3309129) && throwRangeError(outOfBoundsDate), isoDate;
}
function checkIsoDateInBounds(isoDate, allowPlainDateLowerEdge = 1) {
  const epochNano = isoDateToEpochNano(isoDate);
  return (epochNano < (allowPlainDateLowerEdge ? plainDateEpochNanoMin : epochNanoMin) || epochNano > epochNanoMax) && throwRangeError(outOfBoundsDate), isoDate;
}
function checkIsoDateTimeInBounds(isoDateTime) {
  return checkIsoDateTimeEpochNanoInBounds(isoDateTimeToEpochNano(isoDateTime)), isoDateTime;
}
function checkIsoDateTimeEpochNanoInBounds(epochNano) {
  return (epochNano <= plainDateEpochNanoMin || epochNano >= epochNanoMax + bigNanoInUtcDay) && throwRangeError(outOfBoundsDate), epochNano;
}
function checkEpochNanoInBounds(epochNano) {
  return (epochNano < epochNanoMin || epochNano > epochNanoMax) && throwRangeError(outOfBoundsDate), epochNano;
}
function isoDateTimeAndOffsetToEpochNano(isoDateTime, offsetNano) {
  return checkEpochNanoInBounds(isoDateToEpochNano(isoDateTime) + BigInt(timeFieldsToNano(isoDateTime) - offsetNano));
}
function roundNumberToInc(num, roundingInc, roundingMode) {
  return roundWithMode(num / roundingInc, roundingMode) * roundingInc || 0;
}
function roundWithMode(num, roundingMode) {
  return roundingModeFuncs[roundingMode](num);
}
function totalRelativeUnit(wholeValue, sign, endEpochNano, moveValueToEpochNano) {
  const unitWindow = clampRelativeUnitValue(wholeValue, sign, moveValueToEpochNano, endEpochNano);
  return interpolateRelativeUnitWindow(unitWindow, Number(endEpochNano - unitWindow.N) / Number(unitWindow.te - unitWindow.N));
}
function roundRelativeUnitWindow(unitWindow, endEpochNano, roundingInc, roundingMode) {
  return roundNumberToInc(interpolateRelativeUnitWindow(unitWindow, computeEpochNanoFrac(endEpochNano, unitWindow.N, unitWindow.te)), roundingInc, roundingMode);
}
function clampRelativeUnitValue(startValue, valueDelta, moveValueToEpochNano, epochNanoProgress) {
  let unitWindow = computeRelativeUnitWindow(startValue, valueDelta, moveValueToEpochNano);
  return ((epochNanoProgress2, epochNano0, epochNano1, sign) => sign > 0 ? epochNano0 <= epochNanoProgress2 && epochNanoProgress2 <= epochNano1 : epochNano1 <= epochNanoProgress2 && epochNanoProgress2 <= epochNano0)(epochNanoProgress, unitWindow.N, unitWindow.te, Math.sign(valueDelta)) || (unitWindow = computeRelativeUnitWindow(startValue + valueDelta, valueDelta, moveValueToEpochNano)), unitWindow;
}
function computeRelativeUnitWindow(startValue, valueDelta, moveValueToEpochNano) {
  const endValue = startValue + valueDelta;
  return {
    ve: startValue,
    pe: endValue,
    N: moveValueToEpochNano(startValue),
    te: moveValueToEpochNano(endValue)
  };
}
function interpolateRelativeUnitWindow(unitWindow, fraction) {
  return unitWindow.ve + fraction * (unitWindow.pe - unitWindow.ve);
}
function computeEpochNanoFrac(epochNanoProgress, epochNano0, epochNano1) {
  const denomBig = epochNano1 - epochNano0;
  const numeratorBig = epochNanoProgress - epochNano0;
  if (!numeratorBig) {
    return 0;
  }
  const absNumerator = numeratorBig < 0n ? -numeratorBig : numeratorBig;
  const absDenom = denomBig < 0n ? -denomBig : denomBig;
  const fracSign = compareBigInts(numeratorBig, 0n) === compareBigInts(denomBig, 0n) ? 1 : -1;
  return compareBigInts(absNumerator, absDenom) <= 0 ? absNumerator === absDenom ? fracSign : fabricateNearHalfFraction(compareBigInts(2n * absNumerator, absDenom), fracSign) : Number(numeratorBig) / Number(denomBig);
}
function createEpochNanoSlots(epochNano) {
  return {
    epochNanoseconds: epochNano
  };
}
function createZonedEpochNanoSlots(epochNano, timeZone, calendar) {
  return {
    calendar,
    timeZone,
    epochNanoseconds: epochNano
  };
}
function createDateTimeSlots(isoDateTime, calendar) {
  return pluckProps(timeFieldNamesAsc, isoDateTime, createDateSlots(isoDateTime, calendar));
}
function createDateSlots(isoDate, calendar) {
  return pluckProps(calendarDateFieldNamesAsc, isoDate, {
    calendar
  });
}
function createTimeSlots(time) {
  return pluckProps(timeFieldNamesAsc, time);
}
function createDurationSlots(durationFields) {
  return pluckProps(durationFieldNamesAsc, durationFields, {
    sign: computeDurationSign(durationFields)
  });
}
function roundZonedEpochSlotsToUnit(slots, smallestUnit, roundingInc, roundingMode) {
  return createZonedEpochNanoSlots(6 === smallestUnit ? roundZonedEpochToDay(slots, roundingMode) : roundZonedEpochToTime(slots, smallestUnit, roundingInc, roundingMode), slots.timeZone, slots.calendar);
}
function computeZonedHoursInDay(slots) {
  const [epochNano0, epochNano1] = computeZonedDayEpochInterval(slots);
  return divideBigNanoToExactNumber(epochNano1 - epochNano0, nanoInHour2);
}
function computeZonedStartOfDay(slots) {
  const { timeZone, calendar } = slots;
  return createZonedEpochNanoSlots(getStartOfDayInstantFor(timeZone, combineDateAndTime(zonedEpochSlotsToIso(slots), timeFieldDefaults)), timeZone, calendar);
}
function roundRelativeDuration(durationFields, endEpochNano, largestUnit, smallestUnit, roundingInc, roundingMode, relativeOps, isZoned) {
  if (0 === smallestUnit && 1 === roundingInc) {
    return durationFields;
  }
  const sign = computeDurationSign(durationFields) || 1;
  const nudgeFunc = isUniformUnit(smallestUnit, isZoned) ? isZoned && smallestUnit < 6 && largestUnit >= 6 ? nudgeZonedTimeDuration : nudgeDayTimeDuration : nudgeRelativeDuration;
  let [roundedDurationFields, roundedEpochNano, grewBigUnit] = nudgeFunc(sign, durationFields, endEpochNano, largestUnit, smallestUnit, roundingInc, roundingMode, relativeOps);
  return grewBigUnit && 7 !== smallestUnit && (roundedDurationFields = ((durationFields2, endEpochNano2, largestUnit2, smallestUnit2, sign2, relativeOps2) => {
    for (let currentUnit = smallestUnit2 + 1; currentUnit <= largestUnit2; currentUnit++) {
      if (7 === currentUnit && 7 !== largestUnit2) {
        continue;
      }
      const baseDurationFields = clearDurationFields(currentUnit, durationFields2);
      baseDurationFields[durationFieldNamesAsc[currentUnit]] += sign2;
      const thresholdCompare = compareBigInts(endEpochNano2, moveRelativeMarkerToEpochNano(relativeOps2, baseDurationFields));
      if (thresholdCompare && thresholdCompare !== sign2) {
        break;
      }
      durationFields2 = baseDurationFields;
    }
    return durationFields2;
  })(roundedDurationFields, roundedEpochNano, largestUnit, Math.max(6, smallestUnit), sign, relativeOps)), roundedDurationFields;
}
function roundDayTimeDurationByInc(durationFields, nanoInc, roundingMode) {
  const maxUnit = Math.max(Math.min(getMaxDurationUnit(durationFields), 6), 3);
  return nanoToDurationDayTimeFields(roundBigNanoToInc(durationDayTimeToBigNano(durationFields), BigInt(nanoInc), roundingMode), maxUnit);
}
function roundZonedEpochToDay(slots, roundingMode) {
  const [epochNano0, epochNano1] = computeZonedDayEpochInterval(slots);
  return roundZonedEpochToBounds(slots.epochNanoseconds, epochNano0, epochNano1, roundingMode);
}
function roundZonedEpochToTime(slots, smallestUnit, roundingInc, roundingMode) {
  if (0 === smallestUnit && 1 === roundingInc) {
    return slots.epochNanoseconds;
  }
  const isoDateTime = zonedEpochSlotsToIso(slots);
  return getInstantPreferringOffset(slots.timeZone, roundDateTimeToUnit(isoDateTime, smallestUnit, roundingInc, roundingMode), isoDateTime.offsetNanoseconds);
}
function roundDateTimeToUnit(isoDateTime, smallestUnit, roundingInc, roundingMode) {
  return roundDateTimeToInc(isoDateTime, computeNanoInc(smallestUnit, roundingInc), roundingMode, unitNanoMap[smallestUnit + 1]);
}
function roundTimeToUnit(timeFields, smallestUnit, roundingInc, roundingMode) {
  return roundTimeToInc(timeFields, computeNanoInc(smallestUnit, roundingInc), roundingMode, unitNanoMap[smallestUnit + 1]);
}
function roundDateTimeToInc(isoDateTime, nanoInc, roundingMode, spanNano) {
  const [roundedTimeFields, dayDelta] = roundTimeToInc(isoDateTime, nanoInc, roundingMode, spanNano);
  const roundedIsoDateTime = combineDateAndTime(moveDateByDays(isoDateTime, dayDelta), roundedTimeFields);
  return checkIsoDateTimeInBounds(roundedIsoDateTime), roundedIsoDateTime;
}
function roundTimeToInc(timeFields, nanoInc, roundingMode, spanNano = nanoInUtcDay) {
  const timeNano = timeFieldsToNano(timeFields);
  const remainderNano = timeNano % spanNano;
  return nanoToTimeAndDay(timeNano - remainderNano + roundNumberToInc(remainderNano, nanoInc, roundingMode));
}
function nudgeRelativeDuration(sign, durationFields, endEpochNano, _largestUnit, smallestUnit, roundingInc, roundingMode, relativeOps) {
  const smallestUnitFieldName = durationFieldNamesAsc[smallestUnit];
  const baseDurationFields = clearDurationFields(smallestUnit, durationFields);
  7 === smallestUnit && (durationFields = {
    ...durationFields,
    weeks: durationFields.weeks + Math.trunc(durationFields.days / 7)
  });
  const truncedVal = divTrunc(durationFields[smallestUnitFieldName], roundingInc) * roundingInc;
  const nudgeWindow = clampRelativeUnitValue(truncedVal, roundingInc * sign, (value) => (baseDurationFields[smallestUnitFieldName] = value, moveRelativeMarkerToEpochNano(relativeOps, baseDurationFields)), endEpochNano);
  const roundedVal = roundRelativeUnitWindow(nudgeWindow, endEpochNano, roundingInc, roundingMode);
  return baseDurationFields[smallestUnitFieldName] = roundedVal, [baseDurationFields, roundedVal === nudgeWindow.pe ? nudgeWindow.te : nudgeWindow.N, roundedVal !== truncedVal];
}
function nudgeZonedTimeDuration(sign, durationFields, _endEpochNano, _largestUnit, smallestUnit, roundingInc, roundingMode, relativeOps) {
  const timeNano = Number(durationTimeToBigNano(durationFields));
  const nanoInc = computeNanoInc(smallestUnit, roundingInc);
  let roundedTimeNano = roundNumberToInc(timeNano, nanoInc, roundingMode);
  const dateDurationFields = {
    ...durationFields,
    ...durationTimeFieldDefaults
  };
  const dayEpochNano0 = relativeOps.X(dateDurationFields);
  const dayEpochNano1 = relativeOps.X({
    ...dateDurationFields,
    days: dateDurationFields.days + sign
  });
  const daySpanNano = Number(dayEpochNano1 - dayEpochNano0);
  Math.sign(daySpanNano) !== sign && throwRangeError("Out-of-bounds TimeZone gap");
  const beyondDayNano = roundedTimeNano - daySpanNano;
  let dayDelta = 0;
  let nudgedEpochNano;
  beyondDayNano && Math.sign(beyondDayNano) !== sign ? nudgedEpochNano = dayEpochNano0 + BigInt(roundedTimeNano) : (dayDelta += sign, roundedTimeNano = roundNumberToInc(beyondDayNano, nanoInc, roundingMode), nudgedEpochNano = dayEpochNano1 + BigInt(roundedTimeNano));
  const durationTimeFields = nanoToDurationTimeFields(roundedTimeNano);
  return [{
    ...durationFields,
    ...durationTimeFields,
    days: durationFields.days + dayDelta
  }, nudgedEpochNano, Boolean(dayDelta)];
}
function nudgeDayTimeDuration(sign, durationFields, endEpochNano, largestUnit, smallestUnit, roundingInc, roundingMode) {
  const bigNano = durationDayTimeToBigNano(durationFields);
  const roundedBigNano = roundBigNanoToInc(bigNano, computeBigNanoInc(smallestUnit, roundingInc), roundingMode);
  const nanoDiff = roundedBigNano - bigNano;
  const expandedBigUnit = Math.sign(Number(roundedBigNano / bigNanoInUtcDay) - Number(bigNano / bigNanoInUtcDay)) === sign;
  const roundedDayTimeFields = nanoToDurationDayTimeFields(roundedBigNano, Math.min(largestUnit, 6));
  return [{
    ...durationFields,
    ...roundedDayTimeFields
  }, endEpochNano + nanoDiff, expandedBigUnit];
}
function computeZonedDayEpochInterval(slots) {
  const { timeZone } = slots;
  const isoDateTime0 = combineDateAndTime(zonedEpochSlotsToIso(slots), timeFieldDefaults);
  const isoDateTime1 = combineDateAndTime(moveDateByDays(isoDateTime0, 1), timeFieldDefaults);
  return [getStartOfDayInstantFor(timeZone, isoDateTime0), getStartOfDayInstantFor(timeZone, isoDateTime1)];
}
function roundZonedEpochToBounds(epochNano, epochNano0, epochNano1, roundingMode) {
  return roundWithMode(computeEpochNanoFrac(epochNano < epochNano1 ? epochNano : epochNano1 - 1n, epochNano0, epochNano1), roundingMode) ? epochNano1 : epochNano0;
}
function roundToMinute(offsetNano) {
  return roundNumberToInc(offsetNano, nanoInMinute2, 7);
}
function roundBigNanoToInc(bigNano, bigNanoInc, roundingMode) {
  return roundBigNanoToIncWithTail(bigNano, bigNanoInc, roundingMode, bigNano / bigNanoInc % 2n);
}
function roundBigNanoToDayOriginInc(bigNano, bigNanoInc, roundingMode) {
  const [day, timeNano] = divModFloorBigInt(bigNano, bigNanoInUtcDay);
  const dayOriginNano = day * bigNanoInUtcDay;
  return dayOriginNano + roundBigNanoToIncWithTail(timeNano, bigNanoInc, roundingMode, dayOriginNano / bigNanoInc + timeNano / bigNanoInc & 1n);
}
function roundBigNanoToIncWithTail(bigNano, bigNanoInc, roundingMode, quotientTail) {
  const quotient = bigNano / bigNanoInc;
  const remainder = bigNano % bigNanoInc;
  let fraction = 0;
  remainder && (fraction = fabricateNearHalfFraction(compareBigInts(2n * (remainder < 0n ? -remainder : remainder), bigNanoInc), Math.sign(Number(remainder))));
  const roundedTail = roundWithMode(Number(quotientTail) + fraction, roundingMode);
  return (quotient - quotientTail + BigInt(roundedTail)) * bigNanoInc;
}
function computeNanoInc(smallestUnit, roundingInc) {
  return unitNanoMap[smallestUnit] * roundingInc;
}
function computeBigNanoInc(smallestUnit, roundingInc) {
  return BigInt(unitNanoMap[smallestUnit]) * BigInt(roundingInc);
}
var zonedEpochSlotsToIso = /* @__PURE__ */ memoize(_zonedEpochSlotsToIso, WeakMap);
function _zonedEpochSlotsToIso(slots) {
  const { epochNanoseconds, timeZone } = slots;
  const offsetNanoseconds = timeZone.B(epochNanoseconds);
  return {
    ...epochNanoToIsoDateTime(epochNanoseconds + BigInt(offsetNanoseconds)),
    offsetNanoseconds
  };
}
function getInstantPreferringOffset(timeZone, isoDateTime, offsetNano) {
  return getMatchingInstantFor(timeZone, isoDateTime, offsetNano, 2, 0);
}
function getMatchingInstantFor(timeZone, isoDateTime, offsetNano, offsetDisambig = 0, epochDisambig = 0, epochFuzzy, hasZ) {
  if (hasZ || void 0 !== offsetNano && 1 === offsetDisambig) {
    return isoDateTimeAndOffsetToEpochNano(isoDateTime, offsetNano || 0);
  }
  const possibleEpochNanos = timeZone.O(isoDateTime);
  if (void 0 !== offsetNano && 3 !== offsetDisambig) {
    checkIsoDateInBounds(isoDateTime, 0);
    const matchingEpochNano = ((possibleEpochNanos2, isoDateTime2, offsetNano2, fuzzy) => {
      const zonedEpochNano = isoDateTimeToEpochNano(isoDateTime2);
      fuzzy && (offsetNano2 = roundToMinute(offsetNano2));
      for (const possibleEpochNano of possibleEpochNanos2) {
        let possibleOffsetNano = Number(zonedEpochNano - possibleEpochNano);
        if (fuzzy && (possibleOffsetNano = roundToMinute(possibleOffsetNano)), possibleOffsetNano === offsetNano2) {
          return possibleEpochNano;
        }
      }
    })(possibleEpochNanos, isoDateTime, offsetNano, epochFuzzy);
    if (void 0 !== matchingEpochNano) {
      return matchingEpochNano;
    }
    0 === offsetDisambig && throwRangeError("Invalid TimeZone offset");
  }
  return getSingleInstantFor(timeZone, isoDateTime, epochDisambig, possibleEpochNanos);
}
function getSingleInstantFor(timeZone, isoDateTime, disambig = 0, possibleEpochNanos = timeZone.O(isoDateTime)) {
  if (1 === possibleEpochNanos.length) {
    return possibleEpochNanos[0];
  }
  if (1 === disambig && throwRangeError("Ambiguous offset"), possibleEpochNanos.length) {
    return possibleEpochNanos[3 === disambig ? 1 : 0];
  }
  const zonedEpochNano = isoDateTimeToEpochNano(isoDateTime);
  const gapNano = ((timeZone2, zonedEpochNano2) => {
    const startOffsetNano = timeZone2.B(zonedEpochNano2 - bigNanoInUtcDay);
    return ((gapNano2) => (gapNano2 > nanoInUtcDay && throwRangeError("Out-of-bounds TimeZone gap"), gapNano2))(timeZone2.B(zonedEpochNano2 + bigNanoInUtcDay) - startOffsetNano);
  })(timeZone, zonedEpochNano);
  const shiftedIsoDateTime = epochNanoToIsoDateTime(zonedEpochNano + BigInt(gapNano * (2 === disambig ? -1 : 1)));
  return (possibleEpochNanos = timeZone.O(shiftedIsoDateTime))[2 === disambig ? 0 : possibleEpochNanos.length - 1];
}
function getStartOfDayInstantFor(timeZone, isoDateTime) {
  const possibleEpochNanos = timeZone.O(isoDateTime);
  if (possibleEpochNanos.length) {
    return possibleEpochNanos[0];
  }
  const zonedEpochNanoDayBefore = isoDateTimeToEpochNano(isoDateTime) - bigNanoInUtcDay;
  return timeZone.C(zonedEpochNanoDayBefore, 1);
}
function moveYearMonth(calendar, isoDate, durationSlots, overflow = 0) {
  computeDurationSign(durationSlots) && clampEntity("unit", getMaxDurationUnit(durationSlots), 8, 9, 1, durationFieldNamesAsc);
  const first = checkIsoDateInBounds(moveToStartOfMonth(calendar, isoDate));
  return moveToStartOfMonth(calendar, moveDate(calendar, first, durationSlots, overflow));
}
function moveZonedEpochSlots(slots, durationFields, overflow = 0) {
  const { calendar, epochNanoseconds: epochNano, timeZone } = slots;
  const timeOnlyNano = durationTimeToBigNano(durationFields);
  let movedEpochNano = epochNano;
  if (durationHasDateParts(durationFields)) {
    const isoDateTime = zonedEpochSlotsToIso(slots);
    movedEpochNano = getSingleInstantFor(timeZone, combineDateAndTime(moveDate(calendar, isoDateTime, {
      ...durationFields,
      ...durationTimeFieldDefaults
    }, overflow), isoDateTime)) + timeOnlyNano;
  } else {
    movedEpochNano += timeOnlyNano;
  }
  return {
    ...slots,
    epochNanoseconds: checkEpochNanoInBounds(movedEpochNano)
  };
}
function moveDateTime(calendar, isoDateTime, durationFields, overflow = 0) {
  const [movedTimeFields, dayDelta] = moveTime(isoDateTime, durationFields);
  return checkIsoDateTimeInBounds(combineDateAndTime(moveDate(calendar, isoDateTime, {
    ...durationFields,
    ...durationTimeFieldDefaults,
    days: durationFields.days + dayDelta
  }, overflow), movedTimeFields));
}
function moveTime(timeFields, durationFields) {
  return moveTimeByNano(timeFields, durationTimeToBigNano(durationFields));
}
function moveEpochNano(epochNano, durationFields) {
  return moveEpochNanoByNano(epochNano, (clampEntity("unit", getMaxDurationUnit(fields = durationFields), 0, 5, 1, durationFieldNamesAsc), durationTimeToBigNano(fields)));
  var fields;
}
function moveDate(calendar, isoDate, durationFields, overflow = 0) {
  let { years, months, weeks, days } = durationFields;
  let movedIsoDate;
  if (days += Number(durationTimeToBigNano(durationFields) / bigNanoInUtcDay), years || months) {
    movedIsoDate = moveDateByCalendarUnits(calendar, isoDate, years, months, overflow);
  } else {
    if (!weeks && !days) {
      return isoDate;
    }
    movedIsoDate = isoDate;
  }
  return (weeks || days) && (movedIsoDate = moveDateByDays(movedIsoDate, 7 * weeks + days)), checkIsoDateInBounds(movedIsoDate);
}
function moveToStartOfMonth(calendar, isoDate) {
  return moveDateByDays(isoDate, 1 - computeCalendarDateFields(calendar, isoDate).day);
}
function moveDateByCalendarUnits(calendar, isoDate, years, months, overflow) {
  const dateParts = computeCalendarDateFields(calendar, isoDate);
  let { year, month, day } = dateParts;
  if (years) {
    const [monthCodeNumber, isLeapMonth] = computeCalendarMonthCodeParts(calendar, year, month);
    year += years, month = resolveMonthInMovedYear(calendar, monthCodeNumber, isLeapMonth, calendar ? calendar.p(year) : void 0, overflow), month = clampEntity("month", month, 1, computeCalendarMonthsInYearForYear(calendar, year), overflow);
  }
  if (months) {
    const yearMonthParts = addCalendarMonths(calendar, year, month, months);
    ({ year, month } = yearMonthParts);
  }
  return day = clampEntity("day", day, 1, computeCalendarDaysInMonthForYearMonth(calendar, year, month), overflow), computeCalendarIsoFieldsFromParts(calendar, year, month, day);
}
function addCalendarMonths(calendar, year, month, monthDelta) {
  return calendar ? calendar.ae(year, month, monthDelta) : addIsoMonths(year, month, monthDelta);
}
function resolveMonthInMovedYear(calendar, monthCodeNumber, isLeapMonth, targetLeapMonth, overflow) {
  if (isLeapMonth) {
    const leapMonthMeta = calendar ? calendar.l : void 0;
    if (void 0 !== targetLeapMonth && (leapMonthMeta < 0 || targetLeapMonth === monthCodeNumber + 1)) {
      return targetLeapMonth;
    }
    if (1 === overflow && throwRangeError(invalidLeapMonth), leapMonthMeta < 0) {
      return -leapMonthMeta;
    }
  }
  return monthCodeNumberToMonth(monthCodeNumber, 0, targetLeapMonth);
}
function moveTimeByNano(timeFields, durationBigNano) {
  const durDays = Number(durationBigNano / bigNanoInUtcDay);
  const durTimeNano = Number(durationBigNano % bigNanoInUtcDay);
  const [newTimeFields, overflowDays] = nanoToTimeAndDay(timeFieldsToNano(timeFields) + durTimeNano);
  return [newTimeFields, durDays + overflowDays];
}
function moveEpochNanoByNano(epochNano, deltaNano) {
  return checkEpochNanoInBounds(epochNano + deltaNano);
}
function moveDateByDays(isoDate, days) {
  return days ? epochDaysToIsoDate(isoDateToEpochDays(isoDate) + days) : isoDate;
}
function getCommonCalendar(a, b) {
  return getCalendarSlotId(a) !== getCalendarSlotId(b) && throwRangeError("Mismatching Calendars"), a;
}
function getCommonTimeZone(a, b) {
  return a.m !== b.m && throwRangeError("Mismatching TimeZones"), a;
}
function getZonedTimeZoneId(slots) {
  return slots.timeZone.id;
}
function diffZonedDateTimesRounded(calendar, startZoned, endZoned, largestUnit, smallestUnit, roundingInc, roundingMode) {
  return largestUnit < 6 ? diffEpochNanosRounded(startZoned.epochNanoseconds, endZoned.epochNanoseconds, largestUnit, smallestUnit, roundingInc, roundingMode) : ((calendar2, startZoned2, endZoned2, largestUnit2, smallestUnit2, roundingInc2, roundingMode2) => {
    const timeZone = getCommonTimeZone(startZoned2.timeZone, endZoned2.timeZone);
    const endEpochNano = endZoned2.epochNanoseconds;
    if (endEpochNano === startZoned2.epochNanoseconds) {
      return durationFieldDefaults;
    }
    let durationFields;
    return durationFields = diffZonedEpochsExact(timeZone, calendar2, startZoned2, endZoned2, largestUnit2), durationFields = roundRelativeDuration(durationFields, endEpochNano, largestUnit2, smallestUnit2, roundingInc2, roundingMode2, createZonedRelativeOps(calendar2, timeZone, startZoned2), 1), durationFields;
  })(calendar, startZoned, endZoned, largestUnit, smallestUnit, roundingInc, roundingMode);
}
function diffDateTimesRounded(calendar, startIsoDateTime, endIsoDateTime, largestUnit, smallestUnit, roundingInc, roundingMode) {
  return largestUnit <= 6 ? diffEpochNanosRounded(isoDateTimeToEpochNano(startIsoDateTime), isoDateTimeToEpochNano(endIsoDateTime), largestUnit, smallestUnit, roundingInc, roundingMode) : ((calendar2, startIsoDateTime2, endIsoDateTime2, largestUnit2, smallestUnit2, roundingInc2, roundingMode2) => {
    const endEpochNano = isoDateTimeToEpochNano(endIsoDateTime2);
    const sign = compareBigInts(endEpochNano, isoDateTimeToEpochNano(startIsoDateTime2));
    if (!sign) {
      return durationFieldDefaults;
    }
    let durationFields;
    return durationFields = diffDateTimesBig(calendar2, startIsoDateTime2, endIsoDateTime2, sign, largestUnit2), durationFields = roundRelativeDuration(durationFields, endEpochNano, largestUnit2, smallestUnit2, roundingInc2, roundingMode2, ((calendar3, origin) => ({
      ne: isoDateTimeToEpochNano(origin),
      X: (duration) => isoDateTimeToEpochNano(combineDateAndTime(moveDate(calendar3, origin, duration), origin))
    }))(calendar2, startIsoDateTime2)), durationFields;
  })(calendar, startIsoDateTime, endIsoDateTime, largestUnit, smallestUnit, roundingInc, roundingMode);
}
function diffYearMonthsRounded(calendar, startIsoDate, endIsoDate, largestUnit, smallestUnit, roundingInc, roundingMode) {
  const firstOfMonth0 = moveToStartOfMonth(calendar, startIsoDate);
  const firstOfMonth1 = moveToStartOfMonth(calendar, endIsoDate);
  return compareIsoDates(firstOfMonth0, firstOfMonth1) ? diffDateCalendarUnitsRounded(calendar, checkIsoDateInBounds(firstOfMonth0), checkIsoDateInBounds(firstOfMonth1), largestUnit, smallestUnit, roundingInc, roundingMode, 8) : durationFieldDefaults;
}
function diffDatesRounded(calendar, startIsoDate, endIsoDate, largestUnit, smallestUnit, roundingInc, roundingMode, smallestPrecision = 6) {
  return 6 === largestUnit ? diffEpochNanosRounded(isoDateToEpochNano(startIsoDate), isoDateToEpochNano(endIsoDate), largestUnit, smallestUnit, roundingInc, roundingMode) : diffDateCalendarUnitsRounded(calendar, startIsoDate, endIsoDate, largestUnit, smallestUnit, roundingInc, roundingMode, smallestPrecision);
}
function diffTimesRounded(plainTimeSlots0, plainTimeSlots1, largestUnit, smallestUnit, roundingInc, roundingMode) {
  const timeDiffNano = roundNumberToInc(timeFieldsToNano(plainTimeSlots1) - timeFieldsToNano(plainTimeSlots0), computeNanoInc(smallestUnit, roundingInc), roundingMode);
  return {
    ...durationFieldDefaults,
    ...nanoToDurationTimeFields(timeDiffNano, largestUnit)
  };
}
function diffDateCalendarUnitsRounded(calendar, startIsoDate, endIsoDate, largestUnit, smallestUnit, roundingInc, roundingMode, smallestPrecision = 6) {
  const endEpochNano = isoDateToEpochNano(endIsoDate);
  if (!compareIsoDates(startIsoDate, endIsoDate)) {
    return durationFieldDefaults;
  }
  let durationFields;
  return durationFields = diffCalendarDates(calendar, startIsoDate, endIsoDate, largestUnit), smallestUnit === smallestPrecision && 1 === roundingInc || (durationFields = roundRelativeDuration(durationFields, endEpochNano, largestUnit, smallestUnit, roundingInc, roundingMode, createDateRelativeOps(calendar, startIsoDate))), durationFields;
}
function diffEpochNanosRounded(startEpochNano, endEpochNano, largestUnit, smallestUnit, roundingInc, roundingMode) {
  return {
    ...durationFieldDefaults,
    ...nanoToDurationDayTimeFields(roundBigNanoToInc(endEpochNano - startEpochNano, computeBigNanoInc(smallestUnit, roundingInc), roundingMode), largestUnit)
  };
}
function diffZonedEpochsExact(timeZone, calendar, startZoned, endZoned, largestUnit) {
  return largestUnit < 6 ? {
    ...durationFieldDefaults,
    ...nanoToDurationDayTimeFields(endZoned.epochNanoseconds - startZoned.epochNanoseconds, largestUnit)
  } : ((timeZone2, startZoned2, endZoned2) => {
    const sign = compareBigInts(endZoned2.epochNanoseconds, startZoned2.epochNanoseconds);
    if (!sign) {
      return durationFieldDefaults;
    }
    if (!compareIsoDates(zonedEpochSlotsToIso(startZoned2), zonedEpochSlotsToIso(endZoned2))) {
      return {
        ...durationFieldDefaults,
        ...nanoToDurationDayTimeFields(endZoned2.epochNanoseconds - startZoned2.epochNanoseconds, 5)
      };
    }
    const [startIsoDateTime, endIsoDate, remainderNano] = prepareZonedEpochDiff(timeZone2, startZoned2, endZoned2, sign);
    return {
      ...(start = startIsoDateTime, end = endIsoDate, diffCalendarDates(calendar, start, end, largestUnit)),
      ...nanoToDurationTimeFields(remainderNano)
    };
    var start, end;
  })(timeZone, startZoned, endZoned);
}
function diffDateTimesExact(calendar, startIsoDateTime, endIsoDateTime, largestUnit) {
  const startEpochNano = isoDateTimeToEpochNano(startIsoDateTime);
  const endEpochNano = isoDateTimeToEpochNano(endIsoDateTime);
  const sign = compareBigInts(endEpochNano, startEpochNano);
  return sign ? largestUnit <= 6 ? {
    ...durationFieldDefaults,
    ...nanoToDurationDayTimeFields(endEpochNano - startEpochNano, largestUnit)
  } : diffDateTimesBig(calendar, startIsoDateTime, endIsoDateTime, sign, largestUnit) : durationFieldDefaults;
}
function diffDateTimesBig(calendar, startIsoDateTime, endIsoDateTime, sign, largestUnit) {
  let diffEndDate = endIsoDateTime;
  let timeNano = timeFieldsToNano(endIsoDateTime) - timeFieldsToNano(startIsoDateTime);
  return Math.sign(timeNano) === -sign && (diffEndDate = moveDateByDays(endIsoDateTime, -sign), timeNano += nanoInUtcDay * sign), {
    ...diffCalendarDates(calendar, startIsoDateTime, diffEndDate, largestUnit),
    ...nanoToDurationTimeFields(timeNano)
  };
}
function prepareZonedEpochDiff(timeZone, startZoned, endZoned, sign) {
  const startIsoDate = zonedEpochSlotsToIso(startZoned);
  const endIsoDate = zonedEpochSlotsToIso(endZoned);
  const endEpochNano = endZoned.epochNanoseconds;
  let dayCorrection = 0;
  const timeDiffNano = timeFieldsToNano(endIsoDate) - timeFieldsToNano(startIsoDate);
  Math.sign(timeDiffNano) === -sign && dayCorrection++;
  const maxDayCorrection = sign > 0 ? 2 : 1;
  for (; ; dayCorrection++) {
    const midIsoDate = moveDateByDays(endIsoDate, dayCorrection * -sign);
    const midEpochNano = getSingleInstantFor(timeZone, combineDateAndTime(midIsoDate, startIsoDate));
    if (dayCorrection === maxDayCorrection || compareBigInts(endEpochNano, midEpochNano) !== -sign) {
      return [startIsoDate, midIsoDate, Number(endEpochNano - midEpochNano)];
    }
  }
}
function diffCalendarDates(calendar, startIsoDate, endIsoDate, largestUnit) {
  if (largestUnit <= 7) {
    return ((asWeeks, start, end) => {
      const days = countIsoDays(start, end);
      return asWeeks ? {
        ...durationFieldDefaults,
        weeks: divTrunc(days, 7),
        days: modTrunc(days, 7)
      } : {
        ...durationFieldDefaults,
        days
      };
    })(7 === largestUnit, startIsoDate, endIsoDate);
  }
  const yearMonthDayStart = computeCalendarDateFields(calendar, startIsoDate);
  const yearMonthDayEnd = computeCalendarDateFields(calendar, endIsoDate);
  if (8 === largestUnit) {
    const { year: year02, month: month02, day: day02 } = yearMonthDayStart;
    const { year: year12, month: month12, day: day12 } = yearMonthDayEnd;
    const sign = Math.sign(compareNumbers(year12, year02) || compareNumbers(month12, month02) || countIsoDays(startIsoDate, endIsoDate));
    let months = 0;
    let days = 0;
    if (sign) {
      months = calendar ? calendar.ee(year02, month02, year12, month12) : diffIsoMonthSlots(year02, month02, year12, month12);
      let anchorIsoDate = moveDateByCalendarUnits(calendar, startIsoDate, 0, months, 0);
      sign * compareNumbers(day02, day12) > 0 && (months -= sign, anchorIsoDate = moveDateByCalendarUnits(calendar, startIsoDate, 0, months, 0)), days = countIsoDays(anchorIsoDate, endIsoDate);
    }
    return {
      ...durationFieldDefaults,
      months,
      days
    };
  }
  const { year: year0, month: month0, day: day0 } = yearMonthDayStart;
  let { year: year1, month: month1, day: day1 } = yearMonthDayEnd;
  let yearDiff = year1 - year0;
  let monthDiff = month1 - month0;
  let dayDiff = day1 - day0;
  if (yearDiff || monthDiff) {
    const sign = Math.sign(yearDiff || monthDiff);
    let daysInMonth1 = computeCalendarDaysInMonthForYearMonth(calendar, year1, month1);
    let dayCorrect = 0;
    if (Math.sign(day1 - day0) === -sign) {
      const origDaysInMonth1 = daysInMonth1;
      const yearMonthParts = addCalendarMonths(calendar, year1, month1, -sign);
      ({ year: year1, month: month1 } = yearMonthParts), yearDiff = year1 - year0, monthDiff = month1 - month0, daysInMonth1 = computeCalendarDaysInMonthForYearMonth(calendar, year1, month1), dayCorrect = sign < 0 ? -origDaysInMonth1 : daysInMonth1;
    }
    if (dayDiff = day1 - Math.min(day0, daysInMonth1) + dayCorrect, yearDiff) {
      const [monthCodeNumber0, isLeapMonth0] = computeCalendarMonthCodeParts(calendar, year0, month0);
      const [monthCodeNumber1, isLeapMonth1] = computeCalendarMonthCodeParts(calendar, year1, month1);
      const leapMonthMeta = calendar ? calendar.l : void 0;
      if (monthDiff = void 0 !== leapMonthMeta && isLeapMonth0 && !isLeapMonth1 && (leapMonthMeta < 0 ? sign > 0 && monthCodeNumber1 === -leapMonthMeta : sign < 0 && monthCodeNumber1 === monthCodeNumber0) ? 0 : monthCodeNumber1 - monthCodeNumber0 || Number(isLeapMonth1) - Number(isLeapMonth0), Math.sign(monthDiff) === -sign) {
        const monthCorrect = sign < 0 && -computeCalendarMonthsInYearForYear(calendar, year1);
        year1 -= sign, yearDiff = year1 - year0, monthDiff = month1 - resolveMonthInMovedYear(calendar, monthCodeNumber0, isLeapMonth0, calendar ? calendar.p(year1) : void 0, 0) + (monthCorrect || computeCalendarMonthsInYearForYear(calendar, year1));
      } else if (calendar) {
        const month0Projected = resolveMonthInMovedYear(calendar, monthCodeNumber0, isLeapMonth0, calendar.p(year1), 0);
        monthDiff = calendar.ee(year1, month0Projected, year1, month1);
      }
    }
  }
  return {
    ...durationFieldDefaults,
    years: yearDiff,
    months: monthDiff,
    days: dayDiff
  };
}
function compareIsoDates(isoDate0, isoDate1) {
  return compareNumbers(isoDate0.year, isoDate1.year) || compareNumbers(isoDate0.month, isoDate1.month) || compareNumbers(isoDate0.day, isoDate1.day);
}
function countIsoDays(startIsoDate, endIsoDate) {
  return isoDateToEpochDays(endIsoDate) - isoDateToEpochDays(startIsoDate);
}
function spanRelativeDuration(relativeToSlots, durationFields, largestUnit) {
  return isZonedEpochSlots(relativeToSlots) ? ((relativeToSlots2, durationFields2, largestUnit2) => {
    const { calendar, timeZone } = relativeToSlots2;
    const endSlots = moveZonedEpochSlots(relativeToSlots2, durationFields2);
    return [diffZonedEpochsExact(timeZone, calendar, relativeToSlots2, endSlots, largestUnit2), endSlots.epochNanoseconds, createZonedRelativeOps(calendar, timeZone, relativeToSlots2)];
  })(relativeToSlots, durationFields, largestUnit) : ((relativeToSlots2, durationFields2, largestUnit2) => {
    const { calendar } = relativeToSlots2;
    const origin = checkIsoDateTimeInBounds(combineDateAndTime(relativeToSlots2, timeFieldDefaults));
    const end = moveDateTime(calendar, origin, durationFields2);
    return [diffDateTimesExact(calendar, origin, end, largestUnit2), isoDateTimeToEpochNano(end), createDateRelativeOps(calendar, relativeToSlots2)];
  })(relativeToSlots, durationFields, largestUnit);
}
function moveRelativeEndpointToEpochNano(relativeToSlots, durationFields) {
  return isZonedEpochSlots(relativeToSlots) ? moveZonedEpochSlots(relativeToSlots, durationFields).epochNanoseconds : isoDateTimeToEpochNano(moveDateTime(relativeToSlots.calendar, combineDateAndTime(relativeToSlots, timeFieldDefaults), durationFields));
}
function moveRelativeMarkerToEpochNano(relativeOps, dateDuration) {
  return durationHasDateParts(dateDuration) ? relativeOps.X(dateDuration) : relativeOps.ne;
}
function createZonedRelativeOps(calendar, timeZone, slots) {
  const origin = zonedEpochSlotsToIso(slots);
  return {
    ne: slots.epochNanoseconds,
    X: (duration) => getSingleInstantFor(timeZone, combineDateAndTime(moveDate(calendar, origin, duration), origin))
  };
}
function createDateRelativeOps(calendar, origin) {
  return {
    ne: isoDateToEpochNano(origin),
    X: (duration) => isoDateToEpochNano(moveDate(calendar, origin, duration))
  };
}
function isZonedEpochSlots(slots) {
  return "timeZone" in slots;
}
function isUniformUnit(unit, isZoned) {
  return unit <= 6 - (isZoned ? 1 : 0);
}
function nanoToGivenFields(nano, largestUnit, fieldNames) {
  const fields = {};
  for (let unit = largestUnit; unit >= 0; unit--) {
    const divisor = unitNanoMap[unit];
    fields[fieldNames[unit]] = divTrunc(nano, divisor), nano = modTrunc(nano, divisor);
  }
  return fields;
}
var maxDurationSeconds = 2 ** 53;
function addDurationsWithoutRelativeTo(doSubtract, slots, otherSlots) {
  const maxUnit = Math.max(getMaxDurationUnit(slots), getMaxDurationUnit(otherSlots));
  return clampEntity("unit", maxUnit, 0, 6, 1, durationFieldNamesAsc), ((doSubtract2, slots2, otherSlots2, maxUnit2) => createDurationSlots(validateDurationFields(((a, b, largestUnit, doSubtract3) => {
    const combined = durationDayTimeToBigNano(a) + durationDayTimeToBigNano(b) * BigInt(doSubtract3 ? -1 : 1);
    return Number.isFinite(Number(combined / bigNanoInUtcDay)) || throwRangeError(outOfBoundsDate), {
      ...durationFieldDefaults,
      ...nanoToDurationDayTimeFields(combined, largestUnit)
    };
  })(slots2, otherSlots2, maxUnit2, doSubtract2))))(doSubtract, slots, otherSlots, maxUnit);
}
function roundDuration(refineRelativeTo, slots, options) {
  const durationLargestUnit = getMaxDurationUnit(slots);
  const [largestUnit, smallestUnit, roundingInc, roundingMode, relativeToSlots] = ((options2, defaultLargestUnit, refineRelativeTo2) => {
    options2 = normalizeOptionsOrString(options2, smallestUnitStr);
    let largestUnit2 = coerceLargestUnit(options2);
    const relativeToInternals = refineRelativeTo2(options2.relativeTo);
    let roundingInc2 = coerceRoundingIncInteger(options2);
    const roundingMode2 = coerceRoundingMode(options2, 7);
    let smallestUnit2 = coerceSmallestUnit(options2);
    return void 0 === largestUnit2 && void 0 === smallestUnit2 && throwRangeError("Required smallestUnit or largestUnit"), null == smallestUnit2 && (smallestUnit2 = 0), null == largestUnit2 && (largestUnit2 = Math.max(smallestUnit2, defaultLargestUnit)), checkLargestSmallestUnit(largestUnit2, smallestUnit2), roundingInc2 = validateRoundingInc(roundingInc2, smallestUnit2, 1), roundingInc2 > 1 && smallestUnit2 > 5 && largestUnit2 !== smallestUnit2 && throwRangeError("For calendar units with roundingIncrement > 1, use largestUnit = smallestUnit"), [largestUnit2, smallestUnit2, roundingInc2, roundingMode2, relativeToInternals];
  })(options, durationLargestUnit, refineRelativeTo);
  if (!relativeToSlots && Math.max(durationLargestUnit, largestUnit) <= 6) {
    return createDurationSlots(validateDurationFields(((durationFields, largestUnit2, smallestUnit2, roundingInc2, roundingMode2) => {
      const roundedBigNano = roundBigNanoToInc(durationDayTimeToBigNano(durationFields), computeBigNanoInc(smallestUnit2, roundingInc2), roundingMode2);
      return {
        ...durationFieldDefaults,
        ...nanoToDurationDayTimeFields(roundedBigNano, largestUnit2)
      };
    })(slots, largestUnit, smallestUnit, roundingInc, roundingMode)));
  }
  relativeToSlots || throwRangeError("Missing relativeTo");
  const isZoned = isZonedEpochSlots(relativeToSlots);
  if (!slots.sign && (!isZoned || largestUnit < 6)) {
    return slots;
  }
  const [balancedDuration, endEpochNano, relativeOps] = spanRelativeDuration(relativeToSlots, slots, largestUnit);
  return createDurationSlots(roundRelativeDuration(balancedDuration, endEpochNano, largestUnit, smallestUnit, roundingInc, roundingMode, relativeOps, isZoned));
}
function absDuration(slots) {
  return -1 === slots.sign ? negateDuration(slots) : slots;
}
function negateDuration(slots) {
  return createDurationSlots(negateDurationFields(slots));
}
function negateDurationFields(fields) {
  const res = {};
  for (const fieldName of durationFieldNamesAsc) {
    res[fieldName] = -1 * fields[fieldName] || 0;
  }
  return res;
}
function computeDurationSign(fields, fieldNames = durationFieldNamesAsc) {
  let sign = 0;
  for (const fieldName of fieldNames) {
    const fieldSign = Math.sign(fields[fieldName]);
    fieldSign && (sign && sign !== fieldSign && throwRangeError("Cannot mix duration signs"), sign = fieldSign);
  }
  return sign;
}
function validateDurationFields(fields) {
  for (const calendarUnit of durationCalendarFieldNamesAsc) {
    validateDurationCalendarUnit(calendarUnit, fields[calendarUnit]);
  }
  const bigNano = durationDayTimeToBigNano(fields);
  return validateDurationTimeUnit(Number(bigNano / bigNanoInSec)), fields;
}
function validateDurationCalendarUnit(unit, value) {
  return clampEntity(unit, value, -4294967295, 4294967295, 1);
}
function validateDurationTimeUnit(n) {
  Number.isSafeInteger(n) || throwRangeError("Out-of-bounds duration");
}
function durationDayTimeToBigNano(fields) {
  return BigInt(fields.days) * bigNanoInUtcDay + durationTimeToBigNano(fields);
}
function durationTimeToBigNano(fields) {
  return BigInt(fields.hours) * bigNanoInHour + BigInt(fields.minutes) * bigNanoInMinute + durationSubMinuteToBigNano(fields);
}
function durationSubMinuteToBigNano(fields) {
  return BigInt(fields.seconds) * bigNanoInSec + BigInt(fields.milliseconds) * bigNanoInMilli + BigInt(fields.microseconds) * bigNanoInMicro + BigInt(fields.nanoseconds);
}
function nanoToDurationDayTimeFields(bigNano, largestUnit = 6) {
  const days = Number(bigNano / bigNanoInUtcDay);
  const timeNano = Number(bigNano % bigNanoInUtcDay);
  const unitNano = unitNanoMap[largestUnit];
  const largestUnitVal = largestUnit <= 3 ? Number(bigNano / BigInt(unitNano)) : days * (nanoInUtcDay / unitNano) + divTrunc(timeNano, unitNano);
  Number.isFinite(largestUnitVal) || throwRangeError(outOfBoundsDate), largestUnit <= 3 && Math.abs(largestUnitVal) / (nanoInSec2 / unitNanoMap[largestUnit]) >= maxDurationSeconds && throwRangeError(outOfBoundsDate);
  const dayTimeFields = nanoToGivenFields(timeNano, largestUnit, durationFieldNamesAsc);
  return dayTimeFields[durationFieldNamesAsc[largestUnit]] = largestUnitVal, dayTimeFields;
}
function nanoToDurationTimeFields(nano, largestUnit = 5) {
  return nanoToGivenFields(nano, largestUnit, durationFieldNamesAsc);
}
function durationHasDateParts(fields) {
  return Boolean(computeDurationSign(fields, durationDateFieldNamesAsc));
}
function getMaxDurationUnit(fields) {
  let unit = 9;
  for (; unit > 0 && !fields[durationFieldNamesAsc[unit]]; unit--) {
  }
  return unit;
}
function compareZonedEpochSlots(zonedEpochSlots0, zonedEpochSlots1) {
  return compareBigInts(zonedEpochSlots0.epochNanoseconds, zonedEpochSlots1.epochNanoseconds);
}
function compareDurations(refineRelativeTo, durationSlots0, durationSlots1, options) {
  const relativeToSlots = refineRelativeTo(normalizeOptions(options).relativeTo);
  const maxUnit = Math.max(getMaxDurationUnit(durationSlots0), getMaxDurationUnit(durationSlots1));
  return allPropsEqual(durationFieldNamesAsc, durationSlots0, durationSlots1) ? 0 : isUniformUnit(maxUnit, relativeToSlots && isZonedEpochSlots(relativeToSlots)) ? compareBigInts(durationDayTimeToBigNano(durationSlots0), durationDayTimeToBigNano(durationSlots1)) : (relativeToSlots || throwRangeError("Missing relativeTo"), compareBigInts(moveRelativeEndpointToEpochNano(relativeToSlots, durationSlots0), moveRelativeEndpointToEpochNano(relativeToSlots, durationSlots1)));
}
function compareIsoDateTimeFields(isoDateTime0, isoDateTime1) {
  return compareIsoDateFields(isoDateTime0, isoDateTime1) || compareTimeFields(isoDateTime0, isoDateTime1);
}
function compareIsoDateFields(isoDate0, isoDate1) {
  return compareNumbers(isoDateToEpochDays(isoDate0), isoDateToEpochDays(isoDate1));
}
function compareTimeFields(timeFields0, timeFields1) {
  return compareNumbers(timeFieldsToNano(timeFields0), timeFieldsToNano(timeFields1));
}
function instantsEqual(instantSlots0, instantSlots1) {
  return !compareZonedEpochSlots(instantSlots0, instantSlots1);
}
function zonedDateTimesEqual(zonedDateTimeSlots0, zonedDateTimeSlots1) {
  return !compareZonedEpochSlots(zonedDateTimeSlots0, zonedDateTimeSlots1) && zonedDateTimeSlots0.timeZone.m === zonedDateTimeSlots1.timeZone.m && zonedDateTimeSlots0.calendar === zonedDateTimeSlots1.calendar;
}
function plainDateTimesEqual(plainDateTimeSlots0, plainDateTimeSlots1) {
  return !compareIsoDateTimeFields(plainDateTimeSlots0, plainDateTimeSlots1) && plainDateTimeSlots0.calendar === plainDateTimeSlots1.calendar;
}
function plainDatesEqual(plainDateSlots0, plainDateSlots1) {
  return !compareIsoDateFields(plainDateSlots0, plainDateSlots1) && plainDateSlots0.calendar === plainDateSlots1.calendar;
}
function plainYearMonthsEqual(plainYearMonthSlots0, plainYearMonthSlots1) {
  return !compareIsoDateFields(plainYearMonthSlots0, plainYearMonthSlots1) && plainYearMonthSlots0.calendar === plainYearMonthSlots1.calendar;
}
function plainMonthDaysEqual(plainMonthDaySlots0, plainMonthDaySlots1) {
  return !compareIsoDateFields(plainMonthDaySlots0, plainMonthDaySlots1) && plainMonthDaySlots0.calendar === plainMonthDaySlots1.calendar;
}
function plainTimesEqual(plainTimeSlots0, plainTimeSlots1) {
  return !compareTimeFields(plainTimeSlots0, plainTimeSlots1);
}
function getCalendarEraOrigins(calendar) {
  return 0 === calendar ? gregoryEraOrigins : calendar ? calendar.k : void 0;
}
function getCalendarFieldNames(calendar, fieldNames, fieldNamesWithEra = fieldNames) {
  return getCalendarEraOrigins(calendar) ? fieldNamesWithEra : fieldNames;
}
function resolveCalendarYear(fields, calendar) {
  const exoticCalendar = calendar || void 0;
  const eraOrigins = getCalendarEraOrigins(calendar);
  let { era, eraYear, year } = fields;
  if (void 0 !== year && (year = toIntegerWithTrunc(year, "year")), void 0 !== eraYear && (eraYear = toIntegerWithTrunc(eraYear, "eraYear")), void 0 !== era || void 0 !== eraYear) {
    void 0 !== era && void 0 !== eraYear || throwTypeError("Mismatching era/eraYear"), eraOrigins || throwRangeError("Forbidden era/eraYear");
    const normalizedEra = normalizeEraName(era);
    const eraOrigin = eraOrigins[normalizedEra];
    void 0 === eraOrigin && throwRangeError(((era2) => `Invalid era: ${era2}`)(era));
    const yearByEra = exoticCalendar?._ ? exoticCalendar._(eraYear, normalizedEra, eraOrigin) : eraYearToYear(eraYear, eraOrigin);
    void 0 !== year && year !== yearByEra && throwRangeError("Mismatching year/eraYear"), year = yearByEra;
  } else {
    void 0 === year && throwTypeError(missingYear(eraOrigins));
  }
  return year;
}
function resolveCalendarMonth(fields, calendar, year, monthCodeParts, overflow) {
  let { month, monthCode } = fields;
  if (void 0 !== monthCode) {
    const monthByCode = ((calendar2, monthCode2, year2, overflow2, monthCodeParts2 = parseMonthCode(monthCode2)) => {
      const leapMonth = calendar2 ? calendar2.p(year2) : void 0;
      const [monthCodeNumber, wantsLeapMonth] = monthCodeParts2;
      let month2 = monthCodeNumberToMonth(monthCodeNumber, wantsLeapMonth, leapMonth);
      if (wantsLeapMonth) {
        const leapMonthMeta = calendar2 ? calendar2.l : void 0;
        void 0 === leapMonthMeta && throwRangeError(invalidLeapMonth), leapMonthMeta > 0 ? (month2 > leapMonthMeta && throwRangeError(invalidLeapMonth), leapMonth !== month2 && (1 === overflow2 && throwRangeError(invalidLeapMonth), month2 = monthCodeNumberToMonth(monthCodeNumber, 0, leapMonth))) : (month2 !== -leapMonthMeta && throwRangeError(invalidLeapMonth), void 0 === leapMonth && 1 === overflow2 && throwRangeError(invalidLeapMonth));
      }
      return month2;
    })(calendar, monthCode, year, overflow, monthCodeParts);
    void 0 !== month && month !== monthByCode && throwRangeError("Mismatching month/monthCode"), month = monthByCode, overflow = 1;
  } else {
    void 0 === month && throwTypeError("Missing month/monthCode");
  }
  return clampEntity("month", month, 1, computeCalendarMonthsInYearForYear(calendar, year), overflow);
}
function resolveCalendarDay(fields, calendar, year, month, overflow) {
  return clampProp(fields, "day", 1, computeCalendarDaysInMonthForYearMonth(calendar, year, month), overflow);
}
function eraYearToYear(eraYear, eraOrigin) {
  return (eraOrigin + eraYear) * (Math.sign(eraOrigin) || 1) || 0;
}
function resolveTimeFields(fields, overflow) {
  return constrainTimeFields(pluckProps(timeFieldNamesAsc, {
    ...timeFieldDefaults,
    ...fields
  }), overflow);
}
var offsetRegExp = /^([+-])([01]\d|2[0-3])(?:(:?)([0-5]\d)(?:\3([0-5]\d)(?:[.,](\d{1,9}))?)?)?$/;
function parseOffsetNano(s) {
  const offsetNano = parseOffsetNanoMaybe(s);
  return void 0 === offsetNano && throwRangeError(failedParse(s)), offsetNano;
}
function parseOffsetNanoMaybe(s, onlyHourMinute) {
  const parts = offsetRegExp.exec(s);
  if (parts) {
    return onlyHourMinute && parts[5] && throwRangeError(failedParse(s)), /* @__PURE__ */ ((s2) => s2 && "+" !== s2 ? -1 : 1)(parts[1]) * (parseInt(parts[2]) * nanoInHour2 + parseInt0(parts[4]) * nanoInMinute2 + parseInt0(parts[5]) * nanoInSec2 + parseSubsecNano(parts[6] || ""));
  }
}
var dateFieldRefiners = {
  era: toString,
  month: toPositiveIntegerWithTruncation,
  monthCode(monthCode, fieldName) {
    return requireString(toPrimitiveWithStringHint(monthCode), fieldName);
  },
  day: toPositiveIntegerWithTruncation
};
var timeFieldRefiners = /* @__PURE__ */ zipPropsConst(timeFieldNamesAsc, toIntegerWithTrunc);
var durationFieldRefiners = /* @__PURE__ */ zipPropsConst(durationFieldNamesAsc, toStrictInteger);
var dateTimeFieldRefiners = /* @__PURE__ */ Object.assign({}, dateFieldRefiners, timeFieldRefiners);
var zonedDateTimeFieldRefiners = {
  offset(offsetString) {
    return parseOffsetNano(requireString(toPrimitiveWithStringHint(offsetString)));
  },
  ...dateTimeFieldRefiners
};
function readAndRefineBagFields(bag, validFieldNames, fieldRefiners, requiredFieldNames, disallowEmpty = !requiredFieldNames) {
  const res = {};
  let anyMatching = 0;
  for (const fieldName of validFieldNames) {
    let fieldVal = bag[fieldName];
    if (void 0 !== fieldVal) {
      anyMatching = 1;
      const refiner = fieldRefiners[fieldName];
      refiner && (fieldVal = refiner(fieldVal, fieldName)), res[fieldName] = fieldVal;
    } else {
      requiredFieldNames && requiredFieldNames.includes(fieldName) && throwTypeError(missingField(fieldName));
    }
  }
  return disallowEmpty && !anyMatching && throwTypeError("No valid fields: " + validFieldNames.join()), res;
}
function refineOverflowOptions(options) {
  return void 0 === options ? 0 : coerceOverflow(requireObjectLike(options));
}
function refineZonedFieldOptions(options, defaultOffsetDisambig = 0) {
  options = normalizeOptions(options);
  const epochDisambig = coerceEpochDisambig(options);
  const offsetDisambig = coerceOffsetDisambig(options, defaultOffsetDisambig);
  return [coerceOverflow(options), offsetDisambig, epochDisambig];
}
function refineEpochDisambigOptions(options) {
  return coerceEpochDisambig(normalizeOptions(options));
}
function refineCalendarDateFields(fields, calendar, allowMissingDay) {
  const eraOrigins = getCalendarEraOrigins(calendar);
  void 0 !== fields.year || void 0 !== fields.era && void 0 !== fields.eraYear || throwTypeError(missingYear(eraOrigins)), void 0 === fields.monthCode && void 0 === fields.month && throwTypeError("Missing month/monthCode"), allowMissingDay || void 0 !== fields.day || throwTypeError(missingField("day"));
  const monthCodeParts = parseMonthCodeField(fields);
  return [resolveCalendarYear(fields, calendar), monthCodeParts];
}
function refineMonthDayFields(fields, calendar) {
  const isIso = calendar === isoCalendarImpl;
  const eraOrigins = getCalendarEraOrigins(calendar);
  void 0 === fields.day && throwTypeError(missingField("day")), isIso || void 0 === fields.month || void 0 !== fields.year || void 0 !== fields.era && void 0 !== fields.eraYear || throwTypeError(missingYear(eraOrigins));
  const monthCodeParts = parseMonthCodeField(fields);
  return [void 0 !== fields.eraYear || void 0 !== fields.year ? resolveCalendarYear(fields, calendar) : void 0, monthCodeParts];
}
function createDateTimeFromRefinedFields(isoDate, timeFields = timeFieldDefaults, calendar) {
  const isoDateTime = combineDateAndTime(isoDate, timeFields);
  return checkIsoDateTimeInBounds(isoDateTime), createDateTimeSlots(isoDateTime, calendar);
}
function createDateFromRefinedFields(fields, calendar, year, monthCodeParts, overflow) {
  const month = resolveCalendarMonth(fields, calendar, year, monthCodeParts, overflow);
  return createDateSlots(checkIsoDateInBounds(computeCalendarIsoFieldsFromParts(calendar, year, month, resolveCalendarDay(fields, calendar, year, month, overflow))), calendar);
}
function createYearMonthFromRefinedFields(fields, calendar, year, monthCodeParts, overflow) {
  return createYearMonthFromCalendarParts(calendar, year, resolveCalendarMonth(fields, calendar, year, monthCodeParts, overflow));
}
function createMonthDayFromRefinedFields(fields, calendar, year, monthCodeParts, overflow) {
  const isIso = calendar === isoCalendarImpl;
  let yearMaybe = year;
  let day;
  let monthCodeNumber;
  let isLeapMonth;
  if (void 0 === yearMaybe && isIso && (yearMaybe = 1972), void 0 !== yearMaybe) {
    isIso || checkIsoDateInBounds(computeCalendarIsoFieldsFromParts(calendar, yearMaybe, 1, 1));
    const month = resolveCalendarMonth(fields, calendar, yearMaybe, monthCodeParts, overflow);
    day = resolveCalendarDay(fields, calendar, yearMaybe, month, overflow), [monthCodeNumber, isLeapMonth] = computeCalendarMonthCodeParts(calendar, yearMaybe, month);
  } else {
    void 0 === fields.monthCode && throwTypeError("Missing month/monthCode"), [monthCodeNumber, isLeapMonth] = monthCodeParts;
    const referenceYear = calendar ? calendar.re : 1972;
    if (void 0 !== referenceYear) {
      day = resolveCalendarDay(fields, calendar, referenceYear, resolveCalendarMonth(fields, calendar, referenceYear, monthCodeParts, overflow), overflow);
    } else {
      const constrainedDay = 0 === overflow && calendar ? calendar.ge?.(monthCodeNumber, isLeapMonth, fields.day) : void 0;
      day = void 0 !== constrainedDay ? constrainedDay : fields.day;
    }
  }
  return createMonthDayFromMonthCodeParts(calendar, monthCodeNumber, isLeapMonth, day, fields.day, overflow);
}
function createYearMonthFromCalendarParts(calendar, year, month) {
  return createDateSlots(checkIsoYearMonthInBounds(computeCalendarIsoFieldsFromParts(calendar, year, month, 1)), calendar);
}
function createMonthDayFromMonthCodeParts(calendar, monthCodeNumber, isLeapMonthArg, day, requestedDay, overflow) {
  let isLeapMonth = isLeapMonthArg;
  isLeapMonth && ((calendar && calendar.U?.[monthCodeNumber]) ?? 1 / 0) < requestedDay && (1 === overflow && throwRangeError(invalidLeapMonth), isLeapMonth = 0, day = constrainToRange2(requestedDay, 1, (calendar && calendar.R) ?? 1 / 0));
  let res = calendar ? calendar.u(monthCodeNumber, Boolean(isLeapMonth), day) : computeIsoYearMonthFieldsForMonthDay(monthCodeNumber, Boolean(isLeapMonth));
  for (; !res && 0 === overflow && day > 1; ) {
    day--, res = calendar ? calendar.u(monthCodeNumber, Boolean(isLeapMonth), day) : computeIsoYearMonthFieldsForMonthDay(monthCodeNumber, Boolean(isLeapMonth));
  }
  res || throwRangeError("Cannot guess year");
  const { year: finalYear, month: finalMonth } = res;
  return createDateSlots(checkIsoDateInBounds(computeCalendarIsoFieldsFromParts(calendar, finalYear, finalMonth, day)), calendar);
}
function parseMonthCodeField(fields) {
  if (void 0 !== fields.monthCode) {
    return parseMonthCode(fields.monthCode);
  }
}
var RawDateTimeFormat = Intl.DateTimeFormat;
function formatEpochMilliToPartsRecord(intlFormat, epochMilli) {
  epochMilli < -864e13 && throwRangeError(outOfBoundsDate);
  const parts = intlFormat.formatToParts(epochMilli);
  const hash = {};
  for (const part of parts) {
    hash[part.type] = part.value;
  }
  return hash;
}
var timeZonePeriodDaysByName = {
  "El_Aaiun": 16,
  "Tucuman": 12,
  "Tirane": 11,
  "Riga": 10,
  "Simferopol": 9,
  "Vienna": 9,
  "Tunis": 8,
  "Boa_Vista": 6,
  "Fortaleza": 6,
  "Maceio": 6,
  "Noronha": 6,
  "Recife": 6,
  "Gaza": 6,
  "Hebron": 6,
  "DeNoronha": 6
};
var minPossibleTransitionSec = -4e9;
function refineTimeDisplayTuple(options, maxSmallestUnit = 4) {
  const subsecDigits = coerceFractionalSecondDigits(options);
  const roundingMode = coerceRoundingMode(options, 4);
  const smallestUnit = coerceSmallestUnit(options);
  return [roundingMode, ...resolveSmallestUnitAndSubsecDigits(validateUnitRange(smallestUnitStr, smallestUnit, 0, maxSmallestUnit), subsecDigits)];
}
function refineDateDisplayOptions(options) {
  return coerceCalendarDisplay(normalizeOptions(options));
}
function refineTimeDisplayOptions(options, maxSmallestUnit) {
  return refineTimeDisplayTuple(normalizeOptions(options), maxSmallestUnit);
}
function resolveSmallestUnitAndSubsecDigits(smallestUnit, subsecDigits) {
  return null != smallestUnit ? [unitNanoMap[smallestUnit], smallestUnit < 4 ? 9 - 3 * smallestUnit : -1] : [void 0 === subsecDigits ? 1 : 10 ** (9 - subsecDigits), subsecDigits];
}
function formatInstantIso(refineTimeZoneString, instantSlots, options) {
  const [timeZoneArg, roundingMode, nanoInc, subsecDigits] = ((options2) => {
    const subsecDigits2 = coerceFractionalSecondDigits(options2 = normalizeOptions(options2));
    const roundingMode2 = coerceRoundingMode(options2, 4);
    const smallestUnit = coerceSmallestUnit(options2);
    return [options2.timeZone, roundingMode2, ...resolveSmallestUnitAndSubsecDigits(validateUnitRange(smallestUnitStr, smallestUnit, 0, 4), subsecDigits2)];
  })(options);
  const providedTimeZone = void 0 !== timeZoneArg;
  return ((providedTimeZone2, timeZone, epochNano, roundingMode2, nanoInc2, subsecDigits2) => {
    epochNano = roundBigNanoToDayOriginInc(epochNano, BigInt(nanoInc2), roundingMode2);
    const offsetNano = timeZone.B(epochNano);
    return formatIsoDateTimeFields(epochNanoToIsoDateTime(epochNano + BigInt(offsetNano)), subsecDigits2) + (providedTimeZone2 ? formatOffsetNano(roundToMinute(offsetNano)) : "Z");
  })(providedTimeZone, queryTimeZone(providedTimeZone ? refineTimeZoneString(timeZoneArg) : "UTC"), instantSlots.epochNanoseconds, roundingMode, nanoInc, subsecDigits);
}
function formatZonedDateTimeIso(zonedDateTimeSlots0, options) {
  const displayOptions = ((options2) => {
    options2 = normalizeOptions(options2);
    const calendarDisplay = coerceCalendarDisplay(options2);
    const subsecDigits = coerceFractionalSecondDigits(options2);
    const offsetDisplay = coerceOffsetDisplay(options2);
    const roundingMode = coerceRoundingMode(options2, 4);
    const smallestUnit = coerceSmallestUnit(options2);
    return [calendarDisplay, coerceTimeZoneDisplay(options2), offsetDisplay, roundingMode, ...resolveSmallestUnitAndSubsecDigits(validateUnitRange(smallestUnitStr, smallestUnit, 0, 4), subsecDigits)];
  })(options);
  return ((calendar, timeZoneId, timeZone, epochNano, calendarDisplay, timeZoneDisplay, offsetDisplay, roundingMode, nanoInc, subsecDigits) => {
    epochNano = roundBigNanoToDayOriginInc(epochNano, BigInt(nanoInc), roundingMode);
    const offsetNano = timeZone.B(epochNano);
    return formatIsoDateTimeFields(epochNanoToIsoDateTime(epochNano + BigInt(offsetNano)), subsecDigits) + formatOffsetNano(roundToMinute(offsetNano), offsetDisplay) + formatTimeZone(timeZoneId, timeZoneDisplay) + formatCalendar(calendar, calendarDisplay);
  })(zonedDateTimeSlots0.calendar, zonedDateTimeSlots0.timeZone.id, zonedDateTimeSlots0.timeZone, zonedDateTimeSlots0.epochNanoseconds, ...displayOptions);
}
function formatPlainDateTimeIso(plainDateTimeSlots0, options) {
  const displayOptions = ((options2) => (options2 = normalizeOptions(options2), [coerceCalendarDisplay(options2), ...refineTimeDisplayTuple(options2)]))(options);
  return ((calendar, isoDateTime, calendarDisplay, roundingMode, nanoInc, subsecDigits) => formatIsoDateTimeFields(roundDateTimeToInc(isoDateTime, nanoInc, roundingMode), subsecDigits) + formatCalendar(calendar, calendarDisplay))(plainDateTimeSlots0.calendar, plainDateTimeSlots0, ...displayOptions);
}
function formatPlainDateIso(plainDateSlots, options) {
  return calendar = plainDateSlots.calendar, isoDate = plainDateSlots, calendarDisplay = refineDateDisplayOptions(options), formatIsoDateFields(isoDate) + formatCalendar(calendar, calendarDisplay);
  var calendar, isoDate, calendarDisplay;
}
function formatPlainYearMonthIso(plainYearMonthSlots, options) {
  return formatDateLikeIso(plainYearMonthSlots.calendar, formatIsoYearMonthFields, plainYearMonthSlots, refineDateDisplayOptions(options));
}
function formatPlainMonthDayIso(plainMonthDaySlots, options) {
  return formatDateLikeIso(plainMonthDaySlots.calendar, formatIsoMonthDayFields, plainMonthDaySlots, refineDateDisplayOptions(options));
}
function formatDateLikeIso(calendar, formatSimple, isoDate, calendarDisplay) {
  const showCalendar = calendarDisplay > 1 || 0 === calendarDisplay && calendar !== isoCalendarImpl;
  return 1 === calendarDisplay ? calendar === isoCalendarImpl ? formatSimple(isoDate) : formatIsoDateFields(isoDate) : showCalendar ? formatIsoDateFields(isoDate) + formatCalendarId(getCalendarSlotId(calendar), 2 === calendarDisplay) : formatSimple(isoDate);
}
function formatPlainTimeIso(slots, options) {
  return ((fields, roundingMode, nanoInc, subsecDigits) => formatTimeFields(roundTimeToInc(fields, nanoInc, roundingMode)[0], subsecDigits))(slots, ...refineTimeDisplayOptions(options));
}
function formatDurationIso(slots, options) {
  const [roundingMode, nanoInc, subsecDigits] = refineTimeDisplayOptions(options, 3);
  return nanoInc > 1 && ((slots = {
    ...slots,
    ...roundDayTimeDurationByInc(slots, nanoInc, roundingMode)
  }).sign = computeDurationSign(slots), validateDurationFields(slots)), formatDurationSlots(slots, subsecDigits);
}
function formatDurationSlots(durationSlots, subsecDigits) {
  const { sign } = durationSlots;
  const abs2 = -1 === sign ? negateDurationFields(durationSlots) : durationSlots;
  const { hours, minutes: minutes2 } = abs2;
  const bigNano = durationSubMinuteToBigNano(abs2);
  const wholeSec = Number(bigNano / bigNanoInSec);
  const subsecNano = Number(bigNano % bigNanoInSec);
  validateDurationTimeUnit(wholeSec);
  const subsecNanoString = formatSubsecNano(subsecNano, subsecDigits);
  const forceSec = subsecDigits >= 0 || !sign || subsecNanoString;
  return (sign < 0 ? "-" : "") + "P" + formatDurationFragments({
    "Y": formatDurationNumber(abs2.years),
    "M": formatDurationNumber(abs2.months),
    "W": formatDurationNumber(abs2.weeks),
    "D": formatDurationNumber(abs2.days)
  }) + (hours || minutes2 || wholeSec || forceSec ? "T" + formatDurationFragments({
    "H": formatDurationNumber(hours),
    "M": formatDurationNumber(minutes2),
    "S": formatDurationNumber(wholeSec, forceSec) + subsecNanoString
  }) : "");
}
function formatDurationFragments(fragObj) {
  const parts = [];
  for (const fragName in fragObj) {
    const fragVal = fragObj[fragName];
    fragVal && parts.push(fragVal, fragName);
  }
  return parts.join("");
}
function formatDurationNumber(n, force) {
  if (!n && !force) {
    return "";
  }
  const options = /* @__PURE__ */ Object.create(null);
  return options.useGrouping = 0, n.toLocaleString("fullwide", options);
}
function formatIsoDateTimeFields(isoDateTime, subsecDigits) {
  return formatIsoDateFields(isoDateTime) + "T" + formatTimeFields(isoDateTime, subsecDigits);
}
function formatIsoDateFields(isoDate) {
  return formatIsoYearMonthFields(isoDate) + "-" + padNumber2(isoDate.day);
}
function formatIsoYearMonthFields(isoDate) {
  const { year } = isoDate;
  return (year < 0 || year > 9999 ? getSignStr(year) + padNumber(6, Math.abs(year)) : padNumber(4, year)) + "-" + padNumber2(isoDate.month);
}
function formatIsoMonthDayFields(isoDate) {
  return padNumber2(isoDate.month) + "-" + padNumber2(isoDate.day);
}
function formatTimeFields(timeFields, subsecDigits) {
  const parts = [padNumber2(timeFields.hour), padNumber2(timeFields.minute)];
  return -1 !== subsecDigits && parts.push(padNumber2(timeFields.second) + ((millisecond, microsecond, nanosecond, subsecDigits2) => formatSubsecNano(millisecond * nanoInMilli2 + microsecond * nanoInMicro2 + nanosecond, subsecDigits2))(timeFields.millisecond, timeFields.microsecond, timeFields.nanosecond, subsecDigits)), parts.join(":");
}
function formatOffsetNano(offsetNano, offsetDisplay = 0) {
  if (1 === offsetDisplay) {
    return "";
  }
  const [hour, nanoRemainder0] = divModFloor(Math.abs(offsetNano), nanoInHour2);
  const [minute, nanoRemainder1] = divModFloor(nanoRemainder0, nanoInMinute2);
  const [second, nanoRemainder2] = divModFloor(nanoRemainder1, nanoInSec2);
  return getSignStr(offsetNano) + padNumber2(hour) + ":" + padNumber2(minute) + (second || nanoRemainder2 ? ":" + padNumber2(second) + formatSubsecNano(nanoRemainder2) : "");
}
function formatTimeZone(timeZoneId, timeZoneDisplay) {
  return 1 !== timeZoneDisplay ? "[" + (2 === timeZoneDisplay ? "!" : "") + timeZoneId + "]" : "";
}
function formatCalendar(calendar, calendarDisplay) {
  return calendarDisplay > 1 || 0 === calendarDisplay && calendar !== isoCalendarImpl ? formatCalendarId(getCalendarSlotId(calendar), 2 === calendarDisplay) : "";
}
function formatCalendarId(calendarId, isCritical) {
  return "[" + (isCritical ? "!" : "") + "u-ca=" + calendarId + "]";
}
var trailingZerosRE = /0+$/;
function formatSubsecNano(totalNano, subsecDigits) {
  let s = padNumber(9, totalNano);
  return s = void 0 === subsecDigits ? s.replace(trailingZerosRE, "") : s.slice(0, subsecDigits), s ? "." + s : "";
}
function getSignStr(num) {
  return num < 0 ? "-" : "+";
}
var icuRegExp = /^(AC|AE|AG|AR|AS|BE|BS|CA|CN|CS|CT|EA|EC|IE|IS|JS|MI|NE|NS|PL|PN|PR|PS|SS|VS)T$/;
var badCharactersRegExp = /[^\w\/:+-]+/;
function refineTimeZoneId(rawId) {
  return resolveTimeZoneId(requireString(rawId));
}
function resolveTimeZoneId(rawId) {
  return resolveTimeZoneRecord(rawId).id;
}
var resolveTimeZoneRecord = /* @__PURE__ */ memoize((rawId) => {
  const upperRawId = rawId.toUpperCase();
  const offsetRecord = ((upperRawId2) => {
    const offsetNano = parseOffsetNanoMaybe(upperRawId2, 1);
    if (void 0 !== offsetNano) {
      return {
        id: formatOffsetNano(offsetNano),
        Z: offsetNano,
        m: offsetNano
      };
    }
  })(upperRawId);
  if (offsetRecord) {
    return {
      kind: "fixed",
      ...offsetRecord
    };
  }
  const normId = "UTC" === upperRawId ? "UTC" : ((rawId2) => (badCharactersRegExp.test(rawId2) && throwRangeError(invalidTimeZone(rawId2)), icuRegExp.test(rawId2) && throwRangeError("Forbidden ICU TimeZone"), rawId2.toLowerCase().split("/").map((part, partI) => (part.length <= 3 || /\d/.test(part)) && !/etc|yap/.test(part) ? part.toUpperCase() : part.replace(/baja|dumont|[a-z]+/g, (a, i) => a.length <= 2 && !partI || "in" === a || "chat" === a ? a.toUpperCase() : a.length > 2 || !i ? capitalize(a).replace(/island|noronha|murdo|rivadavia|urville/, capitalize) : a)).join("/")))(rawId);
  return queryNamedTimeZoneRecord(normId);
});
var queryNamedTimeZoneRecord = /* @__PURE__ */ memoize((normId) => {
  if ("UTC" === normId) {
    return {
      kind: "utc",
      id: normId,
      m: normId
    };
  }
  const format = (upperNormId = normId.toUpperCase(), new RawDateTimeFormat("en-u-hc-h23", {
    calendar: "iso8601",
    timeZone: upperNormId,
    era: "short",
    year: "numeric",
    month: "numeric",
    day: "numeric",
    hour: "numeric",
    minute: "numeric",
    second: "numeric"
  }));
  var upperNormId;
  return {
    kind: "named",
    id: normId,
    format,
    m: format.resolvedOptions().timeZone
  };
});
function queryTimeZone(rawTimeZoneId) {
  const record = resolveTimeZoneRecord(rawTimeZoneId);
  return queryTimeZoneRecord(record.id, record);
}
var queryTimeZoneRecord = /* @__PURE__ */ memoize((normTimeZoneId, record) => "named" === record.kind ? new IntlTimeZone(normTimeZoneId, record.m, record.format) : new FixedTimeZone(normTimeZoneId, record.m, "fixed" === record.kind ? record.Z : 0));
var FixedTimeZone = class {
  constructor(id, compareKey, offsetNano) {
    this.id = id, this.m = compareKey, this.Z = offsetNano;
  }
  B() {
    return this.Z;
  }
  O(isoDateTime) {
    return [isoDateTimeAndOffsetToEpochNano(isoDateTime, this.Z)];
  }
  C() {
  }
};
var IntlTimeZone = class {
  constructor(id, compareKey, format) {
    this.id = id, this.m = compareKey, this.me = ((computeOffsetSec, periodDays) => {
      const getSample = memoize(computeOffsetSec);
      const getSplit = memoize(createSplitTuple);
      const periodSec = 86400 * periodDays;
      function getOffsetSec(epochSec) {
        const [startEpochSec, endEpochSec] = computePeriod(epochSec, periodSec);
        const clampedStartEpochSec = clampIntlSampleEpochSec(startEpochSec);
        const clampedEndEpochSec = clampIntlSampleEpochSec(endEpochSec);
        const startOffsetSec = getSample(clampedStartEpochSec);
        const endOffsetSec = getSample(clampedEndEpochSec);
        return startOffsetSec === endOffsetSec ? startOffsetSec : pinch(getSplit(clampedStartEpochSec, clampedEndEpochSec), startOffsetSec, endOffsetSec, epochSec);
      }
      function searchTransition(searchEpochSec, direction, searchLimit, epochSec = searchEpochSec) {
        let [startEpochSec, endEpochSec] = computePeriod(searchEpochSec, periodSec);
        const inc = periodSec * direction;
        const inBounds = () => direction < 0 ? endEpochSec > searchLimit : startEpochSec < searchLimit;
        for (; inBounds(); ) {
          const clampedStartEpochSec = clampIntlSampleEpochSec(startEpochSec);
          const clampedEndEpochSec = clampIntlSampleEpochSec(endEpochSec);
          const startOffsetSec = getSample(clampedStartEpochSec);
          const endOffsetSec = getSample(clampedEndEpochSec);
          if (startOffsetSec !== endOffsetSec) {
            const split = getSplit(clampedStartEpochSec, clampedEndEpochSec);
            pinch(split, startOffsetSec, endOffsetSec);
            const transitionEpochSec = split[0];
            if ((compareNumbers(transitionEpochSec, epochSec) || 1) === direction) {
              return transitionEpochSec;
            }
          }
          startEpochSec += inc, endEpochSec += inc;
        }
      }
      function pinch(split, startOffsetSec, endOffsetSec, forEpochSec) {
        let offsetSec;
        let splitDurSec;
        for (; (void 0 === forEpochSec || void 0 === (offsetSec = forEpochSec < split[0] ? startOffsetSec : forEpochSec >= split[1] ? endOffsetSec : void 0)) && (splitDurSec = split[1] - split[0]); ) {
          const middleEpochSec = split[0] + Math.floor(splitDurSec / 2);
          computeOffsetSec(middleEpochSec) === endOffsetSec ? split[1] = middleEpochSec : split[0] = middleEpochSec + 1;
        }
        return offsetSec;
      }
      return {
        Ae(zonedEpochSec) {
          const wideOffsetSec0 = getOffsetSec(zonedEpochSec - 86400);
          const wideOffsetSec1 = getOffsetSec(zonedEpochSec + 86400);
          const wideUtcEpochSec0 = zonedEpochSec - wideOffsetSec0;
          const wideUtcEpochSec1 = zonedEpochSec - wideOffsetSec1;
          if (wideOffsetSec0 === wideOffsetSec1) {
            return [wideUtcEpochSec0];
          }
          const narrowOffsetSec0 = getOffsetSec(wideUtcEpochSec0);
          return narrowOffsetSec0 === getOffsetSec(wideUtcEpochSec1) ? [zonedEpochSec - narrowOffsetSec0] : wideOffsetSec0 > wideOffsetSec1 ? [wideUtcEpochSec0, wideUtcEpochSec1] : [];
        },
        ze: getOffsetSec,
        C(epochSec, direction) {
          if (!(direction > 0 && epochSec >= 864e10)) {
            if (direction < 0) {
              if (epochSec <= minPossibleTransitionSec) {
                return;
              }
              return epochSec > 4e9 ? searchTransition(epochSec, -1, epochSec - 94867200) ?? searchTransition(4e9, -1, minPossibleTransitionSec) : searchTransition(epochSec, -1, minPossibleTransitionSec);
            }
            return searchTransition(Math.max(epochSec, minPossibleTransitionSec) - 1, 1, Math.max(epochSec, Math.floor(Date.now() / 1e3)) + 94867200, epochSec);
          }
        }
      };
    })(/* @__PURE__ */ ((format2) => (epochSec) => {
      const intlParts = formatEpochMilliToPartsRecord(format2, 1e3 * epochSec);
      return 86400 * isoPartsToEpochDays(((intlParts2) => {
        const relatedYear = intlParts2.relatedYear;
        if (void 0 !== relatedYear) {
          return parseInt(relatedYear);
        }
        const year = parseInt(intlParts2.year);
        return void 0 !== intlParts2.era && "bce" === normalizeEraName(intlParts2.era) ? 1 - year : year;
      })(intlParts), parseInt(intlParts.month), parseInt(intlParts.day)) + 3600 * parseInt(intlParts.hour) + 60 * parseInt(intlParts.minute) + parseInt(intlParts.second) - epochSec;
    })(format), ((timeZoneId) => {
      const timeZoneName = timeZoneId.split("/").pop();
      return timeZonePeriodDaysByName[timeZoneName] || 19;
    })(id));
  }
  B(epochNano) {
    return this.me.ze(((epochNano2) => epochNanoToSecMod(epochNano2)[0])(epochNano)) * nanoInSec2;
  }
  O(isoDateTime) {
    const zonedEpochSec = 86400 * isoDateToEpochDays(isoDateTime) + timeFieldsToSec(isoDateTime);
    const subsecNano = timeFieldsToSubsecNano(isoDateTime);
    return this.me.Ae(zonedEpochSec).map((epochSec) => checkEpochNanoInBounds(BigInt(epochSec) * bigNanoInSec + BigInt(subsecNano)));
  }
  C(epochNano, direction) {
    const [epochSec, subsecNano] = epochNanoToSecMod(epochNano);
    const resEpochSec = this.me.C(epochSec + (direction > 0 || subsecNano ? 1 : 0), direction);
    if (void 0 !== resEpochSec) {
      return BigInt(resEpochSec) * bigNanoInSec;
    }
  }
};
function createSplitTuple(startEpochSec, endEpochSec) {
  return [startEpochSec, endEpochSec];
}
function computePeriod(epochSec, periodSec) {
  const startEpochSec = Math.floor(epochSec / periodSec) * periodSec;
  return [startEpochSec, startEpochSec + periodSec];
}
function clampIntlSampleEpochSec(epochSec) {
  return constrainToRange2(epochSec, -1e10, 864e10);
}
function refineMaybeZonedDateTimeObjectLike(refineTimeZoneString, calendar, bag) {
  const fields = readAndRefineBagFields(bag, getCalendarFieldNames(calendar, dateTimeAndZoneFieldNamesAlpha, dateTimeAndZoneFieldNamesWithEraAlpha), zonedDateTimeFieldRefiners, [], 0);
  const isZoned = void 0 !== fields.timeZone;
  const [year, monthCodeParts] = refineCalendarDateFields(fields, calendar);
  const isoDate = createDateFromRefinedFields(fields, calendar, year, monthCodeParts, 0);
  if (isZoned) {
    const timeFields = resolveTimeFields(fields);
    const timeZone = queryTimeZone(refineTimeZoneString(fields.timeZone));
    return {
      epochNanoseconds: getMatchingInstantFor(timeZone, combineDateAndTime(isoDate, timeFields), fields.offset),
      timeZone,
      calendar
    };
  }
  return isoDate;
}
function refineZonedDateTimeObjectLike(refineTimeZoneString, calendar, bag, options) {
  const fields = readAndRefineBagFields(bag, getCalendarFieldNames(calendar, dateTimeAndZoneFieldNamesAlpha, dateTimeAndZoneFieldNamesWithEraAlpha), zonedDateTimeFieldRefiners, timeZoneFieldNames, 0);
  const timeZoneId = refineTimeZoneString(fields.timeZone);
  const [year, monthCodeParts] = refineCalendarDateFields(fields, calendar);
  const [overflow, offsetDisambig, epochDisambig] = refineZonedFieldOptions(options);
  const isoDate = createDateFromRefinedFields(fields, calendar, year, monthCodeParts, overflow);
  const timeFields = resolveTimeFields(fields, overflow);
  const timeZone = queryTimeZone(timeZoneId);
  return createZonedEpochNanoSlots(getMatchingInstantFor(timeZone, combineDateAndTime(isoDate, timeFields), fields.offset, offsetDisambig, epochDisambig), timeZone, calendar);
}
function refinePlainDateTimeObjectLike(calendar, bag, options) {
  const fields = readAndRefineBagFields(bag, getCalendarFieldNames(calendar, dateTimeFieldNamesAlpha, dateTimeFieldNamesWithEraAlpha), dateTimeFieldRefiners, [], 0);
  const [year, monthCodeParts] = refineCalendarDateFields(fields, calendar);
  const overflow = refineOverflowOptions(options);
  return createDateTimeFromRefinedFields(createDateFromRefinedFields(fields, calendar, year, monthCodeParts, overflow), resolveTimeFields(fields, overflow), calendar);
}
function refinePlainDateObjectLike(calendar, bag, options, requireFields = []) {
  const fields = readAndRefineBagFields(bag, getCalendarFieldNames(calendar, dateFieldNamesAlpha, dateFieldNamesWithEraAlpha), dateFieldRefiners, requireFields);
  const [year, monthCodeParts] = refineCalendarDateFields(fields, calendar);
  return createDateFromRefinedFields(fields, calendar, year, monthCodeParts, refineOverflowOptions(options));
}
function refinePlainYearMonthObjectLike(calendar, bag, options, requireFields) {
  const fields = readAndRefineBagFields(bag, getCalendarFieldNames(calendar, yearMonthFieldNamesAlpha, yearMonthFieldNamesWithEraAlpha), dateFieldRefiners, requireFields);
  const [year, monthCodeParts] = refineCalendarDateFields(fields, calendar, 1);
  return createYearMonthFromRefinedFields(fields, calendar, year, monthCodeParts, refineOverflowOptions(options));
}
function refinePlainMonthDayObjectLike(calendar, calendarAbsent, bag, options) {
  const fields = readAndRefineBagFields(bag, getCalendarFieldNames(calendar, dateFieldNamesAlpha, dateFieldNamesWithEraAlpha), dateFieldRefiners, dayFieldNamesAsc, 0);
  calendarAbsent && void 0 !== fields.month && void 0 === fields.monthCode && void 0 === fields.year && (fields.year = 1972);
  const [year, monthCodeParts] = refineMonthDayFields(fields, calendar);
  return createMonthDayFromRefinedFields(fields, calendar, year, monthCodeParts, refineOverflowOptions(options));
}
function refinePlainTimeObjectLike(bag, options) {
  return resolveTimeFields(readAndRefineBagFields(bag, timeFieldNamesAlpha, timeFieldRefiners, [], 1), refineOverflowOptions(options));
}
function refineDurationObjectLike(bag) {
  const durationFields = readAndRefineBagFields(bag, durationFieldNamesAlpha, durationFieldRefiners);
  return createDurationSlots(validateDurationFields({
    ...durationFieldDefaults,
    ...durationFields
  }));
}
function throwFailedParse(s) {
  throwRangeError(failedParse(s));
}
function parseInstant(s) {
  const organized = parseDateTimeLike(s = requireString(toPrimitiveWithStringHint(s)));
  let offsetNano;
  return organized || throwFailedParse(s), organized.I ? offsetNano = 0 : organized.offset ? offsetNano = parseOffsetNano(organized.offset) : throwFailedParse(s), createEpochNanoSlots(isoDateTimeAndOffsetToEpochNano(organized, offsetNano));
}
function parseRelativeToSlots(s, resolveCalendar) {
  const organized = parseDateTimeLike(requireString(s));
  return organized && organized.timeZoneId ? finalizeZonedDateTime(organized, resolveCalendar, void 0) : finalizeDate(parsePlainDateLike(s), resolveCalendar);
}
function parseZonedDateTime(s, resolveCalendar, options) {
  const organized = parseDateTimeLike(requireString(s));
  return organized && organized.timeZoneId || throwFailedParse(s), finalizeZonedDateTime(organized, resolveCalendar, options);
}
function parsePlainDateTime(s, resolveCalendar) {
  const organized = parsePlainDateLike(s);
  return checkIsoDateTimeInBounds(organized), {
    ...combineDateAndTime(organized, organized),
    calendar: resolveCalendar(organized.calendarId)
  };
}
function parsePlainDate(s, resolveCalendar) {
  return finalizeDate(parsePlainDateLike(s), resolveCalendar);
}
function parsePlainYearMonth(s, resolveCalendar) {
  const organized = parseYearMonthOnly(requireString(s)) || parsePlainDateLike(s);
  const calendar = resolveCalendar(organized.calendarId);
  return createDateSlots(checkIsoYearMonthInBounds(moveToStartOfMonth(calendar, checkIsoYearMonthInBounds(organized))), calendar);
}
function parsePlainMonthDay(s, resolveCalendar) {
  const organized = parseMonthDayOnly(requireString(s)) || parsePlainDateLike(s);
  if ("iso8601" === organized.calendarId) {
    return createDateSlots({
      ...organized,
      year: 1972
    }, resolveCalendar("iso8601"));
  }
  const { calendar } = finalizeDate(organized, resolveCalendar);
  const { year: origYear, month: origMonth, day } = computeCalendarDateFields(calendar, organized);
  const [monthCodeNumber, isLeapMonth] = computeCalendarMonthCodeParts(calendar, origYear, origMonth);
  const yearMonthFields = calendar ? calendar.u(monthCodeNumber, isLeapMonth, day) : computeIsoYearMonthFieldsForMonthDay(monthCodeNumber, isLeapMonth);
  return yearMonthFields || throwRangeError("Cannot guess year"), createDateSlots(checkIsoDateInBounds(computeCalendarIsoFieldsFromParts(calendar, yearMonthFields.year, yearMonthFields.month, day)), calendar);
}
function parsePlainTime(s) {
  const organized = parseDateTimeLike(s = requireString(s)) || parseTimeOnly(s);
  return (!organized || !organized.qe || organized.I || parseYearMonthOnly(s) || parseMonthDayOnly(s)) && throwFailedParse(s), createTimeSlots(organized);
}
function parseDuration(s) {
  const parts = durationRegExp.exec(requireString(s));
  parts && !invalidDurationRegExp.test(s) || throwFailedParse(s);
  const fraction = nanoToGivenFields(3600 * parseSubsecNano(parts[7] || "") + 60 * parseSubsecNano(parts[9] || "") + parseSubsecNano(parts[11] || ""), 4, durationFieldNamesAsc);
  const durationFields = {
    ...fraction,
    years: parseInt0(parts[2]),
    months: parseInt0(parts[3]),
    weeks: parseInt0(parts[4]),
    days: parseInt0(parts[5]),
    hours: parseInt0(parts[6]),
    minutes: parseInt0(parts[8]) + fraction.minutes,
    seconds: parseInt0(parts[10]) + fraction.seconds
  };
  return createDurationSlots(validateDurationFields("-" === parts[1] ? negateDurationFields(durationFields) : durationFields));
}
function parseCalendarId(s) {
  const organized = parseDateTimeLike(s) || parseYearMonthOnly(s) || parseMonthDayOnly(s) || parseTimeOnly(s);
  return organized ? organized.calendarId : s;
}
function parseTimeZoneId(s) {
  const parsed = parseDateTimeLike(s);
  return parsed && (parsed.timeZoneId || parsed.I && "UTC" || parsed.offset) || s;
}
function parsePlainDateLike(s) {
  const organized = parseDateTimeLike(requireString(s));
  return organized && !organized.I || throwFailedParse(s), organized;
}
function finalizeZonedDateTime(organized, resolveCalendar, options) {
  const timeZone = queryTimeZone(resolveTimeZoneId(organized.timeZoneId));
  let epochNano;
  if (organized.qe) {
    const offsetNano = organized.offset ? parseOffsetNano(organized.offset) : void 0;
    const [, offsetDisambig, epochDisambig] = refineZonedFieldOptions(options);
    epochNano = getMatchingInstantFor(timeZone, organized, offsetNano, offsetDisambig, epochDisambig, !(timeZone.Z || void 0 === organized.offset || (offset = organized.offset, offset.length > 6)), organized.I);
  } else {
    refineZonedFieldOptions(options), epochNano = getStartOfDayInstantFor(timeZone, organized);
  }
  var offset;
  return checkEpochNanoInBounds(epochNano), createZonedEpochNanoSlots(epochNano, timeZone, resolveCalendar(organized.calendarId));
}
function finalizeDate(organized, resolveCalendar) {
  return createDateSlots(checkIsoDateInBounds(organized), resolveCalendar(organized.calendarId));
}
function timeRegExpStr(separatorIndex, leapSecondStr = "") {
  return `([01]\\d|2[0-3])(?:(:?)([0-5]\\d)(?:\\${separatorIndex}([0-5]\\d${leapSecondStr})(?:[.,](\\d{1,9}))?)?)?`;
}
var dateTimeRegExpStr = "((?!-0{6})[+-]\\d{6}|\\d{4})(-?)(0[1-9]|1[0-2])\\2(0[1-9]|[12]\\d|3[01])(?:[Tt ]" + timeRegExpStr(6, "|60") + "(?:([Zz])|(([+-])" + timeRegExpStr(14) + "))?)?";
var yearMonthRegExp = /* @__PURE__ */ createRegExp("((?!-0{6})[+-]\\d{6}|\\d{4})-?(0[1-9]|1[0-2])(?:\\[!?([+-](?:[01]\\d|2[0-3])(?::?[0-5]\\d)?|[a-zA-Z._][\\w.+-]*(?:/[a-zA-Z._][\\w.+-]*)*)\\])?((?:\\[!?[a-z_][a-z\\d_-]*=[a-zA-Z\\d]+(?:-[a-zA-Z\\d]+)*\\])*)");
var monthDayRegExp = /* @__PURE__ */ createRegExp("(?:--)?(0[1-9]|1[0-2])-?(0[1-9]|[12]\\d|3[01])(?:\\[!?([+-](?:[01]\\d|2[0-3])(?::?[0-5]\\d)?|[a-zA-Z._][\\w.+-]*(?:/[a-zA-Z._][\\w.+-]*)*)\\])?((?:\\[!?[a-z_][a-z\\d_-]*=[a-zA-Z\\d]+(?:-[a-zA-Z\\d]+)*\\])*)");
var dateTimeRegExp = /* @__PURE__ */ createRegExp(dateTimeRegExpStr + "(?:\\[!?([+-](?:[01]\\d|2[0-3])(?::?[0-5]\\d)?|[a-zA-Z._][\\w.+-]*(?:/[a-zA-Z._][\\w.+-]*)*)\\])?((?:\\[!?[a-z_][a-z\\d_-]*=[a-zA-Z\\d]+(?:-[a-zA-Z\\d]+)*\\])*)");
var annotationRegExp = /\[(!?)([^=]+)=([^\]]+)/g;
var durationRegExp = /^([+-])?P(\d+Y)?(\d+M)?(\d+W)?(\d+D)?(?:T(?:(\d+)(?:[.,](\d{1,9}))?H)?(?:(\d+)(?:[.,](\d{1,9}))?M)?(?:(\d+)(?:[.,](\d{1,9}))?S)?)?$/i;
var invalidDurationRegExp = /[PT]$|[.,]\d+[HMS]./i;
function parseDateTimeLike(s) {
  const parts = dateTimeRegExp.exec(s);
  if (!parts) {
    return;
  }
  const organized = ((parts2) => ({
    year: parseInt(parts2[1]),
    month: parseInt(parts2[3]),
    day: parseInt(parts2[4]),
    ...nanoToTimeAndDay(parseSubsecNano(parts2[9] || ""))[0],
    hour: parseInt0(parts2[5]),
    minute: parseInt0(parts2[7]),
    second: Math.min(parseInt0(parts2[8]), 59),
    ...organizeAnnotationParts(parts2[18], parts2[19]),
    qe: !!parts2[5],
    I: !!parts2[10],
    offset: parts2[11]
  }))(parts);
  return validateIsoDateFields(organized);
}
function parseYearMonthOnly(s) {
  const parts = yearMonthRegExp.exec(s);
  return parts ? requireIsoCalendar(((parts2) => ({
    year: parseInt(parts2[1]),
    month: parseInt(parts2[2]),
    day: 1,
    ...organizeAnnotationParts(parts2[3], parts2[4])
  }))(parts)) : void 0;
}
function parseMonthDayOnly(s) {
  const parts = monthDayRegExp.exec(s);
  if (parts) {
    const organized = ((parts2) => ({
      year: 1972,
      month: parseInt(parts2[1]),
      day: parseInt(parts2[2]),
      ...organizeAnnotationParts(parts2[3], parts2[4])
    }))(parts);
    if (allPropsEqual(calendarDateFieldNamesAsc, isoDate = organized, constrainIsoDateFields(isoDate))) {
      return requireIsoCalendar(organized);
    }
  }
  var isoDate;
}
function requireIsoCalendar(organized) {
  return "iso8601" !== organized.calendarId && throwFailedParse(organized.calendarId), organized;
}
function parseTimeOnly(s) {
  const organized = parseDateTimeLike(s.replace(/^t?/i, "0000-01-01T"));
  return organized && !organized.I ? organized : void 0;
}
function organizeAnnotationParts(timeZoneId, s) {
  let calendarIsCritical;
  const calendarIds = [];
  return s.replace(annotationRegExp, (whole, criticalStr, key2, value) => ("u-ca" === key2 ? (calendarIds.push(value.toLowerCase()), calendarIsCritical || (calendarIsCritical = criticalStr)) : criticalStr && throwFailedParse(whole), "")), calendarIds.length > 1 && calendarIsCritical && throwFailedParse(s), {
    timeZoneId,
    calendarId: calendarIds[0] || "iso8601"
  };
}
function mergeCalendarFields(calendar, baseFields, additionalFields) {
  const merged = Object.assign(/* @__PURE__ */ Object.create(null), baseFields);
  return spliceFields(merged, additionalFields, monthFieldNames), getCalendarEraOrigins(calendar) && (spliceFields(merged, additionalFields, allYearFieldNames), calendar && calendar.je && spliceFields(merged, additionalFields, monthDayFieldNames, eraYearFieldNames)), merged;
}
function spliceFields(dest, additional, allPropNames, deletablePropNames) {
  let anyMatching = 0;
  const nonMatchingPropNames = [];
  for (const propName of allPropNames) {
    void 0 !== additional[propName] ? anyMatching = 1 : nonMatchingPropNames.push(propName);
  }
  if (Object.assign(dest, additional), anyMatching) {
    for (const deletablePropName of deletablePropNames || nonMatchingPropNames) {
      delete dest[deletablePropName];
    }
  }
}
function mergeZonedDateTimeFields(calendar, zonedDateTimeSlots, modFields) {
  const validFieldNames = getCalendarFieldNames(calendar, dateTimeAndOffsetFieldNamesAlpha, dateTimeAndOffsetFieldNamesWithEraAlpha);
  const zonedSlots = zonedEpochSlotsToIso(zonedDateTimeSlots);
  const { year, month, day } = computeCalendarDateFields(calendar, zonedSlots);
  const origFields = {
    year,
    monthCode: computeMonthCode(calendar, year, month),
    day,
    hour: zonedSlots.hour,
    minute: zonedSlots.minute,
    second: zonedSlots.second,
    millisecond: zonedSlots.millisecond,
    microsecond: zonedSlots.microsecond,
    nanosecond: zonedSlots.nanosecond,
    offset: zonedSlots.offsetNanoseconds
  };
  const partialFields = readAndRefineBagFields(modFields, validFieldNames, zonedDateTimeFieldRefiners);
  const mergedCalendarFields = mergeCalendarFields(calendar, origFields, partialFields);
  return [{
    ...origFields,
    ...partialFields
  }, mergedCalendarFields];
}
function mergeDateTimeFields(calendar, plainDateTimeSlots, modFields) {
  const validFieldNames = getCalendarFieldNames(calendar, dateTimeFieldNamesAlpha, dateTimeFieldNamesWithEraAlpha);
  const { year, month, day } = computeCalendarDateFields(calendar, plainDateTimeSlots);
  const origFields = {
    year,
    monthCode: computeMonthCode(calendar, year, month),
    day,
    hour: plainDateTimeSlots.hour,
    minute: plainDateTimeSlots.minute,
    second: plainDateTimeSlots.second,
    millisecond: plainDateTimeSlots.millisecond,
    microsecond: plainDateTimeSlots.microsecond,
    nanosecond: plainDateTimeSlots.nanosecond
  };
  const partialFields = readAndRefineBagFields(modFields, validFieldNames, dateTimeFieldRefiners);
  const mergedCalendarFields = mergeCalendarFields(calendar, origFields, partialFields);
  return [{
    ...origFields,
    ...partialFields
  }, mergedCalendarFields];
}
function mergeDateFields(calendar, plainDateSlots, modFields) {
  const validFieldNames = getCalendarFieldNames(calendar, dateFieldNamesAlpha, dateFieldNamesWithEraAlpha);
  const { year, month, day } = computeCalendarDateFields(calendar, plainDateSlots);
  return mergeCalendarFields(calendar, {
    year,
    monthCode: computeMonthCode(calendar, year, month),
    day
  }, readAndRefineBagFields(modFields, validFieldNames, dateFieldRefiners));
}
function mergeYearMonthFields(calendar, plainYearMonthSlots, modFields) {
  const validFieldNames = getCalendarFieldNames(calendar, yearMonthFieldNamesAlpha, yearMonthFieldNamesWithEraAlpha);
  const { year, month } = computeCalendarDateFields(calendar, plainYearMonthSlots);
  return mergeCalendarFields(calendar, {
    year,
    monthCode: computeMonthCode(calendar, year, month)
  }, readAndRefineBagFields(modFields, validFieldNames, dateFieldRefiners));
}
function mergeMonthDayFields(calendar, plainMonthDaySlots, modFields) {
  const validFieldNames = getCalendarFieldNames(calendar, dateFieldNamesAlpha, dateFieldNamesWithEraAlpha);
  const { year, month, day } = computeCalendarDateFields(calendar, plainMonthDaySlots);
  return mergeCalendarFields(calendar, {
    monthCode: computeMonthCode(calendar, year, month),
    day
  }, readAndRefineBagFields(modFields, validFieldNames, dateFieldRefiners));
}
function createZonedDateTimeFromMergedFields(zonedDateTimeSlots, mergedAllFields, calendarFields, year, monthCodeParts, overflow, offsetDisambig, epochDisambig) {
  const { calendar, timeZone } = zonedDateTimeSlots;
  return createZonedEpochNanoSlots(getMatchingInstantFor(timeZone, combineDateAndTime(createDateFromRefinedFields(calendarFields, calendar, year, monthCodeParts, overflow), constrainTimeFields(mergedAllFields, overflow)), mergedAllFields.offset, offsetDisambig, epochDisambig), timeZone, calendar);
}
function createDateTimeFromMergedFields(mergedAllFields, calendarFields, calendar, year, monthCodeParts, overflow) {
  return createDateTimeFromRefinedFields(createDateFromRefinedFields(calendarFields, calendar, year, monthCodeParts, overflow), constrainTimeFields(mergedAllFields, overflow), calendar);
}
function mergeTimeFields(initialFields, modFields) {
  return {
    ...pluckProps(timeFieldNamesAlpha, initialFields),
    ...readAndRefineBagFields(modFields, timeFieldNamesAlpha, timeFieldRefiners)
  };
}
function mergeDurationFields(slots, fields) {
  return createDurationSlots((initialFields = slots, modFields = fields, validateDurationFields({
    ...initialFields,
    ...readAndRefineBagFields(modFields, durationFieldNamesAlpha, durationFieldRefiners)
  })));
  var initialFields, modFields;
}
function computeMonthCode(calendar, year, month) {
  const [monthCodeNumber, isLeapMonth] = computeCalendarMonthCodeParts(calendar, year, month);
  return formatMonthCode(monthCodeNumber, isLeapMonth);
}
function totalDuration(refineRelativeTo, slots, options) {
  const [totalUnit, relativeToSlots] = ((options2, refineRelativeTo2) => {
    const relativeToInternals = refineRelativeTo2((options2 = normalizeOptionsOrString(options2, "unit")).relativeTo);
    let totalUnit2 = coerceTotalUnit(options2);
    return totalUnit2 = requirePropDefined("unit", totalUnit2), [totalUnit2, relativeToInternals];
  })(options, refineRelativeTo);
  const maxDurationUnit = getMaxDurationUnit(slots);
  const maxUnit = Math.max(totalUnit, maxDurationUnit);
  const isZoned = relativeToSlots && isZonedEpochSlots(relativeToSlots);
  if (!relativeToSlots && isUniformUnit(maxUnit, isZoned)) {
    return totalDayTimeDuration(slots, totalUnit);
  }
  if (relativeToSlots || throwRangeError("Missing relativeTo"), !slots.sign && (!isZoned || totalUnit < 6)) {
    return 0;
  }
  const [balancedDuration, endEpochNano, relativeOps] = spanRelativeDuration(relativeToSlots, slots, totalUnit);
  return isUniformUnit(totalUnit, isZoned) ? totalDayTimeDuration(balancedDuration, totalUnit) : ((durationFields, endEpochNano2, totalUnit2, relativeOps2) => {
    const fieldName = durationFieldNamesAsc[totalUnit2];
    const baseDurationFields = clearDurationFields(totalUnit2, durationFields);
    return totalRelativeUnit(durationFields[fieldName], computeDurationSign(durationFields) || 1, endEpochNano2, (value) => (baseDurationFields[fieldName] = value, moveRelativeMarkerToEpochNano(relativeOps2, baseDurationFields)));
  })(balancedDuration, endEpochNano, totalUnit, relativeOps);
}
function totalDayTimeDuration(durationFields, totalUnit) {
  return divideBigNanoToExactNumber(durationDayTimeToBigNano(durationFields), unitNanoMap[totalUnit]);
}
function instantToZonedDateTime(instantSlots, timeZone, calendar) {
  return createZonedEpochNanoSlots(instantSlots.epochNanoseconds, timeZone, calendar);
}
function zonedDateTimeToInstant(zonedDateTimeSlots0) {
  return createEpochNanoSlots(zonedDateTimeSlots0.epochNanoseconds);
}
function zonedDateTimeToDateTime(zonedDateTimeSlots0) {
  return createDateTimeSlots(zonedEpochSlotsToIso(zonedDateTimeSlots0), zonedDateTimeSlots0.calendar);
}
function zonedDateTimeToDate(zonedDateTimeSlots0) {
  return createDateSlots(zonedEpochSlotsToIso(zonedDateTimeSlots0), zonedDateTimeSlots0.calendar);
}
function zonedDateTimeToTime(zonedDateTimeSlots0) {
  return createTimeSlots(zonedEpochSlotsToIso(zonedDateTimeSlots0));
}
function dateTimeToZonedDateTime(plainDateTimeSlots, timeZone, epochDisambig) {
  return createZonedEpochNanoSlots(checkEpochNanoInBounds(getSingleInstantFor(timeZone, plainDateTimeSlots, epochDisambig)), timeZone, plainDateTimeSlots.calendar);
}
function dateToZonedDateTime(plainDateSlots, timeZone, timeFields) {
  let epochNano;
  return epochNano = timeFields ? getSingleInstantFor(timeZone, combineDateAndTime(plainDateSlots, timeFields)) : getStartOfDayInstantFor(timeZone, combineDateAndTime(plainDateSlots, timeFieldDefaults)), createZonedEpochNanoSlots(epochNano, timeZone, plainDateSlots.calendar);
}
function yearMonthToDate(calendar, input, bag) {
  return mergeFieldsIntoDate(calendar, pluckProps(getCalendarFieldNames(calendar, yearMonthCodeFieldNamesAlpha, yearMonthCodeFieldNamesWithEraAlpha), input), readAndRefineBagFields(requireObjectLike(bag), dayFieldNamesAsc, dateFieldRefiners, []));
}
function monthDayToDate(calendar, input, bag) {
  const extraFieldNames = getCalendarFieldNames(calendar, yearFieldNamesAsc, yearFieldNamesWithEraAlpha);
  return mergeFieldsIntoDate(calendar, pluckProps(monthCodeDayFieldNamesAlpha, input), readAndRefineBagFields(requireObjectLike(bag), extraFieldNames, dateFieldRefiners, []));
}
function fieldsToMonthDay(calendar, input) {
  const refinedFields = readAndRefineBagFields(input, monthCodeDayFieldNamesAlpha, dateFieldRefiners);
  const [year, monthCodeParts] = refineMonthDayFields(refinedFields, calendar);
  return createMonthDayFromRefinedFields(refinedFields, calendar, year, monthCodeParts, 0);
}
function fieldsToYearMonth(calendar, input) {
  const refinedFields = readAndRefineBagFields(input, getCalendarFieldNames(calendar, yearMonthCodeFieldNamesAlpha, yearMonthCodeFieldNamesWithEraAlpha), dateFieldRefiners);
  const [year, monthCodeParts] = refineCalendarDateFields(refinedFields, calendar, 1);
  return createYearMonthFromRefinedFields(refinedFields, calendar, year, monthCodeParts, 0);
}
function mergeFieldsIntoDate(calendar, inputFields, extraFields) {
  const mergedFieldNames = getCalendarFieldNames(calendar, yearMonthCodeDayFieldNamesAlpha, yearMonthCodeDayFieldNamesWithEraAlpha);
  let mergedFields = mergeCalendarFields(calendar, inputFields, extraFields);
  mergedFields = readAndRefineBagFields(mergedFields, mergedFieldNames, dateFieldRefiners, []);
  const [year, monthCodeParts] = refineCalendarDateFields(mergedFields, calendar);
  return createDateFromRefinedFields(mergedFields, calendar, year, monthCodeParts, 0);
}
function epochMilliToInstant(epochMilli) {
  return createEpochNanoSlots(checkEpochNanoInBounds(BigInt(toStrictInteger(epochMilli)) * bigNanoInMilli));
}
function epochNanoToInstant(epochNano) {
  return createEpochNanoSlots(checkEpochNanoInBounds(toBigInt(epochNano)));
}
function applyPlainFormatTimeZone(options) {
  return options.timeZone = "UTC", ["full", "long"].includes(options.timeStyle) && (options.timeStyle = "medium"), options;
}
function applyZonedFormatTimeZone(options, timeZoneId) {
  return void 0 !== options.timeZone && throwTypeError("Cannot specify TimeZone"), options.timeZone = timeZoneId, options;
}
function checkResolvedCalendarCompatible(format, slots, strictCalendarCheck) {
  const resolvedCalendarId = format.resolvedOptions().calendar;
  !strictCalendarCheck && slots.calendar === isoCalendarImpl || getCalendarSlotId(slots.calendar) === resolvedCalendarId || throwRangeError("Mismatching Calendars");
}
function createOptionsTransformer(shapeFieldNames, invalidShapeFieldNames, ignoredFieldNames, defaultShapeFields, dateStyleReplacementFields) {
  const shapeFieldNameSet = new Set(shapeFieldNames);
  const invalidShapeFieldNameSet = new Set(invalidShapeFieldNames);
  const ignoredFieldNameSet = new Set(ignoredFieldNames);
  return (options, allowPartialOverlap) => {
    let dateStyle;
    let timeStyle;
    const granularShapeFields = {};
    const modifierFields = {};
    const otherFields = {};
    let hasInvalidGranularShapeFields = 0;
    let hasInvalidStyleFields = 0;
    for (const name of Object.keys(options)) {
      const value = options[name];
      void 0 === value || ignoredFieldNameSet.has(name) || (shapeFieldNameSet.has(name) ? "dateStyle" === name ? dateStyle = value : "timeStyle" === name ? timeStyle = value : granularShapeFields[name] = value : "era" === name ? modifierFields[name] = value : invalidShapeFieldNameSet.has(name) ? "dateStyle" === name || "timeStyle" === name ? hasInvalidStyleFields = 1 : hasInvalidGranularShapeFields = 1 : otherFields[name] = value);
    }
    const hasDateStyle = void 0 !== dateStyle;
    const hasTimeStyle = void 0 !== timeStyle;
    const hasAnyStyle = hasDateStyle || hasTimeStyle;
    const hasGranularShapeFields = Object.keys(granularShapeFields).length > 0;
    const hasInvalids = hasInvalidGranularShapeFields || hasInvalidStyleFields;
    const hasShapeFields = hasGranularShapeFields || hasDateStyle || hasTimeStyle;
    const hasModifierFields = Object.keys(modifierFields).length > 0;
    (!allowPartialOverlap && hasInvalids || allowPartialOverlap && hasInvalids && !hasShapeFields || hasAnyStyle && (hasGranularShapeFields || hasModifierFields || hasInvalidGranularShapeFields)) && throwTypeError("Invalid formatting options");
    const transformedOptions = {};
    return hasAnyStyle || hasShapeFields || Object.assign(transformedOptions, defaultShapeFields), Object.assign(transformedOptions, granularShapeFields, modifierFields, otherFields), hasDateStyle && (dateStyleReplacementFields ? Object.assign(transformedOptions, dateStyleReplacementFields[dateStyle]) : transformedOptions.dateStyle = dateStyle), hasTimeStyle && (transformedOptions.timeStyle = timeStyle), transformedOptions;
  };
}
var dateDefaultShapeFields = {
  year: "numeric",
  month: "numeric",
  day: "numeric"
};
var timeDefaultShapeFields = {
  hour: "numeric",
  minute: "numeric",
  second: "numeric"
};
var dateTimeDefaultShapeFields = /* @__PURE__ */ Object.assign({}, dateDefaultShapeFields, timeDefaultShapeFields);
var dateShapeFieldNames = ["weekday", "year", "month", "day", "dateStyle"];
var timeShapeFieldNames = ["dayPeriod", "hour", "minute", "second", "fractionalSecondDigits", "timeStyle"];
var dateTimeShapeFieldNames = /* @__PURE__ */ dateShapeFieldNames.concat(timeShapeFieldNames);
var yearMonthIgnoredFieldNames = /* @__PURE__ */ ["weekday", "day"].concat(timeShapeFieldNames);
var monthDayIgnoredFieldNames = /* @__PURE__ */ ["weekday", "year"].concat(timeShapeFieldNames);
var transformInstantOptions = /* @__PURE__ */ createOptionsTransformer(dateTimeShapeFieldNames, [], [], dateTimeDefaultShapeFields);
var transformZonedOptions = /* @__PURE__ */ createOptionsTransformer(dateTimeShapeFieldNames, [], [], {
  ...dateTimeDefaultShapeFields,
  timeZoneName: "short"
});
var transformDateTimeOptions = /* @__PURE__ */ createOptionsTransformer(dateTimeShapeFieldNames, [], ["timeZoneName"], dateTimeDefaultShapeFields);
var transformDateOptions = /* @__PURE__ */ createOptionsTransformer(dateShapeFieldNames, timeShapeFieldNames, ["timeZoneName"], dateDefaultShapeFields);
var transformTimeOptions = /* @__PURE__ */ createOptionsTransformer(timeShapeFieldNames, dateShapeFieldNames, ["timeZoneName", "era"], timeDefaultShapeFields);
var transformYearMonthOptions = /* @__PURE__ */ createOptionsTransformer(["year", "month", "dateStyle"], yearMonthIgnoredFieldNames, ["timeZoneName"], {
  year: "numeric",
  month: "numeric"
}, {
  full: {
    year: "numeric",
    month: "long"
  },
  long: {
    year: "numeric",
    month: "long"
  },
  medium: {
    year: "numeric",
    month: "short"
  },
  short: {
    year: "2-digit",
    month: "numeric"
  }
});
var transformMonthDayOptions = /* @__PURE__ */ createOptionsTransformer(["month", "day", "dateStyle"], monthDayIgnoredFieldNames, ["timeZoneName", "era"], {
  month: "numeric",
  day: "numeric"
}, {
  full: {
    month: "long",
    day: "numeric"
  },
  long: {
    month: "long",
    day: "numeric"
  },
  medium: {
    month: "short",
    day: "numeric"
  },
  short: {
    month: "numeric",
    day: "numeric"
  }
});
function zonedDateTimeWithPlainTime(zonedDateTimeSlots, plainTimeFields) {
  const { timeZone } = zonedDateTimeSlots;
  const newIsoDateTime = combineDateAndTime(zonedEpochSlotsToIso(zonedDateTimeSlots), plainTimeFields || timeFieldDefaults);
  return createZonedEpochNanoSlots(plainTimeFields ? getSingleInstantFor(timeZone, newIsoDateTime) : getStartOfDayInstantFor(timeZone, newIsoDateTime), timeZone, zonedDateTimeSlots.calendar);
}
function refineDirectionOptions(options) {
  const normalizedOptions = normalizeOptionsOrString(options, "direction");
  const res = coerceDirection(normalizedOptions, 0);
  return res || throwRangeError(invalidEntity2("direction", res)), res;
}
function getCurrentIsoDateTime(timeZone) {
  const epochNano = getCurrentEpochNano();
  const offsetNano = timeZone.B(epochNano);
  return epochNanoToIsoDateTime(epochNano + BigInt(offsetNano));
}
function getCurrentEpochNano() {
  return BigInt(Date.now()) * bigNanoInMilli;
}
function getCurrentTimeZoneId() {
  return new RawDateTimeFormat().resolvedOptions().timeZone || "UTC";
}

// node_modules/temporal-polyfill/chunks/apiHelpers.js
var PlainYearMonthBranding = "PlainYearMonth";
var PlainMonthDayBranding = "PlainMonthDay";
var PlainDateBranding = "PlainDate";
var PlainDateTimeBranding = "PlainDateTime";
var PlainTimeBranding = "PlainTime";
var ZonedDateTimeBranding = "ZonedDateTime";
var InstantBranding = "Instant";
var DurationBranding = "Duration";
function defineTemporalClass(branding, cls, getSlots, ...getterMaps) {
  return Object.defineProperties(cls, createNameDescriptors(branding)), Object.defineProperties(cls.prototype, createStringTagDescriptors("Temporal." + branding)), Object.defineProperties(cls.prototype, mapProps((getter) => ({
    get() {
      return getter(getSlots(this));
    },
    configurable: 1
  }), Object.assign({}, ...getterMaps))), cls;
}
var attachDebugString = "noop" !== noop.name || globalThis.process ? noop : (instance) => {
  Object.defineProperty(instance, "_str_", {
    value: instance.toJSON()
  });
};
function invalidRecordType() {
  throwTypeError(invalidCallingContext);
}
function forbiddenValueOf2() {
  throwTypeError(forbiddenValueOf);
}
var yearMonthFieldGetters$1 = {
  era(slots) {
    return computeCalendarEraFields(slots.calendar, slots).era;
  },
  eraYear(slots) {
    return computeCalendarEraFields(slots.calendar, slots).eraYear;
  },
  year(slots) {
    return computeCalendarDateFields(slots.calendar, slots).year;
  },
  month(slots) {
    return computeCalendarDateFields(slots.calendar, slots).month;
  },
  monthCode(slots) {
    return computeCalendarMonthCode(slots.calendar, slots);
  }
};
var dateFieldGetters$1 = {
  era(slots) {
    return computeCalendarEraFields(slots.calendar, slots).era;
  },
  eraYear(slots) {
    return computeCalendarEraFields(slots.calendar, slots).eraYear;
  },
  year(slots) {
    return computeCalendarDateFields(slots.calendar, slots).year;
  },
  month(slots) {
    return computeCalendarDateFields(slots.calendar, slots).month;
  },
  monthCode(slots) {
    return computeCalendarMonthCode(slots.calendar, slots);
  },
  day(slots) {
    return computeCalendarDateFields(slots.calendar, slots).day;
  }
};
var monthDayFieldGetters$1 = {
  monthCode(slots) {
    return computeCalendarMonthCode(slots.calendar, slots);
  },
  day(slots) {
    return computeCalendarDateFields(slots.calendar, slots).day;
  }
};
var yearMonthDerivedGetters = {
  daysInMonth(slots) {
    return computeCalendarDaysInMonth(slots.calendar, slots);
  },
  daysInYear(slots) {
    return computeCalendarDaysInYear(slots.calendar, slots);
  },
  monthsInYear(slots) {
    return computeCalendarMonthsInYear(slots.calendar, slots);
  },
  inLeapYear(slots) {
    return computeCalendarInLeapYear(slots.calendar, slots);
  }
};
var dateDerivedGetters = {
  dayOfWeek(slots) {
    return computeIsoDayOfWeek(slots);
  },
  dayOfYear(slots) {
    return computeCalendarDayOfYear(slots.calendar, slots);
  },
  weekOfYear(slots) {
    return computeCalendarWeekOfYear(slots.calendar, slots);
  },
  yearOfWeek(slots) {
    return computeCalendarYearOfWeek(slots.calendar, slots);
  },
  daysInWeek() {
    return 7;
  },
  daysInMonth(slots) {
    return computeCalendarDaysInMonth(slots.calendar, slots);
  },
  daysInYear(slots) {
    return computeCalendarDaysInYear(slots.calendar, slots);
  },
  monthsInYear(slots) {
    return computeCalendarMonthsInYear(slots.calendar, slots);
  },
  inLeapYear(slots) {
    return computeCalendarInLeapYear(slots.calendar, slots);
  }
};
function diffInstants(invert, instantSlots0, instantSlots1, options) {
  const [largestUnit, smallestUnit, roundingInc, roundingMode] = refineDiffOptions(invert, options, 3, 5);
  return createDiffDurationSlots(invert, diffEpochNanosRounded(instantSlots0.epochNanoseconds, instantSlots1.epochNanoseconds, largestUnit, smallestUnit, roundingInc, roundingMode));
}
function diffZonedDateTimes(invert, slots0, slots1, options) {
  const calendar = getCommonCalendar(slots0.calendar, slots1.calendar);
  const [largestUnit, smallestUnit, roundingInc, roundingMode] = refineDiffOptions(invert, options, 5);
  return createDiffDurationSlots(invert, diffZonedDateTimesRounded(calendar, slots0, slots1, largestUnit, smallestUnit, roundingInc, roundingMode));
}
function diffDateTimes(invert, plainDateTimeSlots0, plainDateTimeSlots1, options) {
  const calendar = getCommonCalendar(plainDateTimeSlots0.calendar, plainDateTimeSlots1.calendar);
  const [largestUnit, smallestUnit, roundingInc, roundingMode] = refineDiffOptions(invert, options, 6);
  return createDiffDurationSlots(invert, diffDateTimesRounded(calendar, plainDateTimeSlots0, plainDateTimeSlots1, largestUnit, smallestUnit, roundingInc, roundingMode));
}
function diffDates(invert, plainDateSlots0, plainDateSlots1, options) {
  const calendar = getCommonCalendar(plainDateSlots0.calendar, plainDateSlots1.calendar);
  const [largestUnit, smallestUnit, roundingInc, roundingMode] = refineDiffOptions(invert, options, 6, 9, 6);
  return createDiffDurationSlots(invert, diffDatesRounded(calendar, plainDateSlots0, plainDateSlots1, largestUnit, smallestUnit, roundingInc, roundingMode));
}
function diffYearMonths(invert, plainYearMonthSlots0, plainYearMonthSlots1, options) {
  const calendar = getCommonCalendar(plainYearMonthSlots0.calendar, plainYearMonthSlots1.calendar);
  const [largestUnit, smallestUnit, roundingInc, roundingMode] = refineDiffOptions(invert, options, 9, 9, 8);
  return createDiffDurationSlots(invert, diffYearMonthsRounded(calendar, plainYearMonthSlots0, plainYearMonthSlots1, largestUnit, smallestUnit, roundingInc, roundingMode));
}
function diffTimes(invert, plainTimeSlots0, plainTimeSlots1, options) {
  const [largestUnit, smallestUnit, roundingInc, roundingMode] = refineDiffOptions(invert, options, 5, 5);
  return createDiffDurationSlots(invert, diffTimesRounded(plainTimeSlots0, plainTimeSlots1, largestUnit, smallestUnit, roundingInc, roundingMode));
}
function createDiffDurationSlots(invert, durationFields) {
  return createDurationSlots(invert ? negateDurationFields(durationFields) : durationFields);
}
function withDateFields(slots, modFields, options) {
  const { calendar } = slots;
  const fields = mergeDateFields(calendar, slots, modFields);
  const [year, monthCodeParts] = refineCalendarDateFields(fields, calendar);
  const overflow = refineOverflowOptions(options);
  return createDateFromRefinedFields(fields, calendar, year, monthCodeParts, overflow);
}
function withDateTimeFields(slots, modFields, options) {
  const { calendar } = slots;
  const [mergedFields, calendarFields] = mergeDateTimeFields(calendar, slots, modFields);
  const [year, monthCodeParts] = refineCalendarDateFields(calendarFields, calendar);
  const overflow = refineOverflowOptions(options);
  return createDateTimeFromMergedFields(mergedFields, calendarFields, calendar, year, monthCodeParts, overflow);
}
function withYearMonthFields(slots, modFields, options) {
  const { calendar } = slots;
  const fields = mergeYearMonthFields(calendar, slots, modFields);
  const [year, monthCodeParts] = refineCalendarDateFields(fields, calendar, 1);
  const overflow = refineOverflowOptions(options);
  return createYearMonthFromRefinedFields(fields, calendar, year, monthCodeParts, overflow);
}
function withMonthDayFields(slots, modFields, options) {
  const { calendar } = slots;
  const fields = mergeMonthDayFields(calendar, slots, modFields);
  const [year, monthCodeParts] = refineMonthDayFields(fields, calendar);
  const overflow = refineOverflowOptions(options);
  return createMonthDayFromRefinedFields(fields, calendar, year, monthCodeParts, overflow);
}
function withTimeFields(slots, modFields, options) {
  const refinedFields = mergeTimeFields(slots, modFields);
  const overflow = refineOverflowOptions(options);
  return resolveTimeFields(refinedFields, overflow);
}
function withZonedDateTimeFields(slots, modFields, options) {
  const { calendar } = slots;
  const [mergedFields, calendarFields] = mergeZonedDateTimeFields(calendar, slots, modFields);
  const [year, monthCodeParts] = refineCalendarDateFields(calendarFields, calendar);
  const [overflow, offsetDisambig, epochDisambig] = refineZonedFieldOptions(options, 2);
  return createZonedDateTimeFromMergedFields(slots, mergedFields, calendarFields, year, monthCodeParts, overflow, offsetDisambig, epochDisambig);
}

// node_modules/temporal-polyfill/chunks/classApi-basic.js
function resolveBasicCalendarId(rawCalendarId) {
  const lowerRawCalendarId = requireString(rawCalendarId).toLowerCase();
  return lowerRawCalendarId === isoCalendarId ? isoCalendarImpl : lowerRawCalendarId === gregoryCalendarId ? gregoryCalendarImpl : void throwRangeError(exoticCalendarRequired(rawCalendarId, "temporal-polyfill/full"));
}
function resolveBasicCalendarArg(rawCalendarId = isoCalendarId) {
  return resolveBasicCalendarId(rawCalendarId);
}
var zonedDateTimeSlotsMap = /* @__PURE__ */ new WeakMap();
var ZonedDateTime = /* @__PURE__ */ defineTemporalClass(ZonedDateTimeBranding, class {
  constructor(epochNanoseconds, timeZoneId, calendar = void 0) {
    const epochNano = checkEpochNanoInBounds(toBigInt(epochNanoseconds));
    const timeZone = queryTimeZone(refineTimeZoneId(timeZoneId));
    const calendarImpl = resolveBasicCalendarArg(calendar);
    initZonedDateTime(this, createZonedEpochNanoSlots(epochNano, timeZone, calendarImpl));
  }
  static from(arg, options = void 0) {
    return createZonedDateTime(toZonedDateTimeSlots(arg, options));
  }
  static compare(arg0, arg1) {
    return compareZonedEpochSlots(toZonedDateTimeSlots(arg0), toZonedDateTimeSlots(arg1));
  }
  get calendarId() {
    return getCalendarSlotId(getZonedDateTimeSlots(this).calendar);
  }
  get timeZoneId() {
    return getZonedDateTimeSlots(this).timeZone.id;
  }
  get epochMilliseconds() {
    return epochNanoToMilli(getZonedDateTimeSlots(this).epochNanoseconds);
  }
  get epochNanoseconds() {
    return getZonedDateTimeSlots(this).epochNanoseconds;
  }
  get offset() {
    return formatOffsetNano(zonedEpochSlotsToIso(getZonedDateTimeSlots(this)).offsetNanoseconds);
  }
  get offsetNanoseconds() {
    return zonedEpochSlotsToIso(getZonedDateTimeSlots(this)).offsetNanoseconds;
  }
  get hoursInDay() {
    return computeZonedHoursInDay(getZonedDateTimeSlots(this));
  }
  with(mod, options = void 0) {
    return createZonedDateTime(withZonedDateTimeFields(getZonedDateTimeSlots(this), validateBag(mod), options));
  }
  withCalendar(calendarArg) {
    return createZonedDateTime({
      ...getZonedDateTimeSlots(this),
      calendar: refineCalendarArg(calendarArg)
    });
  }
  withTimeZone(timeZoneArg) {
    return createZonedDateTime({
      ...getZonedDateTimeSlots(this),
      timeZone: queryTimeZone(refineTimeZoneArg(timeZoneArg))
    });
  }
  withPlainTime(plainTimeArg = void 0) {
    return createZonedDateTime(zonedDateTimeWithPlainTime(getZonedDateTimeSlots(this), optionalToPlainTimeFields(plainTimeArg)));
  }
  add(durationArg, options = void 0) {
    const slots = getZonedDateTimeSlots(this);
    return createZonedDateTime(moveZonedEpochSlots(slots, toDurationSlots(durationArg), refineOverflowOptions(options)));
  }
  subtract(durationArg, options = void 0) {
    const slots = getZonedDateTimeSlots(this);
    return createZonedDateTime(moveZonedEpochSlots(slots, negateDurationFields(toDurationSlots(durationArg)), refineOverflowOptions(options)));
  }
  until(otherArg, options = void 0) {
    const slots = getZonedDateTimeSlots(this);
    const other = toZonedDateTimeSlots(otherArg);
    return createDuration(diffZonedDateTimes(0, slots, other, options));
  }
  since(otherArg, options = void 0) {
    const slots = getZonedDateTimeSlots(this);
    const other = toZonedDateTimeSlots(otherArg);
    return createDuration(diffZonedDateTimes(1, slots, other, options));
  }
  round(options) {
    const slots = getZonedDateTimeSlots(this);
    const [smallestUnit, roundingInc, roundingMode] = refineRoundingOptions(options);
    return createZonedDateTime(roundZonedEpochSlotsToUnit(slots, smallestUnit, roundingInc, roundingMode));
  }
  startOfDay() {
    return createZonedDateTime(computeZonedStartOfDay(getZonedDateTimeSlots(this)));
  }
  equals(otherArg) {
    return zonedDateTimesEqual(getZonedDateTimeSlots(this), toZonedDateTimeSlots(otherArg));
  }
  toInstant() {
    return createInstant(zonedDateTimeToInstant(getZonedDateTimeSlots(this)));
  }
  toPlainDateTime() {
    return createPlainDateTime(zonedDateTimeToDateTime(getZonedDateTimeSlots(this)));
  }
  toPlainDate() {
    return createPlainDate(zonedDateTimeToDate(getZonedDateTimeSlots(this)));
  }
  toPlainTime() {
    return createPlainTime(zonedDateTimeToTime(getZonedDateTimeSlots(this)));
  }
  toLocaleString(locales = void 0, options = {}) {
    const slots = getZonedDateTimeSlots(this);
    const format = new RawDateTimeFormat(locales, applyZonedFormatTimeZone(transformZonedOptions(options), getZonedTimeZoneId(slots)));
    return checkResolvedCalendarCompatible(format, slots), format.format(epochNanoToMilli(slots.epochNanoseconds));
  }
  toString(options = void 0) {
    return formatZonedDateTimeIso(getZonedDateTimeSlots(this), options);
  }
  toJSON() {
    return formatZonedDateTimeIso(getZonedDateTimeSlots(this));
  }
  getTimeZoneTransition(options) {
    const slots = getZonedDateTimeSlots(this);
    const newEpochNano = slots.timeZone.C(slots.epochNanoseconds, refineDirectionOptions(options));
    return void 0 !== newEpochNano ? createZonedDateTime({
      ...slots,
      epochNanoseconds: newEpochNano
    }) : null;
  }
  valueOf() {
    return forbiddenValueOf2();
  }
}, getZonedDateTimeIsoSlots, dateFieldGetters$1, dateDerivedGetters, timeGetters);
function createZonedDateTime(slots) {
  return initZonedDateTime(Object.create(ZonedDateTime.prototype), slots);
}
function getZonedDateTimeSlots(obj) {
  return getZonedDateTimeSlotsIfPresent(obj) || invalidRecordType();
}
function getZonedDateTimeIsoSlots(obj) {
  const slots = getZonedDateTimeSlots(obj);
  return {
    ...zonedEpochSlotsToIso(slots),
    calendar: slots.calendar
  };
}
function getZonedDateTimeSlotsIfPresent(obj) {
  return zonedDateTimeSlotsMap.get(obj);
}
function toZonedDateTimeSlots(arg, options) {
  if (isObjectLike2(arg)) {
    const ownSlots = getZonedDateTimeSlotsIfPresent(arg);
    if (ownSlots) {
      return refineZonedFieldOptions(options), ownSlots;
    }
    const calendar = getCalendarFromBag(arg);
    return refineZonedDateTimeObjectLike(refineTimeZoneArg, calendar, arg, options);
  }
  return parseZonedDateTime(arg, resolveBasicCalendarId, options);
}
function initZonedDateTime(instance, slots) {
  return zonedDateTimeSlotsMap.set(instance, slots), attachDebugString(instance), instance;
}
function refineTimeZoneArg(arg) {
  if (isObjectLike2(arg)) {
    const slots = getZonedDateTimeSlotsIfPresent(arg);
    return slots || throwTypeError(invalidTimeZone(arg)), slots.timeZone.id;
  }
  return ((arg2) => resolveTimeZoneId(parseTimeZoneId(requireString(arg2))))(arg);
}
var instantSlotsMap = /* @__PURE__ */ new WeakMap();
var Instant = /* @__PURE__ */ defineTemporalClass(InstantBranding, class {
  constructor(epochNanoseconds) {
    const epochNano = checkEpochNanoInBounds(toBigInt(epochNanoseconds));
    initInstant(this, createEpochNanoSlots(epochNano));
  }
  static from(arg) {
    return createInstant(toInstantSlots(arg));
  }
  static fromEpochMilliseconds(epochMilli) {
    return createInstant(epochMilliToInstant(epochMilli));
  }
  static fromEpochNanoseconds(epochNano) {
    return createInstant(epochNanoToInstant(epochNano));
  }
  static compare(a, b) {
    return compareZonedEpochSlots(toInstantSlots(a), toInstantSlots(b));
  }
  get epochMilliseconds() {
    return epochNanoToMilli(getInstantSlots(this).epochNanoseconds);
  }
  get epochNanoseconds() {
    return getInstantSlots(this).epochNanoseconds;
  }
  add(durationArg) {
    const slots = getInstantSlots(this);
    return createInstant(createEpochNanoSlots(moveEpochNano(slots.epochNanoseconds, toDurationSlots(durationArg))));
  }
  subtract(durationArg) {
    const slots = getInstantSlots(this);
    return createInstant(createEpochNanoSlots(moveEpochNano(slots.epochNanoseconds, negateDurationFields(toDurationSlots(durationArg)))));
  }
  until(otherArg, options = void 0) {
    return createDuration(diffInstants(0, getInstantSlots(this), toInstantSlots(otherArg), options));
  }
  since(otherArg, options = void 0) {
    return createDuration(diffInstants(1, getInstantSlots(this), toInstantSlots(otherArg), options));
  }
  round(options) {
    const slots = getInstantSlots(this);
    const [smallestUnit, roundingInc, roundingMode] = refineRoundingOptions(options, 5, 1);
    return createInstant(createEpochNanoSlots(roundBigNanoToDayOriginInc(slots.epochNanoseconds, computeBigNanoInc(smallestUnit, roundingInc), roundingMode)));
  }
  equals(otherArg) {
    return instantsEqual(getInstantSlots(this), toInstantSlots(otherArg));
  }
  toZonedDateTimeISO(timeZoneArg) {
    return createZonedDateTime(instantToZonedDateTime(getInstantSlots(this), queryTimeZone(refineTimeZoneArg(timeZoneArg))));
  }
  toLocaleString(locales = void 0, options = {}) {
    const slots = getInstantSlots(this);
    return new RawDateTimeFormat(locales, transformInstantOptions(options)).format(epochNanoToMilli(slots.epochNanoseconds));
  }
  toString(options = void 0) {
    return formatInstantIso(refineTimeZoneArg, getInstantSlots(this), options);
  }
  toJSON() {
    return formatInstantIso(refineTimeZoneArg, getInstantSlots(this));
  }
  valueOf() {
    return forbiddenValueOf2();
  }
});
function createInstant(slots) {
  return initInstant(Object.create(Instant.prototype), slots);
}
function getInstantSlots(obj) {
  return getInstantSlotsIfPresent(obj) || invalidRecordType();
}
function getInstantSlotsIfPresent(obj) {
  return instantSlotsMap.get(obj);
}
function toInstantSlots(arg) {
  if (isObjectLike2(arg)) {
    const ownSlots = getInstantSlotsIfPresent(arg);
    if (ownSlots) {
      return ownSlots;
    }
    const zonedDateTimeSlots = getZonedDateTimeSlotsIfPresent(arg);
    if (zonedDateTimeSlots) {
      return createEpochNanoSlots(zonedDateTimeSlots.epochNanoseconds);
    }
  }
  return parseInstant(arg);
}
var { toTemporalInstant } = {
  toTemporalInstant() {
    const epochMilli = Date.prototype.valueOf.call(this);
    return createInstant(createEpochNanoSlots(BigInt(requireNumberIsInteger(epochMilli)) * bigNanoInMilli));
  }
};
function initInstant(instance, slots) {
  return instantSlotsMap.set(instance, slots), attachDebugString(instance), instance;
}
var plainMonthDaySlotsMap = /* @__PURE__ */ new WeakMap();
var PlainMonthDay = /* @__PURE__ */ defineTemporalClass(PlainMonthDayBranding, class {
  constructor(isoMonth, isoDay, calendar = void 0, referenceIsoYear) {
    const isoMonthInt = toIntegerWithTrunc(isoMonth);
    const isoDayInt = toIntegerWithTrunc(isoDay);
    const calendarImpl = resolveBasicCalendarArg(calendar);
    const isoYearInt = toIntegerWithTrunc(referenceIsoYear ?? isoEpochFirstLeapYear);
    const fields = checkIsoDateInBounds(validateIsoDateFields({
      year: isoYearInt,
      month: isoMonthInt,
      day: isoDayInt
    }));
    initPlainMonthDay(this, createDateSlots(fields, calendarImpl));
  }
  static from(arg, options = void 0) {
    return createPlainMonthDay(toPlainMonthDaySlots(arg, options));
  }
  get calendarId() {
    return getCalendarSlotId(getPlainMonthDaySlots(this).calendar);
  }
  with(mod, options = void 0) {
    return createPlainMonthDay(withMonthDayFields(getPlainMonthDaySlots(this), validateBag(mod), options));
  }
  equals(otherArg) {
    return plainMonthDaysEqual(getPlainMonthDaySlots(this), toPlainMonthDaySlots(otherArg));
  }
  toPlainDate(bag) {
    const slots = getPlainMonthDaySlots(this);
    return createPlainDate(monthDayToDate(slots.calendar, this, bag));
  }
  toLocaleString(locales = void 0, options = {}) {
    const slots = getPlainMonthDaySlots(this);
    const format = new RawDateTimeFormat(locales, applyPlainFormatTimeZone(transformMonthDayOptions(options)));
    return checkResolvedCalendarCompatible(format, slots, 1), format.format(isoDateToEpochMilli(slots));
  }
  toString(options = void 0) {
    return formatPlainMonthDayIso(getPlainMonthDaySlots(this), options);
  }
  toJSON() {
    return formatPlainMonthDayIso(getPlainMonthDaySlots(this));
  }
  valueOf() {
    return forbiddenValueOf2();
  }
}, getPlainMonthDaySlots, monthDayFieldGetters$1);
function createPlainMonthDay(slots) {
  return initPlainMonthDay(Object.create(PlainMonthDay.prototype), slots);
}
function getPlainMonthDaySlots(obj) {
  return getPlainMonthDaySlotsIfPresent(obj) || invalidRecordType();
}
function getPlainMonthDaySlotsIfPresent(obj) {
  return plainMonthDaySlotsMap.get(obj);
}
function toPlainMonthDaySlots(arg, options) {
  if (isObjectLike2(arg)) {
    const ownSlots = getPlainMonthDaySlotsIfPresent(arg);
    if (ownSlots) {
      return refineOverflowOptions(options), ownSlots;
    }
    const calendarMaybe = extractCalendarFromBag(arg);
    return refinePlainMonthDayObjectLike(void 0 === calendarMaybe ? isoCalendarImpl : calendarMaybe, void 0 === calendarMaybe, arg, options);
  }
  const res = parsePlainMonthDay(arg, resolveBasicCalendarId);
  return refineOverflowOptions(options), res;
}
function initPlainMonthDay(instance, slots) {
  return plainMonthDaySlotsMap.set(instance, slots), attachDebugString(instance), instance;
}
var plainYearMonthSlotsMap = /* @__PURE__ */ new WeakMap();
var PlainYearMonth = /* @__PURE__ */ defineTemporalClass(PlainYearMonthBranding, class {
  constructor(isoYear, isoMonth, calendar = void 0, referenceIsoDay) {
    const isoYearInt = toIntegerWithTrunc(isoYear);
    const isoMonthInt = toIntegerWithTrunc(isoMonth);
    const calendarImpl = resolveBasicCalendarArg(calendar);
    const isoDayInt = toIntegerWithTrunc(referenceIsoDay ?? 1);
    const fields = checkIsoYearMonthInBounds(validateIsoDateFields({
      year: isoYearInt,
      month: isoMonthInt,
      day: isoDayInt
    }));
    initPlainYearMonth(this, createDateSlots(fields, calendarImpl));
  }
  static from(arg, options = void 0) {
    return createPlainYearMonth(toPlainYearMonthSlots(arg, options));
  }
  static compare(arg0, arg1) {
    return compareIsoDateFields(toPlainYearMonthSlots(arg0), toPlainYearMonthSlots(arg1));
  }
  get calendarId() {
    return getCalendarSlotId(getPlainYearMonthSlots(this).calendar);
  }
  with(mod, options = void 0) {
    return createPlainYearMonth(withYearMonthFields(getPlainYearMonthSlots(this), validateBag(mod), options));
  }
  add(durationArg, options = void 0) {
    const slots = getPlainYearMonthSlots(this);
    return createPlainYearMonth(createDateSlots(moveYearMonth(slots.calendar, slots, toDurationSlots(durationArg), refineOverflowOptions(options)), slots.calendar));
  }
  subtract(durationArg, options = void 0) {
    const slots = getPlainYearMonthSlots(this);
    return createPlainYearMonth(createDateSlots(moveYearMonth(slots.calendar, slots, negateDurationFields(toDurationSlots(durationArg)), refineOverflowOptions(options)), slots.calendar));
  }
  until(otherArg, options = void 0) {
    const slots = getPlainYearMonthSlots(this);
    const other = toPlainYearMonthSlots(otherArg);
    return createDuration(diffYearMonths(0, slots, other, options));
  }
  since(otherArg, options = void 0) {
    const slots = getPlainYearMonthSlots(this);
    const other = toPlainYearMonthSlots(otherArg);
    return createDuration(diffYearMonths(1, slots, other, options));
  }
  equals(otherArg) {
    return plainYearMonthsEqual(getPlainYearMonthSlots(this), toPlainYearMonthSlots(otherArg));
  }
  toPlainDate(bag) {
    const slots = getPlainYearMonthSlots(this);
    return createPlainDate(yearMonthToDate(slots.calendar, this, bag));
  }
  toLocaleString(locales = void 0, options = {}) {
    const slots = getPlainYearMonthSlots(this);
    const format = new RawDateTimeFormat(locales, applyPlainFormatTimeZone(transformYearMonthOptions(options)));
    return checkResolvedCalendarCompatible(format, slots, 1), format.format(isoDateToEpochMilli(slots));
  }
  toString(options = void 0) {
    return formatPlainYearMonthIso(getPlainYearMonthSlots(this), options);
  }
  toJSON() {
    return formatPlainYearMonthIso(getPlainYearMonthSlots(this));
  }
  valueOf() {
    return forbiddenValueOf2();
  }
}, getPlainYearMonthSlots, yearMonthFieldGetters$1, yearMonthDerivedGetters);
function createPlainYearMonth(slots) {
  return initPlainYearMonth(Object.create(PlainYearMonth.prototype), slots);
}
function getPlainYearMonthSlots(obj) {
  return getPlainYearMonthSlotsIfPresent(obj) || invalidRecordType();
}
function getPlainYearMonthSlotsIfPresent(obj) {
  return plainYearMonthSlotsMap.get(obj);
}
function toPlainYearMonthSlots(arg, options) {
  if (isObjectLike2(arg)) {
    const ownSlots = getPlainYearMonthSlotsIfPresent(arg);
    if (ownSlots) {
      return refineOverflowOptions(options), ownSlots;
    }
    const calendar = getCalendarFromBag(arg);
    return refinePlainYearMonthObjectLike(calendar, arg, options);
  }
  const res = parsePlainYearMonth(arg, resolveBasicCalendarId);
  return refineOverflowOptions(options), res;
}
function initPlainYearMonth(instance, slots) {
  return plainYearMonthSlotsMap.set(instance, slots), attachDebugString(instance), instance;
}
function getTemporalBrandingAndSlots(obj) {
  if (!isObjectLike2(obj)) {
    return;
  }
  let slots = getInstantSlotsIfPresent(obj);
  return slots ? [InstantBranding, slots] : (slots = getZonedDateTimeSlotsIfPresent(obj), slots ? [ZonedDateTimeBranding, slots] : (slots = getPlainDateTimeSlotsIfPresent(obj), slots ? [PlainDateTimeBranding, slots] : (slots = getPlainDateSlotsIfPresent(obj), slots ? [PlainDateBranding, slots] : (slots = getPlainTimeSlotsIfPresent(obj), slots ? [PlainTimeBranding, slots] : (slots = getPlainYearMonthSlotsIfPresent(obj), slots ? [PlainYearMonthBranding, slots] : (slots = getPlainMonthDaySlotsIfPresent(obj), slots ? [PlainMonthDayBranding, slots] : (slots = getDurationSlotsIfPresent(obj), slots ? [DurationBranding, slots] : void 0)))))));
}
function validateBag(bag) {
  return (getTemporalBrandingAndSlots(bag) || void 0 !== bag.calendar || void 0 !== bag.timeZone) && throwTypeError(invalidBag), bag;
}
var plainTimeSlotsMap = /* @__PURE__ */ new WeakMap();
var PlainTime = /* @__PURE__ */ defineTemporalClass(PlainTimeBranding, class {
  constructor(hour = 0, minute = 0, second = 0, millisecond = 0, microsecond = 0, nanosecond = 0) {
    const fields = validateTimeFields(mapProps(toIntegerWithTrunc, {
      hour,
      minute,
      second,
      millisecond,
      microsecond,
      nanosecond
    }));
    initPlainTime(this, createTimeSlots(fields));
  }
  static from(arg, options = void 0) {
    return createPlainTime(toPlainTimeSlots(arg, options));
  }
  static compare(arg0, arg1) {
    return compareTimeFields(toPlainTimeSlots(arg0), toPlainTimeSlots(arg1));
  }
  with(mod, options = void 0) {
    return createPlainTime(withTimeFields(getPlainTimeSlots(this), validateBag(mod), options));
  }
  add(durationArg) {
    const slots = getPlainTimeSlots(this);
    return createPlainTime(moveTime(slots, toDurationSlots(durationArg))[0]);
  }
  subtract(durationArg) {
    const slots = getPlainTimeSlots(this);
    return createPlainTime(moveTime(slots, negateDurationFields(toDurationSlots(durationArg)))[0]);
  }
  until(otherArg, options = void 0) {
    return createDuration(diffTimes(0, getPlainTimeSlots(this), toPlainTimeSlots(otherArg), options));
  }
  since(otherArg, options = void 0) {
    return createDuration(diffTimes(1, getPlainTimeSlots(this), toPlainTimeSlots(otherArg), options));
  }
  round(options) {
    const slots = getPlainTimeSlots(this);
    const [smallestUnit, roundingInc, roundingMode] = refineRoundingOptions(options, 5);
    return createPlainTime(roundTimeToUnit(slots, smallestUnit, roundingInc, roundingMode)[0]);
  }
  equals(other) {
    return plainTimesEqual(getPlainTimeSlots(this), toPlainTimeSlots(other));
  }
  toLocaleString(locales = void 0, options = {}) {
    const slots = getPlainTimeSlots(this);
    return new RawDateTimeFormat(locales, applyPlainFormatTimeZone(transformTimeOptions(options))).format(timeFieldsToMilli(slots));
  }
  toString(options = void 0) {
    return formatPlainTimeIso(getPlainTimeSlots(this), options);
  }
  toJSON() {
    return formatPlainTimeIso(getPlainTimeSlots(this));
  }
  valueOf() {
    return forbiddenValueOf2();
  }
}, getPlainTimeSlots, timeGetters);
function createPlainTime(slots) {
  return initPlainTime(Object.create(PlainTime.prototype), slots);
}
function getPlainTimeSlots(obj) {
  return getPlainTimeSlotsIfPresent(obj) || invalidRecordType();
}
function getPlainTimeSlotsIfPresent(obj) {
  return plainTimeSlotsMap.get(obj);
}
function toPlainTimeSlots(arg, options) {
  if (isObjectLike2(arg)) {
    const ownSlots = getPlainTimeSlotsIfPresent(arg);
    if (ownSlots) {
      return refineOverflowOptions(options), ownSlots;
    }
    const dateTimeSlots = getPlainDateTimeSlotsIfPresent(arg);
    if (dateTimeSlots) {
      return refineOverflowOptions(options), createTimeSlots(dateTimeSlots);
    }
    const zonedDateTimeSlots = getZonedDateTimeSlotsIfPresent(arg);
    return zonedDateTimeSlots ? (refineOverflowOptions(options), zonedDateTimeToTime(zonedDateTimeSlots)) : refinePlainTimeObjectLike(arg, options);
  }
  const timeSlots = parsePlainTime(arg);
  return refineOverflowOptions(options), timeSlots;
}
function optionalToPlainTimeFields(timeArg) {
  return void 0 === timeArg ? void 0 : toPlainTimeSlots(timeArg);
}
function initPlainTime(instance, slots) {
  return plainTimeSlotsMap.set(instance, slots), attachDebugString(instance), instance;
}
var plainDateTimeSlotsMap = /* @__PURE__ */ new WeakMap();
var PlainDateTime = /* @__PURE__ */ defineTemporalClass(PlainDateTimeBranding, class {
  constructor(isoYear, isoMonth, isoDay, hour = 0, minute = 0, second = 0, millisecond = 0, microsecond = 0, nanosecond = 0, calendar = void 0) {
    const fields = checkIsoDateTimeInBounds(validateIsoDateTimeFields(mapProps(toIntegerWithTrunc, {
      year: isoYear,
      month: isoMonth,
      day: isoDay,
      hour,
      minute,
      second,
      millisecond,
      microsecond,
      nanosecond
    })));
    const calendarImpl = resolveBasicCalendarArg(calendar);
    initPlainDateTime(this, createDateTimeSlots(fields, calendarImpl));
  }
  static from(arg, options = void 0) {
    return createPlainDateTime(toPlainDateTimeSlots(arg, options));
  }
  static compare(arg0, arg1) {
    const slots0 = toPlainDateTimeSlots(arg0);
    const slots1 = toPlainDateTimeSlots(arg1);
    return compareIsoDateTimeFields(slots0, slots1);
  }
  get calendarId() {
    return getCalendarSlotId(getPlainDateTimeSlots(this).calendar);
  }
  with(mod, options = void 0) {
    return createPlainDateTime(withDateTimeFields(getPlainDateTimeSlots(this), validateBag(mod), options));
  }
  withCalendar(calendarArg) {
    const slots = getPlainDateTimeSlots(this);
    return createPlainDateTime(createDateTimeSlots(slots, refineCalendarArg(calendarArg)));
  }
  withPlainTime(plainTimeArg = void 0) {
    const slots = getPlainDateTimeSlots(this);
    return createPlainDateTime(createDateTimeFromRefinedFields(slots, optionalToPlainTimeFields(plainTimeArg), slots.calendar));
  }
  add(durationArg, options = void 0) {
    const slots = getPlainDateTimeSlots(this);
    return createPlainDateTime(createDateTimeSlots(moveDateTime(slots.calendar, slots, toDurationSlots(durationArg), refineOverflowOptions(options)), slots.calendar));
  }
  subtract(durationArg, options = void 0) {
    const slots = getPlainDateTimeSlots(this);
    return createPlainDateTime(createDateTimeSlots(moveDateTime(slots.calendar, slots, negateDurationFields(toDurationSlots(durationArg)), refineOverflowOptions(options)), slots.calendar));
  }
  until(otherArg, options = void 0) {
    const slots = getPlainDateTimeSlots(this);
    const other = toPlainDateTimeSlots(otherArg);
    return createDuration(diffDateTimes(0, slots, other, options));
  }
  since(otherArg, options = void 0) {
    const slots = getPlainDateTimeSlots(this);
    const other = toPlainDateTimeSlots(otherArg);
    return createDuration(diffDateTimes(1, slots, other, options));
  }
  round(options) {
    const slots = getPlainDateTimeSlots(this);
    const [smallestUnit, roundingInc, roundingMode] = refineRoundingOptions(options);
    return createPlainDateTime(createDateTimeSlots(roundDateTimeToUnit(slots, smallestUnit, roundingInc, roundingMode), slots.calendar));
  }
  equals(otherArg) {
    return plainDateTimesEqual(getPlainDateTimeSlots(this), toPlainDateTimeSlots(otherArg));
  }
  toZonedDateTime(timeZoneArg, options = void 0) {
    return createZonedDateTime(dateTimeToZonedDateTime(getPlainDateTimeSlots(this), queryTimeZone(refineTimeZoneArg(timeZoneArg)), refineEpochDisambigOptions(options)));
  }
  toPlainDate() {
    const slots = getPlainDateTimeSlots(this);
    return createPlainDate(createDateSlots(slots, slots.calendar));
  }
  toPlainTime() {
    return createPlainTime(createTimeSlots(getPlainDateTimeSlots(this)));
  }
  toLocaleString(locales = void 0, options = {}) {
    const slots = getPlainDateTimeSlots(this);
    const format = new RawDateTimeFormat(locales, applyPlainFormatTimeZone(transformDateTimeOptions(options)));
    return checkResolvedCalendarCompatible(format, slots), format.format(isoDateTimeToEpochMilli(slots));
  }
  toString(options = void 0) {
    return formatPlainDateTimeIso(getPlainDateTimeSlots(this), options);
  }
  toJSON() {
    return formatPlainDateTimeIso(getPlainDateTimeSlots(this));
  }
  valueOf() {
    return forbiddenValueOf2();
  }
}, getPlainDateTimeSlots, dateFieldGetters$1, dateDerivedGetters, timeGetters);
function createPlainDateTime(slots) {
  return initPlainDateTime(Object.create(PlainDateTime.prototype), slots);
}
function getPlainDateTimeSlots(obj) {
  return getPlainDateTimeSlotsIfPresent(obj) || invalidRecordType();
}
function getPlainDateTimeSlotsIfPresent(obj) {
  return plainDateTimeSlotsMap.get(obj);
}
function toPlainDateTimeSlots(arg, options) {
  if (isObjectLike2(arg)) {
    const ownSlots = getPlainDateTimeSlotsIfPresent(arg);
    if (ownSlots) {
      return refineOverflowOptions(options), ownSlots;
    }
    const dateSlots = getPlainDateSlotsIfPresent(arg);
    if (dateSlots) {
      return refineOverflowOptions(options), createDateTimeSlots(combineDateAndTime(dateSlots, timeFieldDefaults), dateSlots.calendar);
    }
    const zonedDateTimeSlots = getZonedDateTimeSlotsIfPresent(arg);
    if (zonedDateTimeSlots) {
      return refineOverflowOptions(options), zonedDateTimeToDateTime(zonedDateTimeSlots);
    }
    const calendar = getCalendarFromBag(arg);
    return refinePlainDateTimeObjectLike(calendar, arg, options);
  }
  const res = parsePlainDateTime(arg, resolveBasicCalendarId);
  return refineOverflowOptions(options), res;
}
function initPlainDateTime(instance, slots) {
  return plainDateTimeSlotsMap.set(instance, slots), attachDebugString(instance), instance;
}
var plainDateSlotsMap = /* @__PURE__ */ new WeakMap();
var PlainDate = /* @__PURE__ */ defineTemporalClass(PlainDateBranding, class {
  constructor(isoYear, isoMonth, isoDay, calendar = void 0) {
    const fields = checkIsoDateInBounds(validateIsoDateFields(mapProps(toIntegerWithTrunc, {
      year: isoYear,
      month: isoMonth,
      day: isoDay
    })));
    const calendarImpl = resolveBasicCalendarArg(calendar);
    initPlainDate(this, createDateSlots(fields, calendarImpl));
  }
  static from(arg, options = void 0) {
    return createPlainDate(toPlainDateSlots(arg, options));
  }
  static compare(arg0, arg1) {
    return compareIsoDateFields(toPlainDateSlots(arg0), toPlainDateSlots(arg1));
  }
  get calendarId() {
    return getCalendarSlotId(getPlainDateSlots(this).calendar);
  }
  with(mod, options = void 0) {
    return createPlainDate(withDateFields(getPlainDateSlots(this), validateBag(mod), options));
  }
  withCalendar(calendarArg) {
    const slots = getPlainDateSlots(this);
    return createPlainDate(createDateSlots(slots, refineCalendarArg(calendarArg)));
  }
  add(durationArg, options = void 0) {
    const slots = getPlainDateSlots(this);
    return createPlainDate(createDateSlots(moveDate(slots.calendar, slots, toDurationSlots(durationArg), refineOverflowOptions(options)), slots.calendar));
  }
  subtract(durationArg, options = void 0) {
    const slots = getPlainDateSlots(this);
    return createPlainDate(createDateSlots(moveDate(slots.calendar, slots, negateDurationFields(toDurationSlots(durationArg)), refineOverflowOptions(options)), slots.calendar));
  }
  until(otherArg, options = void 0) {
    const slots = getPlainDateSlots(this);
    const other = toPlainDateSlots(otherArg);
    return createDuration(diffDates(0, slots, other, options));
  }
  since(otherArg, options = void 0) {
    const slots = getPlainDateSlots(this);
    const other = toPlainDateSlots(otherArg);
    return createDuration(diffDates(1, slots, other, options));
  }
  equals(otherArg) {
    return plainDatesEqual(getPlainDateSlots(this), toPlainDateSlots(otherArg));
  }
  toZonedDateTime(options) {
    const optionsObj = isObjectLike2(options) ? {
      timeZone: options.timeZone,
      plainTime: options.plainTime
    } : {
      timeZone: options
    };
    const slots = getPlainDateSlots(this);
    const timeZoneId = refineTimeZoneArg(optionsObj.timeZone);
    const plainTimeArg = optionsObj.plainTime;
    const timeFields = void 0 !== plainTimeArg ? toPlainTimeSlots(plainTimeArg) : void 0;
    return createZonedDateTime(dateToZonedDateTime(slots, queryTimeZone(timeZoneId), timeFields));
  }
  toPlainDateTime(plainTimeArg = void 0) {
    const slots = getPlainDateSlots(this);
    return createPlainDateTime(createDateTimeFromRefinedFields(slots, optionalToPlainTimeFields(plainTimeArg), slots.calendar));
  }
  toPlainYearMonth() {
    const slots = getPlainDateSlots(this);
    return createPlainYearMonth(fieldsToYearMonth(slots.calendar, this));
  }
  toPlainMonthDay() {
    const slots = getPlainDateSlots(this);
    return createPlainMonthDay(fieldsToMonthDay(slots.calendar, this));
  }
  toLocaleString(locales = void 0, options = {}) {
    const slots = getPlainDateSlots(this);
    const format = new RawDateTimeFormat(locales, applyPlainFormatTimeZone(transformDateOptions(options)));
    return checkResolvedCalendarCompatible(format, slots), format.format(isoDateToEpochMilli(slots));
  }
  toString(options = void 0) {
    return formatPlainDateIso(getPlainDateSlots(this), options);
  }
  toJSON() {
    return formatPlainDateIso(getPlainDateSlots(this));
  }
  valueOf() {
    return forbiddenValueOf2();
  }
}, getPlainDateSlots, dateFieldGetters$1, dateDerivedGetters);
function createPlainDate(slots) {
  return initPlainDate(Object.create(PlainDate.prototype), slots);
}
function getPlainDateSlots(obj) {
  return getPlainDateSlotsIfPresent(obj) || invalidRecordType();
}
function getPlainDateSlotsIfPresent(obj) {
  return plainDateSlotsMap.get(obj);
}
function toPlainDateSlots(arg, options) {
  if (isObjectLike2(arg)) {
    const ownSlots = getPlainDateSlotsIfPresent(arg);
    if (ownSlots) {
      return refineOverflowOptions(options), ownSlots;
    }
    const dateTimeSlots = getPlainDateTimeSlotsIfPresent(arg);
    if (dateTimeSlots) {
      return refineOverflowOptions(options), createDateSlots(dateTimeSlots, dateTimeSlots.calendar);
    }
    const zonedDateTimeSlots = getZonedDateTimeSlotsIfPresent(arg);
    if (zonedDateTimeSlots) {
      return refineOverflowOptions(options), zonedDateTimeToDate(zonedDateTimeSlots);
    }
    const calendar = getCalendarFromBag(arg);
    return refinePlainDateObjectLike(calendar, arg, options);
  }
  const res = parsePlainDate(arg, resolveBasicCalendarId);
  return refineOverflowOptions(options), res;
}
function initPlainDate(instance, slots) {
  return plainDateSlotsMap.set(instance, slots), attachDebugString(instance), instance;
}
function getCalendarFromBag(bag) {
  const calendar = extractCalendarFromBag(bag);
  return void 0 === calendar ? isoCalendarImpl : calendar;
}
function extractCalendarFromBag(bag) {
  const { calendar: calendarArg } = bag;
  if (void 0 !== calendarArg) {
    return refineCalendarArg(calendarArg);
  }
}
function refineCalendarArg(arg) {
  if (isObjectLike2(arg)) {
    const slots = getPlainDateSlotsIfPresent(arg) || getPlainDateTimeSlotsIfPresent(arg) || getZonedDateTimeSlotsIfPresent(arg) || getPlainMonthDaySlotsIfPresent(arg) || getPlainYearMonthSlotsIfPresent(arg);
    return slots || throwTypeError(invalidCalendar(arg)), slots.calendar;
  }
  return ((arg2) => resolveBasicCalendarId(parseCalendarId(requireString(arg2))))(arg);
}
var durationSlotsMap = /* @__PURE__ */ new WeakMap();
var Duration = /* @__PURE__ */ defineTemporalClass(DurationBranding, class {
  constructor(years = 0, months = 0, weeks = 0, days = 0, hours = 0, minutes2 = 0, seconds = 0, milliseconds = 0, microseconds = 0, nanoseconds = 0) {
    const fields = validateDurationFields(mapProps(toStrictInteger, {
      years,
      months,
      weeks,
      days,
      hours,
      minutes: minutes2,
      seconds,
      milliseconds,
      microseconds,
      nanoseconds
    }));
    initDuration(this, createDurationSlots(fields));
  }
  static from(arg) {
    return createDuration(toDurationSlots(arg));
  }
  static compare(durationArg0, durationArg1, options = void 0) {
    return compareDurations(refinePublicRelativeTo, toDurationSlots(durationArg0), toDurationSlots(durationArg1), options);
  }
  get sign() {
    return getDurationSlots(this).sign;
  }
  get blank() {
    return !getDurationSlots(this).sign;
  }
  with(mod) {
    return createDuration(mergeDurationFields(getDurationSlots(this), mod));
  }
  negated() {
    return createDuration(negateDuration(getDurationSlots(this)));
  }
  abs() {
    return createDuration(absDuration(getDurationSlots(this)));
  }
  add(otherArg) {
    return createDuration(addDurationsWithoutRelativeTo(0, getDurationSlots(this), toDurationSlots(otherArg)));
  }
  subtract(otherArg) {
    return createDuration(addDurationsWithoutRelativeTo(1, getDurationSlots(this), toDurationSlots(otherArg)));
  }
  round(roundTo) {
    return createDuration(roundDuration(refinePublicRelativeTo, getDurationSlots(this), roundTo));
  }
  total(totalOf) {
    return totalDuration(refinePublicRelativeTo, getDurationSlots(this), totalOf);
  }
  toLocaleString(locales = void 0, options) {
    const slots = getDurationSlots(this);
    return Intl.DurationFormat ? new Intl.DurationFormat(locales, options).format(slots) : formatDurationIso(slots, options);
  }
  toString(options = void 0) {
    return formatDurationIso(getDurationSlots(this), options);
  }
  toJSON() {
    return formatDurationIso(getDurationSlots(this));
  }
  valueOf() {
    return forbiddenValueOf2();
  }
}, getDurationSlots, durationGetters);
function createDuration(slots) {
  return initDuration(Object.create(Duration.prototype), slots);
}
function getDurationSlots(obj) {
  return getDurationSlotsIfPresent(obj) || invalidRecordType();
}
function getDurationSlotsIfPresent(obj) {
  return durationSlotsMap.get(obj);
}
function toDurationSlots(arg) {
  if (isObjectLike2(arg)) {
    return getDurationSlotsIfPresent(arg) || refineDurationObjectLike(arg);
  }
  return parseDuration(arg);
}
function refinePublicRelativeTo(relativeTo) {
  if (void 0 !== relativeTo) {
    if (isObjectLike2(relativeTo)) {
      const zonedDateTimeSlots = getZonedDateTimeSlotsIfPresent(relativeTo);
      if (zonedDateTimeSlots) {
        return zonedDateTimeSlots;
      }
      const dateSlots = getPlainDateSlotsIfPresent(relativeTo);
      if (dateSlots) {
        return dateSlots;
      }
      const dateTimeSlots = getPlainDateTimeSlotsIfPresent(relativeTo);
      if (dateTimeSlots) {
        return createDateSlots(dateTimeSlots, dateTimeSlots.calendar);
      }
      const calendar = getCalendarFromBag(relativeTo);
      return refineMaybeZonedDateTimeObjectLike(refineTimeZoneArg, calendar, relativeTo);
    }
    return parseRelativeToSlots(relativeTo, resolveBasicCalendarId);
  }
}
function initDuration(instance, slots) {
  return durationSlotsMap.set(instance, slots), attachDebugString(instance), instance;
}
var Now = /* @__PURE__ */ Object.defineProperties({}, {
  ...createStringTagDescriptors("Temporal.Now"),
  ...createPropDescriptors({
    timeZoneId() {
      return getCurrentTimeZoneId();
    },
    instant() {
      return createInstant(createEpochNanoSlots(getCurrentEpochNano()));
    },
    zonedDateTimeISO(timeZoneArg = getCurrentTimeZoneId()) {
      const timeZone = queryTimeZone(refineTimeZoneArg(timeZoneArg));
      return createZonedDateTime(createZonedEpochNanoSlots(getCurrentEpochNano(), timeZone));
    },
    plainDateTimeISO(timeZoneArg = getCurrentTimeZoneId()) {
      const isoDateTime = getCurrentIsoDateTime(queryTimeZone(refineTimeZoneArg(timeZoneArg)));
      return createPlainDateTime(createDateTimeSlots(isoDateTime));
    },
    plainDateISO(timeZoneArg = getCurrentTimeZoneId()) {
      const isoDateTime = getCurrentIsoDateTime(queryTimeZone(refineTimeZoneArg(timeZoneArg)));
      return createPlainDate(createDateSlots(isoDateTime));
    },
    plainTimeISO(timeZoneArg = getCurrentTimeZoneId()) {
      const isoDateTime = getCurrentIsoDateTime(queryTimeZone(refineTimeZoneArg(timeZoneArg)));
      return createPlainTime(createTimeSlots(isoDateTime));
    }
  })
});
var Temporal = /* @__PURE__ */ Object.defineProperties({}, {
  ...createStringTagDescriptors("Temporal"),
  ...createPropDescriptors({
    PlainYearMonth,
    PlainMonthDay,
    PlainDate,
    PlainTime,
    PlainDateTime,
    ZonedDateTime,
    Instant,
    Duration,
    Now
  })
});

// node_modules/temporal-polyfill/index.js
var Temporal2 = NativeTemporal || Temporal;
var toTemporalInstant2 = NativeTemporal ? Date.prototype.toTemporalInstant : toTemporalInstant;

// src/time/local-time.ts
function isTimeZone(zone) {
  try {
    Temporal2.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(zone);
    return true;
  } catch {
    return false;
  }
}
var zoned = (instant2, zone) => Temporal2.Instant.fromEpochMilliseconds(Math.round(instant2)).toZonedDateTimeISO(zone);
var monthAt = (instant2, zone) => zoned(instant2, zone).month;

// src/figures/sight/turn.ts
function turnOf(east, north) {
  const part = east / (Math.abs(east) + Math.abs(north));
  return north >= 0 ? part >= 0 ? part : 4 + part : 2 - part;
}
function directionOf(turn) {
  const east = turn <= 1 ? turn : turn <= 3 ? 2 - turn : turn - 4;
  const north = 1 - Math.abs(east);
  return [east, turn > 1 && turn < 3 ? -north : north];
}

// src/figures/sight/horizon-rays.ts
var usualFineness = { rays: 4096, growth: 5e-3 };
var farthest = 2e4;
var HorizonRays = class {
  #fineness;
  #ground = null;
  #x = 0;
  #y = 0;
  #eye = 0;
  #sink = 0;
  #distances = new Float64Array(0);
  #step = 0;
  #steepest = new Float32Array(0);
  #cast;
  constructor(fineness = usualFineness) {
    this.#fineness = fineness;
    this.#cast = new Int32Array(fineness.rays);
  }
  /** An eye at (`x`, `y`, `eye`) of the site frame; `sink` as in `sinkPerSquareMetre`. */
  stand(ground, x, y, eye, sink) {
    if (ground.step !== this.#step) {
      this.#step = ground.step;
      const distances = [];
      for (let s = ground.step; s <= farthest; s += Math.max(ground.step, s * this.#fineness.growth))
        distances.push(s);
      this.#distances = Float64Array.from(distances);
      this.#steepest = new Float32Array(distances.length * this.#fineness.rays);
    }
    this.#ground = ground;
    this.#x = x;
    this.#y = y;
    this.#eye = eye;
    this.#sink = sink;
    this.#cast.fill(0);
  }
  /**
   * m from the eye to where the ground first rises above a sight line of a steepness towards a place `distance` m
   * away (or to the sky, when infinite); Infinity when it does not. `turn`: its bearing in the frame (`turnOf`). The
   * ground nearer than one step to either end hides nothing: there the model is no finer than that.
   */
  firstAbove(turn, distance, steepness) {
    const ground = this.#ground;
    const relief = ground.highest - this.#eye;
    let reach = Math.min(distance - ground.step, farthest);
    if (steepness > 0) reach = Math.min(reach, relief / steepness);
    const steps = this.#stepsWithin(reach);
    if (steps === 0) return Infinity;
    const { rays } = this.#fineness;
    const ray = Math.min(rays - 1, Math.floor(turn / 4 * rays));
    const from = ray * this.#distances.length;
    if (this.#cast[ray] < steps) this.#extend(ray, steps);
    if (this.#steepest[from + steps - 1] < steepness) return Infinity;
    let [low, high] = [0, steps - 1];
    while (low < high) {
      const middle = low + high >> 1;
      if (this.#steepest[from + middle] < steepness) low = middle + 1;
      else high = middle;
    }
    return this.#distances[low];
  }
  /** How many steps of a ray lie within `reach` m. */
  #stepsWithin(reach) {
    const distances = this.#distances;
    const step = this.#step;
    if (!(reach >= step)) return 0;
    let [low, high] = [Math.min(distances.length, Math.floor(reach / step + 1e-9)), distances.length];
    if (low < high && distances[low - 1] > reach) [low, high] = [0, low];
    while (low < high) {
      const middle = low + high >> 1;
      if (distances[middle] <= reach) low = middle + 1;
      else high = middle;
    }
    return low;
  }
  #extend(ray, steps) {
    const ground = this.#ground;
    const distances = this.#distances;
    const steepest = this.#steepest;
    const [east, north] = directionOf(4 * (ray + 0.5) / this.#fineness.rays);
    const level = Math.hypot(east, north);
    const [sin2, cos2] = [east / level, north / level];
    const from = ray * distances.length;
    const done = this.#cast[ray];
    let most = done > 0 ? steepest[from + done - 1] : -Infinity;
    for (let k = done; k < steps; k++) {
      const s = distances[k];
      const height = ground.heightAt(this.#x + sin2 * s, this.#y + cos2 * s);
      const steepness = (height - this.#eye) / s - this.#sink * s;
      if (steepness > most) most = steepness;
      steepest[from + k] = most;
    }
    this.#cast[ray] = steps;
  }
};

// src/figures/sight/targets.ts
var pointsOfAircraft = 3;
var targetsOf = remembered(
  (samples, length2, height, frame) => {
    const { count: count2, centre, forward, attitude, headingKnown } = samples;
    const finBack = headingKnown ? 0.45 * length2 : 0;
    const points3 = new Float64Array(3 * pointsOfAircraft * count2);
    for (let i = 0, k = 0; i < count2; i++, k += 3) {
      const at = [centre[k], centre[k + 1], centre[k + 2]];
      const ahead = [forward[k], forward[k + 1], forward[k + 2]];
      const [x, y, z] = siteCoordinates(frame, at);
      const [e, n] = [dot(ahead, frame.east), dot(ahead, frame.north)];
      const level = Math.hypot(e, n) || 1;
      const [sin2, cos2] = [Math.sin(attitude[i]), Math.cos(attitude[i])];
      const wheels = [height / 2 * sin2, -height / 2 * cos2];
      const fin = [-finBack * cos2 - wheels[0], -finBack * sin2 - wheels[1]];
      [wheels, [0, 0], fin].forEach(([forwards, upwards], p) => {
        points3.set(
          [x + forwards * e / level, y + forwards * n / level, z + upwards],
          3 * (pointsOfAircraft * i + p)
        );
      });
    }
    return { count: count2, points: points3 };
  }
);

// src/figures/sight/spot-sight.ts
function seasons(around, timeZone, instants2) {
  const all = instants2.map((_, i) => i);
  if (!around.leafy) return [{ does: standing(around, 1), instants: all }];
  const zone = isTimeZone(timeZone) ? timeZone : "UTC";
  const months = instants2.map((instant2) => monthAt(instant2, zone));
  return [...new Set(months)].map((month) => ({
    does: standing(around, month),
    instants: all.filter((i) => months[i] === month)
  }));
}
var targetsAlong = (path, { length: length2, height }, { frame }) => targetsOf(path.samples, length2, height, frame);

// src/figures/sight/top-grid.ts
var usualSquare = 40;
var mostSquares = 400;
var slack = 0.01;
var TopGrid = class {
  #around;
  #west;
  #south;
  #square;
  #columns;
  #rows;
  /** Where the edges of each square begin in `#listed`. */
  #start;
  #listed;
  /** East, north, top of either end, as the surroundings have them. */
  #edges;
  #owner;
  #highest;
  /** m from an edge's top down to where one sees under it. */
  #depth;
  /** The edges that were held against the line at hand already: a long one lies in many squares. */
  #seen;
  #turn = 0;
  #does = new Uint8Array(0);
  #x = 0;
  #y = 0;
  #eye = 0;
  /** 1 for what carries the eye. */
  #carries;
  #carrying = [];
  constructor(around) {
    this.#around = around;
    const { tops } = around;
    let [west, south, east, north, count2] = [Infinity, Infinity, -Infinity, -Infinity, 0];
    for (const top of tops) {
      west = Math.min(west, top.west);
      south = Math.min(south, top.south);
      east = Math.max(east, top.east);
      north = Math.max(north, top.north);
      count2 += top.count;
    }
    if (!(east >= west)) [west, south, east, north] = [0, 0, 0, 0];
    this.#west = west;
    this.#south = south;
    this.#square = Math.max(usualSquare, Math.max(east - west, north - south) / mostSquares);
    this.#columns = Math.floor((east - west) / this.#square) + 1;
    this.#rows = Math.floor((north - south) / this.#square) + 1;
    this.#edges = new Float64Array(count2 * perEdge);
    this.#owner = new Int32Array(count2);
    this.#seen = new Int32Array(count2);
    this.#depth = new Float64Array(count2);
    this.#carries = new Uint8Array(tops.length);
    let e = 0;
    tops.forEach((top, owner) => {
      this.#edges.set(top.edges.subarray(0, top.count * perEdge), e * perEdge);
      this.#owner.fill(owner, e, e + top.count);
      this.#depth.fill(top.depth, e, e + top.count);
      e += top.count;
    });
    this.#start = new Int32Array(this.#columns * this.#rows + 1);
    this.#highest = new Float64Array(this.#columns * this.#rows).fill(-Infinity);
    for (let i = 0; i < count2; i++) this.#squaresOf(i, (s) => this.#start[s + 1]++);
    for (let s = 1; s < this.#start.length; s++)
      this.#start[s] = this.#start[s] + this.#start[s - 1];
    this.#listed = new Int32Array(this.#start[this.#start.length - 1]);
    const next = this.#start.slice();
    for (let i = 0; i < count2; i++) {
      const k = i * perEdge;
      const top = Math.max(this.#edges[k + 2], this.#edges[k + 5]) + slack;
      this.#squaresOf(i, (s) => {
        this.#listed[next[s]] = i;
        next[s]++;
        if (top > this.#highest[s]) this.#highest[s] = top;
      });
    }
  }
  /** Stands at (`x`, `y`, `eye`) of the site frame. `does`: what each obstacle does (`standing`). */
  stand(does, x, y, eye) {
    this.#does = does;
    this.#x = x;
    this.#y = y;
    this.#eye = eye;
    for (const i of this.#carrying) this.#carries[i] = 0;
    this.#carrying.length = 0;
    const { tops } = this.#around;
    for (const i of this.#around.near(x, y, x, y)) {
      const top = tops[i];
      if (!top || top.top > eye || !isWithin(top, x, y)) continue;
      this.#carries[i] = 1;
      this.#carrying.push(i);
    }
  }
  /**
   * Whether an obstacle blocks the line towards (`dx`, `dy`), m from the eye, of a steepness (see `HorizonRays`): as far
   * as there, or without end.
   */
  hides(dx, dy, distance, steepness, endless) {
    const { sink, highestTop } = this.#around;
    const room = highestTop + slack - this.#eye;
    if (room <= 0 && steepness >= 0) return false;
    const square = this.#square;
    const ex = (this.#x - this.#west) / square;
    const ey = (this.#y - this.#south) / square;
    const gx = dx / square;
    const gy = dy / square;
    let from = 0;
    let to = endless ? Infinity : 1;
    if (steepness > 0) to = Math.min(to, room / (steepness * distance));
    if (gx !== 0) {
      const [a, b] = [-ex / gx, (this.#columns - ex) / gx];
      from = Math.max(from, Math.min(a, b));
      to = Math.min(to, Math.max(a, b));
    } else if (ex < 0 || ex >= this.#columns) return false;
    if (gy !== 0) {
      const [a, b] = [-ey / gy, (this.#rows - ey) / gy];
      from = Math.max(from, Math.min(a, b));
      to = Math.min(to, Math.max(a, b));
    } else if (ey < 0 || ey >= this.#rows) return false;
    if (!(from <= to)) return false;
    let column = Math.max(0, Math.min(this.#columns - 1, Math.floor(ex + from * gx)));
    let row = Math.max(0, Math.min(this.#rows - 1, Math.floor(ey + from * gy)));
    const stepX = gx > 0 ? 1 : -1;
    const stepY = gy > 0 ? 1 : -1;
    const perX = gx !== 0 ? Math.abs(1 / gx) : Infinity;
    const perY = gy !== 0 ? Math.abs(1 / gy) : Infinity;
    let nextX = gx !== 0 ? (column + (gx > 0 ? 1 : 0) - ex) / gx : Infinity;
    let nextY = gy !== 0 ? (row + (gy > 0 ? 1 : 0) - ey) / gy : Infinity;
    const turn = ++this.#turn;
    for (; ; ) {
      const leaves = Math.min(nextX, nextY, to);
      const s = row * this.#columns + column | 0;
      const top = this.#highest[s] - this.#eye;
      if (top > -Infinity) {
        const a = from * distance;
        const b = leaves * distance;
        const low = Math.min(a * (steepness + sink * a), b * (steepness + sink * b));
        if (top >= low && this.#meets(s, turn, dx, dy, distance, steepness, endless)) return true;
      }
      if (leaves >= to) return false;
      from = leaves;
      if (nextX <= nextY) {
        column += stepX;
        nextX += perX;
        if (column < 0 || column >= this.#columns) return false;
      } else {
        row += stepY;
        nextY += perY;
        if (row < 0 || row >= this.#rows) return false;
      }
    }
  }
  /** The sum of `TopRays.meet`, for the edges of one square. */
  #meets(s, turn, east, north, distance, steepness, endless) {
    const edges = this.#edges;
    const { sink } = this.#around;
    const end = this.#start[s + 1];
    for (let j = this.#start[s]; j < end; j++) {
      const e = this.#listed[j];
      if (this.#seen[e] === turn) continue;
      this.#seen[e] = turn;
      const owner = this.#owner[e];
      const doing = this.#does[owner];
      if (doing !== blocks || this.#carries[owner] === 1) continue;
      const k = e * perEdge;
      const ax = edges[k] - this.#x;
      const ay = edges[k + 1] - this.#y;
      const bx = edges[k + 3] - this.#x - ax;
      const by = edges[k + 4] - this.#y - ay;
      const across = east * by - north * bx;
      if (across === 0) continue;
      const u = (ax * by - ay * bx) / across;
      if (!(u > 0) || u >= 1 && !endless) continue;
      const v = (ax * north - ay * east) / across;
      if (v < 0 || v > 1) continue;
      const out = u * distance;
      const low = edges[k + 2] - this.#eye;
      const top = low + v * (edges[k + 5] - this.#eye - low);
      if (top / out - sink * out < steepness) continue;
      if ((top - this.#depth[e]) / out - sink * out > steepness) continue;
      return true;
    }
    return false;
  }
  /** The squares that an edge passes through. */
  #squaresOf(e, each) {
    const k = e * perEdge;
    const [columns, rows, square] = [this.#columns, this.#rows, this.#square];
    const at = (v, from, most) => Math.max(0, Math.min(most - 1, Math.floor((v - from) / square)));
    const [ax, ay] = [this.#edges[k], this.#edges[k + 1]];
    const [bx, by] = [this.#edges[k + 3], this.#edges[k + 4]];
    const [c0, c1] = [at(Math.min(ax, bx), this.#west, columns), at(Math.max(ax, bx), this.#west, columns)];
    for (let c = c0; c <= c1; c++) {
      const span = bx - ax;
      const part = (x) => span === 0 ? NaN : Math.max(0, Math.min(1, (x - ax) / span));
      const left = this.#west + c * square - 1e-3;
      const [t0, t1] = [part(left), part(left + square + 2e-3)];
      const ys = Number.isNaN(t0) ? [ay, by] : [ay + t0 * (by - ay), ay + t1 * (by - ay)];
      const [r0, r1] = [
        at(Math.min(...ys) - 1e-3, this.#south, rows),
        at(Math.max(...ys) + 1e-3, this.#south, rows)
      ];
      for (let r = r0; r <= r1; r++) each(r * columns + c);
    }
  }
};

// src/sweep/lazy-sight.ts
var unasked = 255;
var LazySight = class {
  #around;
  #tops;
  #rays = new HorizonRays();
  #targets;
  #known;
  #x = 0;
  #y = 0;
  #eye = 0;
  constructor(around, paths, framing) {
    this.#around = around;
    this.#tops = new TopGrid(around);
    this.#targets = paths.map((path) => targetsAlong(path, framing, around));
    this.#known = paths.map((path) => new Uint8Array(path.samples.count));
  }
  /** Stands at (`x`, `y`, `eye`) of the site frame. `does`: what each obstacle does (`standing`). */
  stand(does, x, y, eye) {
    this.#x = x;
    this.#y = y;
    this.#eye = eye;
    for (const known2 of this.#known) known2.fill(unasked);
    this.#tops.stand(does, x, y, eye);
    const { terrain, sink } = this.#around;
    if (terrain) this.#rays.stand(terrain, x, y, eye, sink);
  }
  /** Share of wheels, centre and fin tip that nothing hides at sample `i` of a path: 0 to 1. */
  at(path, i) {
    const known2 = this.#known[path];
    let seen = known2[i];
    if (seen === unasked) {
      seen = 0;
      const { points: points3 } = this.#targets[path];
      for (let p = 0, k = 3 * pointsOfAircraft * i; p < pointsOfAircraft; p++, k += 3)
        if (!this.#hidden(points3[k], points3[k + 1], points3[k + 2])) seen++;
      known2[i] = seen;
    }
    return seen / pointsOfAircraft;
  }
  /** Whether a direction to the sky is hidden: level unit vector of the site frame, and m up for each m out. */
  hidesSky(east, north, steepness) {
    return this.#follow(east, north, 1, steepness, true);
  }
  #hidden(x, y, z) {
    const dx = x - this.#x;
    const dy = y - this.#y;
    const distance = Math.sqrt(dx * dx + dy * dy);
    if (distance < 1e-3) return false;
    return this.#follow(dx, dy, distance, (z - this.#eye) / distance - this.#around.sink * distance, false);
  }
  #follow(dx, dy, distance, steepness, endless) {
    if (this.#tops.hides(dx, dy, distance, steepness, endless)) return true;
    if (!this.#around.terrain) return false;
    return this.#rays.firstAbove(turnOf(dx, dy), endless ? Infinity : distance, steepness) < Infinity;
  }
};

// src/sweep/light-limits.ts
var limitSteps = 64;
var spread = 0.15;
var slack2 = 1e-9;
function lightLimits(altitude2) {
  const limits = new Float64Array(limitSteps + 1);
  for (let step = 0; step <= limitSteps; step++) {
    const share = step / limitSteps;
    let widest = 0;
    for (const a of [altitude2 - spread, altitude2, altitude2 + spread]) {
      const ceiling = lightCeiling(a);
      if (ceiling === 0) continue;
      const reached = (angle) => lightFactor(a, angle, null) >= share * ceiling * (1 - slack2);
      widest = Math.max(widest, reached(180) ? 180 : lastAngle(reached));
    }
    limits[step] = widest >= 180 ? -2 : Math.cos(widest * RAD) - 1e-6;
  }
  return limits;
}
function lastAngle(reached) {
  let [low, high] = [0, 180];
  while (high - low > 1e-6) {
    const middle = (low + high) / 2;
    if (reached(middle)) low = middle;
    else high = middle;
  }
  return high;
}

// src/figures/path-in-view.ts
var points2 = 3;
var sinRollFrom = Math.sin(75 * Math.PI / 180);
var PathInView = class {
  /** The aircraft's centre from the eye, in m, one entry a sample. */
  east = new Float64Array(0);
  north = new Float64Array(0);
  up = new Float64Array(0);
  range = new Float64Array(0);
  count = 0;
  #samples = null;
  #eye = null;
  #framing = null;
  #sight = null;
  #known = new Uint8Array(0);
  #cosAspect = new Float64Array(0);
  #focal = new Float64Array(0);
  #leftEast = new Float64Array(0);
  #leftNorth = new Float64Array(0);
  #leftUp = new Float64Array(0);
  /** Looks from an eye along a path; `sight` null on open ground. What is in view holds until the next call. */
  look(samples, eye, framing, sight = null) {
    const { count: count2, centre } = samples;
    if (this.range.length < count2) this.#grow(2 * count2);
    this.#samples = samples;
    this.#eye = eye;
    this.#framing = framing;
    this.#sight = sight;
    this.count = count2;
    this.#known.fill(0, 0, count2);
    const [px, py, pz] = eye.point;
    const [ex, ey, ez] = eye.frame.east;
    const [nx, ny, nz] = eye.frame.north;
    const [ux, uy, uz] = eye.frame.up;
    const { east, north, up, range } = this;
    for (let i = 0, k = 0; i < count2; i++, k += 3) {
      const dx = centre[k] - px;
      const dy = centre[k + 1] - py;
      const dz = centre[k + 2] - pz;
      east[i] = dx * ex + dy * ey + dz * ez;
      north[i] = dx * nx + dy * ny + dz * nz;
      up[i] = dx * ux + dy * uy + dz * uz;
      range[i] = Math.sqrt(dx * dx + dy * dy + dz * dz);
    }
  }
  /** Share of wheels, centre and fin tip that no obstacle and no terrain hides: 0 to 1. */
  sightAt(i) {
    return this.#sight ? this.#sight.inSight[i] / points2 : 1;
  }
  /** Needed focal length in mm; NaN where the eye is inside the aircraft. */
  focalAt(i) {
    if (this.#known[i] === 0) this.#frame(i);
    return this.#focal[i];
  }
  /**
   * A focal length in mm that the needed one is certainly not below. The subject fits into a ball about its centre;
   * from further away than its radius the ball cannot look larger than radius / (range - radius) to each side.
   */
  leastFocalAt(i) {
    const { radius, fill, sensorWidth, sensorHeight } = this.#framing;
    return fill * Math.min(sensorWidth, sensorHeight) * (this.range[i] - radius) / (2 * radius);
  }
  /** Cosine of the aspect; NaN where the heading is not known. */
  cosAspectAt(i) {
    if (this.#known[i] === 0) this.#frame(i);
    return this.#cosAspect[i];
  }
  /** Dot product of a vector (east, north, up at the eye) with the level direction to the aircraft's left. */
  leftwardsAt(i, east, north, up) {
    if (this.#known[i] === 0) this.#frame(i);
    return this.#leftEast[i] * east + this.#leftNorth[i] * north + this.#leftUp[i] * up;
  }
  #grow(capacity) {
    const array2 = () => new Float64Array(capacity);
    this.east = array2();
    this.north = array2();
    this.up = array2();
    this.range = array2();
    this.#cosAspect = array2();
    this.#focal = array2();
    this.#leftEast = array2();
    this.#leftNorth = array2();
    this.#leftUp = array2();
    this.#known = new Uint8Array(capacity);
  }
  /**
   * How the aircraft is turned at a sample, and the focal length that frames it: that of a level pinhole camera whose
   * axis meets the aircraft's centre. Six points of the subject are projected, and the shorter of the two focal
   * lengths counts that let the projected width and the projected height each take `fill` of the sensor.
   */
  #frame(i) {
    const { forward, up: upward, slope, attitude, headingKnown } = this.#samples;
    const eye = this.#eye;
    const framing = this.#framing;
    this.#known[i] = 1;
    const [ex, ey, ez] = eye.frame.east;
    const [nx, ny, nz] = eye.frame.north;
    const [ux, uy, uz] = eye.frame.up;
    const e = this.east[i];
    const n = this.north[i];
    const u = this.up[i];
    const range = this.range[i];
    const halfLength = headingKnown ? framing.length / 2 : Math.max(framing.length, framing.span) / 2;
    const halfSpan = headingKnown ? framing.span / 2 : 0;
    const halfHeight = framing.height / 2;
    const finBack = 0.45 * framing.length;
    const k = 3 * i;
    const hx = forward[k];
    const hy = forward[k + 1];
    const hz = forward[k + 2];
    const away = Math.sqrt(e * e + n * n);
    const he = headingKnown || away === 0 ? hx * ex + hy * ey + hz * ez : n / away;
    const hn = headingKnown || away === 0 ? hx * nx + hy * ny + hz * nz : -e / away;
    const hu = headingKnown || away === 0 ? hx * ux + hy * uy + hz * uz : 0;
    const vx = upward[k];
    const vy = upward[k + 1];
    const vz = upward[k + 2];
    const ve = vx * ex + vy * ey + vz * ez;
    const vn = vx * nx + vy * ny + vz * nz;
    const vu = vx * ux + vy * uy + vz * uz;
    const le = vn * hu - vu * hn;
    const ln = vu * he - ve * hu;
    const lu = ve * hn - vn * he;
    this.#leftEast[i] = le;
    this.#leftNorth[i] = ln;
    this.#leftUp[i] = lu;
    const rise = slope[i];
    const run = Math.sqrt(1 + rise * rise);
    this.#cosAspect[i] = !headingKnown ? NaN : -((he + ve * rise) * e + (hn + vn * rise) * n + (hu + vu * rise) * u) / (run * range);
    const pitch = attitude[i];
    const c = Math.cos(pitch);
    const s = Math.sin(pitch);
    const be = c * he + s * ve;
    const bn = c * hn + s * vn;
    const bu = c * hu + s * vu;
    const te = c * ve - s * he;
    const tn = c * vn - s * hn;
    const tu = c * vu - s * hu;
    const fe = e / range;
    const fn = n / range;
    const fu = u / range;
    const ground = Math.sqrt(fe * fe + fn * fn);
    let re = ground > 0 ? fn / ground : 1;
    let rn = ground > 0 ? -fe / ground : 0;
    let ru = 0;
    if (Math.abs(fu) > sinRollFrom) {
      const inLine = be * fe + bn * fn + bu * fu;
      const we = be - inLine * fe;
      const wn = bn - inLine * fn;
      const wu = bu - inLine * fu;
      const w = Math.sqrt(we * we + wn * wn + wu * wu);
      if (w > 0) {
        re = we / w;
        rn = wn / w;
        ru = wu / w;
      }
    }
    const qe = rn * fu - ru * fn;
    const qn = ru * fe - re * fu;
    const qu = re * fn - rn * fe;
    const br = be * re + bn * rn + bu * ru;
    const bq = be * qe + bn * qn + bu * qu;
    const bf = be * fe + bn * fn + bu * fu;
    const lr = le * re + ln * rn + lu * ru;
    const lq = le * qe + ln * qn + lu * qu;
    const lf = le * fe + ln * fn + lu * fu;
    const tr = te * re + tn * rn + tu * ru;
    const tq = te * qe + tn * qn + tu * qu;
    const tf = te * fe + tn * fn + tu * fu;
    const zNose = range + halfLength * bf;
    const zTail = range - halfLength * bf;
    const zLeft = range + halfSpan * lf;
    const zRight = range - halfSpan * lf;
    const zFin = range - finBack * bf + halfHeight * tf;
    const zWheels = range - halfHeight * tf;
    if (Math.min(zNose, zTail, zLeft, zRight, zFin, zWheels) <= 0) {
      this.#focal[i] = NaN;
      return;
    }
    const front = framing.part === "tail" ? 0 : 1;
    const back = framing.part === "nose" ? 0 : 1;
    const wings = framing.part === "whole" ? 1 : 0;
    const xNose = front * halfLength * br / zNose;
    const xTail = -back * halfLength * br / zTail;
    const xLeft = wings * halfSpan * lr / zLeft;
    const xRight = -wings * halfSpan * lr / zRight;
    const xFin = back * (halfHeight * tr - finBack * br) / zFin;
    const xWheels = -halfHeight * tr / zWheels;
    const yNose = front * halfLength * bq / zNose;
    const yTail = -back * halfLength * bq / zTail;
    const yLeft = wings * halfSpan * lq / zLeft;
    const yRight = -wings * halfSpan * lq / zRight;
    const yFin = back * (halfHeight * tq - finBack * bq) / zFin;
    const yWheels = -halfHeight * tq / zWheels;
    const width = Math.max(xNose, xTail, xLeft, xRight, xFin, xWheels) - Math.min(xNose, xTail, xLeft, xRight, xFin, xWheels);
    const height = Math.max(yNose, yTail, yLeft, yRight, yFin, yWheels) - Math.min(yNose, yTail, yLeft, yRight, yFin, yWheels);
    this.#focal[i] = framing.fill * Math.min(framing.sensorWidth / width, framing.sensorHeight / height);
  }
};

// src/sweep/pieces.ts
var pieceSize = 8;
var slackM = 1e-3;
var Pieces = class {
  samples;
  count;
  /** m to the nearest that any of the piece can be. */
  nearest;
  /** Level unit vector from its middle to the eye, and by how much the cosine of an angle can be more at any of its samples. */
  east;
  north;
  aside;
  /** Middle (earth-centred) and radius of each ball. */
  #balls;
  #parts;
  #views;
  #looked;
  #eye = null;
  #framing = null;
  constructor(samples) {
    this.samples = samples.count;
    this.count = Math.ceil(samples.count / pieceSize);
    this.#parts = Array.from(
      { length: this.count },
      (_, b) => partOf(samples, b * pieceSize, Math.min(samples.count, (b + 1) * pieceSize))
    );
    this.#views = this.#parts.map(() => new PathInView());
    this.#looked = new Uint8Array(this.count);
    const array2 = () => new Float64Array(this.count);
    [this.nearest, this.east, this.north, this.aside] = [array2(), array2(), array2(), array2()];
    this.#balls = Float64Array.from(this.#parts.flatMap(({ centre }) => ballOf(centre)));
  }
  look(eye, framing) {
    this.#eye = eye;
    this.#framing = framing;
    this.#looked.fill(0);
    const [px, py, pz] = eye.point;
    const [ex, ey, ez] = eye.frame.east;
    const [nx, ny, nz] = eye.frame.north;
    const balls = this.#balls;
    for (let b = 0, k = 0; b < this.count; b++, k += 4) {
      const dx = px - balls[k];
      const dy = py - balls[k + 1];
      const dz = pz - balls[k + 2];
      const radius = balls[k + 3];
      const range = Math.sqrt(dx * dx + dy * dy + dz * dz);
      const e = dx * ex + dy * ey + dz * ez;
      const n = dx * nx + dy * ny + dz * nz;
      const level = Math.sqrt(e * e + n * n);
      this.nearest[b] = Math.max(0, range - radius);
      const away = level - radius;
      const high = Math.sqrt(Math.max(0, range * range - level * level)) + radius;
      if (away <= radius || high > sinUnderside * away) {
        this.east[b] = 0;
        this.north[b] = 0;
        this.aside[b] = 2;
        continue;
      }
      this.east[b] = e / level;
      this.north[b] = n / level;
      const sin2 = radius / level;
      this.aside[b] = sin2 / Math.sqrt((1 + Math.sqrt(1 - sin2 * sin2)) / 2) + 1e-9;
    }
  }
  /** The piece that holds sample `i`, looked at: `i % pieceSize` is its place there. */
  viewAt(i) {
    const b = Math.floor(i / pieceSize);
    const view = this.#views[b];
    if (this.#looked[b] === 0) {
      this.#looked[b] = 1;
      view.look(this.#parts[b], this.#eye, this.#framing);
    }
    return view;
  }
};
function partOf(samples, from, to) {
  return {
    headingKnown: samples.headingKnown,
    count: to - from,
    station: samples.station.subarray(from, to),
    centre: samples.centre.subarray(3 * from, 3 * to),
    forward: samples.forward.subarray(3 * from, 3 * to),
    up: samples.up.subarray(3 * from, 3 * to),
    slope: samples.slope.subarray(from, to),
    attitude: samples.attitude.subarray(from, to),
    height: samples.height.subarray(from, to),
    share: samples.share.subarray(from, to),
    speed: samples.speed.subarray(from, to)
  };
}
function ballOf(centre) {
  const middle = [0, 1, 2].map((axis) => {
    const all = centre.filter((_, k) => k % 3 === axis);
    return (Math.min(...all) + Math.max(...all)) / 2;
  });
  let radius = 0;
  for (let k = 0; k < centre.length; k += 3)
    radius = Math.max(
      radius,
      Math.hypot(
        centre[k] - middle[0],
        centre[k + 1] - middle[1],
        centre[k + 2] - middle[2]
      )
    );
  return [...middle, radius + slackM];
}

// src/sweep/sun-over.ts
var SunOver = class {
  /** At the place that was asked for last, one an instant. */
  suns;
  /** Of that place. */
  frame;
  #directions;
  constructor(middle, instants2) {
    this.frame = frameAt(middle);
    const { east, north, up } = this.frame;
    this.#directions = instants2.map((instant2) => {
      const { azimuth: azimuth2, geometricAltitude } = sunAt(middle, instant2);
      const level = Math.cos(geometricAltitude * RAD);
      const [e, n] = [level * Math.sin(azimuth2 * RAD), level * Math.cos(azimuth2 * RAD)];
      return along(along(along([0, 0, 0], east, e), north, n), up, Math.sin(geometricAltitude * RAD));
    });
    this.suns = instants2.map(() => ({
      sun: { azimuth: 0, altitude: 0, geometricAltitude: 0 },
      east: 0,
      north: 0,
      up: 0,
      levelEast: 0,
      levelNorth: 0,
      hidden: false
    }));
  }
  /** Moves every sun to a place. */
  at(frame) {
    this.frame = frame;
    for (let t = 0; t < this.suns.length; t++) {
      const there = this.suns[t];
      const direction = this.#directions[t];
      const e = dot(direction, frame.east);
      const n = dot(direction, frame.north);
      const u = dot(direction, frame.up);
      const level = Math.sqrt(e * e + n * n);
      const geometric = Math.atan2(u, level) * DEG;
      const altitude2 = geometric + refraction(geometric);
      there.sun.geometricAltitude = geometric;
      there.sun.altitude = altitude2;
      there.levelEast = level > 0 ? e / level : 0;
      there.levelNorth = level > 0 ? n / level : 1;
      const out = Math.cos(altitude2 * RAD);
      there.east = there.levelEast * out;
      there.north = there.levelNorth * out;
      there.up = Math.sin(altitude2 * RAD);
      there.hidden = false;
    }
  }
};

// src/sweep/kernel.ts
var slack3 = 1 + 1e-9;
var limitsEach = limitSteps + 1;
var Kernel = class {
  /** Total of the best sample, one an instant. */
  worth;
  /** Its needed focal length in mm, its factor of light, its path and its place on it. */
  focal;
  light;
  bestPath;
  bestSample;
  #range;
  /** 1 where a path is good at an instant: paths x instants. */
  good;
  /** By which sample; what it was at the place before where it is not good here. */
  #goodSample;
  #question;
  #pieces;
  /** Which samples were asked at this place already: the place's turn. */
  #asked;
  #turn = 0;
  #suns;
  #sight;
  #seasons;
  #limits;
  /** Nine numbers an instant, so that the innermost loop touches one stretch of memory: see `at*`. */
  #at;
  /** Instants at which the piece under work may matter. */
  #passing;
  /** Whether the sun is behind something: 0 not asked, 1 in sight, 2 hidden. */
  #sunHidden;
  constructor(question) {
    const { paths, outlook, instants: instants2, middle } = question;
    const count2 = instants2.length;
    this.#question = question;
    this.worth = new Float64Array(count2);
    this.focal = new Float64Array(count2);
    this.light = new Float64Array(count2);
    this.bestPath = new Int16Array(count2).fill(-1);
    this.bestSample = new Int32Array(count2);
    this.good = new Uint8Array(count2 * paths.length);
    this.#goodSample = new Int32Array(count2 * paths.length).fill(-1);
    this.#range = new Float64Array(count2);
    this.#at = new Float64Array(count2 * atEach);
    this.#passing = new Int32Array(count2);
    this.#sunHidden = new Uint8Array(count2);
    this.#pieces = paths.map(({ samples }) => new Pieces(samples));
    this.#asked = paths.map(({ samples }) => new Int32Array(samples.count));
    this.#suns = new SunOver(middle, instants2);
    this.#suns.at(frameAt(middle));
    this.#limits = new Float64Array(count2 * limitsEach);
    this.#suns.suns.forEach(
      ({ sun }, t) => this.#limits.set(lightLimits(sun.geometricAltitude), t * limitsEach)
    );
    const { around, timeZone, framing } = outlook;
    this.#sight = around && new LazySight(around, paths, framing);
    this.#seasons = around ? seasons(around, timeZone, instants2) : [{ does: new Uint8Array(0), instants: instants2.map((_, i) => i) }];
  }
  /** An eye at a position, `elevation` m above mean sea level. */
  at(position2, elevation) {
    const { paths, outlook } = this.#question;
    const { around } = outlook;
    const frame = frameAt(position2);
    const eye = { frame, point: along(frame.origin, frame.up, elevation) };
    this.#suns.at(frame);
    this.#setSuns();
    this.worth.fill(0);
    this.focal.fill(NaN);
    this.light.fill(0);
    this.good.fill(0);
    this.#range.fill(Infinity);
    this.#sunHidden.fill(0);
    for (const pieces of this.#pieces) pieces.look(eye, outlook.framing);
    for (const season of this.#seasons) {
      this.#turn++;
      const instants2 = season.instants.filter((t) => this.#at[t * atEach + atCeiling] > 0);
      if (instants2.length === 0) continue;
      if (this.#sight && around) {
        const [x, y] = mapped(around.frame, position2);
        this.#sight.stand(season.does, x, y, elevation);
      }
      this.#neighbours(instants2);
      for (let p = 0; p < paths.length; p++) this.#along(p, instants2);
    }
    for (let t = 0; t < this.worth.length; t++) if (this.worth[t] === 0) this.bestPath[t] = -1;
  }
  #setSuns() {
    const { suns } = this.#suns;
    const at = this.#at;
    for (let t = 0, k = 0; t < suns.length; t++, k += atEach) {
      const { sun, east, north, up, levelEast, levelNorth } = suns[t];
      at[k + atEast] = east;
      at[k + atNorth] = north;
      at[k + atUp] = up;
      at[k + atLevelEast] = levelEast;
      at[k + atLevelNorth] = levelNorth;
      at[k + atAltitude] = sun.geometricAltitude;
      at[k + atCeiling] = lightCeiling(sun.geometricAltitude);
      at[k + atHaze] = hazeByAltitude(sun.geometricAltitude);
    }
  }
  /** What was best or good at the place before is likely to be so here: from then on the bounds bite. */
  #neighbours(instants2) {
    const count2 = this.worth.length;
    const { paths } = this.#question;
    for (let k = 0; k < instants2.length; k++) {
      const t = instants2[k];
      const p = this.bestPath[t];
      if (p < 0 || this.#asked[p]?.[this.bestSample[t]] === this.#turn) continue;
      this.#leastShare(p, instants2);
      this.#passAll(instants2);
      this.#sample(p, this.bestSample[t], instants2.length, 0);
    }
    for (let p = 0; p < paths.length; p++)
      for (let k = 0; k < instants2.length; k++) {
        const at = p * count2 + instants2[k];
        const i = this.#goodSample[at];
        if (i < 0 || this.good[at] === 1 || this.#asked[p]?.[i] === this.#turn) continue;
        this.#leastShare(p, instants2);
        this.#passAll(instants2);
        this.#sample(p, i, instants2.length, 0);
      }
  }
  #passAll(instants2) {
    for (let k = 0; k < instants2.length; k++) this.#passing[k] = instants2[k];
  }
  #along(p, instants2) {
    const pieces = this.#pieces[p];
    const { reach, framing } = this.#question.outlook;
    let least = this.#leastShare(p, instants2);
    for (let b = 0; b < pieces.count; b++) {
      const far = farReach(reach, leastFocal(framing, pieces.nearest[b])) * slack3;
      if (far < least) continue;
      const passing = this.#passes(pieces, b, far, instants2);
      if (passing === 0) continue;
      const to = Math.min(pieces.samples, (b + 1) * pieceSize);
      let told = false;
      for (let i = b * pieceSize; i < to; i++) if (this.#sample(p, i, passing, least)) told = true;
      if (told) least = this.#leastShare(p, instants2);
    }
  }
  /** The instants at which a piece of a path may matter, by its range and by how the sun stands to it: how many. */
  #passes(pieces, b, far, instants2) {
    const at = this.#at;
    const limits = this.#limits;
    const perShare = limitSteps / far;
    const east = pieces.east[b];
    const north = pieces.north[b];
    const aside = pieces.aside[b];
    let count2 = 0;
    for (let k = 0; k < instants2.length; k++) {
      const t = instants2[k];
      const o = t * atEach;
      const step = at[o + atShare] * perShare;
      if (step > limitSteps) continue;
      const cos2 = east * at[o + atLevelEast] + north * at[o + atLevelNorth] + aside;
      if (cos2 < limits[t * limitsEach + (step | 0)]) continue;
      this.#passing[count2++] = t;
    }
    return count2;
  }
  /**
   * What share of its ceiling a sample of a path must reach to matter, instant by instant: to be better than the best so
   * far, or worth waiting for where the path is not yet. The least of them.
   */
  #leastShare(p, instants2) {
    const at = this.#at;
    const first = p * this.worth.length;
    let least = Infinity;
    for (let k = 0; k < instants2.length; k++) {
      const t = instants2[k];
      const best = this.worth[t];
      const needed = best < worthwhileFrom || this.good[first + t] === 1 ? best : worthwhileFrom;
      const share = needed / at[t * atEach + atCeiling];
      at[t * atEach + atShare] = share;
      if (share < least) least = share;
    }
    return least;
  }
  /** Sample `i` of path `p` at the first `count` passing instants; whether it was the best, or good, at any. */
  #sample(p, i, count2, least) {
    const asked = this.#asked[p];
    if (asked[i] === this.#turn) return false;
    asked[i] = this.#turn;
    const pieces = this.#pieces[p];
    const view = pieces.viewAt(i);
    const j = i % pieceSize;
    const { framing, reach } = this.#question.outlook;
    const e = view.east[j];
    const n = view.north[j];
    const u = view.up[j];
    const range = view.range[j];
    const ground = Math.sqrt(e * e + n * n);
    const fromBelow = u > sinUnderside * range;
    const out = fromBelow ? range : ground;
    const te = out > 0 ? -e / out : 0;
    const tn = out > 0 ? -n / out : 0;
    const tu = -u / out;
    const passing = this.#passing;
    const limits = this.#limits;
    const at = this.#at;
    const focal = view.focalAt(j);
    if (focal !== focal) return false;
    const reached = reachFactor(reach, focal);
    if (reached * slack3 < least || reached === 0) return false;
    const cosAspect = view.cosAspectAt(j);
    const aspect = aspectFactor(cosAspect !== cosAspect ? null : acosDeg(cosAspect));
    const most = reached * aspect;
    if (most * slack3 < least) return false;
    const { range: hazeRange, elevation: hazeElevation } = hazeOf(range, elevationOf(u, range));
    const hasFlank = Math.abs(cosAspect) < cosNoFlank;
    let flankKnown = false;
    let flankE = 0;
    let flankN = 0;
    let flankU = 0;
    const { suns } = this.#suns;
    const all = this.worth.length;
    let told = false;
    for (let k = 0; k < count2; k++) {
      const t = passing[k];
      const o = t * atEach;
      const hazed = 1 - hazeRange * at[o + atHaze] * hazeElevation;
      const share = at[o + atShare] / (most * hazed * slack3);
      if (share > 1) continue;
      const cos2 = fromBelow ? te * at[o + atEast] + tn * at[o + atNorth] + tu * at[o + atUp] : out > 0 ? te * at[o + atLevelEast] + tn * at[o + atLevelNorth] : 1;
      if (cos2 < limits[t * limitsEach + (share * limitSteps | 0)]) continue;
      if (hasFlank && !flankKnown) {
        flankKnown = true;
        const sign = view.leftwardsAt(j, e, n, u) < 0 ? 1 : -1;
        flankE = sign * view.leftwardsAt(j, 1, 0, 0);
        flankN = sign * view.leftwardsAt(j, 0, 1, 0);
        flankU = sign * view.leftwardsAt(j, 0, 0, 1);
      }
      const toSun = flankE * at[o + atEast] + flankN * at[o + atNorth] + flankU * at[o + atUp];
      const light = lightFactor(at[o + atAltitude], acosDeg(cos2), hasFlank ? toSun > litFrom : null);
      const open2 = light * reached * aspect * hazed;
      const isGoodAlready = this.good[p * all + t] === 1;
      const before = this.worth[t];
      if (open2 < before && (isGoodAlready || open2 < worthwhileFrom)) continue;
      const sight = this.#sight ? this.#sight.at(p, i) : 1;
      if (sight === 0) break;
      const total = light * reached * aspect * sight * hazed;
      if (total > before || total === before && total > 0 && range < this.#range[t]) {
        this.worth[t] = total;
        this.focal[t] = focal;
        this.light[t] = light;
        this.bestPath[t] = p;
        this.bestSample[t] = i;
        this.#range[t] = range;
        told = true;
      }
      if (isGoodAlready || total < worthwhileFrom) continue;
      const cosPhase = -(e * at[o + atEast] + n * at[o + atNorth] + u * at[o + atUp]) / range;
      if (!glaresInto(cosPhase, focal, suns[t], framing, reach) || this.#isSunHidden(t)) {
        this.good[p * all + t] = 1;
        this.#goodSample[p * all + t] = i;
        told = true;
      }
    }
    return told;
  }
  #isSunHidden(t) {
    const sight = this.#sight;
    const around = this.#question.outlook.around;
    if (!sight || !around) return false;
    if (this.#sunHidden[t] === 0) {
      const sun = this.#suns.suns[t];
      const at = this.#suns.frame;
      const site = around.frame;
      const e = sun.levelEast * dot(at.east, site.east) + sun.levelNorth * dot(at.north, site.east);
      const n = sun.levelEast * dot(at.east, site.north) + sun.levelNorth * dot(at.north, site.north);
      const level = Math.sqrt(e * e + n * n) || 1;
      const hidden = sight.hidesSky(e / level, n / level, Math.tan(sun.sun.altitude * RAD));
      this.#sunHidden[t] = hidden ? 2 : 1;
    }
    return this.#sunHidden[t] === 2;
  }
};
var atEast = 0;
var atNorth = 1;
var atUp = 2;
var atLevelEast = 3;
var atLevelNorth = 4;
var atAltitude = 5;
var atCeiling = 6;
var atHaze = 7;
var atShare = 8;
var atEach = 9;
var leastFocal = ({ radius, fill, sensorWidth, sensorHeight }, range) => fill * Math.min(sensorWidth, sensorHeight) * (range - radius) / (2 * radius);
var elevationOf = (up, range) => Math.asin(Math.max(-1, Math.min(1, up / range))) * DEG;

// src/survey/edits/add-feature.ts
function tidyShape(shape) {
  switch (shape.type) {
    case "Point":
      return { type: "Point", coordinates: tidyPosition(shape.coordinates) };
    case "LineString":
      return { type: "LineString", coordinates: shape.coordinates.map(tidyPosition) };
    case "Polygon":
      return {
        type: "Polygon",
        coordinates: windRings(shape.coordinates.map((ring) => ring.map(tidyPosition)))
      };
  }
}
function addFeature(survey, id, kind, shape, properties) {
  const feature = {
    type: "Feature",
    id,
    properties: { kind, ...properties },
    geometry: tidyShape(shape)
  };
  return { ...survey, features: [...survey.features, feature] };
}

// src/survey/document.ts
var surveyVersion = 1;

// src/survey/new-survey.ts
function newSurvey(site) {
  return { type: "FeatureCollection", sunside: { version: surveyVersion, site }, features: [] };
}

// tests/bench/busy-survey.ts
function busySurvey() {
  let survey = newSurvey({
    name: "Bench field",
    elevation: 25,
    timeZone: "Europe/London",
    reference: [-0.46, 51.4776]
  });
  const runway = (id, a, b, designators) => {
    const ends = designators.map((designator) => ({ designator, elevation: 25 }));
    survey = addFeature(
      survey,
      id,
      "runway",
      { type: "LineString", coordinates: [a, b] },
      { width: 45, ends }
    );
  };
  runway("long", [-0.485, 51.4775], [-0.4288653, 51.4777007], ["09", "27"]);
  runway("short", [-0.462, 51.468], [-0.45, 51.487], ["02", "20"]);
  for (let i = 0; i < 10; i++) {
    const coordinates = [-0.492 + 62e-4 * i, 51.4727 + 4e-4 * (i % 3)];
    survey = addFeature(
      survey,
      `spot${i}`,
      "standing-spot",
      { type: "Point", coordinates },
      { name: `Spot ${i + 1}` }
    );
  }
  return survey;
}

// tests/support/tolerance.ts
function seeded(seed) {
  let state = seed >>> 0;
  return () => {
    state = state + 1831565813 >>> 0;
    let t = Math.imul(state ^ state >>> 15, state | 1);
    t ^= t + Math.imul(t ^ t >>> 7, t | 61);
    return ((t ^ t >>> 14) >>> 0) / 4294967296;
  };
}

// tests/bench/built-up-survey.ts
function builtUpSurvey() {
  const random = seeded(500);
  const survey = busySurvey();
  const features = Array.from({ length: 500 }, (_, i) => {
    const [x, y] = [-0.495 + 0.075 * random(), 51.466 + 0.023 * random()];
    const [w, h] = [2e-4 + 4e-4 * random(), 1e-4 + 3e-4 * random()];
    const ring = [
      [x, y],
      [x + w, y],
      [x + w, y + h],
      [x, y + h],
      [x, y]
    ];
    const properties = {
      height: 4 + 12 * random(),
      sight: i % 10 === 0 ? "leaf" : "solid",
      leafMonths: [5, 6, 7]
    };
    const shape = { type: "Polygon", coordinates: [ring] };
    return addFeature({ ...survey, features: [] }, `o${i}`, "obstacle", shape, properties).features[0];
  });
  return { ...survey, features: [...survey.features, ...features.filter((f) => f !== void 0)] };
}
function wavyGround() {
  const random = seeded(700);
  const size = 700;
  const [stepLng, stepLat] = [4e-4, 27e-5];
  const heights = Float32Array.from({ length: size * size }, (_, i) => {
    const [x, y] = [i % size, Math.floor(i / size)];
    return 10 + 15 * Math.sin(x / 23) * Math.cos(y / 31) + random();
  });
  const [west, north] = [-0.46 - 350 * stepLng, 51.4776 + 350 * stepLat];
  return { columns: size, rows: size, west, north, stepLng, stepLat, heights };
}

// tests/bench/sweep.bench.ts
var cellM = 20;
var sideM = 4e3;
var instants = Array.from({ length: 24 }, (_, k) => Date.UTC(2026, 5, 21, 3, 30) + k * 3e6);
var runs = 1;
function sweep() {
  const contents = readContents(busySurvey());
  const chosen2 = pathsOf(contents, (kind, runway) => runway === "long" && kind !== "circuit");
  const short = chosen2.map(shortened);
  console.log(`where to stand: ${sideM / 1e3} x ${sideM / 1e3} km at ${cellM} m, 24 instants, processor time of one core`);
  const brute = compiled();
  for (const [name, paths] of [
    ["4 paths of 61 samples", short],
    [`4 whole paths, ${chosen2.reduce((sum, p) => sum + p.samples.count, 0)} samples`, chosen2]
  ]) {
    const mine = median(() => ours(contents, paths, null));
    console.log(`  open ground, ${name}`);
    console.log(`    ours                ${mine.ms.toFixed(0)} ms (sum of worth ${mine.worth.toFixed(1)}, good ${mine.good})`);
    if (!brute) continue;
    const theirs = paths === chosen2 ? inC(brute.program, contents, paths) : median(() => inC(brute.program, contents, paths));
    console.log(`    C, by brute force   ${theirs.ms.toFixed(0)} ms (sum of worth ${theirs.worth.toFixed(1)}, good ${theirs.good})`);
    console.log(`    ratio ours to C     ${(mine.ms / theirs.ms).toFixed(2)} x (budget 1.0, aimed at 0.5)`);
  }
  if (!brute) console.log("    C                   no compiler on this machine (gcc)");
  brute?.remove();
  const built = readContents(builtUpSurvey());
  const builtPaths = pathsOf(built, (kind, runway) => runway === "long" && kind !== "circuit");
  for (const [name, paths] of [["61 samples", builtPaths.map(shortened)], ["whole paths", builtPaths]]) {
    const { ms } = median(() => ours(built, paths, wavyGround()));
    console.log(`  500 obstacles and terrain, ${name}: ${ms.toFixed(0)} ms (budget 3,000)`);
  }
}
function shortened(path) {
  const { station } = path.samples;
  let at = 0;
  station.forEach((s, i) => {
    if (Math.abs(s - 400) < Math.abs((station[at] ?? NaN) - 400)) at = i;
  });
  const from = Math.max(0, at - 30);
  const to = from + 61;
  const cut = (key2, size) => path.samples[key2].slice(from * size, to * size);
  const samples = {
    ...path.samples,
    count: 61,
    station: cut("station", 1),
    centre: cut("centre", 3),
    forward: cut("forward", 3),
    up: cut("up", 3),
    slope: cut("slope", 1),
    attitude: cut("attitude", 1),
    height: cut("height", 1),
    share: cut("share", 1),
    speed: cut("speed", 1)
  };
  return { ...path, samples };
}
function median(run) {
  const all = Array.from({ length: runs }, run).sort((a, b) => a.ms - b.ms);
  return all[Math.floor(runs / 2)];
}
function prepared(contents) {
  const frame = siteFrame(contents.site.reference);
  const area = areaAbout(contents.runways.slice(0, 1), frame, cellM, sideM);
  return { frame, area };
}
function ours(contents, paths, terrain) {
  const { area } = prepared(contents);
  const outlook = outlookOf(contents, terrain);
  const from = process.cpuUsage().user;
  const cells2 = area.count * area.count;
  const kernel = new Kernel({ paths, outlook, instants, middle: cellPosition(area, Math.floor(cells2 / 2)) });
  let [worth, good] = [0, 0];
  for (let i = 0; i < cells2; i++) {
    kernel.at(cellPosition(area, i), fieldElevation(contents) + 1.7);
    for (const total of kernel.worth) worth += total;
    for (const is of kernel.good) good += is;
  }
  return { ms: (process.cpuUsage().user - from) / 1e3, worth, good };
}
function compiled() {
  const folder = mkdtempSync(join(tmpdir(), "sunside-sweep-"));
  const program = join(folder, "brute");
  const remove = () => rmSync(folder, { recursive: true });
  const source = join(import.meta.dirname, "sweep-brute.c");
  try {
    execFileSync("gcc", ["-O3", "-march=native", "-ffast-math", "-o", program, source, "-lm"], { stdio: "pipe" });
    return { program, remove };
  } catch {
    remove();
    return null;
  }
}
function inC(program, contents, paths) {
  const { frame, area } = prepared(contents);
  const question = questionInC(contents, outlookOf(contents), paths, frame, area);
  const input = Buffer.from(Float64Array.from(question).buffer);
  const answer = execFileSync(program, { input, maxBuffer: 1e6 }).toString("utf8");
  return JSON.parse(answer);
}
function questionInC(contents, { reach, framing }, paths, frame, area) {
  const cells2 = area.count * area.count;
  const numbers = [cells2, instants.length, paths.length, reach.ranges.length];
  for (const { shortest, longest } of reach.ranges) numbers.push(shortest, longest);
  numbers.push(framing.fill, framing.sensorWidth, framing.sensorHeight, framing.length, framing.span, framing.height);
  for (const instant2 of instants) {
    const sun = sunThere(sunAt(cellPosition(area, Math.floor(cells2 / 2)), instant2));
    numbers.push(sun.east, sun.north, sun.up, sun.levelEast, sun.levelNorth, sun.sun.geometricAltitude);
  }
  for (const { samples } of paths) numbers.push(samples.count);
  for (const { samples } of paths)
    for (let i = 0; i < samples.count; i++) {
      const at = (list) => [list[3 * i], list[3 * i + 1], list[3 * i + 2]];
      const turned = (list) => [frame.east, frame.north, frame.up].map((axis) => dot(at(list), axis));
      const slope = samples.slope[i] ?? NaN;
      numbers.push(...inFrame(frame, at(samples.centre)), ...turned(samples.forward), ...turned(samples.up));
      numbers.push(slope, samples.attitude[i] ?? NaN);
    }
  const eye = fieldElevation(contents) + 1.7;
  for (let i = 0; i < cells2; i++) {
    const position2 = cellPosition(area, i);
    const [x, y] = mapped(frame, position2);
    const up = inFrame(frame, frameAt(position2).origin)[2];
    numbers.push(x, y, up + eye * Math.cos(Math.hypot(x, y) / 637e4 * RAD));
  }
  return numbers;
}

// tests/bench/zz.ts
sweep();
