import { inflateSync } from 'node:zlib';

/** A shape of a page in mm from its upper left corner: the box about it, and whether it was filled or drawn along. */
export interface PdfShape {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
  readonly how: 'fill' | 'stroke' | 'both';
  /** What it was drawn along with. */
  readonly pen: PdfPen;
}

export interface PdfPen {
  readonly wMm: number;
  readonly round: boolean;
  readonly dashMm: readonly number[];
  readonly dashAtMm: number;
}

export interface PdfPage {
  readonly wMm: number;
  readonly hMm: number;
  readonly shapes: readonly PdfShape[];
  /** Lines of text as far as their letters can be told, halos left out. */
  readonly text: readonly string[];
  /** Pictures made of dots that the page paints. */
  readonly images: number;
}

type Matrix = readonly [number, number, number, number, number, number];

const MM = 25.4 / 72;

const times = (m: Matrix, n: Matrix): Matrix => [
  m[0] * n[0] + m[1] * n[2],
  m[0] * n[1] + m[1] * n[3],
  m[2] * n[0] + m[3] * n[2],
  m[2] * n[1] + m[3] * n[3],
  m[4] * n[0] + m[5] * n[2] + n[4],
  m[4] * n[1] + m[5] * n[3] + n[5],
];

interface Body {
  readonly head: string;
  readonly stream: Buffer | null;
}

/** Objects of a file by number. Reads them one after the other; a file that hides them in streams is not understood. */
function bodiesOf(file: Buffer): Map<number, Body> {
  const text = file.toString('latin1');
  const bodies = new Map<number, Body>();
  for (const match of text.matchAll(/(?:^|[\r\n])(\d+) 0 obj\b/g)) {
    const from = match.index + match[0].length;
    const streamAt = text.indexOf('stream', from);
    const endAt = text.indexOf('endobj', from);
    if (streamAt < 0 || streamAt > endAt) {
      bodies.set(Number(match[1]), { head: text.slice(from, endAt), stream: null });
      continue;
    }
    const head = text.slice(from, streamAt);
    const start = streamAt + 'stream'.length + (text.startsWith('\r\n', streamAt + 6) ? 2 : 1);
    const told = /\/Length (\d+)(?! \d+ R)/.exec(head)?.[1];
    const end = told === undefined ? text.indexOf('endstream', start) : start + Number(told);
    const bytes = file.subarray(start, end);
    bodies.set(Number(match[1]), { head, stream: head.includes('/FlateDecode') ? inflateSync(bytes) : bytes });
  }
  return bodies;
}

const key = (glyph = ''): string => glyph.toUpperCase().padStart(4, '0');

/** Letters told by their numbers; the last one so many further on. */
function chars(code = '', on: number): string {
  const numbers = (code.match(/.{4}/g) ?? []).map((c) => Number.parseInt(c, 16));
  return String.fromCharCode(...numbers.map((n, i) => (i === numbers.length - 1 ? n + on : n)));
}

/** Glyph to letters of every font of the file, by the name a page calls it. */
function lettersOf(bodies: Map<number, Body>): Map<string, Map<string, string>> {
  const found = new Map<string, Map<string, string>>();
  for (const { head } of bodies.values()) {
    for (const [, name, number] of head.matchAll(/\/([\w-]+) (\d+) 0 R/g)) {
      const unicode = /\/ToUnicode (\d+) 0 R/.exec(bodies.get(Number(number))?.head ?? '')?.[1];
      const map = bodies.get(Number(unicode))?.stream?.toString('latin1');
      if (name === undefined || map === undefined || name === 'ToUnicode') continue;
      const letters = found.get(name) ?? new Map<string, string>();
      for (const [, rows] of map.matchAll(/beginbfchar([\s\S]*?)endbfchar/g)) {
        for (const [, glyph, code] of (rows ?? '').matchAll(/<(\w+)>\s*<(\w+)>/g))
          letters.set(key(glyph), chars(code, 0));
      }
      for (const [, rows] of map.matchAll(/beginbfrange([\s\S]*?)endbfrange/g)) {
        for (const [, first, last, code] of (rows ?? '').matchAll(/<(\w+)>\s*<(\w+)>\s*<(\w+)>/g)) {
          const from = Number.parseInt(first ?? '', 16);
          for (let g = from; g <= Number.parseInt(last ?? '', 16); g++)
            letters.set(key(g.toString(16)), chars(code, g - from));
        }
      }
      found.set(name, letters);
    }
  }
  return found;
}

/** What painting is done with until the page says otherwise. */
interface Hand {
  readonly at: Matrix;
  readonly width: number;
  readonly round: boolean;
  readonly dash: readonly number[];
  readonly dashAt: number;
  /** Letters are drawn along their edges only: a halo. */
  readonly halo: boolean;
}

function penOf({ at, width, round, dash, dashAt }: Hand): PdfPen {
  const mm = Math.sqrt(Math.abs(at[0] * at[3] - at[1] * at[2])) * MM;
  return { wMm: width * mm, round, dashMm: dash.map((d) => d * mm), dashAtMm: dashAt * mm };
}

interface Painted {
  readonly shapes: PdfShape[];
  readonly text: string[];
  images: number;
}

function paint(
  content: string,
  start: Matrix,
  high: number,
  into: Painted,
  inner: (name: string, at: Matrix) => void,
  letters: Map<string, Map<string, string>>,
): void {
  const first: Hand = { at: start, width: 1, round: false, dash: [], dashAt: 0, halo: false };
  let hand = first;
  const kept: Hand[] = [];
  let points: [number, number][] = [];
  let stack: string[] = [];
  let font = '';
  // Some writers set a line letter by letter.
  let line = '';
  const nums = (n: number): number[] => stack.slice(-n).map(Number);
  const add = (x: number, y: number): void => {
    const { at } = hand;
    const px = x * at[0] + y * at[2] + at[4];
    const py = x * at[1] + y * at[3] + at[5];
    points.push([px * MM, (high - py) * MM]);
  };
  const end = (how: PdfShape['how'] | null): void => {
    if (how && points.length > 1) {
      const [xs, ys] = [points.map((p) => p[0]), points.map((p) => p[1])];
      const [x, y] = [Math.min(...xs), Math.min(...ys)];
      into.shapes.push({ x, y, w: Math.max(...xs) - x, h: Math.max(...ys) - y, how, pen: penOf(hand) });
    }
    points = [];
  };
  for (const [token] of content.matchAll(/\[[^\]]*\]|<<.*?>>|<[0-9A-Fa-f\s]*>|\([^)]*\)|\/[\w.-]+|[^\s[\]<>()/]+/gs)) {
    if (/^[[</(\d.+-]/.test(token)) {
      stack.push(token);
      continue;
    }
    if (token === 'q') kept.push(hand);
    else if (token === 'Q') hand = kept.pop() ?? first;
    else if (token === 'cm') hand = { ...hand, at: times(nums(6) as unknown as Matrix, hand.at) };
    else if (token === 'w') hand = { ...hand, width: nums(1)[0] ?? 1 };
    else if (token === 'J') hand = { ...hand, round: nums(1)[0] === 1 };
    else if (token === 'Tr') hand = { ...hand, halo: nums(1)[0] === 1 };
    else if (token === 'd') {
      const dash = (stack.at(-2) ?? '').match(/[\d.]+/g) ?? [];
      hand = { ...hand, dash: dash.map(Number), dashAt: nums(1)[0] ?? 0 };
    } else if (token === 'm' || token === 'l') add(...(nums(2) as [number, number]));
    else if (token === 'c') {
      const [, , , , x = 0, y = 0] = nums(6);
      add(x, y);
    } else if (token === 're') {
      const [x = 0, y = 0, w = 0, h = 0] = nums(4);
      for (const [px, py] of [
        [x, y],
        [x + w, y],
        [x + w, y + h],
        [x, y + h],
      ] as const)
        add(px, py);
    } else if (token === 'f' || token === 'f*' || token === 'F') end('fill');
    else if (token === 'S' || token === 's') end('stroke');
    else if (/^[bB]\*?$/.test(token)) end('both');
    else if (token === 'n') end(null);
    else if (token === 'Tf') font = (stack.at(-2) ?? '').slice(1);
    else if (token === 'ET') {
      if (line !== '') into.text.push(line);
      line = '';
    } else if ((token === 'Tj' || token === 'TJ') && !hand.halo) {
      const glyphs = [...(stack.at(-1) ?? '').matchAll(/<([0-9A-Fa-f\s]*)>/g)].flatMap(
        ([, hex]) => hex?.match(/.{4}/g) ?? [],
      );
      line += glyphs.map((g) => letters.get(font)?.get(g.toUpperCase()) ?? '').join('');
    } else if (token === 'Do') inner((stack.at(-1) ?? '').slice(1), hand.at);
    stack = [];
  }
}

/** The pages of a PDF file: their shapes with true sizes, their text. */
export function readPdf(file: Buffer): PdfPage[] {
  const bodies = bodiesOf(file);
  const letters = lettersOf(bodies);
  const pages = [...bodies.values()].filter(({ head }) => /\/Type\s*\/Page\b(?!s)/.test(head));
  return pages.map(({ head }) => {
    const box = /\/MediaBox\s*\[\s*([\d.\s-]+)\]/.exec(head)?.[1]?.trim().split(/\s+/).map(Number) ?? [];
    const [, , w = 0, high = 0] = box;
    const into: Painted = { shapes: [], text: [], images: 0 };
    const named = (name: string, at: Matrix): void => {
      const number = [...bodies.values()].map((b) => new RegExp(`/${name} (\\d+) 0 R`).exec(b.head)?.[1]).find(Boolean);
      const body = bodies.get(Number(number));
      if (body?.head.includes('/Subtype /Image')) into.images += 1;
      else if (body?.stream) paint(body.stream.toString('latin1'), at, high, into, named, letters);
    };
    const content = [...(/\/Contents\s*(\[[^\]]*\]|\d+ 0 R)/.exec(head)?.[1] ?? '').matchAll(/(\d+) 0 R/g)]
      .map(([, n]) => bodies.get(Number(n))?.stream?.toString('latin1') ?? '')
      .join('\n');
    paint(content, [1, 0, 0, 1, 0, 0], high, into, named, letters);
    return { wMm: w * MM, hMm: high * MM, ...into };
  });
}
