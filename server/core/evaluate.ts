/** The chain from a frame to its findings. Pure: same frame and facts, same answer. */
import type { Finding } from './checks/check.ts';
import type { SourceFacts } from './checks/source-facts.ts';
import type { Frame } from './frame/frame.ts';
import type { Model } from './model/model.ts';
import type { Results } from './results.ts';

export interface Evaluation {
  readonly frame: Frame;
  readonly model: Model;
  readonly results: Results;
  /** errors first, then in file order of nothing: readers sort by place; accepted ones carry `accepted` */
  readonly findings: readonly Finding[];
}

export declare function evaluate(frame: Frame, source: SourceFacts, previous?: Evaluation): Evaluation;
