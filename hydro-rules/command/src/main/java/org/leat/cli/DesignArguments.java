package org.leat.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leat.file.DesignFiles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Which designs a call names: files, folders, patterns, standard input. */
@Command(addMethodSubcommands = false)
final class DesignArguments {

    @Parameters(
            paramLabel = "FILE",
            arity = "1..*",
            description = {
                "Design files, YAML or JSON; folders, for the designs in them and below;",
                "patterns, as 'plants/**/*.yaml'; - for standard input."
            })
    private List<String> given = new ArrayList<>();

    @Option(
            names = "--input-name",
            paramLabel = "NAME",
            description = "The file that standard input stands for, in reports and for its parts files.")
    private @Nullable String inputName;

    @Spec(Spec.Target.MIXEE)
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    private final List<Path> leftAside = new ArrayList<>();
    private final List<Path> noFiles = new ArrayList<>();

    /** {@return every design once, by name, standard input first} */
    List<DesignSource> sources() {
        Map<Object, DesignSource> once = new LinkedHashMap<>();
        if (inputName != null && !given.contains("-")) {
            throw wrong("--input-name goes with - for standard input");
        }
        for (String argument : given) {
            if (argument.equals("-")) {
                once.put("-", new DesignSource(inputName == null ? DesignSource.STANDARD_INPUT : inputName, null));
            } else {
                for (Path file : files(argument)) {
                    once.putIfAbsent(identity(file), new DesignSource(file.toString(), file));
                }
            }
        }
        List<DesignSource> sources = new ArrayList<>(once.values());
        // by the path as it was found: a name that the locale's charset does not hold makes no path again
        sources.sort(Comparator.comparing(DesignSource::file, Comparator.nullsFirst(DesignFiles.BY_NAME)));
        return sources;
    }

    /** {@return YAML and JSON files in the folders given that hold no part of a plant} */
    List<Path> leftAside() {
        return List.copyOf(leftAside);
    }

    /** {@return what is called like a design in the folders given and is no ordinary file} */
    List<Path> noFiles() {
        return List.copyOf(noFiles);
    }

    private List<Path> files(String argument) {
        try {
            if (!FilePattern.isOne(argument) || Files.exists(Path.of(argument))) {
                Path path = tidy(Path.of(argument));
                return Files.isDirectory(path) ? folder(path) : List.of(path);
            }
            List<Path> files = new ArrayList<>();
            for (Path match : FilePattern.matches(argument)) {
                files.addAll(Files.isDirectory(match) ? folder(match) : List.of(match));
            }
            if (files.isEmpty()) {
                throw wrong("no file matches " + argument);
            }
            return files;
        } catch (InvalidPathException | java.util.regex.PatternSyntaxException e) {
            throw wrong("neither a file nor a pattern: " + argument);
        } catch (IOException e) {
            throw wrong("cannot be looked into: " + argument);
        }
    }

    private List<Path> folder(Path folder) throws IOException {
        DesignFiles.Found found = DesignFiles.in(folder);
        if (found.designs().isEmpty()) {
            String beside = found.leftAside().isEmpty()
                    ? ""
                    : "; what is there holds no part of a plant: " + told(found.leftAside());
            throw wrong("no design in the folder " + (folder.toString().isEmpty() ? "." : folder) + beside);
        }
        leftAside.addAll(found.leftAside());
        noFiles.addAll(found.noFiles());
        return found.designs();
    }

    /** {@return the first few names} */
    static String told(List<Path> files) {
        int most = 3;
        List<String> names = files.stream().limit(most).map(Path::toString).toList();
        return String.join(", ", names) + (files.size() > most ? " and " + (files.size() - most) + " more" : "");
    }

    private static Path tidy(Path path) {
        Path tidy = path.normalize();
        return path.toString().equals(".") || path.toString().startsWith("./") ? tidy : path;
    }

    private static Object identity(Path file) {
        try {
            return file.toRealPath();
        } catch (IOException e) {
            return file.toAbsolutePath().normalize();
        }
    }

    private ParameterException wrong(String what) {
        return new ParameterException(spec.commandLine(), what);
    }
}
