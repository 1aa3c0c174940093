/** What a px of our style sheets is a part of: the letters of a device whose user has changed nothing. */
const USUAL_PX = 16;
/** Edges and lines stay as thin as they are. */
const THIN_PX = 2;

const PX = /(\d*\.?\d+)px\b/g;

const parts = (px: string): string => String(Number((Number(px) / USUAL_PX).toFixed(5)));

/** The value of a declaration with its lengths in parts of the letters' height. */
export const remOf = (value: string): string =>
  value.replace(PX, (whole, px: string) => (Number(px) <= THIN_PX ? whole : `${parts(px)}rem`));

/** The same for the widths and heights at which the page is laid out otherwise. */
export const emOf = (query: string): string => query.replace(PX, (_, px: string) => `${parts(px)}em`);

interface Sheet {
  walkDecls(each: (declaration: { value: string }) => void): void;
  walkAtRules(name: RegExp, each: (rule: { params: string }) => void): void;
}

/**
 * A style sheet whose sizes follow the text size of the device. They are written in px as they are at 100 %; built, they are parts of
 * the letters' height. With text at 200 % the page is then what it is at twice the zoom: nothing is cut off or runs into another, and
 * nobody has to think of it while a sheet is written. A plugin of the style sheets' own builder.
 */
export const textSizeFollowed = {
  postcssPlugin: 'text-size-followed',
  OnceExit(sheet: Sheet): void {
    sheet.walkDecls((declaration) => {
      declaration.value = remOf(declaration.value);
    });
    sheet.walkAtRules(/^media$/, (rule) => {
      rule.params = emOf(rule.params);
    });
    // An em of a container is of its own letters, not the page's.
    sheet.walkAtRules(/^container$/, (rule) => {
      rule.params = remOf(rule.params);
    });
  },
};
