/** The little of sql.js that the catalogue's builder uses; the package has no types of its own. */
declare module 'sql.js' {
  export type SqlValue = number | string | Uint8Array | null;
  export interface Database {
    exec(
      sql: string,
    ): { readonly columns: readonly string[]; readonly values: readonly (readonly SqlValue[])[] }[];
    close(): void;
  }
  const open: () => Promise<{ readonly Database: new (bytes: Uint8Array) => Database }>;
  export default open;
}
