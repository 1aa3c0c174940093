export interface FoundBrowser {
  readonly executablePath: string;
  /** Additions to process.env. */
  readonly env: Readonly<Record<string, string>>;
  readonly args: readonly string[];
  /** What `--version` printed. */
  readonly version: string;
  /** Which step of the order found it. */
  readonly from: 'E2E_BROWSER' | 'system' | 'playwright' | '@sparticuz/chromium';
}

/** The browser to launch, found once per test run. Throws one clear line when there is none. */
export function findBrowser(): Promise<FoundBrowser>;
