package org.leat.check.testing;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.pitest.bytecode.analysis.ClassTree;
import org.pitest.classinfo.ClassByteArraySource;
import org.pitest.classinfo.ClassName;
import org.pitest.classpath.ClassloaderByteArraySource;
import org.pitest.classpath.DefaultCodeSource;
import org.pitest.coverage.NoCoverage;
import org.pitest.mutationtest.EngineArguments;
import org.pitest.mutationtest.build.CompoundInterceptorFactory;
import org.pitest.mutationtest.build.MutationInterceptor;
import org.pitest.mutationtest.config.PluginServices;
import org.pitest.mutationtest.config.ReportOptions;
import org.pitest.mutationtest.engine.Mutater;
import org.pitest.mutationtest.engine.MutationDetails;
import org.pitest.mutationtest.engine.gregor.config.GregorEngineFactory;
import org.pitest.mutationtest.incremental.NullHistory;
import org.pitest.plugin.FeatureParser;

/**
 * The mutants of a class, by the mutators and filters that come with the mutation library; but for the filter of code that is
 * only reached from a static field, for rules live there. The field itself is set once and left alone.
 */
final class RuleMutants {

    private final ClassByteArraySource bytes;
    private final Mutater mutater;
    private final MutationInterceptor filters;

    RuleMutants(ClassLoader classes) {
        this.bytes = new ClassloaderByteArraySource(classes);
        this.mutater = new GregorEngineFactory()
                .createEngine(EngineArguments.arguments().withExcludedMethods(Set.of("<clinit>")))
                .createMutator(bytes);
        ReportOptions options = new ReportOptions();
        options.setTargetClasses(List.of("org.leat.pack.*"));
        options.setCodePaths(List.of());
        this.filters = new CompoundInterceptorFactory(
                        new FeatureParser().parseFeatures(List.of("-FSTATI")),
                        PluginServices.makeForLoader(classes).findInterceptors())
                .createInterceptor(
                        options,
                        new NoCoverage(),
                        bytes,
                        mutant -> List.of(),
                        new DefaultCodeSource(options.getMutationClassPaths()),
                        new NullHistory());
    }

    /** {@return the mutants of a class by line} */
    List<MutationDetails> of(String className) {
        filters.begin(ClassTree.fromBytes(bytes.getBytes(className).orElseThrow()));
        Collection<MutationDetails> kept =
                filters.intercept(mutater.findMutations(ClassName.fromString(className)), mutater);
        filters.end();
        return kept.stream()
                .sorted(Comparator.comparingInt(MutationDetails::getLineNumber)
                        .thenComparing(MutationDetails::getDescription)
                        .thenComparingInt(MutationDetails::getFirstIndex))
                .toList();
    }

    /** {@return the class as the mutant has it} */
    byte[] bytes(MutationDetails mutant) {
        return mutater.getMutation(mutant.getId()).getBytes();
    }
}
