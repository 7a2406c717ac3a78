/** English of a pair: what is printed only where a lesson is about pairs. */
import { rules } from '../../words/english-rules.ts';

export const english = { rules };
