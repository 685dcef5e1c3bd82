/// <reference lib="webworker" />
// What a browser knows of languages it reads when it is first asked, once for all threads of a page: some 10 ms, 40 on a slow
// computer. A library of the page asks at its start, and would hold the page up for as long.

Intl.DateTimeFormat.supportedLocalesOf('en');
Intl.NumberFormat.supportedLocalesOf('en');
Intl.Collator.supportedLocalesOf('en');
Intl.PluralRules.supportedLocalesOf('en');
postMessage('read');
