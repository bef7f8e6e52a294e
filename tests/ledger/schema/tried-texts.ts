/** Texts as people type them, at the edge of what is taken somewhere, with `|` between. */
export const tried: readonly string[] = [
  '14|0014|0|-3|2.5|.5|2.|1e3|1e999|0x10|0o17|+2|5|6|1|1:100|1 to 2',
  'yes|no|true|null|~|Null|.inf|.nan|| |words of my own|2026|rest| REST ',
  '2 g|2g| 2 g |.5 g|(30 + 2.5) g|3 * 1.5 g|((1)) g|2,5 g|1,000 g|-5 C|-2 g|+2 g',
  'to 50 g|TO  1 L|to|q.s. 50 g|4 %|4%|12 drops|2 parts|4.5 g/L in drink|100 ppm',
  '20 °C|60 mg/L as CaCO3|3.4 vol|40 s|7 d|1 %|250 mL|20 cm|18 mm|45 nm|3.2 NTU',
  '400 rpm|by hand|42 EUR/kg|5 mmol/L|30 mN/m|12.5|1.2 mg/kg|3 µg/kg|0.1 ug/kg|0.1 mg/L|1.03 g/mL|4 % v/v',
  '2026-03-02|2026-03-02T10:15+00:00|2026-03-02 10:15Z| 2026-03-02|2026-03-02T10:15|2026-3-2|10:15',
  'clear|Clear|clear, ring|,hazy,,|spec\u212as|clear ring|us|US|moon|oil|Oil|warm',
  'edge|freeze-thaw|2.9 to 3.2|at least 2.9|at most 5 NTU|4.3 to 4.7 g/L|330 mL|Europe/Lisbon',
].flatMap((row) => row.split('|'));
