const alphabet = 'abcdefghijkmnpqrstuvwxyz23456789';

/**
 * A short random id that is not in `taken`. From `crypto.getRandomValues`: a phone on http in the local net has
 * no randomUUID. Letters and digits that are easily confused are left out, since people read ids in messages.
 */
export function freshId(taken: ReadonlySet<string>): string {
  for (;;) {
    const bytes = crypto.getRandomValues(new Uint8Array(6));
    const id = Array.from(bytes, (b) => alphabet[b % alphabet.length]).join('');
    if (!taken.has(id)) return id;
  }
}

/** An id for one more feature of a survey. */
export const freshFeatureId = ({
  features,
}: {
  readonly features: readonly { readonly id: string }[];
}): string => freshId(new Set(features.map(({ id }) => id)));
