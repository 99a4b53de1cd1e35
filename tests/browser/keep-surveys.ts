import type { Page } from 'playwright-core';

/** Puts surveys into the browser's storage behind the program's back; the first one is what this tab had open. */
export async function keep(
  page: Page,
  surveys: readonly { id: string; name: string; text: string }[],
): Promise<void> {
  await page.evaluate(async (all) => {
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open('sunside');
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error ?? new Error('expected the database'));
    });
    const transaction = database.transaction(['surveys', 'summaries'], 'readwrite');
    for (const [i, { id, name, text }] of all.entries()) {
      const kept = { id, name, changed: 1_000_000_000_000 - i, revision: 1 };
      transaction.objectStore('surveys').put({ ...kept, text });
      transaction.objectStore('summaries').put({ ...kept, size: text.length, facts: null, deleted: null });
    }
    await new Promise((resolve) => (transaction.oncomplete = resolve));
    database.close();
    sessionStorage.setItem('sunside-open', all[0]?.id ?? '');
  }, surveys);
}
