import type { Fixing } from './job.ts';

type Extras = NonNullable<Fixing['extras']>;

/** What comes off, or out, before the arm can be fastened. @internal */
export const extrasBefore = (extras: Extras): string[] => [
  ...(extras.includes('dust-cap') ? ['Dust cap out first: it hides the bolt and is not to be driven in by it.'] : []),
  ...(extras.includes('self-extractor-ring')
    ? ['Self-extractor ring out: the bolt has to reach its seat freely, and the ring only works when it comes off.']
    : []),
];

/** What goes back once the bolt is tight. @internal */
export const extrasAfter = (extras: Extras): string[] => [
  ...(extras.includes('self-extractor-ring')
    ? [
        'Self-extractor ring back over the tight bolt, greased, snug in the thread of the arm: it may not touch the head.',
      ]
    : []),
  ...(extras.includes('dust-cap') ? ['Dust cap back last; it keeps the thread of the arm clean for the puller.'] : []),
];
