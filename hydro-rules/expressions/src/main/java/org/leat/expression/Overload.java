package org.leat.expression;

import dev.cel.common.CelFunctionDecl;
import dev.cel.common.CelOverloadDecl;
import dev.cel.common.types.CelType;
import dev.cel.runtime.CelFunctionBinding;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * One function for one list of types.
 *
 * @param name as it is written; an operator's is {@code _+_}
 * @param member whether it is written behind its first argument
 * @param body given its arguments
 */
record Overload(
        String name,
        String id,
        boolean member,
        CelType result,
        List<CelType> types,
        List<Class<?>> classes,
        Function<Object[], Object> body) {

    CelOverloadDecl declared() {
        return member
                ? CelOverloadDecl.newMemberOverload(id, result, types)
                : CelOverloadDecl.newGlobalOverload(id, result, types);
    }

    @SuppressWarnings("Immutable") // no body holds state
    CelFunctionBinding bound() {
        return CelFunctionBinding.from(id, classes, body::apply);
    }

    static List<CelFunctionDecl> declarations(List<Overload> overloads) {
        Map<String, List<CelOverloadDecl>> byName = new LinkedHashMap<>();
        for (Overload overload : overloads) {
            byName.computeIfAbsent(overload.name(), name -> new ArrayList<>()).add(overload.declared());
        }
        List<CelFunctionDecl> declarations = new ArrayList<>();
        byName.forEach((name, declared) -> declarations.add(CelFunctionDecl.newFunctionDeclaration(name, declared)));
        return declarations;
    }
}
