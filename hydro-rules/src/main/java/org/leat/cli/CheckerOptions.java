package org.leat.cli;

import java.util.List;
import org.leat.check.Checker;
import org.leat.check.RulePack;
import org.leat.pack.BuiltInPack;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What the commands that need rules have in common: where the rules come from. */
@Command
final class CheckerOptions {

    @Spec(Spec.Target.MIXEE)
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    /** {@return the command that these options were given to, for its errors} */
    CommandSpec spec() {
        return spec;
    }

    /** {@return the built-in rules first, then what the call names} */
    List<RulePack> packs() {
        return List.of(new BuiltInPack());
    }

    /** {@return the checker that the call asks for} */
    Checker checker() {
        return Checker.of(packs());
    }
}
