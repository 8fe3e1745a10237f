// Two things that the API pages need and typedoc has no setting for.
import { Converter, ReflectionKind } from 'typedoc';
import ts from 'typescript';

/** @param {import('typedoc').Application} app */
export function load(app) {
  // A bare {@link Name} is looked up by its name in all packages: TypeScript does not read the link of a @throws tag, so
  // typedoc looks in the same module only, and DomainError lives in another one.
  app.converter.addUnknownSymbolResolver((reference, reflection, part) => {
    const path = reference.symbolReference?.path;
    if (part === undefined || reference.moduleSource !== undefined || path?.length !== 1) return undefined;
    const found = reflection.project
      .getReflectionsByKind(ReflectionKind.SomeExport)
      .filter((other) => other.name === path[0].path && !other.isReference());
    return found.length === 1 ? { target: found[0], caption: path[0].path } : undefined;
  });

  // `keyof typeof TABLE` tells a reader nothing; the ids that it stands for do.
  app.converter.on(Converter.EVENT_CREATE_DECLARATION, (context, reflection) => {
    const symbol = context.getSymbolFromReflection(reflection);
    const declaration = symbol?.declarations?.find(ts.isTypeAliasDeclaration);
    if (!declaration || !/\btypeof\b/.test(declaration.type.getText())) return;
    const type = context.checker.getDeclaredTypeOfSymbol(symbol);
    if (type.isUnion() && type.types.every((part) => part.isLiteral())) {
      reflection.comment?.modifierTags.add('@useDeclaredType');
    }
  });
}
