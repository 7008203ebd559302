package org.leat.report;

import java.util.List;
import java.util.function.IntSupplier;
import org.apiguardian.api.API;

/**
 * The call that a SARIF log tells of.
 *
 * @param arguments of the command line, without the program
 * @param exitCode what the call will exit with, asked when everything is judged
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record SarifCall(List<String> arguments, IntSupplier exitCode) {

    /** Stands in a log for a folder of the machine, see SARIF 2.1.0 §3.14.28. */
    static final String REDACTED = "[REDACTED]";

    public SarifCall {
        arguments = List.copyOf(arguments);
    }

    /** {@return the arguments; of a folder outside the one that is worked in only the file's name is told} */
    List<String> told() {
        return arguments.stream().map(SarifCall::told).toList();
    }

    private static String told(String argument) {
        int value = argument.lastIndexOf('=') + 1;
        return Plainly.of(argument.substring(0, value) + SarifUri.withoutFolder(argument.substring(value), REDACTED));
    }
}
