import { expect } from 'vitest';
import { journey } from './journey.ts';

journey(
  'the address that the program prints opens its pages, with the demo programme in them',
  async ({ page, served }) => {
    expect(served.printed).toMatch(/1 programme\. Open this address/);
    await page.getByRole('heading', { level: 1, name: /^61 sites$/ }).waitFor();
    expect(new URL(page.url()).search).toBe('');
  },
);
