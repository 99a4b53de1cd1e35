/*
 * The sweep's sums by brute force: every cell, every path, every sample, every instant, nothing passed over. What the
 * sweep is measured by (design, section 8); written for the compiler: flat arrays of samples, no calls but sqrtf-like ones
 * in the inner loops. Open ground. Reads its question as doubles from standard input and answers on standard output with
 * a checksum and the ms that it took.
 */
#include <math.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

static double number(void) {
  double value;
  if (fread(&value, sizeof value, 1, stdin) != 1) exit(1);
  return value;
}
static double *numbers(int count) {
  double *values = malloc((size_t)count * sizeof *values);
  for (int i = 0; i < count; i++) values[i] = number();
  return values;
}
static inline double clamp01(double x) { return x < 0 ? 0 : x > 1 ? 1 : x; }
static inline double ramp(double x, double a, double ya, double b, double yb) {
  return ya + (yb - ya) * clamp01((x - a) / (b - a));
}
#define DEG 57.29577951308232
static inline double acos_deg(double c) { return acos(c < -1 ? -1 : c > 1 ? 1 : c) * DEG; }

int main(void) {
  /* Size, kit (shortest and longest of each range, mm), sensor, fill, points of the subject. */
  int cells = (int)number(), instants = (int)number(), paths = (int)number(), ranges = (int)number();
  double *range_of = numbers(2 * ranges);
  double fill = number(), sensor_w = number(), sensor_h = number();
  int points = (int)number();
  /* Forward, left, up of the centre: what is framed. */
  double *body = numbers(3 * points);
  double longest = 0, shortest = 1e9;
  for (int r = 0; r < ranges; r++) {
    if (range_of[2 * r + 1] > longest) longest = range_of[2 * r + 1];
    if (range_of[2 * r] < shortest) shortest = range_of[2 * r];
  }
  /* Suns: east, north, up, level east, level north, altitude. Flat ground: the same at every cell. */
  double *sun = numbers(6 * instants);
  int total = 0;
  int *from = malloc((size_t)(paths + 1) * sizeof *from);
  from[0] = 0;
  for (int p = 0; p < paths; p++) from[p + 1] = total += (int)number();
  /* Samples in the flat frame of the site: x, y, z, forward e n u, up e n u, slope, attitude. */
  double *s = numbers(11 * total);
  double *eye = numbers(3 * cells);

  double *worth = malloc((size_t)instants * sizeof *worth);
  uint8_t *good = malloc((size_t)(instants * paths));
  /* Processor time: what else runs on the machine does not count. */
  clock_t begun = clock();
  double sum = 0;
  long goods = 0;
  double sin75 = sin(75 / DEG), sin30 = sin(30 / DEG), cos10 = cos(10 / DEG), cos80 = cos(80 / DEG), sin10 = sin(10 / DEG);
  for (int c = 0; c < cells; c++) {
    memset(good, 0, (size_t)(instants * paths));
    for (int t = 0; t < instants; t++) worth[t] = 0;
    for (int p = 0; p < paths; p++)
      for (int i = from[p]; i < from[p + 1]; i++) {
        const double *q = s + 11 * i;
        double e = q[0] - eye[3 * c], n = q[1] - eye[3 * c + 1], u = q[2] - eye[3 * c + 2];
        double range = sqrt(e * e + n * n + u * u);
        double he = q[3], hn = q[4], hu = q[5], ve = q[6], vn = q[7], vu = q[8];
        double le = vn * hu - vu * hn, ln = vu * he - ve * hu, lu = ve * hn - vn * he;
        double rise = q[9], run = sqrt(1 + rise * rise);
        double cos_aspect =
            -((he + ve * rise) * e + (hn + vn * rise) * n + (hu + vu * rise) * u) / (run * range);
        double co = cos(q[10]), si = sin(q[10]);
        double be = co * he + si * ve, bn = co * hn + si * vn, bu = co * hu + si * vu;
        double te = co * ve - si * he, tn = co * vn - si * hn, tu = co * vu - si * hu;
        double fe = e / range, fn = n / range, fu = u / range, g = sqrt(fe * fe + fn * fn);
        double re = g > 0 ? fn / g : 1, rn = g > 0 ? -fe / g : 0, ru = 0;
        if (fabs(fu) > sin75) {
          double in = be * fe + bn * fn + bu * fu;
          double we = be - in * fe, wn = bn - in * fn, wu = bu - in * fu, w = sqrt(we * we + wn * wn + wu * wu);
          if (w > 0) re = we / w, rn = wn / w, ru = wu / w;
        }
        double qe = rn * fu - ru * fn, qn = ru * fe - re * fu, qu = re * fn - rn * fe;
        double br = be * re + bn * rn + bu * ru, bq = be * qe + bn * qn + bu * qu, bf = be * fe + bn * fn + bu * fu;
        double lr = le * re + ln * rn + lu * ru, lq = le * qe + ln * qn + lu * qu, lf = le * fe + ln * fn + lu * fu;
        double tr = te * re + tn * rn + tu * ru, tq = te * qe + tn * qn + tu * qu, tf = te * fe + tn * fn + tu * fu;
        double x0 = 1e9, x1 = -1e9, y0 = 1e9, y1 = -1e9;
        for (int k = 0; k < points; k++) {
          double f = body[3 * k], l = body[3 * k + 1], w = body[3 * k + 2];
          double d = 1 / (range + f * bf + l * lf + w * tf);
          double xx = (f * br + l * lr + w * tr) * d, yy = (f * bq + l * lq + w * tq) * d;
          x0 = xx < x0 ? xx : x0, x1 = xx > x1 ? xx : x1, y0 = yy < y0 ? yy : y0, y1 = yy > y1 ? yy : y1;
        }
        double focal = fill * fmin(sensor_w / (x1 - x0), sensor_h / (y1 - y0)), ratio = 0;
        for (int r = 0; r < ranges; r++) {
          double lo = range_of[2 * r], hi = range_of[2 * r + 1];
          double filled = fill * (focal > hi ? hi / focal : focal < lo ? lo / focal : 1);
          double one = filled < 0.75 * fill ? filled / (0.75 * fill) : filled > 1 ? 1 / filled : 1;
          if (one > ratio) ratio = one;
        }
        double aspect_deg = acos_deg(cos_aspect);
        double aspect = aspect_deg < 45 ? ramp(aspect_deg, 0, 0.25, 45, 1) : ramp(aspect_deg, 100, 1, 180, 0.15);
        double product = ratio * ratio * aspect;
        double elevation = asin(fu) * DEG;
        double haze = 0.7 * clamp01((range - 500) / 1500) * clamp01((10 - elevation) / 8);
        int below = fu > sin30, flank = fabs(cos_aspect) < cos10 &&
            fabs(le * e + ln * n + lu * u) > sin10 * sqrt(e * e + n * n);
        double sign = le * e + ln * n + lu * u < 0 ? 1 : -1;
        double out = 1 / (below ? range : sqrt(e * e + n * n));
        double kept = focal < shortest ? shortest : focal > longest ? longest : focal;
        double glare = cos((180 - atan(sqrt(sensor_w * sensor_w + sensor_h * sensor_h) / (2 * kept)) * DEG - 10) / DEG);
        for (int t = 0; t < instants; t++) {
          const double *o = sun + 6 * t;
          double altitude = o[5];
          if (altitude < -6) continue;
          double light = 0.2;
          double phase = -(e * o[0] + n * o[1] + u * o[2]) / range;
          if (altitude >= -0.833) {
            double angle = acos_deg(below ? phase : -(e * o[3] + n * o[4]) * out);
            light = ramp(altitude, 45, 1, 60, 0.6) *
                    (angle <= 110 ? ramp(angle, 60, 1, 110, 0.6) : ramp(angle, 110, 0.6, 180, 0.2));
            if (flank && sign * (le * o[0] + ln * o[1] + lu * o[2]) <= 0.1) light *= 0.5;
          }
          double score = product * light * (1 - haze * clamp01(altitude / 30));
          if (score > worth[t]) worth[t] = score;
          if (score >= 0.6 && !(altitude > -0.833 && phase < cos80 && phase < glare)) good[p * instants + t] = 1;
        }
      }
    for (int t = 0; t < instants; t++) sum += worth[t];
    for (int k = 0; k < instants * paths; k++) goods += good[k];
  }
  printf("{\"ms\":%.1f,\"worth\":%.6f,\"good\":%ld}\n",
         (double)(clock() - begun) * 1e3 / CLOCKS_PER_SEC, sum, goods);
  return 0;
}
