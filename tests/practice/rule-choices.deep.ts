/** Three thousand items "name the rule", for `npm run test:deep`. */
import { describe } from 'vitest';
import { namesTheRule } from './rule-choices.ts';

describe('name the rule', () => {
  namesTheRule(3000);
});
