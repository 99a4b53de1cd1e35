/** What has been found at one place so far, and what was found at the place before. */
export class BestSoFar {
  /** Total of the best sample, one an instant. */
  readonly worth: Float64Array;
  /** Its needed focal length in mm, its factor of light, its path, its place on it, and its range in m. */
  readonly focal: Float64Array;
  readonly light: Float64Array;
  readonly path: Int16Array;
  readonly sample: Int32Array;
  readonly range: Float64Array;
  /** 1 where a path is good at an instant: paths x instants. */
  readonly good: Uint8Array;
  /** By which sample; at the place before, until it is known here; -1 for none. */
  readonly goodSample: Int32Array;
  /** Path and sample that were best at the place before; path -1 for none. */
  readonly formerPath: Int16Array;
  readonly formerSample: Int32Array;
  /** The best of all instants. */
  most = 0;

  constructor(instants: number, paths: number) {
    this.worth = new Float64Array(instants);
    this.focal = new Float64Array(instants);
    this.light = new Float64Array(instants);
    this.path = new Int16Array(instants).fill(-1);
    this.sample = new Int32Array(instants);
    this.range = new Float64Array(instants);
    this.good = new Uint8Array(instants * paths);
    this.goodSample = new Int32Array(instants * paths).fill(-1);
    this.formerPath = new Int16Array(instants);
    this.formerSample = new Int32Array(instants);
  }

  /** A new place. */
  begin(): void {
    // Kept apart: the first sample that is asked is the best so far at every instant.
    this.formerPath.set(this.path);
    this.formerSample.set(this.sample);
    this.worth.fill(0);
    this.focal.fill(NaN);
    this.light.fill(0);
    for (let k = 0; k < this.good.length; k++) if (this.good[k] === 0) this.goodSample[k] = -1;
    this.good.fill(0);
    this.range.fill(Infinity);
    this.most = 0;
  }

  /** Nothing more is asked of this place. */
  end(): void {
    for (let t = 0; t < this.worth.length; t++) if (this.worth[t] === 0) this.path[t] = -1;
  }

  /** Whether a sample was the best of the place before at an instant. */
  wasBest(t: number, p: number, i: number): boolean {
    return this.formerPath[t] === p && this.formerSample[t] === i;
  }
}
