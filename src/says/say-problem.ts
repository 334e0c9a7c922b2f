import type { Problem } from '../base/index.ts';
import { slipWords } from './say-slip.ts';
import { sentence } from './words.ts';

/** What kind of fault it is, as a phrase; what was expected and found is put behind it. */
const FAULTS: Readonly<Record<string, string>> = {
  altered: 'has been altered since it was released: its text no longer has its hash',
  'along-hinge': 'runs along the hinge line and not across it',
  'and-more': 'and more problems',
  'bad-face': 'has a face without enough corners',
  'bad-index': 'points at something that is not in the file',
  'bad-record': 'is not as it should be',
  'cannot-open': 'is not the way in which the closure can open',
  circle: 'leads back to itself',
  compressed: 'is compressed',
  'cut-short': 'the file ends too soon',
  disconnected: 'hangs together with nothing else of the survey',
  duplicate: 'stands there twice',
  'duplicate-id': 'the same id is used twice',
  'empty-file': 'the file is empty',
  holes: 'has holes where a wall should be',
  'marks-in-line': 'its marks stand in one line',
  'marks-do-not-fit': 'its marks do not stand to each other as those of the survey do',
  missing: 'is missing',
  negative: 'is below zero',
  'net-gives': 'these marks can still give together',
  'newer-version': 'was saved by a newer version of this program',
  'no-angle': 'is no angle of a corner',
  'no-area': 'encloses nothing',
  'no-floor-or-roof': 'shows no floor or no roof here',
  'no-size': 'has no size',
  'no-such-closure': 'names a closure that is not there',
  'no-such-revision': 'is no revision of this design',
  'no-such-node': 'names something that is not there',
  'no-such-mark': 'names a mark that is not there',
  'no-triangles': 'holds no triangles',
  'not-a-design': 'is not a design file',
  'not-a-mesh': 'is not a scan that can be read',
  'not-a-number': 'is not a number',
  'not-a-reply': 'is not a reply to a review copy',
  'not-allowed': 'is not one of the possible values',
  'not-convex': 'has an inward corner',
  'not-held': 'is held by no reading',
  'not-json': 'the file cannot be read',
  'nothing-free': 'leave no room free',
  'out-of-order': 'does not stand forward of the station before',
  'out-of-step': 'does not match the points beside it',
  'roof-below-floor': 'ends below where it begins',
  'same-mark': 'begins and ends at the same mark',
  'self-crossing': 'crosses itself',
  'sides-cross': 'left and right sides cross or have changed places',
  'too-big': 'is too large',
  'too-deep': 'is nested too deeply',
  'too-few-marks': 'has too few marks that the survey knows',
  'too-few-points': 'has too few points',
  'too-few-stations': 'too few stations to make a space',
  'too-large': 'is too large',
  'too-many': 'too many of them',
  'too-steep': 'is steeper than straight up or down',
  'too-small': 'is too small',
  'unknown-fitting': 'is a fitting that this program does not know',
  'unknown-key': 'holds something that this program does not know',
  'unknown-material': 'is a material that the catalog does not have',
  'wrong-type': 'is of the wrong kind',
  'wrong-unit': 'is read in the wrong unit',
  zero: 'is zero',
};

/** True when the code has words of its own. */
export const hasProblemWords = (code: string): boolean => code in FAULTS;

const singular = (word: string): string =>
  word.endsWith('sses') || word.endsWith('xes')
    ? word.slice(0, -2)
    : word.endsWith('s') && !word.endsWith('ss')
      ? word.slice(0, -1)
      : word;

/** `stationsMm` → stations, `innerProfile` → inner profile: a key as a person would say it. */
const keyWords = (key: string): string =>
  key
    .replace(/(?:Mm|Kg|Deg)$/, '')
    .replace(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`)
    .trim();

/** A path within a node as words: `place.x.mm` → place, x. */
export const sayFieldName = (path: string): string =>
  path
    .split('.')
    .map(keyWords)
    .filter((word) => word !== '' && word !== 'mm')
    .join(', ');

/** A path into the document as words: `survey.stations[2].left` → `survey, station 3, left`. */
export const sayPlace = (at: string): string =>
  at
    .split('.')
    .filter((part) => part !== '')
    .map((part) => {
      const match = /^([^[]*)((?:\[\d+\])*)$/.exec(part);
      if (!match) return part;
      const [, key = '', indices = ''] = match;
      const numbers = [...indices.matchAll(/\d+/g)].map(([digits]) => Number(digits) + 1);
      const word = keyWords(key);
      return numbers.length === 0 ? word : `${singular(word)} ${numbers.join('.')}`;
    })
    .join(', ');

/** A problem from outside as one line: where, what, what was expected and what was found. */
export const sayProblem = (problem: Problem): string => {
  const place = sayPlace(problem.at);
  const slip = slipWords(problem.code);
  const fault = FAULTS[problem.code] ?? (slip === null ? problem.code.replaceAll('-', ' ') : `may be ${slip}`);
  const expected = problem.expected === undefined ? '' : `; expected ${problem.expected}`;
  const got = problem.got === undefined ? '' : `, found ${problem.got}`;
  return sentence(`${place === '' ? '' : `${place}: `}${fault}${expected}${got}`);
};
