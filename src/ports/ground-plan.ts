/** A ground plan that ships with the program: the address of its GeoJSON, and whose it is. */
export interface GroundPlan {
  readonly data: string;
  readonly credit: string;
}
