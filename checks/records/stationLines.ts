/**
 * Lines of GHCN-Daily as they stand in the service's files: station USW00003870, Greer, South Carolina, daily rain in tenths of
 * mm with measurement, quality and source flags. Public domain. Source: ghcn-daily; the lines came by way of the test files of
 * the open package ulmo, which also states what stands on days 15, 16, 21 and 31 of October 1962.
 */
export const october1962 =
  'USW00003870196210PRCP-9999   -9999   -9999   -9999   -9999   -9999   -9999   -9999   -9999   -9999   -9999   -9999   -9999   -9999       0  X    0T X    0  X    0  X    0  X    0  X  102  X    0  X    0  X    0  X    0  X    0  X    0  X    0  X    0  X    0  X   30  X';

/** A month of 30 days: slot 31 is no day. The service's own line; its sums are worked out by hand: 113.6 mm, 8 traces. */
export const november1962 =
  'USW00003870196211PRCP    0  0    0  0    0T 0    0  0    0T 0    0  0    0  0   10  0  711  0    0T 0    0  0    0  0    0  0    0  0    0  0    0T 0   23  0  102  0    0T 0   13  0  267  0    0T 0    0  0    0  0   10  0    0  0    0  0    0T 0    0T 0    0  0-9999   ';

/** The 29th, 90.7 mm, failed the comparison with neighbours. Without it 55.3 mm, worked out by hand. */
export const july1976 =
  'USW00003870197607PRCP    0  0    0  0   10  0  305  0   86  0   18  0    8  0    0  0    0  0    0  0    0  0    0  0    0  0    0  0    0T 0    0T 0    0  0    0  0    0  0   20  0    0  0   76  0    0  0    0  0    0  0   25  0    5  0    0T 0  907 S0    0T 0    0  0';
