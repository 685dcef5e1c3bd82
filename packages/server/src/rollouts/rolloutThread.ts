import { answerAsks } from '@eavewell/work';
import { rolloutAsks } from './rolloutAsks.ts';

answerAsks(rolloutAsks);
