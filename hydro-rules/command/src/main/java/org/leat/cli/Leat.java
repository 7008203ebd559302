package org.leat.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.leat.report.PlainText;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command {@code leat}. */
@Command(
        name = "leat",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Checks designs of stream-powered battery plants against design rules.",
        footer = {
            "",
            "Exit codes: 0 nothing at or above the level asked for; 1 something; 2 the call or the",
            "settings are wrong; 3 a file could not be read as a design; 4 a rule broke, or something",
            "was not judged that was asked to be. With several, the highest wins."
        })
public final class Leat implements Runnable {

    /** In the order of the help. */
    private static final List<Map.Entry<String, Class<?>>> COMMANDS = List.of(
            Map.entry("check", CheckCommand.class),
            Map.entry("explain", ExplainCommand.class),
            Map.entry("mend", MendCommand.class),
            Map.entry("rules", RulesCommand.class),
            Map.entry("schema", SchemaCommand.class),
            Map.entry("settings", SettingsCommand.class),
            Map.entry("gauge", GaugeCommand.class),
            Map.entry("propose", ProposeCommand.class),
            Map.entry("route", RouteCommand.class),
            Map.entry("bench", BenchCommand.class),
            Map.entry("start", StartCommand.class),
            Map.entry("readings", ReadingsCommand.class),
            Map.entry("year", YearCommand.class),
            Map.entry("choose", ChooseCommand.class),
            Map.entry("log", LogCommand.class),
            Map.entry("learn", LearnCommand.class));

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "say what to do");
    }

    /** Runs the command and ends the process with its exit code. */
    public static void main(String[] args) {
        int code = ExitCode.NOT_JUDGED;
        // a pack that ends the process while designs are judged must not make them look judged
        Thread unfinished = new Thread(Leat::endedInside, "ended from inside");
        Runtime.getRuntime().addShutdownHook(unfinished);
        try {
            code = whole(args);
        } catch (Throwable e) {
            // whatever it is, memory or stack used up: it is never taken for a finding
            PrintWriter err = utf8(new FileOutputStream(FileDescriptor.err));
            err.print("leat: " + e.getClass().getSimpleName() + "\n");
            err.flush();
        } finally {
            removed(unfinished);
            System.exit(code);
        }
    }

    private static void endedInside() {
        boolean called = Thread.getAllStackTraces().values().stream()
                .flatMap(Stream::of)
                .anyMatch(at -> at.getClassName().equals("java.lang.Runtime")
                        && at.getMethodName().equals("exit"));
        if (called) { // and no signal from outside, which has an exit code of its own
            PrintWriter err = utf8(new FileOutputStream(FileDescriptor.err));
            err.print("leat: a pack ended the program before everything was judged\n");
            err.flush();
            Runtime.getRuntime().halt(ExitCode.NOT_JUDGED);
        }
    }

    private static void removed(Thread hook) {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // the process is ending already, and the hook with it
        }
    }

    private static int whole(String[] args) {
        // a process of our own: nothing it prints may depend on where it runs
        Locale.setDefault(Locale.ROOT);
        // reports have standard output for themselves: what a pack prints goes to the error stream
        System.setOut(System.err);
        StandardOutput standard = new StandardOutput();
        PrintWriter out = utf8(standard);
        PrintWriter err = utf8(new FileOutputStream(FileDescriptor.err));
        int code = run(args, out, err);
        if (out.checkError() && !standard.readerGone()) {
            // a full disk: what was found did not arrive
            err.print("leat: the output could not be written\n");
            code = ExitCode.NOT_JUDGED;
        }
        err.flush();
        return code;
    }

    /** {@return the whole command} */
    static CommandLine command() {
        CommandLine command = new CommandLine(new Leat());
        COMMANDS.forEach(one -> command.addSubcommand(one.getKey(), new CommandLine(one.getValue())));
        return strict(command);
    }

    /** {@return what answers a call: the command it begins with and no other, for each takes its time to look through} */
    static CommandLine answering(String[] args) {
        for (Map.Entry<String, Class<?>> one : COMMANDS) {
            if (args.length > 0 && one.getKey().equals(args[0])) {
                return strict(new CommandLine(new Leat()).addSubcommand(one.getKey(), new CommandLine(one.getValue())));
            }
        }
        return command();
    }

    /** A file named -h.yaml is no call for help with more letters after it: nothing would be checked, and the exit code be 0. */
    private static CommandLine strict(CommandLine command) {
        return command.setPosixClusteredShortOptionsAllowed(false);
    }

    /** {@return the exit code of a call that prints to these} */
    public static int run(String[] args, PrintWriter out, PrintWriter err) {
        CommandLine command = answering(args);
        command.setOut(out);
        command.setErr(err);
        command.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        command.setUsageHelpWidth(100);
        command.setParameterExceptionHandler((e, given) -> {
            String.valueOf(e.getMessage()).lines().forEach(line -> err.print("leat: " + PlainText.of(line) + "\n"));
            err.print("leat: see " + e.getCommandLine().getCommandSpec().qualifiedName() + " --help" + "\n");
            return ExitCode.CALL_WRONG;
        });
        command.setExecutionExceptionHandler((e, c, parsed) -> {
            if (e instanceof WrongInput) {
                String.valueOf(e.getMessage()).lines().forEach(line -> err.print("leat: " + PlainText.of(line) + "\n"));
                return ExitCode.CALL_WRONG;
            }
            err.print("leat: something in this program broke: " + PlainText.of(CheckCommand.cause(e)) + "\n");
            return ExitCode.NOT_JUDGED;
        });
        try {
            return command.execute(args);
        } catch (Error e) { // memory or stack used up, a class that is not there: never taken for a finding
            err.print("leat: something in this program broke: " + PlainText.of(CheckCommand.cause(e)) + "\n");
            return ExitCode.NOT_JUDGED;
        }
    }

    private static PrintWriter utf8(OutputStream to) {
        return new PrintWriter(new OutputStreamWriter(to, StandardCharsets.UTF_8), false);
    }
}
