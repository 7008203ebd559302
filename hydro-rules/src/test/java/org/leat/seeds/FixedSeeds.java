package org.leat.seeds;

import java.lang.reflect.AnnotatedElement;
import java.util.Optional;
import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * Gives each property the seed that belongs to its name, so that two runs of the same code try the same values; jqwik
 * prints the seed of a failure. With {@code -Dleat.fresh-seeds=true} each run draws seeds of its own. Found by jqwik
 * through {@code META-INF/services}.
 */
public final class FixedSeeds implements AroundPropertyHook {

    static final boolean FRESH = Boolean.getBoolean("leat.fresh-seeds");

    @Override
    public PropertyExecutionResult aroundProperty(PropertyLifecycleContext context, PropertyExecutor property) {
        if (!FRESH
                && context.attributes().seed().filter(seed -> !seed.isEmpty()).isEmpty()) {
            context.attributes().setSeed(seed(context));
        }
        return property.execute();
    }

    private static String seed(PropertyLifecycleContext context) {
        String name = context.containerClass().getName() + "."
                + context.targetMethod().getName();
        return Integer.toString(name.hashCode()); // specified, the same everywhere
    }

    @Override
    public PropagationMode propagateTo() {
        return PropagationMode.ALL_DESCENDANTS;
    }

    @Override
    public boolean appliesTo(Optional<AnnotatedElement> element) {
        return true;
    }
}
