import type { Messages } from '@spindlewright/quantity';
import { boltMessages } from './bolt.ts';
import { chainlineMessages } from './chainline.ts';
import { clearanceMessages } from './clearance.ts';
import { distributionMessages } from './distribution.ts';
import { flatsMessages } from './flats.ts';
import { jointsMessages } from './joints.ts';
import { keepingMessages } from './keeping.ts';
import { loadMessages } from './load.ts';
import { playMessages } from './play.ts';
import { pressMessages } from './press.ts';
import { pressFitMessages } from './press-fit.ts';
import { ringsMessages } from './rings.ts';
import { seatMessages } from './seat.ts';

/** English templates of the finding codes that this package may raise. */
export const messages: Messages = {
  ...boltMessages,
  ...chainlineMessages,
  ...clearanceMessages,
  ...distributionMessages,
  ...flatsMessages,
  ...jointsMessages,
  ...keepingMessages,
  ...loadMessages,
  ...playMessages,
  ...pressMessages,
  ...pressFitMessages,
  ...ringsMessages,
  ...seatMessages,
};
