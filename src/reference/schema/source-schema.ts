import * as v from 'valibot';

const filled = v.pipe(v.string(), v.minLength(1, 'may not be empty'));

/**
 * One document that figures are taken from. `read` says how: `page`, the document itself was read; `quotation`, another
 * page quotes or reproduces it; `memory`, it is believed to say so; `none`, there is no document (trade habit, own sums).
 */
export const sourceSchema = v.strictObject({
  id: v.pipe(v.string(), v.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'an id is lower case words with dashes')),
  title: filled,
  publisher: v.exactOptional(filled),
  edition: v.exactOptional(filled),
  date: v.exactOptional(filled),
  read: v.picklist(['page', 'quotation', 'memory', 'none']),
  address: v.exactOptional(filled),
});

export type Source = v.InferOutput<typeof sourceSchema>;
