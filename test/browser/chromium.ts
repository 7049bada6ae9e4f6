import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe } from "vitest";

const asked = process.env["CHROMIUM_PATH"] ?? "/usr/bin/chromium";
/** The one that CHROMIUM_PATH names, else Debian's; null on a machine without. */
const chromiumPath = existsSync(asked) ? asked : null;

/** The browser asks for nothing outside by itself, and needs neither a graphics processor nor a sandbox of its own. */
const quietFlags = [
	"--no-sandbox",
	"--disable-gpu",
	"--disable-quic",
	"--no-first-run",
	"--disable-background-networking",
	"--disable-component-update",
	"--disable-sync",
];

export interface OpenOptions {
	/** In CSS pixels; 1000 unless told. */
	readonly widthPx?: number;
	readonly heightPx?: number;
	/** Which of its two looks the page shows; light unless told. */
	readonly scheme?: "light" | "dark";
}

/** A page on screen and all that it said and asked for while it loaded and since. */
export interface OpenPage {
	readonly page: Page;
	/** The address of the file it was opened from. */
	readonly address: string;
	/** Console messages, such as a refusal by the content policy. */
	readonly said: readonly string[];
	/** Errors that nobody caught, and dialogs. */
	readonly errors: readonly string[];
	/** Addresses asked for, but the page's own. None is ever answered. */
	readonly requests: readonly string[];
	/** Closes the page; withBrowser does it at the end otherwise. */
	close(): Promise<void>;
}

export interface TestBrowser {
	/** Writes the page to a file of its own and opens that, as a person does who was sent it. */
	openPage(html: string, options?: OpenOptions): Promise<OpenPage>;
}

/**
 * A group of tests that share one browser. Skipped with a notice where there is none, never with BOARDWALK_CI=1: then
 * the first test fails and says what is missing.
 */
export function withBrowser(name: string, tests: (browser: TestBrowser) => void): void {
	const isSkipped = chromiumPath === null && process.env["BOARDWALK_CI"] !== "1";
	if (isSkipped) console.warn(`No Chromium here (install it or set CHROMIUM_PATH): skipped are the tests of ${name}.`);
	describe.skipIf(isSkipped)(name, () => {
		let browser: Browser | undefined;
		const folder = mkdtempSync(join(tmpdir(), "boardwalk-browser-"));
		let opened = 0;

		beforeAll(async () => {
			if (chromiumPath === null) throw new Error("Chromium is missing: install it, or set CHROMIUM_PATH.");
			browser = await chromium.launch({ executablePath: chromiumPath, args: quietFlags });
		});
		afterAll(async () => {
			await browser?.close();
			rmSync(folder, { recursive: true, force: true });
		});

		tests({
			async openPage(html, options = {}) {
				if (!browser) throw new Error("The browser has not started.");
				opened += 1;
				const path = join(folder, `page-${opened}.html`);
				writeFileSync(path, html);
				return open(browser, pathToFileURL(path).href, options);
			},
		});
	});
}

async function open(browser: Browser, address: string, options: OpenOptions): Promise<OpenPage> {
	const context = await browser.newContext({
		viewport: { width: options.widthPx ?? 1000, height: options.heightPx ?? 800 },
		colorScheme: options.scheme ?? "light",
	});
	const said: string[] = [];
	const errors: string[] = [];
	const requests: string[] = [];
	await context.route("**/*", async (route) => {
		if (route.request().url() === address) return route.continue();
		return route.abort();
	});
	const page = await context.newPage();
	// Counted before anything is refused, so that what the content policy stops in time is no request.
	page.on("request", (request) => {
		if (request.url() !== address) requests.push(request.url());
	});
	page.on("console", (message) => said.push(message.text()));
	page.on("pageerror", (error) => errors.push(String(error)));
	page.on("dialog", async (dialog) => {
		errors.push(`dialog: ${dialog.message()}`);
		await dialog.dismiss();
	});
	context.on("page", (other) => {
		if (other !== page) errors.push(`window: ${other.url()}`);
	});
	await page.goto(address, { waitUntil: "load" });
	return { page, address, said, errors, requests, close: () => context.close() };
}

/** The page as it prints on this paper; a size or margins in its own `@page` rules win. */
export async function pdfOf(page: Page, paper: "A4" | "Letter"): Promise<Uint8Array> {
	return page.pdf({ format: paper, preferCSSPageSize: true, printBackground: false });
}
