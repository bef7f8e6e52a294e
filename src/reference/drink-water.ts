/** What the trade aims at in the water of soft drinks, mg/L; hardness and alkalinity as CaCO3. Aims, never limits. */
export const softDrinkWater = {
  alkalinity: { value: 50, source: 'trade article on water for carbonated soft drinks, 2016' },
  hardness: { value: 100, source: 'trade article on water for carbonated soft drinks, 2016' },
  iron: { value: 0.3, source: 'trade article on water for carbonated soft drinks, 2016' },
  chlorine: { value: 0, source: 'Natural food additives, ingredients and flavourings, chapter 15' },
} as const;
