import { answerWork } from '@eavewell/work';
import { tasks } from './tasks.ts';

await answerWork(tasks);
