import { beforeAll, describe, expect, inject, it } from 'vitest';
import { openPage, pixelOf, type Opened } from './page';

const requests: string[] = [];
let opened: Opened;
beforeAll(async () => {
  opened = await openPage({ width: 1100, height: 600, onRequest: (url) => requests.push(url) });
});
const policyOf = (text: string | null | undefined) =>
  new Map((text ?? '').split('; ').map((part) => [part.split(' ')[0], part.split(' ').slice(1)] as const));

describe('the content security policy', () => {
  it('[B143] stands in the page and in the header: nothing inline, no eval, other origins for tiles only', async () => {
    const response = await fetch(inject('baseUrl'));
    const header = policyOf(response.headers.get('content-security-policy'));
    const html = await response.text();
    // A page's encoding must stand in its first 1024 bytes (HTML, section 4.2.5.4), the policy before any script.
    expect(html.indexOf('charset=')).toBeLessThan(1024);
    expect(html.indexOf('Content-Security-Policy')).toBeLessThan(html.indexOf('<script'));
    const meta = policyOf(
      await opened.page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content'),
    );
    expect(header.get('frame-ancestors')).toEqual(["'none'"]);
    header.delete('frame-ancestors');
    expect(header).toEqual(meta);
    const open = [...meta].filter(([, sources]) => sources.some((s) => s === 'https:')).map(([name]) => name);
    expect(open).toEqual(['img-src', 'connect-src']);
    expect([...meta.values()].flat().filter((source) => source.includes('unsafe'))).toEqual([]);
    for (const name of ['default-src', 'base-uri', 'form-action']) expect(meta.get(name)).toEqual(["'none'"]);
  });

  it('[B144] runs no script that gets into the page: element, handler, address or eval', async () => {
    const { page, complaints } = opened;
    const before = complaints.length;
    await page.evaluate(() => {
      const heard: string[] = [];
      Object.assign(window, { heard });
      addEventListener('securitypolicyviolation', (event) => heard.push(event.effectiveDirective));
      const holder = document.createElement('div');
      holder.id = 'holder';
      holder.innerHTML = `<img src="data:," onerror="document.body.dataset.ran='handler'">
            <iframe srcdoc="<script>parent.document.body.dataset.ran='frame'</script>"></iframe>`;
      const script = document.createElement('script');
      script.textContent = "document.body.dataset.ran = 'element'";
      const link = document.createElement('a');
      link.href = "javascript:document.body.dataset.ran = 'address'";
      holder.append(script, link);
      document.body.append(holder);
      link.click();
      // From a timer: the test's own call may evaluate what the page may not.
      setTimeout(() => {
        try {
          (0, eval)('1');
          document.body.dataset['ran'] = 'eval';
        } catch {
          // As it must be.
        }
      });
    });
    // Each of them either runs or is told of.
    const heard = () => page.evaluate(() => (window as unknown as { heard: string[] }).heard);
    await expect
      .poll(async () => new Set(await heard()))
      .toEqual(new Set(['script-src-elem', 'script-src-attr', 'script-src']));
    expect(await page.evaluate(() => document.body.dataset['ran'] ?? 'nothing')).toBe('nothing');
    await page.evaluate(() => document.querySelector('#holder')?.remove());
    await expect.poll(() => complaints.slice(before).join('\n')).toMatch(/security policy: script-src/);
    // The tests of all other pages hear of such things: see openPage.
    expect(complaints.splice(before).join('\n')).toMatch(/security policy: script-src/);
  });
});

describe('requests', () => {
  it('[B145] none leaves the page on any main flow, and nothing breaks the policy', async () => {
    const { page, complaints } = opened;
    // A spot is drawn and dragged, and its figures are looked at.
    await page.keyboard.press('s');
    const at = await pixelOf(page, [18.1734, 50.9287]);
    await page.mouse.click(at.x, at.y);
    await page.mouse.move(at.x, at.y);
    await page.mouse.down();
    await page.mouse.move(at.x + 30, at.y + 10, { steps: 3 });
    await page.mouse.up();
    // Every view at the foot, every button of the top bar and every line of its menu; what they open is closed again.
    const dialog = page.locator('dialog[open]');
    const closeDialog = async () => {
      await dialog.waitFor();
      await page.keyboard.press('Escape');
      await dialog.waitFor({ state: 'hidden' });
    };
    for (const view of await page
      .getByRole('navigation', { name: 'Views of time' })
      .getByRole('button')
      .all()) {
      // The one that is open would be closed.
      const open = () => view.getAttribute('aria-pressed');
      if ((await open()) !== 'true') await view.click();
      await expect.poll(open).toBe('true');
    }
    // By their names: Undo and Redo come and go while others are pressed.
    const top = page.locator('header button:visible:enabled:not([popovertarget])');
    const names = await top.evaluateAll((all) =>
      all.map((button) => button.ariaLabel ?? button.textContent.trim()),
    );
    expect(names.length).toBeGreaterThan(4);
    let pressed = 0;
    for (const name of names) {
      const button = page.locator('header').getByRole('button', { name, exact: true }).first();
      if ((await button.count()) === 0 || (await button.isDisabled())) continue;
      const opens = await button.getAttribute('aria-haspopup');
      await button.click();
      pressed++;
      if (opens === 'dialog') await closeDialog();
    }
    expect(pressed).toBeGreaterThan(3);
    const menu = page.locator('header button[popovertarget]').last();
    const lines = page.locator('header [popover] button:enabled');
    const count = await lines.count();
    expect(count).toBeGreaterThan(5);
    for (let i = 0; i < count; i++) {
      await menu.click();
      // Two are views at the foot, one asks for a file; all others are dialogs.
      const name = (await lines.nth(i).innerText()).split('\n')[0] ?? '';
      const asksForFile = /^Merge/.test(name) ? page.waitForEvent('filechooser') : null;
      await lines.nth(i).click();
      if (asksForFile) await asksForFile;
      else if (/^(Where to stand|At the field)/.test(name))
        await page.getByRole('region', { name }).waitFor();
      else await closeDialog();
    }
    await page.reload();
    await page.getByLabel('Name of the survey').waitFor();
    // An airfield of the catalogue.
    await page.locator('body').press('/');
    await page.getByRole('combobox', { name: /Code, name or town/ }).fill('EGLL');
    await page
      .getByRole('option', { name: /Heathrow/ })
      .first()
      .click();
    await expect.poll(() => page.getByLabel('Name of the survey').inputValue()).toMatch(/Heathrow/);
    await page.waitForSelector('[data-ready="true"]');
    const own = new URL(inject('baseUrl')).origin;
    expect(requests.length).toBeGreaterThan(10);
    expect(requests.filter((url) => !url.startsWith(own) && !/^(data|blob):/.test(url))).toEqual([]);
    expect(complaints).toEqual([]);
  });
});
