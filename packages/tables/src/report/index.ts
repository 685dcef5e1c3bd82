export {
  type DesignReport,
  designReport,
  designSchemaText,
  designSchemaVersion,
  type GaugeReport,
  type ProblemReport,
  type SiteReport,
} from './designReport.ts';
