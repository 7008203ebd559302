package org.leat.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.check.Checker;
import org.leat.check.RuleCard;
import org.leat.check.RuleInForce;
import org.leat.check.RulePack;
import org.leat.check.Settings;
import org.leat.check.Settings.PackUse;
import org.leat.file.Problem;
import org.leat.file.ProblemKind;
import org.leat.pack.BuiltInPack;
import org.leat.settings.SettingsFiles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What the commands that need rules have in common: where the rules come from. */
@Command(addMethodSubcommands = false)
final class CheckerOptions {

    @Spec(Spec.Target.MIXEE)
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Option(
            names = "--pack",
            paramLabel = "FILE",
            description =
                    "More rules: a jar that registers rule packs, a rule file (YAML or JSON), or the name of a pack on the"
                            + " class path."
                            + " May be given several times.")
    private List<String> more = new ArrayList<>();

    @Option(
            names = "--settings",
            paramLabel = "FILE",
            description = "A settings file: limits, levels, packs and what does not count.")
    private @Nullable Path settingsFile;

    private @Nullable Asked asked;

    /** What the call and its settings file ask for, loaded once. */
    private record Asked(List<RulePack> packs, Settings settings, List<String> names) {}

    /** {@return the command that these options were given to, for its errors} */
    CommandSpec spec() {
        return spec;
    }

    /** {@return the built-in rules first, then what the settings name, then what the call names} */
    List<RulePack> packs() {
        return asked().packs();
    }

    /** {@return the settings in force} */
    Settings settings() {
        return asked().settings();
    }

    /** {@return the settings files in force, the nearest first} */
    List<String> settingsNames() {
        return asked().names();
    }

    /** {@return packs that the call names} */
    List<String> more() {
        return List.copyOf(more);
    }

    /** {@return the checker that the call asks for} */
    Checker checker() {
        try {
            return Checker.of(packs(), settings());
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), String.valueOf(e.getMessage()));
        }
    }

    private Asked asked() {
        if (asked == null) {
            asked = load();
        }
        return asked;
    }

    private Asked load() {
        List<RulePack> packs = new ArrayList<>();
        packs.add(new BuiltInPack());
        SettingsFiles files = settingsFile == null ? null : SettingsFiles.read(settingsFile);
        if (files != null) {
            addPacks(files, packs);
        }
        for (String named : more) {
            try {
                packs.addAll(PackWords.packs(named, Path.of("")));
            } catch (IOException e) {
                throw new ParameterException(
                        spec.commandLine(), "--pack " + named + " cannot be read: " + CheckCommand.cause(e));
            } catch (IllegalArgumentException e) {
                throw new ParameterException(spec.commandLine(), "--pack " + named + ": " + e.getMessage());
            }
        }
        if (files == null) {
            return new Asked(packs, Settings.NONE, List.of());
        }
        List<RuleCard> cards = Checker.of(packs).rulebook().rules().stream()
                .map(RuleInForce::card)
                .toList();
        SettingsFiles.Taken taken = files.settings(cards);
        if (!taken.problems().isEmpty()) {
            throw new WrongInput(taken.problems());
        }
        return new Asked(packs, taken.settings(), files.names());
    }

    private static void addPacks(SettingsFiles files, List<RulePack> packs) {
        List<Problem> problems = new ArrayList<>(files.problems());
        for (PackUse use : files.packs()) {
            try {
                packs.addAll(PackWords.packs(use.name(), Path.of("")));
            } catch (IOException | IllegalArgumentException e) {
                String why = e instanceof IOException ? CheckCommand.cause(e) : String.valueOf(e.getMessage());
                problems.add(new Problem(ProblemKind.UNKNOWN_PACK, use.at(), "/packs", use.name(), why, "", List.of()));
            }
        }
        if (!problems.isEmpty()) {
            throw new WrongInput(problems);
        }
    }
}
