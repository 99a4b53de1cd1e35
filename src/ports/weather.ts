/** Winds that people type or paste: built by weather.ts, which loads the reader of reports when it is needed. */
export interface WeatherReader {
  /**
   * Reads a wind, METAR or TAF and keeps it in the survey; null, or why it cannot be read. `magnetic`: a typed
   * direction was told from magnetic north.
   */
  enter(text: string, magnetic: boolean): Promise<string | null>;
}
