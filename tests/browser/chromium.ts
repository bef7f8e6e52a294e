/** Headless Chromium, spoken to through a pipe: opens files, sizes the window, asks the page, takes pictures. */

import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Readable, Writable } from 'node:stream';

/** The path of a browser on this machine, or undefined. */
export function findChromium(): string | undefined {
  const names = [process.env['CHROMIUM'], 'chromium', 'chromium-browser', 'google-chrome'];
  return names.find(
    (name) => name !== undefined && spawnSync(name, ['--version'], { stdio: 'ignore' }).status === 0,
  );
}

export interface View {
  readonly width: number;
  readonly height: number;
  readonly scheme: 'light' | 'dark';
  readonly media?: 'screen' | 'print';
}

export interface Browser {
  /** Opens a file in a window of this size; what the page complained of is in `complaints`. */
  readonly open: (path: string, view: View) => Promise<void>;
  /** The same page in another window. */
  readonly show: (view: View) => Promise<void>;
  /** Evaluates an expression of JavaScript in the page. */
  readonly ask: (expression: string) => Promise<unknown>;
  readonly press: (key: 'Tab') => Promise<void>;
  /** The whole page as a PNG, base64. */
  readonly picture: () => Promise<string>;
  /** A4, as a PDF in base64. */
  readonly pdf: () => Promise<string>;
  readonly complaints: readonly string[];
  readonly close: () => void;
}

type Answer = Readonly<Record<string, unknown>>;

const record = (value: unknown): Answer =>
  typeof value === 'object' && value !== null ? Object.fromEntries(Object.entries(value)) : {};

const rows = (value: unknown): readonly Answer[] => (Array.isArray(value) ? value.map(record) : []);

interface Pipe {
  readonly send: (method: string, params?: object, session?: string) => Promise<Answer>;
  readonly on: (listener: (method: string, params: Answer) => void) => void;
}

function pipeOf(started: ChildProcess): Pipe {
  const [, , , to, from] = started.stdio;
  const waiting = new Map<number, { done: (answer: Answer) => void; failed: (why: Error) => void }>();
  const listeners: ((method: string, params: Answer) => void)[] = [];
  let number = 0;
  let rest = '';
  readable(from).on('data', (bytes: Buffer) => {
    const parts = `${rest}${bytes.toString('utf8')}`.split('\0');
    rest = parts.pop() ?? '';
    for (const part of parts) {
      const message = record(JSON.parse(part));
      const id = message['id'];
      const asked = typeof id === 'number' ? waiting.get(id) : undefined;
      if (asked && message['error']) asked.failed(new Error(JSON.stringify(message['error'])));
      else if (asked) asked.done(record(message['result']));
      else
        for (const listener of listeners)
          listener(String(message['method']), record(message['params'] ?? {}));
    }
  });
  return {
    on: (listener) => listeners.push(listener),
    send: (method, params = {}, session) =>
      new Promise((done, failed) => {
        number += 1;
        waiting.set(number, { done, failed });
        const text = JSON.stringify({
          id: number,
          method,
          params,
          ...(session ? { sessionId: session } : {}),
        });
        writable(to).write(`${text}\0`);
      }),
  };
}

function readable(stream: ChildProcess['stdio'][number] | undefined): Readable {
  if (stream && 'read' in stream) return stream;
  throw new Error('no pipe from the browser');
}

function writable(stream: ChildProcess['stdio'][number] | undefined): Writable {
  if (stream && 'write' in stream) return stream;
  throw new Error('no pipe to the browser');
}

export async function startChromium(name: string): Promise<Browser> {
  const profile = mkdtempSync(join(tmpdir(), 'neckring-browser-'));
  const started = spawn(
    name,
    [
      '--headless',
      '--no-sandbox',
      '--disable-gpu',
      '--disable-dev-shm-usage',
      '--hide-scrollbars',
      '--remote-debugging-pipe',
      `--user-data-dir=${profile}`,
      'about:blank',
    ],
    { stdio: ['ignore', 'ignore', 'ignore', 'pipe', 'pipe'] },
  );
  const pipe = pipeOf(started);
  const targets = rows((await pipe.send('Target.getTargets'))['targetInfos']);
  const page = targets.find((one) => one['type'] === 'page');
  const attached = await pipe.send('Target.attachToTarget', { targetId: page?.['targetId'], flatten: true });
  const session = String(attached['sessionId']);
  const send = (method: string, params: object = {}): Promise<Answer> => pipe.send(method, params, session);
  const complaints: string[] = [];
  let loaded: () => void = () => {};
  pipe.on((method, params) => {
    if (method === 'Page.loadEventFired') loaded();
    if (method === 'Log.entryAdded') complaints.push(JSON.stringify(params['entry']));
    if (method === 'Runtime.exceptionThrown' || method === 'Runtime.consoleAPICalled')
      complaints.push(JSON.stringify(params));
  });
  for (const domain of ['Page', 'Runtime', 'Log']) await send(`${domain}.enable`);
  const show = async ({ width, height, scheme, media = 'screen' }: View): Promise<void> => {
    const mobile = width < 600;
    await send('Emulation.setDeviceMetricsOverride', { width, height, deviceScaleFactor: 1, mobile });
    const features = [{ name: 'prefers-color-scheme', value: scheme }];
    await send('Emulation.setEmulatedMedia', { media, features });
  };
  return {
    complaints,
    show,
    open: async (path, view) => {
      await show(view);
      const isLoaded = new Promise<void>((done) => {
        loaded = done;
      });
      await send('Page.navigate', { url: `file://${path}` });
      await isLoaded;
    },
    ask: async (expression) => {
      const answer = await send('Runtime.evaluate', { expression, returnByValue: true });
      if (answer['exceptionDetails']) throw new Error(JSON.stringify(answer['exceptionDetails']));
      return record(answer['result'])['value'];
    },
    press: async (key) => {
      const params = { key, code: key, windowsVirtualKeyCode: 9 };
      await send('Input.dispatchKeyEvent', { type: 'keyDown', ...params });
      await send('Input.dispatchKeyEvent', { type: 'keyUp', ...params });
    },
    picture: async () =>
      String((await send('Page.captureScreenshot', { captureBeyondViewport: true }))['data']),
    pdf: async () => {
      await send('Emulation.setEmulatedMedia', { media: '', features: [] });
      return String(
        (await send('Page.printToPDF', { preferCSSPageSize: true, printBackground: false }))['data'],
      );
    },
    close: () => {
      started.once('exit', () => rmSync(profile, { recursive: true, force: true }));
      started.kill();
    },
  };
}
