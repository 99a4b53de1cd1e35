import { describe, expect, it } from 'vitest';
import { linkFragment } from '../../src/exports/pass-on/link-fragment';
import { SurveyPassing, type Device } from '../../src/services/passing.svelte';
import { packText } from '../../src/storage/archive';
import { openSurvey } from '../../src/survey/open';

const text = (name: string, spots: number) =>
  JSON.stringify({
    type: 'FeatureCollection',
    sunside: { version: 1, site: { name, elevation: 186 } },
    features: Array.from({ length: spots }, (_, i) => ({
      type: 'Feature',
      id: `s${i}k2v4${i}`,
      properties: {
        kind: 'standing-spot',
        name: `Standing spot ${i} at the fence`,
        eyeHeight: 1.7,
        access: { status: 'public', hours: 'always open', checkedOn: '2026-05-30' },
      },
      geometry: { type: 'Point', coordinates: [18.1567296 + i * 0.0031417, 50.9254977 + i * 0.00173] },
    })),
  });

function setUp(device: Device = {}) {
  const opened: File[] = [];
  const merged: File[] = [];
  const view = { notice: null as string | null };
  const passing = new SurveyPassing({
    files: { openFile: (file) => Promise.resolve(void opened.push(file)) },
    merging: { withFile: (file) => Promise.resolve(void (file && merged.push(file))) },
    view,
    device,
    page: () => 'https://field.example/',
  });
  return { passing, opened, merged, view };
}

async function fragmentOf(json: string): Promise<string> {
  return linkFragment(await packText(json)) ?? '';
}

describe('a survey that comes in a link', () => {
  it('[E70] is shown first, kept only when it is opened, and gone when it is left', async () => {
    const { passing, opened } = setUp();
    await passing.take(await fragmentOf(text('Tolverby', 2)));
    expect(passing.arrived).toMatchObject({
      name: 'Tolverby',
      counts: [{ kind: 'standing-spot', count: 2 }],
    });
    expect(opened).toEqual([]);
    passing.arrived?.leave();
    expect([passing.arrived, opened]).toEqual([null, []]);
    await passing.take(await fragmentOf(text('Tolverby', 2)));
    await passing.arrived?.open();
    expect(passing.arrived).toBeNull();
    expect(await opened[0]?.text()).toBe(text('Tolverby', 2));
  });

  it('[E76] is merged with the open survey when that is asked for: it is not opened then', async () => {
    const { passing, opened, merged } = setUp();
    await passing.take(await fragmentOf(text('Tolverby', 2)));
    await passing.arrived?.merge();
    expect([passing.arrived, opened]).toEqual([null, []]);
    expect(await merged[0]?.text()).toBe(text('Tolverby', 2));
  });

  it('[E71] of two links the last one counts, in whichever order they are unpacked', async () => {
    const { passing } = setUp();
    const [first, second] = [await fragmentOf(text('First', 1)), await fragmentOf(text('Second', 1))];
    await Promise.all([passing.take(first), passing.take(second)]);
    expect(passing.arrived?.name).toBe('Second');
    await Promise.all([passing.take(first), passing.take('#survey-9=AAAA')]);
    expect(passing.arrived).toBeNull();
  });

  it('[E72] says plainly what is wrong with a link, and opens nothing', async () => {
    const good = await fragmentOf(text('Tolverby', 5));
    const cases: readonly (readonly [string, string])[] = [
      [good.slice(0, -40), 'cut on its way'],
      ['#survey-2=AAAA', 'newer version'],
      [`#survey-1=${'A'.repeat(9000)}`, 'longer than any'],
      [await fragmentOf(`{"x":"${'x'.repeat(2_000_000)}"}`), 'larger than any survey'],
      [await fragmentOf('[1,2]'), 'no survey'],
      [await fragmentOf('{"type":"FeatureCollection"}'), 'expected a list of features'],
    ];
    for (const [fragment, said] of cases) {
      const { passing, view } = setUp();
      await passing.take(fragment);
      expect(view.notice).toContain(said);
      expect(view.notice).toContain('The survey that is open stays.');
      expect(passing.arrived).toBeNull();
    }
  });

  it('[E73] leaves fragments of others alone', async () => {
    const { passing, view } = setUp();
    await passing.take('#help');
    expect([passing.arrived, view.notice]).toEqual([null, null]);
  });
});

describe('a survey that leaves', () => {
  it.each([
    [1, 500],
    [5, 800],
    [20, 1600],
  ])('[E74] %i spots make a link of at most %i characters that comes back whole', async (spots, most) => {
    const { passing } = setUp();
    const read = openSurvey(text('Tolverby', spots));
    const link = read.ok ? await (await passing.out()).link(read.survey) : null;
    expect(link?.length).toBeLessThan(most);
    const other = setUp();
    await other.passing.take(new URL(link ?? '').hash);
    await other.passing.arrived?.open();
    const back = openSurvey((await other.opened[0]?.text()) ?? '');
    expect(back.ok && read.ok && back.survey).toEqual(read.ok && read.survey);
  });

  it('[E75] a share sheet that is closed is no error; one that fails says what to do instead', async () => {
    const read = openSurvey(text('Tolverby', 1));
    if (!read.ok) throw new Error(read.reason);
    const failing = (error: Error) =>
      setUp({ canShare: () => true, share: () => Promise.reject(error) }).passing;
    expect((await failing(new Error('unused')).out()).canShare).toBe(true);
    expect((await setUp().passing.out()).canShare).toBe(false);
    expect(
      await (await failing(new DOMException('closed', 'AbortError')).out()).share(read.survey),
    ).toBeNull();
    expect(await (await failing(new Error('no room')).out()).share(read.survey)).toContain(
      'Save a file instead',
    );
  });
});
