import { readFileSync } from 'node:fs';
import { jsPDF } from 'jspdf';
import { describe, expect, test } from 'vitest';
import widths from '../../shared/fonts/hanken-grotesk.json' with { type: 'json' };

describe('the outlines for print', () => {
  test.each([400, 600] as const)('at %i have the widths that drawings are measured by', (weight) => {
    const bytes = readFileSync(new URL(`../../shared/fonts/hanken-grotesk-${weight}.ttf`, import.meta.url));
    const doc = new jsPDF();
    doc.addFileToVFS('own.ttf', bytes.toString('latin1'));
    doc.addFont('own.ttf', 'own', 'normal');
    const { metadata } = doc.setFont('own', 'normal').getFont();
    const glyphOf = (letter: string): number => metadata.characterToGlyph(letter.codePointAt(0) ?? 0);
    const told: Record<string, number> = widths.advances[weight];
    // The soft hyphen takes no room in a line; in the file it has the width of a hyphen.
    const held = Object.entries(told).filter(([letter]) => letter !== '\u00ad' && glyphOf(letter) !== 0);
    expect(held.length).toBeGreaterThan(150);
    const odd = held.filter(([letter, em]) => Math.abs(metadata.widthOfGlyph(glyphOf(letter)) / 1000 - em) > 0.0011);
    expect(odd).toEqual([]);
    for (const letter of 'Kickset 0123 m³ · × – ½ ° £') expect(glyphOf(letter), letter).toBeGreaterThan(0);
  });
});
