package org.leat.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.apiguardian.api.API;

/**
 * The design files of a folder. A file there is one if its name ends in {@code .yaml}, {@code .yml} or {@code .json} and
 * its outermost fields name a part of a plant, such as {@code site} or {@code penstock}. Parts files, settings and
 * reports do not, so they may lie among the designs. Names that begin with a dot and folders that are links are passed
 * over.
 */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class DesignFiles {

    /** By name, the same on every machine: folders are told from names by a slash. */
    public static final Comparator<Path> BY_NAME = Comparator.comparing(DesignFiles::name);

    private DesignFiles() {}

    /**
     * What a folder holds.
     *
     * @param designs in it and below, by name; also what cannot be looked into, so that it is not passed over in silence
     * @param leftAside YAML and JSON files that hold no part of a plant, by name
     * @param noFiles pipes, devices and the like that are called as designs are, by name; they are not opened
     */
    public record Found(List<Path> designs, List<Path> leftAside, List<Path> noFiles) {
        public Found {
            designs = List.copyOf(designs);
            leftAside = List.copyOf(leftAside);
            noFiles = List.copyOf(noFiles);
        }
    }

    /**
     * {@return the design files of a folder and of the folders below}
     *
     * @throws IOException if the folder itself cannot be read
     */
    public static Found in(Path folder) throws IOException {
        List<Path> designs = new ArrayList<>();
        List<Path> leftAside = new ArrayList<>();
        List<Path> noFiles = new ArrayList<>();
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path dir, BasicFileAttributes attributes) {
                return !dir.equals(folder) && hidden(dir) ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                if (named(file) && !hidden(file) && !Files.isDirectory(file)) {
                    // a link that leads nowhere is taken for a design: reading it will tell why
                    boolean other = Files.exists(file) && !Files.isRegularFile(file);
                    (other ? noFiles : holdsPlant(file) ? designs : leftAside).add(file);
                }
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException e) throws IOException {
                if (file.equals(folder)) {
                    throw e;
                }
                designs.add(file);
                return FileVisitResult.CONTINUE;
            }
        });
        designs.sort(BY_NAME);
        leftAside.sort(BY_NAME);
        noFiles.sort(BY_NAME);
        return new Found(designs, leftAside, noFiles);
    }

    private static String name(Path path) {
        return path.toString().replace('\\', '/');
    }

    private static boolean hidden(Path path) {
        Path name = path.getFileName();
        return name != null
                && name.toString().startsWith(".")
                && !name.toString().equals(".")
                && !name.toString().equals("..");
    }

    private static boolean named(Path file) {
        String name = file.toString().toLowerCase(Locale.ROOT);
        return name.endsWith(".yaml") || name.endsWith(".yml") || name.endsWith(".json");
    }

    /** A file that cannot be read is taken for a design: reading it will tell why. */
    private static boolean holdsPlant(Path file) {
        try {
            return OutermostFields.holdPlant(new String(Bytes.read(file), StandardCharsets.UTF_8));
        } catch (IOException | SecurityException e) {
            return true;
        }
    }
}
