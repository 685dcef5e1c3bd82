export { type TreatmentGiven, treatmentFindings, unitHead_m } from './treatmentFindings.ts';
