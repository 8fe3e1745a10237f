// Generated from the files in data/ by `npm run generate`; edit those.
import type { FamilyCode, ReadingCode } from './model-data.ts';
import type { FamilyId, NeedId } from './types.ts';

export const EDITION: string = "2026.11";
export const SCALE: readonly number[] = [
 0.0005,
 0.005,
 0.02,
 0.07,
 0.15,
 0.3,
 0.5,
 0.65,
 0.8,
 0.93
];
export const READINGS: readonly ReadingCode[] = [
 [
  "g",
  "mm",
  0.1,
  -20,
  40
 ],
 [
  "h",
  "mm",
  0.1,
  -5,
  40
 ],
 [
  "c",
  "deg",
  0.1,
  0,
  45
 ],
 [
  "k",
  "mm",
  0.3,
  0,
  40
 ],
 [
  "i",
  "N",
  200,
  0,
  200000
 ],
 [
  "m",
  "mm",
  0.05,
  0,
  30
 ],
 [
  "d",
  "Nm",
  2,
  0,
  200
 ],
 [
  "e",
  "turns",
  0.05,
  0,
  50
 ]
];
export const LOSSES: readonly (readonly number[])[] = [
 [
  0,
  1500,
  400,
  1500,
  1500,
  300,
  1500,
  1500,
  1500,
  1500,
  1500,
  1500,
  1500,
  300,
  1500
 ],
 [
  12,
  0,
  60,
  150,
  200,
  150,
  150,
  200,
  150,
  150,
  200,
  150,
  30,
  150,
  150
 ],
 [
  28,
  27,
  6,
  5,
  8,
  10,
  10,
  8,
  8,
  8,
  8,
  12,
  12,
  8,
  5
 ],
 [
  34,
  24,
  0,
  60,
  60,
  60,
  60,
  60,
  60,
  60,
  60,
  60,
  25,
  0,
  60
 ],
 [
  60,
  55,
  60,
  40,
  40,
  45,
  45,
  60,
  0,
  0,
  0,
  90,
  90,
  60,
  45
 ],
 [
  60,
  60,
  60,
  0,
  0,
  0,
  0,
  105,
  75,
  75,
  75,
  105,
  90,
  60,
  20
 ],
 [
  80,
  80,
  80,
  155,
  155,
  120,
  120,
  0,
  90,
  90,
  90,
  105,
  25,
  80,
  75
 ],
 [
  130,
  110,
  110,
  40,
  40,
  45,
  45,
  30,
  50,
  50,
  50,
  150,
  60,
  110,
  0
 ],
 [
  32,
  12,
  160,
  200,
  250,
  160,
  160,
  250,
  200,
  200,
  250,
  0,
  3,
  160,
  200
 ],
 [
  0,
  200,
  100,
  200,
  200,
  100,
  200,
  200,
  200,
  200,
  200,
  200,
  200,
  100,
  200
 ],
 [
  0,
  300,
  80,
  300,
  300,
  120,
  300,
  300,
  300,
  300,
  300,
  300,
  300,
  120,
  300
 ]
];
export const GATES: Readonly<Record<string, readonly [string, string]>> = {
 "b": [
  "d0",
  "d13f0"
 ],
 "c": [
  "j0123l2",
  ""
 ],
 "j": [
  "",
  "s1c2"
 ],
 "k": [
  "",
  "n1t1"
 ]
};
export const ARM_OFF: string = "defgh";
export const IN_USE: string = "ajk";
export const NO_REPAIR: string = "acjk";
export const DO_NOT_RIDE_ABOVE: number = 0.035;
export const LESS_URGENT: string = "cfn";
export const BESIDE_LOSSES: readonly (readonly (readonly [number, number])[])[] = [
 [
  [
   20,
   0
  ],
  [
   20,
   0
  ],
  [
   20,
   0
  ],
  [
   20,
   0
  ],
  [
   20,
   0
  ],
  [
   20,
   0
  ],
  [
   0,
   0
  ],
  [
   0,
   0
  ],
  [
   20,
   0
  ],
  [
   0,
   40
  ],
  [
   20,
   0
  ]
 ],
 [
  [
   8,
   0
  ],
  [
   8,
   0
  ],
  [
   8,
   0
  ],
  [
   8,
   0
  ],
  [
   8,
   0
  ],
  [
   8,
   0
  ],
  [
   8,
   0
  ],
  [
   8,
   0
  ],
  [
   8,
   0
  ],
  [
   8,
   0
  ],
  [
   0,
   8
  ]
 ]
];
export const POINTLESS: Readonly<Record<string, string>> = {
 "f": "c02"
};
export const REFIT_MINUTES: number = 8;
export const NEED_ABOVE: number = 0.2;
export const NEEDS: Readonly<Record<NeedId, string>> = {
 "same-interface": "0efgh",
 "measure-first": "0F",
 "right-fixing": "0iH",
 "full-torque": "1B",
 "cotter-pressed-in": "1",
 "bolts-in-turn": "1",
 "recheck-once": "1BDE",
 "torque-limit": "1C",
 "clean-and-in-step": "1I",
 "look-at-the-rest": "1J",
 "stop-when-loose": "2E",
 "refit-seldom": "2G",
 "parts-of-that-age": "2K",
 "look-at-times": "2L"
};
export const FAMILY_CODES: Readonly<Record<FamilyId, FamilyCode>> = {
 "square-taper": {
  "causes": "A505a9B115b7d5o2c3h2C15d6e5m5D105b9c2d3E50d8o4h3c3b3e2F55i5j5k5d4n2G35d7c5e3m3j2b3H25l8m4b2d3I35c5n5m4l3b3j2i2J25f7h5e2g2K10e7h5L25c7g5h3d3m2",
  "besides": [
   [
    0.12,
    "s018c027f015n014m013"
   ],
   [
    0.15,
    "n019t018"
   ]
  ],
  "sides": {
   "drive": {
    "B": 0.7,
    "D": 0.7,
    "E": 0.7,
    "g": 2
   },
   "non-drive": {
    "B": 1.3,
    "D": 1.3,
    "E": 1.3,
    "g": 0.3
   }
  },
  "history": "423543B643553D933263E493543F723393G423549H623573I823563J429543C523545K423843L423943d.6....o.8....h.4....",
  "rows": "93a92d84f66h84n039|92f39eh93a91|92a9b57c84d48e6503g3009h75ij57lm48k66|92a92b27052bD2804c84d65042dCG8402dE65043e7503h740322ij8402l750302m047323k66|93a84d744dCG564e824h833i29j48l474m338|92b93c84d48eh66g39ijl48m48k84|911d843dCG564dF654e833i266ab9|922d842i84j29k309a901|92a9b75dij57ehk75lm66|93a92b842c57d239e4028h744ij84lm842k842|9222b8033c7044d465e744h6054i75j48lm8033k7005|92b93c84d92o39h564hJ842hK338hBEL39a91|92a9f93h75hJ39hBEKL93|66a92fn84c48dehk57g48|75a93fn93bD84c57d57dCF75hk66|902i9003l35445m804mH209a901|||93|94|",
  "bands": "0.3 8,-0.3 0.3,-6 -0.3|0.2 6,-0.2 0.2,5 14|0 0.15,0.15 8,0 0.15,0.15 8|5 17,14 20,5 20,2 12|500 50000,0 500|0 0.3,0.3 8|30 70,2 30,0 5,0 2,,|0.5 2.5,0 0.5,2.5 10",
  "joints": {
   "d square-taper-jis": "5 14,14 17,5 17,2 10",
   "d square-taper-iso": "5 17,17 20,5 20,2 12"
  },
  "stop": "c13d12345e2g12h1i1j23l2b1m1p1234a2",
  "pairs": "c0f1h1k0h2k1d2e0",
  "silent": "",
  "checks": "1b2a1b2b3c3c2d1b1e1e1e2e3a5b1b3d1b2b2a8a1a",
  "opening": [
   [
    0,
    0,
    ""
   ],
   [
    0,
    0,
    ""
   ],
   [
    0,
    1,
    "dc"
   ],
   [
    2,
    1,
    "d"
   ],
   [
    8,
    5,
    "dco"
   ]
  ],
  "gates": {},
  "lacks": "",
  "losses": {},
  "instead": {}
 },
 "spline-10": {
  "causes": "A570a9B115b7d5o2c3h2C12e5m7d2D105b9c2d3E50d8o4h3c3b3e2F30k8i4d3G35d7c5e3m3b3H25l8m4b2d3I30c6m5l3b3n2i2J8f7h5e2g2K6e7h5L25c7g5h3d3m2",
  "besides": [
   [
    0.12,
    "s018c027f015n014m013"
   ],
   [
    0.15,
    "n019t018"
   ]
  ],
  "sides": {
   "drive": {
    "B": 0.7,
    "D": 0.7,
    "E": 0.7,
    "g": 2
   },
   "non-drive": {
    "B": 1.3,
    "D": 1.3,
    "E": 1.3,
    "g": 0.3
   }
  },
  "history": "423543B643553D933263E493543F723393G423549H623573I823563J429543C523545K423843L423943d.6....o.8....h.4....",
  "rows": "93a92d84f66h84n039|92f39eh93a91|92a9b57c84d39e6503g3009h75ij57lm48k66|92a92b27052bD2804c84d65042dE65043e7503h740322ij8402l750302m047323k57|93a84d744e824h833i48j48l474m338k57|92b93c84d48eh66g39ijl48m48k84|911ab9e921i266|391a29b66bB75c662d48i93k428lm66|92a9b75dij57ehk75lm66|93a92b842c57d239e4028h744ij84lm842k842|392a29b483c3734d0573e374h0654i84k8004lm474|92b93c84d92o39h564hJ842hK338hBEL39a91|92a9f93h75hJ39hBEKL93|66a92fn84c48dehk57g48|75a93fn93bD84c57d57dCF75hk66|902i9003l35445m804mH209a901|||93|94|",
  "bands": "0.3 8,-0.3 0.3,-6 -0.3|0.2 3,-0.2 0.2,2.5 14|0 0.15,0.15 8,0 0.15,0.15 8|3 14.5,14.5 17.5,5 17.5,2 9|500 50000,0 500|0 0.3,0.3 8|35 75,2 35,0 5,0 2,,|0.25 2.5,0 0.25,2.5 10",
  "joints": {},
  "stop": "c13d12345e2g12h02i1j23l2b1m1p1234a2",
  "pairs": "c0f1h2k1d2e0",
  "silent": "",
  "checks": "1b2a1b2b3c3c2d1b1e1e1e2e3a5b1b3d1b2b2a8a1a",
  "opening": [
   [
    0,
    0,
    ""
   ],
   [
    0,
    0,
    ""
   ],
   [
    0,
    1,
    "dch"
   ],
   [
    2,
    1,
    "d"
   ],
   [
    8,
    5,
    "dco"
   ]
  ],
  "gates": {},
  "lacks": "",
  "losses": {},
  "instead": {}
 },
 "spline-8": {
  "causes": "A570a9B125b7d5o2c3h2C12e5m7d2D105b9c2d3E50d8o4h3c3b3e2F30k7d5i2G35d7c5e3m3b3H25l8m4b2d3I35d5c5m4l3b3k2J8f7h5e2g2K6e7h5L25c7g5h3d3m2",
  "besides": [
   [
    0.12,
    "s018c027f015n014m013"
   ],
   [
    0.15,
    "n019t018"
   ]
  ],
  "sides": {
   "drive": {
    "B": 0.7,
    "D": 0.7,
    "E": 0.7,
    "g": 2
   },
   "non-drive": {
    "B": 1.3,
    "D": 1.3,
    "E": 1.3,
    "g": 0.3
   }
  },
  "history": "423543B643553D933263E493543F723393G423549H623573I823563J429543C523545K423843L423943d.6....o.8....h.4....",
  "rows": "93a92d84f66h84n039dI348|92f39eh93a91|92a9b57c84d39e6503g3009h75ij57lm48k66|92a92b27052bD2804c84d65042dE65043e7503h740322ij8402l750302m047323k57|93a84d744e824h833i48j48l474m338k57|92b93c84d48eh66g39ijl48m48k84|911ab9e921i266|391a29b66bB75c662d48i93k428lm66|66a75c93blm57d48|93a92b842c57d239e4028h744ij84lm842k842|392a29b483c3734d0573e374h0654i84k8004lm474|92b93c84d92o39h564hJ842hK338hBEL39a91|92a9f93h75hJ39hBEKL93|66a92fn84c48dehk57g48|75a93fn93bD84c57d57dCF75hk66|902i9003l35445m804mH209a901|||93|94|",
  "bands": "0.3 8,-0.3 0.3,-6 -0.3|0.2 3,-0.2 0.2,2.5 14|0 0.15,0.15 8,0 0.15,0.15 8||500 50000,0 500|0 0.3,0.3 8|35 75,2 35,0 5,0 2,,|0.25 2.5,0 0.25,2.5 10",
  "joints": {},
  "stop": "c13d12345e2g12h02j23l2b1m1p1234a2",
  "pairs": "c0f1h2k1d2e0",
  "silent": "",
  "checks": "1b2a1b2b3c3c2d1b1e1e1e2e3a5b1b3d1b2b2a8a1a",
  "opening": [
   [
    0,
    0,
    ""
   ],
   [
    0,
    0,
    ""
   ],
   [
    0,
    1,
    "dch"
   ],
   [
    2,
    1,
    "d"
   ],
   [
    8,
    5,
    "dco"
   ]
  ],
  "gates": {},
  "lacks": "",
  "losses": {},
  "instead": {}
 },
 "spline-48": {
  "causes": "A650a9B115b7d5o2c3h2C12e5m7d2D70b9c2d3E50d8o4h3c3b3e2F30k8i4d3G35d7c5e3m3b3H25l8m4b2d3I25c6m5n3l3b3i2J6f5h6e3K6e7h5L25c7g5h3d3m2",
  "besides": [
   [
    0.12,
    "s018c027f015n014m013"
   ],
   [
    0.15,
    "n019t018"
   ]
  ],
  "sides": {
   "drive": {
    "B": 0.7,
    "D": 0.7,
    "E": 0.7,
    "g": 2
   },
   "non-drive": {
    "B": 1.3,
    "D": 1.3,
    "E": 1.3,
    "g": 0.3
   }
  },
  "history": "423543B643553D933263E493543F723393G423549H623573I823563J429543C523545K423843L423943d.6....o.8....h.4....",
  "rows": "93a92d84f66h84n447|92f39eh93a91|92a9b57c84d39e6503g3009h75ij57lm48k66|92a92b27052bD2804c84d65042dE65043e7503h740322ij8402l750302m047323k57|75a66d744e824h833i29j48l474m338k57|92b93c84d48eh66g39ijl48m48k84|911ab9e921i266|391a29b66bB75c662d48i93k428lm66|57c84h66d39|93a92b842c57d239e4028h744ij84lm842k842|392a29b483c3734d0573e374h0654i84k8004lm474|92b93c84d92o39h564hJ842hK338hBEL39a91|92a9f93h75hJ39hBEKL93|66a92fn84c48dehk57g48|75a93fn93bD84c57d57dCF75hk66|902i9003l35445m804mH209a901|||93|94|",
  "bands": "0.3 8,-0.3 0.3,-6 -0.3|0.2 3,-0.2 0.2,2.5 14|0 0.15,0.15 8,0 0.15,0.15 8||500 50000,0 500|0 0.3,0.3 8||",
  "joints": {},
  "stop": "c13d12345e2g12h02j23l2b1m1p1234a2",
  "pairs": "c0f1h2k1d2e0",
  "silent": "",
  "checks": "1b2a1b2b3c3c2d1b1e1e1e2e3a5b1b3d1b2b2a8a1a",
  "opening": [
   [
    0,
    0,
    ""
   ],
   [
    0,
    0,
    ""
   ],
   [
    0,
    1,
    "dch"
   ],
   [
    2,
    1,
    "d"
   ],
   [
    8,
    5,
    "dco"
   ]
  ],
  "gates": {},
  "lacks": "",
  "losses": {},
  "instead": {}
 },
 "face-spline": {
  "causes": "A780a9B95b8o4c3C10m8e4D45b9o2E30o8b4c3F12k8o4G10c6m5o4H25l8m4b2I20c8n3k3m3J4f7h5e2g2K5e7h5L20g6c5h3m2",
  "besides": [
   [
    0.12,
    "s018c027f015n014m013"
   ],
   [
    0.15,
    "n019t018"
   ]
  ],
  "sides": {
   "drive": {
    "g": 2
   },
   "non-drive": {
    "g": 0.3
   }
  },
  "history": "423543B643553D933263E493543F723393G423549H623573I823563J429543C523545K423843L423943d.6....o.8....h.4....",
  "rows": "93a92d84f66h84n039|92f39eh93a91|92a9b57c84d48e6503g3009h75ij57lm48k66|92a92b27052bD2804c84d5604e7503h740322ij8402l750302m047323k57|84d537l474m338k57|92b93c84d48eh66g39ijl48m48k57||391a29b75c75d66lm752k428|48c66hf57d29|93a92b842c57d239e4028h744ij84lm842k842||92b93c84d92o39h564hJ842hK338hBEL39a91|92a9f93h75hJ39hBEKL93|66a92fn84c48dehk57g48|75a93fn93bD84c57d57dCF75hk66|902i9003l35445m804mH209a901|||93|94|",
  "bands": "|0.1 2,-0.1 0.1,1.5 10|0 0.15,0.15 8,0 0.15,0.15 8||500 50000,0 500|0 0.3,0.3 8||",
  "joints": {},
  "stop": "c13d12345e2h02j23l2b1m1p1234a2",
  "pairs": "c0f1d2e0",
  "silent": "",
  "checks": "1b2a1b2b3c3c2d3b1e1e1e2e3a5b1b3d1b2b2a8a1a",
  "opening": [
   [
    0,
    0,
    ""
   ],
   [
    0,
    0,
    ""
   ],
   [
    0,
    1,
    "dch"
   ],
   [
    2,
    1,
    "d"
   ],
   [
    6,
    1,
    "dcoh"
   ]
  ],
  "gates": {},
  "lacks": "g",
  "losses": {
   "f": {
    "h": 20,
    "o": 60
   },
   "h": {
    "h": 0,
    "o": 0
   }
  },
  "instead": {}
 },
 "through-spindle": {
  "causes": "A600a9B135b8d4o3l2C30m7e5l2D45b9c2E45d7o5b3c3F25k6l5d4G20c5m6d4H25l7m5b2I40l6k4c4n3m3J8f7h5e2g2K6e7h5L25c7g5h3d3m2",
  "besides": [
   [
    0.16,
    "s018c027h105f015n014m013"
   ],
   [
    0.15,
    "n019t018"
   ]
  ],
  "sides": {
   "drive": {
    "B": 0.7,
    "D": 0.7,
    "E": 0.7,
    "g": 2
   },
   "non-drive": {
    "B": 1.3,
    "D": 1.3,
    "E": 1.3,
    "g": 0.3
   }
  },
  "history": "423543B643553D933263E493543F723393G423549H623573I823563J429543C523545K423843L423943d.6....o.8....h.4....",
  "rows": "93a92d84f66h84n039|92f39eh93a91|92a9b57c84d48e6503g3009h75ij57lm48k66|92a92b27052bD2804c84d65042dE65043e7503h740322ij8402l750302m047323k75|84b93d654l474m338e705|92b93c84d48eh66g39ijl48m48k84||391a29bd66lm66k428|39c66h48|93a92b842c57d239e4028h744ij84lm842k842|39a29b384d0573c0804h0654k8204|92b93c84d92o39h564hJ842hK338hBEL39a91|92a9f93h75hJ39hBEKL93|66a92fn84c48dehk57g48|75a93fn93bD84c57d57dCF75hk66|902l64533m804mH209a901lH34703|92a91l57d84k83||93|94|",
  "bands": "|0.2 3,-0.2 0.2,2.5 14|0 0.15,0.15 8,0 0.15,0.15 8||500 50000,0 500|0 0.3,0.3 8|9 25,1 9,0 2,0 1,,|0.1 1.5,0 0.1,1.5 8",
  "joints": {},
  "stop": "c13d12345e2h2j23l2b1m1p1234a2q1",
  "pairs": "c0f1h2k1d2e0",
  "silent": "g",
  "checks": "1b2a1b2b3c3c2d1b1e1e1e2e3a5b1b3d1b2b2a8a1a",
  "opening": [
   [
    0,
    0,
    ""
   ],
   [
    0,
    0,
    ""
   ],
   [
    0,
    1,
    "dchq"
   ],
   [
    1,
    0,
    "d"
   ],
   [
    4,
    1,
    "dcohq"
   ]
  ],
  "gates": {
   "i": [
    "q1",
    ""
   ]
  },
  "lacks": "",
  "losses": {
   "c": {
    "a": 12
   },
   "i": {
    "d": 160
   },
   "f": {
    "l": 8
   },
   "e": {
    "l": 10
   }
  },
  "instead": {
   "full-torque": "bolts-in-turn"
  }
 },
 "cottered": {
  "causes": "A560a9B160b7l5d3C15m8l4e2D105b9l3E60l6d5o3h4G20l6m5d4h3H50l8m3b3d3I45n6m5l4c3J8f7h5g2K6h7e5L30c6l4d3g4h3",
  "besides": [
   [
    0.12,
    "s018c027f015n014m013"
   ],
   [
    0.15,
    "n019t018"
   ]
  ],
  "sides": {
   "drive": {
    "B": 0.7,
    "D": 0.7,
    "E": 0.7,
    "g": 2
   },
   "non-drive": {
    "B": 1.3,
    "D": 1.3,
    "E": 1.3,
    "g": 0.3
   }
  },
  "history": "423543B643553D933263E493543F723393G423549H623573I823563J429543C523545K423843L423943d.6....o.8....h.4....",
  "rows": "93a92d84f66h75n039l66|92f39eh93a91|92a9b39c84d48e6503g3009h75ij57lm39k66|93b4605l6504d65032eh8402m337303|84b93l645d635h744e705m438|92b93c84d48eh66g39ijl48m48k84|||48c84h57d29|93a92b842c57d239e4028h744ij84lm842k842||92b93c84d92o39h564hJ842hK338hBEL39a91|92a9f93h75hJ39hBEKL93|66a92fn84c48dehk57g48l48|75a93fn93bD84c57d57dCF75hk66l57|902a901l60533lH209m804||93a91b84l481lH57m57dh66n309|93|94|",
  "bands": "||0 0.15,0.15 8,0 0.15,0.15 8||500 50000,0 500|0 0.3,0.3 8|5 30,1 5,0 2,0 1,,|",
  "joints": {},
  "stop": "c13d12345e2j23l2b1m1p1234a2r12",
  "pairs": "c0f1d2e0",
  "silent": "",
  "checks": "1b2a1b2b3c3c2d1b1e1e1e2e3a5b1b2d1b2d2a8a1a",
  "opening": [
   [
    0,
    0,
    ""
   ],
   [
    0,
    0,
    ""
   ],
   [
    0,
    1,
    "dc"
   ],
   [
    4,
    2,
    "dc"
   ],
   [
    6,
    3,
    "dco"
   ]
  ],
  "gates": {
   "b": [
    "r12",
    "d13f0c1"
   ],
   "i": [
    "",
    "r12d245e2"
   ]
  },
  "lacks": "",
  "losses": {
   "i": {
    "a": 35,
    "b": 15,
    "d": 60,
    "o": 80,
    "h": 100
   }
  },
  "instead": {
   "full-torque": "cotter-pressed-in"
  }
 },
 "one-piece": {
  "causes": "A940a9J40f8h4K5h9L15h9",
  "besides": [
   [
    0.25,
    "s018c027n014m013"
   ],
   [
    0.15,
    "n019t018"
   ]
  ],
  "sides": {
   "drive": {},
   "non-drive": {}
  },
  "history": "423543B643553D933263E493543F723393G423549H623573I823563J429543C523545K423843L423943d.6....o.8....h.4....",
  "rows": "92f57h84|92f39eh93a91|9h84|||||||||92a91h456hJ833hK329hL392|92a9f93h75hJ39hKL93|66a92fn84c48g48h57|||||93hL48|94|",
  "bands": "||0 0.15,0.15 8,0 0.15,0.15 8|||0 0.3,0.3 8||",
  "joints": {},
  "stop": "c1l2b1m1",
  "pairs": "",
  "silent": "",
  "checks": "1b2a1b2b3c3c2d1b1e1e1e2e3a5b1b3d1b2b2a8a1a",
  "opening": [
   [
    0,
    0,
    ""
   ],
   [
    0,
    0,
    ""
   ],
   [
    0,
    1,
    "dc"
   ],
   [
    2,
    1,
    "d"
   ],
   [
    15,
    0,
    "c"
   ]
  ],
  "gates": {},
  "lacks": "bdefgi",
  "losses": {
   "a": {
    "f": 800
   },
   "h": {
    "f": 0,
    "h": 0
   }
  },
  "instead": {}
 }
};
