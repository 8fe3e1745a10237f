type Plain = Record<string, unknown>;

const isPlain = (value: unknown): value is Plain =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A path is a field, or a section and its field. */
const partsOf = (path: string): [section: string, field: string | undefined] => {
  const [section = '', field] = path.split('.');
  return [section, field];
};

function valueAt(data: Plain, path: string): unknown {
  const [section, field] = partsOf(path);
  const value = Object.hasOwn(data, section) ? data[section] : undefined;
  if (field === undefined) return value;
  return isPlain(value) && Object.hasOwn(value, field) ? value[field] : undefined;
}

/**
 * The readings that a file holds, in its order, and how many of them stand before its observations: what a walk has added
 * stands behind them, and is taken back before them. @internal
 */
export function readingsIn(data: unknown, paths: readonly string[]): { readings: Plain; before: number } {
  if (!isPlain(data)) return { readings: {}, before: 0 };
  const readings: Plain = {};
  let before: number | undefined;
  for (const [key, value] of Object.entries(data)) {
    if (key === 'observations') before = Object.keys(readings).length;
    const inside = isPlain(value) ? Object.keys(value).map((field) => `${key}.${field}`) : [];
    for (const path of [key, ...inside]) {
      if (paths.includes(path)) readings[path] = valueAt(data, path);
    }
  }
  return { readings, before: before ?? Object.keys(readings).length };
}

/** The data with exactly these readings at these paths; what is new or changed goes to the end. @internal */
export function withReadings(data: Plain, paths: readonly string[], readings: Readonly<Plain>): Plain {
  const out: Plain = { ...data };
  const put = (path: string): void => {
    const [section, field] = partsOf(path);
    const had = out[section];
    delete out[section];
    out[section] = field === undefined ? readings[path] : { ...(isPlain(had) ? had : {}), [field]: readings[path] };
  };
  const drop = (path: string): void => {
    const [section, field] = partsOf(path);
    const { [field ?? '']: _gone, ...rest } = isPlain(out[section]) ? out[section] : {};
    if (field === undefined || Object.keys(rest).length === 0) delete out[section];
    else out[section] = rest;
  };
  for (const path of paths) {
    if (!Object.hasOwn(readings, path) && valueAt(out, path) !== undefined) drop(path);
  }
  for (const path of Object.keys(readings)) {
    if (valueAt(data, path) !== readings[path]) put(path);
  }
  return out;
}
