import { inLook, type LayerPiece, type Look } from '../../styles/map-style';
import { mapLayers } from './layers';
import type { ReliefHost, ShadedRelief } from './shaded-relief';
import { surveyImage, surveyImages } from './survey-style';

export interface LookHost extends Pick<ReliefHost, 'setPaint'> {
  hasImage(id: string): boolean;
  updateImage(id: string, image: ImageData): void;
}

type Painted = Pick<LayerPiece, 'id' | 'paint'>;

/**
 * The look that the map wears. Another one changes colours and images only. Before `begin` it is noted, and put on then:
 * the map was made in the first one.
 */
export class MapLook {
  readonly #host: LookHost;
  readonly #relief: Pick<ShadedRelief, 'repaint'>;
  readonly #baseLayers: () => readonly Painted[];
  #look: Look;
  /** Looks that were taken off and are still painted somewhere. */
  #before: Look[] = [];
  #begun = false;

  /** `baseLayers`: those of the base map that are in the sheet's colours. */
  constructor(
    look: Look,
    host: LookHost,
    relief: Pick<ShadedRelief, 'repaint'>,
    baseLayers: () => readonly Painted[],
  ) {
    this.#look = look;
    this.#host = host;
    this.#relief = relief;
    this.#baseLayers = baseLayers;
  }

  get now(): Look {
    return this.#look;
  }

  wear(look: Look): void {
    if (look === this.#look) return;
    this.#before.push(this.#look);
    this.#look = look;
    if (this.#begun) this.#repaint();
  }

  begin(): void {
    this.#begun = true;
    this.#repaint();
  }

  #repaint(): void {
    for (const before of this.#before) this.#repaintFrom(before);
    this.#before = [];
  }

  #repaintFrom(before: Look): void {
    const look = this.#look;
    for (const { id, paint } of [...mapLayers, ...this.#baseLayers()])
      for (const [property, colour] of Object.entries(paint ?? {})) {
        const value = inLook(colour, look);
        if (JSON.stringify(value) !== JSON.stringify(inLook(colour, before)))
          this.#host.setPaint(id, property, value);
      }
    this.#relief.repaint();
    for (const id of surveyImages) {
      const image = this.#host.hasImage(id) ? surveyImage(id, look) : null;
      if (image) this.#host.updateImage(id, image);
    }
  }
}
