import { mkdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import { readLine, type TypedWord } from '../../src/commands/complete-line.ts';
import { quotedIn } from '../../src/commands/complete-reply.ts';
import { bulletsUnder, entriesUnder, plainScalar, valueAtEdge } from '../../src/commands/complete-scan.ts';
import { isTold } from '../../src/commands/completion-kinds.ts';
import { allCommands } from '../../src/commands/families.ts';
import { parseDocument } from '../../src/ledger/parse.ts';
import { exampleLedger, neckring, scratchFolder, writeIn } from './neckring.ts';

const example = fileURLToPath(new URL('../../examples/orange-cardamom', import.meta.url));

/** The words that a shell gets for a line, without what is said beside them. */
async function offered(line: string, folder = example): Promise<readonly string[]> {
  const { code, out, err } = await neckring(['complete-words', 'fish', line], { folder });
  expect([code, err]).toEqual([0, '']);
  return out
    .split('\n')
    .slice(1, -1)
    .map((one) => one.split('\t')[0] ?? '');
}

const headOf = async (line: string): Promise<string | undefined> =>
  (await neckring(['complete-words', 'fish', line], { folder: example })).out.split('\n')[0];

describe('what Tab offers', () => {
  it('commands, and after help too', async () => {
    expect(await offered('neckring ob')).toEqual(['observe']);
    expect(await offered('neckring help ob')).toEqual(['observe']);
    const names = (await allCommands()).map(({ name }) => name);
    expect(await offered('neckring ')).toEqual(expect.arrayContaining(names));
    expect(await offered('neckring --no-color ser')).toEqual(['series']);
  });

  it('options of the command, each once unless it may be given several times', async () => {
    expect(await offered('neckring hlb --em')).toEqual(['--emulsifier']);
    expect(await offered('neckring hlb --target 12 --ta')).toEqual([]);
    expect(await offered('neckring hlb --oil "2 g sweet orange oil" --oi')).toEqual(['--oil']);
    expect(await offered('neckring emulsifier --batch 50 g --ra')).toEqual(['--ratio']);
    expect(await offered('neckring hlb ')).toContain('--oil');
    expect(await offered('neckring nothing --')).toEqual([]);
  });

  it('ingredients inside an item, quoted or not, the own ones and those of the role first', async () => {
    expect(await offered('neckring hlb --oil "2 g ora')).toEqual(['2 g orange oil lot 2231']);
    expect((await offered('neckring hlb --oil "2 g sweet or'))[0]).toBe('2 g sweet orange oil');
    expect((await offered('neckring hlb --oil 2\\ g\\ sweet\\ or'))[0]).toBe('2 g sweet orange oil');
    expect((await offered("neckring hlb --oil='2 g sweet or"))[0]).toBe('--oil=2 g sweet orange oil');
    expect((await offered('neckring ph "4.5 g/L citr'))[0]).toBe('4.5 g/L citric acid');
    expect((await offered('neckring hlb --emulsifier "6 g '))[0]).toBe('6 g polysorbate 80');
    expect(await offered('neckring hlb --oil "2 gl')).toEqual([]);
    expect(await offered('neckring hlb --oil "2 g sweet orange oil @ ')).toEqual([]);
    expect((await offered('neckring adjust --acid citric'))[0]).toBe('citric acid');
  });

  it('trials with what they are, the newest first, and ranges of them', async () => {
    const { out } = await neckring(['complete-words', 'zsh', 'neckring show '], { folder: example });
    expect(out.split('\n').slice(0, 3)).toEqual([
      'words',
      '17\torange cardamom drink',
      '16\torange 1 to 1.5',
    ]);
    expect(await offered('neckring same 15-')).toEqual(['15-16', '15-17']);
  });

  it('series, formulas, samples, stages, looks, tastes, lots and fixed words', async () => {
    expect(await offered('neckring series or')).toEqual(['orange ladder']);
    expect(await offered('neckring series --against=or')).toEqual(['--against=orange ladder']);
    expect((await offered('neckring scale '))[0]).toBe('orange cardamom');
    expect(await offered('neckring observe 13 --sample ')).toEqual(['beaker']);
    expect(await offered('neckring weigh 17 --stage ')).toContain('drink');
    expect((await offered('neckring look 14 '))[0]).toBe('clear');
    expect(await offered('neckring observe 14 --look "hazy, r')).toEqual(['hazy, ring']);
    expect(await offered('neckring observe 13 --taste so')).toEqual(['soapy=']);
    expect(await headOf('neckring observe 13 --taste so')).toBe('open');
    expect(await offered('neckring observe 13 --taste soapy=')).toHaveLength(6);
    expect(await offered('neckring uses 22')).toEqual(['2231']);
    expect(await offered('neckring completion ')).toEqual(['bash', 'zsh', 'fish']);
    expect(await offered('neckring clarity --background ')).toEqual(['black', 'white']);
    expect(await offered('neckring overpoured 14 oil --same ')).toEqual(['ratios', 'batch']);
  });

  it('files and folders are left to the shell', async () => {
    expect(await headOf('neckring scale --sheet ')).toBe('files');
    expect(await headOf('neckring show ./tri')).toBe('files');
    expect(await headOf('neckring show trials/00')).toBe('files');
    expect(await headOf('neckring ph 4.5\\ g/')).toBe('words');
    expect(await headOf('neckring init ')).toBe('folders');
  });

  it('outside a ledger what is built in; of a broken ledger what can be read; never a complaint', async () => {
    const folder = await scratchFolder();
    expect(await offered('neckring show ', folder)).toEqual(expect.arrayContaining(['--json']));
    expect((await offered('neckring hlb --oil "2 g sweet or', folder))[0]).toBe('2 g sweet orange oil');
    await writeIn(folder, 'bench.yaml', '{ [ this is no bench');
    await writeIn(folder, 'ingredients.yaml', 'ingredients:\n  "own \\x41": &x\n  peel:\n ]] {{\n');
    await mkdir(join(folder, 'series/a-folder.yaml'), { recursive: true });
    expect(await offered('neckring hlb --oil "2 g pee', folder)).toEqual(['2 g peel']);
    expect(await offered('neckring series --against ', folder)).toEqual([]);
    expect(await neckring(['complete-words'], { folder })).toEqual({ code: 0, out: '', err: '' });
    expect(await neckring(['complete-words', 'csh', 'neckring '], { folder })).toEqual({
      code: 0,
      out: '',
      err: '',
    });
  });

  it('names that could drive a terminal are not offered, titles are shown tame', async () => {
    const folder = await exampleLedger();
    await writeIn(folder, 'series/z.yaml', 'series: z\u001b[31m\n');
    await writeIn(folder, 'trials/0099-up\u001b[2J\nand\tdown.yaml', 'trial: 99\n');
    expect(await offered('neckring series z', folder)).toEqual([]);
    const { out } = await neckring(['complete-words', 'fish', 'neckring show 99'], { folder });
    expect(out).toBe('words\n99\tup␛[2J␊and␉down\n');
  });
});

describe('every command is told to completion', () => {
  it('each word and each value names a kind, a choice, or the person alone knows it', async () => {
    const untold = (await allCommands()).flatMap((spec) => [
      ...spec.words
        .filter((word) => !word.takes && !isTold({ ...word, placeholder: word.name }))
        .map((word) => `${spec.name} ${word.name}`),
      ...spec.options.flatMap((option) =>
        option.placeholder === undefined ||
        option.takes ||
        isTold({ ...option, placeholder: option.placeholder })
          ? []
          : [`${spec.name} --${option.name}`],
      ),
    ]);
    expect(untold).toEqual([]);
  });
});

describe('the line as a shell reads it', () => {
  const read = (line: string, shell: 'bash' | 'fish' = 'bash'): TypedWord =>
    readLine({ shell, line, breaks: ' "\'@><=;|&(:' }).current;

  it('quotes, backslashes and the signs at which bash breaks', () => {
    expect(read('n a "2 g sw')).toEqual({ text: '2 g sw', open: '"', from: 0 });
    expect(read('n --oil="2 g sw')).toEqual({ text: '--oil=2 g sw', open: '"', from: 6 });
    expect(read('n --oil=sw')).toEqual({ text: '--oil=sw', open: '', from: 6 });
    expect(read('n 14@HE')).toEqual({ text: '14@HE', open: '', from: 3 });
    expect(read('n a\\ b\\=c')).toEqual({ text: 'a b=c', open: '', from: 0 });
    expect(read('n "a\\$b\\c')).toEqual({ text: 'a$b\\c', open: '"', from: 0 });
    expect(read("n 'a\\'")).toEqual({ text: 'a\\', open: '', from: 0 });
    expect(read("n 'a\\'b", 'fish')).toEqual({ text: "a'b", open: "'", from: 0 });
    expect(readLine({ shell: 'bash', line: 'n "a b"  c ', breaks: '' })).toEqual({
      words: ['n', 'a b', 'c'],
      current: { text: '', open: '', from: 0 },
    });
  });

  it('law: what is quoted for bash is read back letter for letter', () => {
    for (const text of ['a b', '$(x) `y`', `it's "so"`, '#~{}[]*?!;&|<>\\', 'crème 80 %'])
      for (const open of ['', '"', "'"] as const)
        expect(read(`n ${open}${quotedIn(text, open)}`).text).toBe(text);
  });
});

describe('names by the lines of a file alone', () => {
  let text = '';
  beforeAll(async () => {
    text = await readFile(join(example, 'ingredients.yaml'), 'utf8');
  });

  it('law: the same names as the YAML reader finds', () => {
    const document = parseDocument('ingredients.yaml', text);
    const [top] = document.root?.kind === 'map' ? document.root.entries : [];
    const names = top?.value.kind === 'map' ? top.value.entries.map(({ key }) => key.text) : [];
    expect(names.length).toBeGreaterThan(3);
    expect(entriesUnder(text, 'ingredients').map(({ name }) => name)).toEqual(names);
  });

  it('plain and quoted scalars, comments, lists', () => {
    expect(plainScalar(` orange: oil#1 # of the shelf`)).toBe('orange: oil#1');
    expect(plainScalar(`"a # b" # c`)).toBe('a # b');
    expect(plainScalar(`'it''s'`)).toBe("it's");
    expect(['&x y', '|', '*a', '"\\n"', '[a]'].map(plainScalar)).toEqual(Array(5).fill(undefined));
    expect(valueAtEdge('# x\r\nseries: orange ladder # y\r\n', 'series')).toBe('orange ladder');
    expect(bulletsUnder('bench:\n  tastes:\n    - soapy\n    - bright # x\n  drop: 1 g\n', 'tastes')).toEqual(
      ['soapy', 'bright'],
    );
  });
});
