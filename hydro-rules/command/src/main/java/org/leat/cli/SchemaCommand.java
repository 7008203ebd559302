package org.leat.cli;

import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.leat.file.DesignSchema;
import org.leat.prices.PriceList;
import org.leat.report.JsonWriter;
import org.leat.rulefile.RuleFile;
import org.leat.settings.SettingsFiles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code leat schema}. */
@Command(
        name = "schema",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description =
                "Prints the JSON Schema of design files, of settings files, of rule files, of price lists, or of reports in"
                        + " JSON.")
final class SchemaCommand implements Callable<Integer> {

    @Option(names = "--of-settings", description = "Of settings files.")
    private boolean ofSettings;

    @Option(names = "--of-prices", description = "Of price lists.")
    private boolean ofPrices;

    @Option(names = "--of-report", description = "Of reports in JSON.")
    private boolean ofReport;

    @Option(names = "--of-rules", description = "Of rule files.")
    private boolean ofRules;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (Stream.of(ofSettings, ofReport, ofRules, ofPrices)
                        .filter(asked -> asked)
                        .count()
                > 1) {
            throw new ParameterException(spec.commandLine(), "one schema at a time");
        }
        String schema;
        if (ofRules) {
            schema = RuleFile.schema();
        } else if (ofPrices) {
            schema = PriceList.schema();
        } else {
            schema = ofReport ? JsonWriter.schema() : ofSettings ? SettingsFiles.schema() : DesignSchema.json();
        }
        spec.commandLine().getOut().print(schema.stripTrailing() + "\n");
        return ExitCode.NOTHING;
    }
}
