import { conditionIsUsable } from '@eavewell/engine';
import { idsOf, type LinkChecker } from './linkChecker.ts';
import type { TablesRead } from './tablesRead.ts';

/** What a rule of the kit and what is kept apart name must be parts. */
const partLinks = [
  ['kitRules', 'partId'],
  ['keptApart', 'partId'],
  ['keptApart', 'otherPartId'],
] as const;

/** Rules name parts, conditions name rules and compare with what can be compared. */
export function checkKit(checker: LinkChecker, tables: TablesRead): void {
  if (tables.parts?.usable === true) checkPartLinks(checker, tables);
  const rules = idsOf(tables.kitRules, 'ruleId');
  for (const row of tables.kitConditions?.rows ?? []) {
    const { ruleId, field, test, value } = row.values;
    const at = { table: 'kitConditions', file: tables.kitConditions!.file, row, siteId: null, wholeRow: true } as const;
    if (!rules.has(ruleId!)) {
      const link = { ...at, column: 'ruleId', id: ruleId!, code: 'link.unknown_rule' } as const;
      checker.refuse(link, rules, 'a ruleId of kitRules.csv');
    } else if (!conditionIsUsable({ field: field!, test: test!, value: value! })) {
      const link = { ...at, column: 'value', id: value!, code: 'link.condition_unusable' } as const;
      checker.fault(link, { field: field!, test: test! });
    }
  }
}

function checkPartLinks(checker: LinkChecker, tables: TablesRead): void {
  const partIds = idsOf(tables.parts, 'partId');
  for (const [table, column] of partLinks)
    for (const row of tables[table]?.rows ?? []) {
      const id = (row.values as Readonly<Record<string, unknown>>)[column] as string;
      if (partIds.has(id) || checker.unlinked.has(`${table} ${row.row}`)) continue;
      const at = { table, file: tables[table]!.file, row, column, id, siteId: null, wholeRow: true } as const;
      checker.refuse({ ...at, code: 'link.unknown_part' }, partIds, 'a partId of parts.csv');
    }
}
