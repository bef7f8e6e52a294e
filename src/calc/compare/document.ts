/** A record of the ledger as it is laid beside another: what is typed in it, and what each line comes to. */

/** One fact: as typed, and in a form in which other spellings of the same are the same. */
export interface ComparedFact {
  readonly key: string;
  readonly written: string;
  readonly same: string;
}

export interface ComparedItem {
  /** As typed. */
  readonly name: string;
  /** What it is a line of: one lot of an oil as another, a stage of one trial as that of another. */
  readonly key: string;
  /** What it is: another name of the same record is the same. */
  readonly identity: string;
  /** A number in a unit that only the same `kind` shares. */
  readonly amount: ComparedFact & { readonly kind: string };
  /** What the plan comes to in g, where it could be solved. */
  readonly plannedGrams?: number | undefined;
  readonly facts: readonly ComparedFact[];
}

export interface ComparedStep {
  /** In a line. */
  readonly written: string;
  /** What it does, to what. */
  readonly key: string;
  readonly facts: readonly ComparedFact[];
}

export interface ComparedStage {
  readonly name: string;
  readonly facts: readonly ComparedFact[];
  readonly items: readonly ComparedItem[];
  readonly steps: readonly ComparedStep[];
}

/** A sample, an observation, a result. */
export interface ComparedEntry {
  /** What makes it the same entry with other facts: its time and sample, or its calculator and stage. */
  readonly key: string;
  readonly heading: string;
  readonly facts: readonly ComparedFact[];
}

export interface ComparedDocument {
  readonly facts: readonly ComparedFact[];
  readonly aims: readonly ComparedFact[];
  readonly stages: readonly ComparedStage[];
  readonly samples: readonly ComparedEntry[];
  readonly observations: readonly ComparedEntry[];
  readonly results: readonly ComparedEntry[];
}

export interface FactChange {
  readonly key: string;
  /** Absent where it was added. */
  readonly before?: string;
  /** Absent where it was taken out. */
  readonly after?: string;
}

export type LineChange = 'added' | 'removed' | 'changed' | 'moved';

/** A line that is not what it was. Places count from 0, in the stage before and after. */
export interface ItemChange {
  readonly change: LineChange;
  readonly name: string;
  /** Its other name before. */
  readonly was?: string;
  readonly facts: readonly FactChange[];
  readonly before?: number;
  readonly after?: number;
  /** The stage that it came from, where that is another one. */
  readonly fromStage?: string;
  /** True where it stands elsewhere in the order of addition, whatever else changed. */
  readonly isMoved: boolean;
}

/** Another name, and the same record. */
export interface Renamed {
  readonly name: string;
  readonly was: string;
  readonly before: number;
  readonly after: number;
}

export interface StepChange {
  readonly change: LineChange;
  readonly written: string;
  readonly was?: string;
  readonly facts: readonly FactChange[];
  readonly before?: number;
  readonly after?: number;
}

export interface StageChange {
  readonly change: 'added' | 'removed' | 'changed' | 'same';
  readonly name: string;
  readonly was?: string;
  readonly facts: readonly FactChange[];
  readonly items: readonly ItemChange[];
  readonly steps: readonly StepChange[];
  readonly renamed: readonly Renamed[];
  /** All weights and volumes grew or shrank by this factor, where there are several and nothing else is to be said. */
  readonly factor?: number;
}

export interface EntryChange {
  readonly change: 'added' | 'removed' | 'changed';
  readonly heading: string;
  readonly facts: readonly FactChange[];
}

export interface DocumentDifference {
  readonly facts: readonly FactChange[];
  readonly aims: readonly FactChange[];
  readonly stages: readonly StageChange[];
  readonly samples: readonly EntryChange[];
  readonly observations: readonly EntryChange[];
  readonly results: readonly EntryChange[];
}
