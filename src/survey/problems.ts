/**
 * Something in a survey that its user should know. `used: true` is a doubt (computed all the same),
 * `used: false` marks what was set aside because it has no meaning. `id` is null for the file as a whole.
 */
export interface Problem {
  readonly id: string | null;
  readonly reason: string;
  readonly used: boolean;
}
