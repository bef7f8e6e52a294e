/** A calculator as a quick command. */

import { type Calculator, optionName } from '../calc/calculator.ts';
import type { FieldData } from '../calc/fields.ts';
import { type CommandSpec, explainOption, jsonOption, type OptionSpec } from './command.ts';

export function calculatorCommand(calculator: Calculator): CommandSpec {
  const fields = Object.entries(calculator.fields);
  const options: OptionSpec[] = fields
    .filter(([, field]) => !field.positional)
    .map(([key, field]) => ({
      name: optionName(key),
      help: field.help,
      ...(field.isFlag ? {} : { placeholder: field.placeholder }),
      many: field.many,
      isAmount: field.isAmount,
      ...completedFrom(field),
    }));
  return {
    name: calculator.name,
    summary: calculator.summary,
    about: calculator.about,
    group: 'Calculate',
    words: fields
      .filter(([, field]) => field.positional)
      .map(([, field]) => ({
        name: field.placeholder,
        help: field.help,
        many: field.many,
        isAmount: field.isAmount,
        ...completedFrom(field),
      })),
    options: [...options, ...trialOptions(calculator), explainOption, jsonOption],
    examples: calculator.examples,
    load: async () => {
      const { runCalculator } = await import('./calculate.ts');
      return (call, io) => runCalculator(calculator, call, io);
    },
  };
}

const completedFrom = ({ takes, choices }: FieldData): Pick<OptionSpec, 'takes' | 'choices'> => ({
  ...(takes ? { takes } : {}),
  ...(choices ? { choices } : {}),
});

function trialOptions(calculator: Calculator): readonly OptionSpec[] {
  return [
    {
      name: 'trial',
      placeholder: 'TRIAL',
      help: 'take what is not typed from this trial, or formula',
      takes: ['trial', 'formula'],
    },
    ...(calculator.name === 'dose'
      ? [
          {
            name: 'emulsion-of',
            placeholder: 'TRIAL',
            help: 'take the strength of the emulsion from this trial',
          },
        ]
      : []),
    { name: 'record', help: 'write the answer into the trial of --trial' },
  ];
}
