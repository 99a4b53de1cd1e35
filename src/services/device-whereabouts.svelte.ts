import { compassHeading } from '../figures/now/compass-heading';
import { groundLine } from '../figures/geometry/earth';
import { angleBetween } from '../figures/geometry/angles';
import type { AskedOnce, Fix, HeadingTrouble, Whereabouts, WhereTrouble } from '../ports/whereabouts';

/** What a sensor says of the device's turns; `compass` as Safari has it: degrees from magnetic north. */
export interface Turned {
  readonly alpha: number | null;
  readonly beta: number | null;
  readonly gamma: number | null;
  readonly compass: number | null;
  /** Degrees by which the page is turned on the device. */
  readonly screen: number;
}

/** What of the device is asked; a test stands in for it. */
export interface Device {
  readonly secure: boolean;
  readonly geolocation: Pick<Geolocation, 'getCurrentPosition' | 'watchPosition' | 'clearWatch'> | null;
  /** Whether the user has said yes to the position already; false where the browser does not tell. */
  allowsPosition(): Promise<boolean>;
  readonly orientation: {
    /** Asks the user where the browser wants that; false where they say no. */
    allow(): Promise<boolean>;
    /** Calls with every turn until what it returns is called. */
    listen(turned: (turned: Turned) => void): () => void;
  } | null;
  readonly screen: {
    /** Keeps the screen on until what it answers with is called; the device may end that, and tells so. */
    hold(ended: () => void): Promise<() => void>;
    /** Calls whenever the page is seen again. */
    onSeen(seen: () => void): () => void;
  } | null;
  now(): number;
}

/** Share of its accuracy by which a position must move to be another, and m at least. */
const movedShare = 1 / 3;
const movedLeast = 3;
/** A heading is another after this many degrees and ms; a smaller turn after a whole second. */
const [turnedBy, turnedEvery] = [3, 250];
const [turnedLittle, turnedSecond] = [1, 1000];

/** ms: a town is near enough, and may have been found a while ago. */
const once: PositionOptions = { enableHighAccuracy: false, timeout: 20_000, maximumAge: 600_000 };
const live: PositionOptions = { enableHighAccuracy: true, timeout: 20_000, maximumAge: 1000 };

/** Code 1: permission denied (W3C Geolocation, 6.4); the others may mend themselves. */
const troubleOf = ({ code }: Pick<GeolocationPositionError, 'code'>): WhereTrouble =>
  code === 1 ? 'refused' : 'lost';

/**
 * The device's position, heading and screen. Standing still it costs next to nothing: a position that moves within its
 * own accuracy, and a heading that trembles, are the ones that were.
 */
export class DeviceWhereabouts implements Whereabouts {
  #watching = $state.raw(false);
  #fix = $state.raw<Fix | null>(null);
  #trouble = $state.raw<WhereTrouble | null>(null);
  #compass = $state.raw<number | null>(null);
  #headingTrouble = $state.raw<HeadingTrouble | null>(null);
  #awake = $state.raw(false);
  readonly #device: Device;
  #watch: number | null = null;
  #turnedAt = -Infinity;
  #unlisten: (() => void) | null = null;
  #release: (() => void) | null = null;
  #unseen: (() => void) | null = null;
  /** Grows when all is forgotten: what was asked for before then comes too late. */
  #visit = 0;

  constructor(device: Device) {
    this.#device = device;
  }

  get watching(): boolean {
    return this.#watching;
  }
  get fix(): Fix | null {
    return this.#fix;
  }
  get trouble(): WhereTrouble | null {
    return this.#trouble;
  }
  get compass(): number | null {
    return this.#compass;
  }
  get headingTrouble(): HeadingTrouble | null {
    return this.#headingTrouble;
  }
  get awake(): boolean {
    return this.#awake;
  }
  get canStayAwake(): boolean {
    return this.#device.screen !== null;
  }

  /** The browser's geolocation, or why there is none to ask. */
  #locator(): NonNullable<Device['geolocation']> | 'insecure' | 'missing' {
    const { secure, geolocation } = this.#device;
    return secure ? (geolocation ?? 'missing') : 'insecure';
  }

  ask(): Promise<AskedOnce> {
    return new Promise((resolve) => {
      const locator = this.#locator();
      if (typeof locator === 'string') return resolve({ ok: false, trouble: locator });
      locator.getCurrentPosition(
        ({ coords: { longitude, latitude } }) => resolve({ ok: true, position: [longitude, latitude] }),
        (error) => resolve({ ok: false, trouble: troubleOf(error) }),
        once,
      );
    });
  }

  watch(): void {
    if (this.#watch !== null) return;
    const locator = this.#locator();
    this.#trouble = typeof locator === 'string' ? locator : null;
    if (typeof locator === 'string') return;
    this.#watching = true;
    const visit = this.#visit;
    this.#watch = locator.watchPosition(
      (found) => {
        if (visit === this.#visit) this.#found(found.coords);
      },
      (error) => {
        if (visit === this.#visit) this.#failed(troubleOf(error));
      },
      live,
    );
  }

  async watchAgain(): Promise<void> {
    const visit = this.#visit;
    if ((await this.#device.allowsPosition()) && visit === this.#visit) this.watch();
  }

  #found({ longitude, latitude, accuracy }: GeolocationCoordinates): void {
    const at = this.#device.now();
    const before = this.#fix;
    const back = this.#trouble !== null;
    this.#trouble = null;
    const position = [longitude, latitude] as const;
    if (before && !back) {
      const moved = groundLine(before.position, position).distance;
      const finer = accuracy < before.accuracy * 0.8;
      const rougher = accuracy > before.accuracy * 2;
      if (!finer && !rougher && moved < Math.max(movedLeast, accuracy * movedShare)) return;
    }
    this.#fix = { position, accuracy, at };
  }

  /** What was refused is watched no more; what is lost may come back. */
  #failed(trouble: WhereTrouble): void {
    this.#trouble = trouble;
    if (trouble !== 'refused') return;
    this.#unwatch();
    this.#fix = null;
  }

  async point(): Promise<void> {
    const { orientation } = this.#device;
    if (this.#unlisten) return;
    if (!orientation) {
      this.#headingTrouble = 'missing';
      return;
    }
    const visit = this.#visit;
    const allowed = await orientation.allow();
    if (visit !== this.#visit || this.#unlisten) return;
    this.#headingTrouble = allowed ? null : 'refused';
    if (allowed) this.#unlisten = orientation.listen((turned) => this.#turned(turned));
  }

  #turned({ alpha, beta, gamma, compass, screen }: Turned): void {
    const told =
      compass ??
      (alpha === null || beta === null || gamma === null
        ? null
        : compassHeading({ alpha, beta, gamma }, screen));
    // A device without a compass calls once, with nothing.
    if (told === null) {
      if (this.#compass === null) this.#headingTrouble = 'missing';
      return;
    }
    const at = this.#device.now();
    const [by, since] = [angleBetween(told, this.#compass ?? told), at - this.#turnedAt];
    const isAnother =
      this.#compass === null ||
      (by >= turnedBy && since >= turnedEvery) ||
      (by >= turnedLittle && since >= turnedSecond);
    if (!isAnother) return;
    this.#turnedAt = at;
    this.#headingTrouble = null;
    this.#compass = told;
  }

  async stayAwake(on: boolean): Promise<void> {
    const { screen } = this.#device;
    if (!screen || on === this.#awake) return;
    this.#awake = on;
    if (!on) {
      this.#letSleep();
      return;
    }
    // The device takes the lock back whenever the page is hidden.
    this.#unseen ??= screen.onSeen(() => void this.#hold());
    await this.#hold();
  }

  async #hold(): Promise<void> {
    const { screen } = this.#device;
    if (!screen || !this.#awake || this.#release) return;
    const visit = this.#visit;
    try {
      const release = await screen.hold(() => (this.#release = null));
      if (visit !== this.#visit || !this.#awake || this.#release) release();
      else this.#release = release;
    } catch {
      // A low battery, for instance: the screen sleeps as ever.
      if (visit === this.#visit) this.#awake = false;
    }
  }

  leave(): void {
    this.#visit++;
    this.#unwatch();
    this.#unlisten?.();
    this.#unlisten = null;
    this.#letSleep();
    this.#awake = false;
    this.#fix = null;
    this.#trouble = null;
    this.#compass = null;
    this.#headingTrouble = null;
    this.#turnedAt = -Infinity;
  }

  #unwatch(): void {
    if (this.#watch !== null) this.#device.geolocation?.clearWatch(this.#watch);
    this.#watch = null;
    this.#watching = false;
  }

  #letSleep(): void {
    this.#unseen?.();
    this.#unseen = null;
    this.#release?.();
    this.#release = null;
  }
}
