// Resolves a bare {@link Name} by its name in all packages. TypeScript does not read the link of a @throws tag, so typedoc
// looks for the name in the same module only, and DomainError lives in another one.
import { ReflectionKind } from 'typedoc';

/** @param {import('typedoc').Application} app */
export function load(app) {
  app.converter.addUnknownSymbolResolver((reference, reflection, part) => {
    const path = reference.symbolReference?.path;
    if (part === undefined || reference.moduleSource !== undefined || path?.length !== 1) return undefined;
    const found = reflection.project
      .getReflectionsByKind(ReflectionKind.SomeExport)
      .filter((other) => other.name === path[0].path && !other.isReference());
    return found.length === 1 ? { target: found[0], caption: path[0].path } : undefined;
  });
}
