/** A few hundred items "name the rule"; 3,000 in rule-choices.deep.ts. */
import { describe } from 'vitest';
import { namesTheRule } from './rule-choices.ts';

describe('name the rule', () => {
  namesTheRule(300);
});
