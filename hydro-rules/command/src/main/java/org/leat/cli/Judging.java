package org.leat.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import org.leat.check.Checker;
import org.leat.check.Level;
import org.leat.check.Settings.FailOn;
import org.leat.report.BaselineReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What the commands that judge designs have in common: the rules, what counts, and what fails. */
@Command(addMethodSubcommands = false)
final class Judging {

    @Option(
            names = "--fail-on",
            paramLabel = "error|warning|note",
            converter = OptionWords.OfLevel.class,
            description = "The least level that sets exit code 1; if not said, what the settings say, else error.")
    private @Nullable Level failOn;

    @Option(
            names = "--baseline",
            paramLabel = "LOG",
            description = "The SARIF log of an earlier run: what it holds does not count, unless it got worse.")
    private @Nullable Path baseline;

    @Option(
            names = "--today",
            paramLabel = "DAY",
            converter = OptionWords.OfDay.class,
            description = "The day with which last days of suppressions are compared, as 2031-05-30; the clock's if"
                    + " not said.")
    private @Nullable LocalDate today;

    @Mixin
    private CheckerOptions options = new CheckerOptions();

    /** {@return the checker that the call asks for} */
    Checker checker() {
        Checker checker = options.checker().on(today == null ? LocalDate.now(ZoneId.systemDefault()) : today);
        if (baseline == null) {
            return checker;
        }
        BaselineReader.Read read = BaselineReader.read(baseline);
        if (!read.problems().isEmpty()) {
            throw new WrongInput(read.problems());
        }
        return checker.against(read.baseline());
    }

    /** {@return the least level that sets exit code 1} */
    Level failOn() {
        FailOn set = options.settings().failOn();
        return failOn != null ? failOn : set != null ? set.level() : Level.ERROR;
    }
}
