package org.leat.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.leat.choice.SiteSurvey;
import org.leat.design.Gauging;
import org.leat.file.DesignSchema;
import org.leat.file.RecordReader;
import org.leat.prices.PriceList;
import org.leat.readings.BenchReadings;
import org.leat.readings.PlantLog;
import org.leat.readings.PlantReadings;
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
                "Prints the JSON Schema of design files, or of one of the other files, for an editor that completes and checks them.")
final class SchemaCommand implements Callable<Integer> {

    @Option(names = "--of-settings", description = "Of settings files.")
    private boolean ofSettings;

    @Option(names = "--of-prices", description = "Of price lists.")
    private boolean ofPrices;

    @Option(names = "--of-report", description = "Of reports in JSON.")
    private boolean ofReport;

    @Option(names = "--of-rules", description = "Of rule files.")
    private boolean ofRules;

    @Option(names = "--of-survey", description = "Of surveys, as propose takes them.")
    private boolean ofSurvey;

    @Option(names = "--of-gauging", description = "Of readings at the stream, as gauge takes them.")
    private boolean ofGauging;

    @Option(names = "--of-bench", description = "Of readings of a motor on the bench.")
    private boolean ofBench;

    @Option(names = "--of-readings", description = "Of readings of a plant on one day.")
    private boolean ofReadings;

    @Option(names = "--of-log", description = "Of readings of a plant over months.")
    private boolean ofLog;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() {
        List<Supplier<String>> asked = new ArrayList<>();
        add(asked, ofSettings, SettingsFiles::schema);
        add(asked, ofPrices, PriceList::schema);
        add(asked, ofReport, JsonWriter::schema);
        add(asked, ofRules, RuleFile::schema);
        add(asked, ofSurvey, () -> RecordReader.schema("Survey, format 1", SiteSurvey.class));
        add(asked, ofGauging, () -> RecordReader.schema("Readings at the stream, format 1", Gauging.class));
        add(asked, ofBench, () -> RecordReader.schema("Readings on the bench, format 1", BenchReadings.class));
        add(asked, ofReadings, () -> RecordReader.schema("Readings of a plant, format 1", PlantReadings.class));
        add(asked, ofLog, () -> RecordReader.schema("Log of a plant, format 1", PlantLog.class));
        if (asked.size() > 1) {
            throw new ParameterException(spec.commandLine(), "one schema at a time");
        }
        String schema = asked.isEmpty() ? DesignSchema.json() : asked.get(0).get();
        spec.commandLine().getOut().print(schema.stripTrailing() + "\n");
        return ExitCode.NOTHING;
    }

    private static void add(List<Supplier<String>> asked, boolean wanted, Supplier<String> schema) {
        if (wanted) {
            asked.add(schema);
        }
    }
}
