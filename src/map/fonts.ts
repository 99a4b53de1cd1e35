import latin400 from '@fontsource/source-sans-3/files/source-sans-3-latin-400-normal.woff2?url';
import latin600 from '@fontsource/source-sans-3/files/source-sans-3-latin-600-normal.woff2?url';
import latinExt400 from '@fontsource/source-sans-3/files/source-sans-3-latin-ext-400-normal.woff2?url';
import latinExt600 from '@fontsource/source-sans-3/files/source-sans-3-latin-ext-600-normal.woff2?url';
import { fonts } from '../../styles/map-style';

const latin = ['U+0000-00FF', 'U+0131', 'U+0152-0153', 'U+02C6', 'U+02DA', 'U+02DC', 'U+2000-206F', 'U+2212'];
const latinExt = ['U+0100-02BA', 'U+1E00-1E9F', 'U+1EF2-1EFF'];

const file = (url: string) => new URL(url, location.href).href;
const face = (a: string, b: string) => [
  { url: file(a), 'unicode-range': latin },
  { url: file(b), 'unicode-range': latinExt },
];

/** The files of the program's own typeface, as the map wants them. */
export const fontFaces = () => ({
  [fonts.plain]: face(latin400, latinExt400),
  [fonts.strong]: face(latin600, latinExt600),
});
