import { DoubleSide, MeshBasicMaterial, MeshStandardMaterial, type Material } from 'three';
import type { Stuff } from './aircraft/parts';

/** What each stuff of an aircraft is drawn with. */
export function materials(): Readonly<Record<Stuff, Material>> {
  return {
    skin: new MeshStandardMaterial({ vertexColors: true, roughness: 0.5, side: DoubleSide }),
    accent: new MeshStandardMaterial({ color: 0x3f5f74, roughness: 0.5, side: DoubleSide }),
    glass: new MeshStandardMaterial({ color: 0x1d242a, roughness: 0.25, metalness: 0.1, side: DoubleSide }),
    metal: new MeshStandardMaterial({ color: 0x9a9d9f, roughness: 0.45, metalness: 0.25 }),
    dark: new MeshStandardMaterial({ color: 0x26282a, roughness: 0.8 }),
    blade: new MeshStandardMaterial({ color: 0x303234, roughness: 0.7, side: DoubleSide, transparent: true }),
    disc: new MeshBasicMaterial({
      color: 0x565b5e,
      side: DoubleSide,
      transparent: true,
      opacity: 0.07,
      depthWrite: false,
    }),
  };
}
