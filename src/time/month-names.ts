/** The names of the months in a language (BCP 47), in full and in short, January first. */
export const monthNames = (language: string): readonly (readonly string[])[] =>
  Array.from({ length: 12 }, (_, month) => {
    const middle = new Date(Date.UTC(2026, month, 15));
    return (['long', 'short'] as const).map((style) =>
      new Intl.DateTimeFormat(language, { month: style, timeZone: 'UTC' }).format(middle),
    );
  });
