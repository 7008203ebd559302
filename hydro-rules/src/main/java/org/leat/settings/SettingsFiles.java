package org.leat.settings;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.RuleCard;
import org.leat.check.Settings;
import org.leat.check.Settings.PackUse;
import org.leat.design.ElementPath;
import org.leat.file.Filled;
import org.leat.file.Position;
import org.leat.file.Problem;
import org.leat.file.ProblemKind;
import org.leat.file.RecordReader;

/**
 * A settings file with the files it builds on. Bad content never throws: what is wrong is a list of problems, each with
 * its place. However the files build on each other, few are read.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class SettingsFiles {

    /** The version of the file format that is read. */
    public static final int FORMAT = 1;

    private static final int DEEPEST = 16;
    private static final int MOST = 64;

    private final List<Layer> nearestFirst = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private final Map<Path, Filled<SettingsFile>> read = new HashMap<>();
    private int steps;

    private SettingsFiles() {}

    /**
     * What came of taking the files at their word.
     *
     * @param settings of all files, the nearest winning; of no use if there are problems
     * @param problems every problem found
     */
    public record Taken(Settings settings, List<Problem> problems) {}

    /** {@return a settings file and all it builds on} */
    public static SettingsFiles read(Path file) {
        SettingsFiles files = new SettingsFiles();
        files.add(file, new LinkedHashSet<>(), null, "");
        return files;
    }

    /** {@return the JSON Schema of settings files, as JSON text} */
    public static String schema() {
        return RecordReader.schema("Settings file, format " + FORMAT, SettingsFile.class);
    }

    /** {@return why a file could not be read; empty if all could} */
    public List<Problem> problems() {
        return problems.stream().distinct().sorted().toList();
    }

    /** {@return the names of the files, the nearest first} */
    public List<String> names() {
        return nearestFirst.stream().map(Layer::name).distinct().toList();
    }

    /** {@return packs asked for, the farthest file's first; a file's name leads from the folder one works in} */
    public List<PackUse> packs() {
        Settings all = Settings.NONE;
        for (Layer layer : nearestFirst) {
            all = all.over(new Settings(Map.of(), null, layer.packs(), List.of()));
        }
        return all.packs();
    }

    /** {@return the settings that the files make of those rules} */
    public Taken settings(Collection<RuleCard> cards) {
        List<Problem> found = new ArrayList<>(problems);
        Settings all = Settings.NONE;
        for (Layer layer : nearestFirst) {
            LayerSettings taken = new LayerSettings(layer, cards);
            all = all.over(taken.settings());
            found.addAll(taken.problems());
        }
        return new Taken(all, found.stream().distinct().sorted().toList());
    }

    private void add(Path file, Set<Path> way, @Nullable Position askedAt, String path) {
        Path real = real(file);
        if (way.contains(real)) {
            List<String> through =
                    way.stream().map(p -> String.valueOf(p.getFileName())).toList();
            wrong(ProblemKind.SETTINGS_CYCLE, askedAt, file, path, String.join(" > ", through));
            return;
        }
        if (way.size() >= DEEPEST || ++steps > MOST) {
            wrong(
                    ProblemKind.TOO_MANY_VALUES,
                    askedAt,
                    file,
                    path,
                    "at most " + MOST + " settings files, " + DEEPEST + " deep");
            return;
        }
        String name = file.toString();
        Filled<SettingsFile> filled =
                read.computeIfAbsent(real, r -> RecordReader.read(SettingsFile.class, file, name));
        List<Problem> here = filled.problems();
        if (askedAt != null && here.size() == 1 && here.get(0).kind() == ProblemKind.UNREADABLE) {
            wrong(
                    ProblemKind.SETTINGS_FILE_MISSING,
                    askedAt,
                    file,
                    path,
                    "expected " + here.get(0).expected());
            return;
        }
        problems.addAll(here);
        SettingsFile content = filled.record();
        if (content == null) {
            return;
        }
        nearestFirst.add(new Layer(name, folder(file), content, filled.positions()));
        way.add(real);
        for (int i = content.buildsOn().size() - 1; i >= 0; i--) {
            String item = ElementPath.named("/builds-on", null, i);
            Position at = filled.positions().of(item);
            String other = content.buildsOn().get(i);
            try {
                add(folder(file).resolve(other).normalize(), way, at, item);
            } catch (InvalidPathException e) {
                problems.add(
                        new Problem(ProblemKind.SETTINGS_FILE_MISSING, at, item, other, "no file name", "", List.of()));
            }
        }
        way.remove(real);
    }

    private void wrong(ProblemKind kind, @Nullable Position at, Path file, String path, String expected) {
        Position where = at == null ? Position.startOf(file.toString()) : at;
        problems.add(new Problem(kind, where, path.isEmpty() ? "/" : path, file.toString(), expected, "", List.of()));
    }

    private static Path folder(Path file) {
        Path parent = file.getParent();
        return parent == null ? file.getFileSystem().getPath("") : parent;
    }

    private static Path real(Path file) {
        try {
            return file.toRealPath();
        } catch (IOException | SecurityException e) {
            return file.toAbsolutePath().normalize();
        }
    }
}
