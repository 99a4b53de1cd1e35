import type { Device, Turned } from './device-whereabouts.svelte';

/** What browsers add to the standard: Safari's compass, and its question to the user. */
interface WithCompass extends DeviceOrientationEvent {
  readonly webkitCompassHeading?: number;
}
type Asking = typeof DeviceOrientationEvent & { requestPermission?: () => Promise<'granted' | 'denied'> };

/** The device that the page runs on. */
export function thisDevice(): Device {
  const asking = (globalThis as { DeviceOrientationEvent?: Asking }).DeviceOrientationEvent;
  const { geolocation, wakeLock } = navigator as Partial<Pick<Navigator, 'geolocation' | 'wakeLock'>>;
  return {
    secure: isSecureContext,
    geolocation: geolocation ?? null,
    async allowsPosition() {
      try {
        return (await navigator.permissions.query({ name: 'geolocation' })).state === 'granted';
      } catch {
        return false;
      }
    },
    orientation: asking
      ? {
          allow: async () => {
            try {
              return (await asking.requestPermission?.()) !== 'denied';
            } catch {
              return false;
            }
          },
          listen: listenToTurns,
        }
      : null,
    screen: wakeLock
      ? {
          async hold(ended) {
            const lock = await wakeLock.request('screen');
            lock.addEventListener('release', ended);
            return () => void lock.release();
          },
          onSeen(seen) {
            const changed = () => {
              if (document.visibilityState === 'visible') seen();
            };
            document.addEventListener('visibilitychange', changed);
            return () => document.removeEventListener('visibilitychange', changed);
          },
        }
      : null,
    now: () => Date.now(),
  };
}

/** Turns against north come as an event of their own where the plain one is told against nothing in particular. */
function listenToTurns(turned: (turned: Turned) => void): () => void {
  const name =
    'ondeviceorientationabsolute' in globalThis ? 'deviceorientationabsolute' : 'deviceorientation';
  const heard = (event: Event) => {
    const { alpha, beta, gamma, absolute, webkitCompassHeading: compass = null } = event as WithCompass;
    const isNorth = absolute || name === 'deviceorientationabsolute';
    const screenAngle = (screen as Partial<Screen>).orientation?.angle ?? 0;
    turned({ alpha: isNorth ? alpha : null, beta, gamma, compass, screen: screenAngle });
  };
  addEventListener(name, heard);
  return () => removeEventListener(name, heard);
}
