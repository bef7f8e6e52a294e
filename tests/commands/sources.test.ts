import { describe, expect, it } from 'vitest';
import { leafValue, neckring, record, rows } from './neckring.ts';

const sourcesOf = async (...words: readonly string[]) => {
  const { code, out } = await neckring(['sources', ...words, '--json']);
  const found = record(record(JSON.parse(out))['found']);
  return { code, found, works: rows(found['sources']) };
};

describe('sources', () => {
  it('lists every work in 80 columns, with what it is for and which commands use it', async () => {
    const { code, out } = await neckring(['sources']);
    expect(code).toBe(0);
    expect(out.split('\n').filter((line) => line.length > 80)).toEqual([]);
    expect(out).toMatch(/^\d+ sources, \d+ figures, \d+ of them from memory$/mu);
    expect(out).toContain(' - Weiss 1974, Carbon dioxide in water and seawater, Mar. Chem. 2:203\n   for ');
    expect(out).toContain('used by carbonation');
  });

  it('counts as its list does, in text and in JSON', async () => {
    const { found, works } = await sourcesOf();
    const figures = works.reduce((sum, work) => sum + leafValue(work['figures']), 0);
    const remembered = works.reduce((sum, work) => sum + leafValue(work['figuresFromMemory']), 0);
    expect([works.length, figures, remembered]).toEqual(
      ['works', 'figures', 'figuresFromMemory'].map((key) => leafValue(found[key])),
    );
    for (const work of works) expect(rows(work['usedFor']).length).toBe(leafValue(work['figures']));
  });

  it('narrows to an ingredient, a command, an author', async () => {
    const orange = await sourcesOf('sweet orange oil');
    for (const work of orange.works)
      for (const use of rows(work['usedFor'])) expect(String(use['figure'])).toContain('sweet orange oil');
    const ring = await sourcesOf('ring');
    for (const work of ring.works)
      for (const use of rows(work['usedFor'])) expect(use['usedBy']).toContain('ring');
    const weiss = await sourcesOf('weiss');
    expect(weiss.works.map((work) => work['key'])).toEqual(['weiss-1974']);
    expect(rows(weiss.works[0]?.['usedFor']).map((use) => use['range'])).toContain(
      '-1 to 40 C, water without sugar',
    );
  });

  it('knows an ingredient by any of its names', async () => {
    const known = await sourcesOf('4-methoxy-2-methyl-2-butanethiol');
    const byName = await sourcesOf('cassis thiol');
    expect(byName.works.length).toBe(known.works.length);
    expect(known.works.length).toBeGreaterThan(0);
  });

  it('lists what is from memory, and only that', async () => {
    const { works } = await sourcesOf('--from-memory');
    expect(works.length).toBeGreaterThan(10);
    for (const work of works) for (const use of rows(work['usedFor'])) expect(use['fromMemory']).toBe(true);
    const { out } = await neckring(['sources', '--from-memory', 'sweet orange oil']);
    expect(out).toContain('sweet orange oil: another refractive index');
    expect(out.split('\n').filter((line) => line.length > 80)).toEqual([]);
  });

  it('says what to type where nothing is known by the word', async () => {
    const { code, out } = await neckring(['sources', 'zzz']);
    expect([code, out.replace(/\s+/gu, ' ').trim()]).toEqual([
      1,
      'No source has to do with "zzz". Name an ingredient, a command such as ring, or an author; neckring sources alone lists all.',
    ]);
  });
});
