export { answerAsks } from './answerAsks.ts';
export type { Asks, Keeping } from './keeping.ts';
export { keepingHere } from './keepingHere.ts';
export { keepingThread } from './keepingThread.ts';
export { threadWork } from './threadWork.ts';
export { type Job, type JobAround, Stopped, type Tasks, type Work, type WorkOptions } from './work.ts';
export { answerWork } from './workerSide.ts';
export { workHere } from './workHere.ts';
