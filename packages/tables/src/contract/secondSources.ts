import { secondSourceKinds } from '@eavewell/engine';
import { choice, from, id, months, quantity, required, text } from './columns.ts';
import { defineTable } from './table.ts';

export const secondSources = defineTable({
  name: 'secondSources',
  about:
    'Other water people fall back on when the tank is empty. A site names one in sites.csv, and several may share one. It is not safe to drink until it is treated.',
  key: ['secondSourceId'],
  usedBy: ['Water'],
  optional: true,
  columns: {
    secondSourceId: required(id('The id of the source.')),
    name: text('What it is called.'),
    kind: required(choice(secondSourceKinds, 'What sort of source it is.')),
    months: required(months('The months it gives water in, by number: 1 to 12 where it always does.')),
    turbidity_NTU: quantity('NTU', 'How turbid its water is, at the worse end of what is usual.', {
      hard: from(0, 10000),
      usual: from(0, 500),
    }),
    source: text('Who says so, and when.'),
  },
});
