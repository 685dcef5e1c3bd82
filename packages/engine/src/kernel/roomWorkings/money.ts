/** The steps by which money comes to another currency and day, in their order. */
export const moneyWorkings = ['money.redenominated', 'money.converted', 'money.moved'] as const;
