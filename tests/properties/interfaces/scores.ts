// How far probabilities can be believed: scores and a reliability table of forecasts against what was true.

/** One forecast: the probability of each candidate, and which one was true. */
export interface Forecast {
  probabilities: Readonly<Record<string, number>>;
  truth: string;
}

/** One row of a reliability table: forecasts whose likeliest candidate had a probability in one tenth. */
export interface ReliabilityRow {
  from: number;
  to: number;
  count: number;
  /** Mean probability of the likeliest candidate. */
  claimed: number;
  /** Share of the forecasts whose likeliest candidate was true. */
  right: number;
}

/** What a set of forecasts is worth. */
export interface Score {
  count: number;
  rows: readonly ReliabilityRow[];
  /** Mean distance of claimed from right, over the rows by their counts. */
  calibrationError: number;
  /** Sum of squared errors over all candidates, averaged over the forecasts: 0 is perfect, 2 the worst. */
  brier: number;
  /** Mean of -ln of the probability given to the truth. */
  logScore: number;
  /** The same scores of the frequencies of the truths themselves, the best forecast without any reading. */
  climatology: { brier: number; logScore: number };
  /** Forecasts with a likeliest candidate of 0.99 or more, and how many of those were wrong. */
  nearCertain: { count: number; wrong: number };
}

const likeliest = ({ probabilities }: Forecast): [string, number] =>
  Object.entries(probabilities).reduce((best, entry) => (entry[1] > best[1] ? entry : best), ['', 0]);

/** A candidate that a forecast does not name has been given no probability; the floor keeps its logarithm finite. */
const FLOOR = 1e-12;

const brierOf = ({ probabilities, truth }: Forecast): number => {
  const named = Object.entries(probabilities).reduce((sum, [id, p]) => sum + (p - (id === truth ? 1 : 0)) ** 2, 0);
  return truth in probabilities ? named : named + 1;
};

const logOf = ({ probabilities, truth }: Forecast): number => -Math.log(Math.max(FLOOR, probabilities[truth] ?? 0));

const meanOf = (forecasts: readonly Forecast[], score: (forecast: Forecast) => number): number =>
  forecasts.reduce((sum, forecast) => sum + score(forecast), 0) / forecasts.length;

export function scoreOf(forecasts: readonly Forecast[]): Score {
  const rows = Array.from({ length: 10 }, (_, decile): ReliabilityRow => {
    const own = forecasts.filter((entry) => Math.min(9, Math.floor(10 * likeliest(entry)[1])) === decile);
    return {
      from: decile / 10,
      to: (decile + 1) / 10,
      count: own.length,
      claimed: own.length === 0 ? 0 : meanOf(own, (entry) => likeliest(entry)[1]),
      right: own.length === 0 ? 0 : meanOf(own, (entry) => (likeliest(entry)[0] === entry.truth ? 1 : 0)),
    };
  }).filter(({ count }) => count > 0);
  const truths = new Map<string, number>();
  for (const { truth } of forecasts) truths.set(truth, (truths.get(truth) ?? 0) + 1 / forecasts.length);
  const constant = forecasts.map(({ truth }) => ({ probabilities: Object.fromEntries(truths), truth }));
  const certain = forecasts.filter((entry) => likeliest(entry)[1] >= 0.99);
  return {
    count: forecasts.length,
    rows,
    calibrationError:
      rows.reduce((sum, row) => sum + row.count * Math.abs(row.claimed - row.right), 0) / forecasts.length,
    brier: meanOf(forecasts, brierOf),
    logScore: meanOf(forecasts, logOf),
    climatology: { brier: meanOf(constant, brierOf), logScore: meanOf(constant, logOf) },
    nearCertain: {
      count: certain.length,
      wrong: certain.filter((entry) => likeliest(entry)[0] !== entry.truth).length,
    },
  };
}

/** The same forecasts, each more certain than it was: probabilities to a power, summing to one again. */
export function sharpened(forecasts: readonly Forecast[], power: number): Forecast[] {
  return forecasts.map(({ probabilities, truth }) => {
    const raised = Object.entries(probabilities).map(([id, p]): [string, number] => [id, p ** power]);
    const total = raised.reduce((sum, [, p]) => sum + p, 0);
    return { probabilities: Object.fromEntries(raised.map(([id, p]) => [id, p / total])), truth };
  });
}
