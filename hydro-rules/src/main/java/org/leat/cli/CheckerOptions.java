package org.leat.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.leat.check.Checker;
import org.leat.check.RulePack;
import org.leat.pack.BuiltInPack;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What the commands that need rules have in common: where the rules come from. */
@Command
final class CheckerOptions {

    @Spec(Spec.Target.MIXEE)
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Option(
            names = "--pack",
            paramLabel = "FILE",
            description =
                    "More rules, from a jar that registers rule packs, or of the name of a pack on the class path."
                            + " May be given several times.")
    private List<String> more = new ArrayList<>();

    /** {@return the command that these options were given to, for its errors} */
    CommandSpec spec() {
        return spec;
    }

    /** {@return the built-in rules first, then what the call names} */
    List<RulePack> packs() {
        List<RulePack> packs = new ArrayList<>();
        packs.add(new BuiltInPack());
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
        return packs;
    }

    /** {@return the checker that the call asks for} */
    Checker checker() {
        try {
            return Checker.of(packs());
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), String.valueOf(e.getMessage()));
        }
    }
}
