/** Text of a PDF file itself is bytes of one letter each. */
export function latin(text: string): Uint8Array {
  const bytes = new Uint8Array(text.length);
  for (let i = 0; i < text.length; i++) bytes[i] = text.charCodeAt(i) & 0xff;
  return bytes;
}

/** Words for a reader's own window: any letter, told by its number. */
export function spoken(text: string): string {
  let hex = 'FEFF';
  for (let i = 0; i < text.length; i++) hex += text.charCodeAt(i).toString(16).padStart(4, '0').toUpperCase();
  return `<${hex}>`;
}

/** Squeezed as PDF readers expect it. */
async function squeezed(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array> {
  const stream = new Blob([bytes]).stream().pipeThrough(new CompressionStream('deflate'));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

/** The numbered objects of one PDF file. */
export interface Objects {
  /** Keeps a number for an object that is written later. */
  reserve(): number;
  /** Writes an object under its number. */
  put(number: number, body: string): void;
  /** Writes bytes, squeezed; `entries` are told beside their length. */
  stream(number: number, bytes: Uint8Array<ArrayBuffer>, entries?: string): Promise<void>;
  /** The whole file. `root` and `info` are numbers of objects. */
  file(root: number, info: number): Uint8Array<ArrayBuffer>;
}

export function pdfObjects(): Objects {
  const bodies: (readonly Uint8Array[] | undefined)[] = [undefined];
  return {
    reserve() {
      bodies.push(undefined);
      return bodies.length - 1;
    },
    put(number, body) {
      bodies[number] = [latin(body)];
    },
    async stream(number, bytes, entries = '') {
      const small = await squeezed(bytes);
      const head = `<< /Length ${small.length} /Filter /FlateDecode ${entries}>>\nstream\n`;
      bodies[number] = [latin(head), small, latin('\nendstream')];
    },
    file(root, info) {
      // Four bytes over 127 say that the file is no text, before anything tries to mend its line ends.
      const parts: Uint8Array[] = [latin('%PDF-1.7\n%\u00e2\u00e3\u00cf\u00d3\n')];
      let at = parts[0]?.length ?? 0;
      const offsets: number[] = [];
      const add = (part: Uint8Array): void => {
        parts.push(part);
        at += part.length;
      };
      for (const [number, body] of bodies.entries()) {
        if (number === 0) continue;
        if (!body) throw new Error(`object ${number} was never written`);
        offsets[number] = at;
        add(latin(`${number} 0 obj\n`));
        body.forEach(add);
        add(latin('\nendobj\n'));
      }
      const start = at;
      const rows = bodies.map((_, number) =>
        number === 0 ? '0000000000 65535 f \n' : `${String(offsets[number] ?? 0).padStart(10, '0')} 00000 n \n`,
      );
      add(latin(`xref\n0 ${bodies.length}\n${rows.join('')}`));
      add(
        latin(
          `trailer\n<< /Size ${bodies.length} /Root ${root} 0 R /Info ${info} 0 R >>\nstartxref\n${start}\n%%EOF\n`,
        ),
      );
      const whole = new Uint8Array(at);
      let to = 0;
      for (const part of parts) {
        whole.set(part, to);
        to += part.length;
      }
      return whole;
    },
  };
}
