package org.leat.maven;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.LifecyclePhase;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;
import org.leat.cli.Leat;

/**
 * Checks designs of plants as {@code leat check} does. What was found stands in the build's log and in report files,
 * which are kept when the check fails. The build fails for the same reasons for which the command's exit code is not 0.
 */
@Mojo(name = "check", defaultPhase = LifecyclePhase.VERIFY, threadSafe = true, requiresProject = false)
public final class CheckMojo extends AbstractMojo {

    /** Files, folders and patterns as <code>plants/**&#47;*.yaml</code>, seen from the folder of the project. */
    @Parameter(property = "leat.designs", defaultValue = "designs")
    private List<String> designs = new ArrayList<>();

    /** A settings file: limits, levels, packs and what does not count. */
    @Parameter(property = "leat.settings")
    private @Nullable File settings;

    /** More rules: jars that register packs, rule files, or names of packs among the plugin's own dependencies. */
    @Parameter(property = "leat.packs")
    private @Nullable List<String> packs;

    /** The least level at which a finding fails the build: error, warning or note. */
    @Parameter(property = "leat.failOn", defaultValue = "error")
    private String failOn = "error";

    /** Whether a question that stays open fails the build too. */
    @Parameter(property = "leat.judgeAll", defaultValue = "false")
    private boolean judgeAll;

    /** The folder of the report files. */
    @Parameter(property = "leat.reports", defaultValue = "${project.build.directory}/leat")
    @SuppressWarnings("NullAway.Init") // set by Maven
    private File reports;

    /** The formats of the report files: json, junit, markdown, sarif, text. */
    @Parameter(property = "leat.formats", defaultValue = "junit,markdown,sarif")
    private List<String> formats = new ArrayList<>();

    /** Whether nothing is checked. */
    @Parameter(property = "leat.skip", defaultValue = "false")
    private boolean skip;

    @Parameter(defaultValue = "${basedir}", readonly = true, required = true)
    @SuppressWarnings("NullAway.Init") // set by Maven
    private File basedir;

    @Override
    public void execute() throws MojoExecutionException, MojoFailureException {
        if (skip) {
            getLog().info("no design is checked: leat.skip");
            return;
        }
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code;
        try (PrintWriter to = new PrintWriter(out);
                PrintWriter problems = new PrintWriter(err)) {
            code = Leat.run(call().toArray(String[]::new), to, problems);
        }
        boolean failed = code != 0;
        out.toString().lines().forEach(line -> {
            if (failed) {
                getLog().error(line);
            } else {
                getLog().info(line);
            }
        });
        err.toString().lines().forEach(getLog()::warn);
        switch (code) {
            case 0 -> {}
            case 1 ->
                throw new MojoFailureException(
                        "A design has findings at the level " + failOn + "; see above and " + reports);
            case 2 -> throw new MojoExecutionException("The goal's parameters or the settings are wrong; see above");
            case 3 -> throw new MojoFailureException("A file could not be read as a design; see above and " + reports);
            default ->
                throw new MojoFailureException(
                        "Something was not judged that was asked to be; see above and " + reports);
        }
    }

    private List<String> call() throws MojoExecutionException {
        List<String> call = new ArrayList<>(List.of("check", "--fail-on=" + failOn));
        if (judgeAll) {
            call.add("--judge-all");
        }
        if (settings != null) {
            call.add("--settings=" + seen(settings.toPath()));
        }
        for (String pack : packs == null ? List.<String>of() : packs) {
            Path file = basedir.toPath().resolve(pack);
            call.add("--pack=" + (Files.exists(file) ? seen(file) : pack));
        }
        try {
            Files.createDirectories(reports.toPath());
        } catch (IOException e) {
            throw new MojoExecutionException("The folder of the reports cannot be made: " + reports, e);
        }
        for (String format : formats) {
            call.add("--also=" + format + "=" + seen(reports.toPath()).resolve("designs." + ending(format)));
        }
        call.add("--");
        for (String design : designs) {
            call.add(seen(basedir.toPath().resolve(design)).toString());
        }
        return call;
    }

    /** A file as it is named in a report: from the folder in which Maven was started, where it lies below. */
    private static Path seen(Path file) {
        Path here = Path.of("").toAbsolutePath();
        Path there = file.toAbsolutePath().normalize();
        return there.startsWith(here) && !there.equals(here) ? here.relativize(there) : there;
    }

    private static String ending(String format) {
        return switch (format.toLowerCase(Locale.ROOT)) {
            case "junit" -> "xml";
            case "markdown" -> "md";
            case "text" -> "txt";
            default -> format;
        };
    }
}
