/** How often each layer of each pane has been drawn since the page was opened: read by the browser tests. */
export type LayerName = 'still' | 'work' | 'live';
export type PaneName = 'plan' | 'face';
export type DrawCounts = Record<PaneName, Record<LayerName, number>>;

const none = (): Record<LayerName, number> => ({ still: 0, work: 0, live: 0 });
export const drawCounts: DrawCounts = { plan: none(), face: none() };
