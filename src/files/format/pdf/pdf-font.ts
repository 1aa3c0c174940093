import { latin, type Objects } from './pdf-objects.ts';
import type { TrueType } from './true-type.ts';

const hex = (n: number): string => n.toString(16).padStart(4, '0').toUpperCase();

/** What stands for a letter the font has not: its plain form, else a question mark. */
function nearest(font: TrueType, letter: string): number {
  const plain = letter.normalize('NFKD').codePointAt(0) ?? 0;
  return font.glyphOf(plain) || font.glyphOf(63);
}

/** A font of one PDF file: letters become glyphs, and every glyph that was used is remembered with its letter. */
export class PdfFont {
  readonly name: string;
  readonly #font: TrueType;
  readonly #used = new Map<number, string>();

  constructor(name: string, font: TrueType) {
    this.name = name;
    this.#font = font;
  }

  /** A line of text as the numbers of its glyphs. */
  glyphs(text: string): string {
    let said = '';
    for (const letter of text) {
      const glyph = this.#font.glyphOf(letter.codePointAt(0) ?? 0) || nearest(this.#font, letter);
      if (!this.#used.has(glyph)) this.#used.set(glyph, letter);
      said += hex(glyph);
    }
    return `<${said}>`;
  }

  /** Letters of the glyphs, so that text can be searched and copied. */
  #toUnicode(): string {
    const rows = [...this.#used]
      .sort(([a], [b]) => a - b)
      .map(([glyph, letter]) => {
        const code = [...letter].flatMap((c) => Array.from({ length: c.length }, (_, i) => hex(c.charCodeAt(i))));
        return `<${hex(glyph)}> <${code.join('')}>`;
      });
    const groups: string[] = [];
    for (let i = 0; i < rows.length; i += 100) {
      const some = rows.slice(i, i + 100);
      groups.push(`${some.length} beginbfchar\n${some.join('\n')}\nendbfchar`);
    }
    return (
      '/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n' +
      '/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def\n' +
      '/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n1 begincodespacerange\n<0000> <FFFF>\nendcodespacerange\n' +
      `${groups.join('\n')}\nendcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n`
    );
  }

  /** Writes the font with its outlines; gives the number of its object. Called once, when all text is set. */
  async write(objects: Objects): Promise<number> {
    const font = this.#font;
    const em = (n: number): number => Math.round((n * 1000) / font.unitsPerEm);
    const [file, descriptor, cid, unicode, whole] = [1, 2, 3, 4, 5].map(() => objects.reserve()) as [
      number,
      number,
      number,
      number,
      number,
    ];
    await objects.stream(file, new Uint8Array(font.bytes), `/Length1 ${font.bytes.length} `);
    objects.put(
      descriptor,
      `<< /Type /FontDescriptor /FontName /${this.name} /Flags 4 /FontBBox [${font.box.map(em).join(' ')}] /ItalicAngle 0` +
        ` /Ascent ${em(font.ascent)} /Descent ${em(font.descent)} /CapHeight ${em(font.capHeight)} /StemV 80 /FontFile2 ${file} 0 R >>`,
    );
    objects.put(
      cid,
      `<< /Type /Font /Subtype /CIDFontType2 /BaseFont /${this.name} /CIDToGIDMap /Identity /DW 1000` +
        ` /CIDSystemInfo << /Registry (Adobe) /Ordering (Identity) /Supplement 0 >> /FontDescriptor ${descriptor} 0 R` +
        ` /W [0 [${font.widths.map(em).join(' ')}]] >>`,
    );
    await objects.stream(unicode, new Uint8Array(latin(this.#toUnicode())));
    objects.put(
      whole,
      `<< /Type /Font /Subtype /Type0 /BaseFont /${this.name} /Encoding /Identity-H /DescendantFonts [${cid} 0 R] /ToUnicode ${unicode} 0 R >>`,
    );
    return whole;
  }
}
