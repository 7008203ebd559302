package org.leat.cli;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import org.leat.file.DesignFiles;

/** File name patterns, for shells that leave them as they are: {@code *}, {@code **}, {@code ?}, {@code [ab]}, {@code {a,b}}. */
final class FilePattern {

    private FilePattern() {}

    static boolean isOne(String argument) {
        return argument.chars().anyMatch(c -> "*?[{".indexOf(c) >= 0);
    }

    /** {@return files and folders that match, by name; none whose name begins with a dot unless the pattern says so} */
    static List<Path> matches(String given) throws IOException {
        String pattern = java.io.File.separatorChar == '\\' ? given.replace('\\', '/') : given;
        while (pattern.startsWith("./")) {
            pattern = pattern.substring(2);
        }
        int star = 0;
        while (!isOne(pattern.substring(star, star + 1))) {
            star++;
        }
        int slash = pattern.lastIndexOf('/', star);
        Path root = Path.of(slash < 0 ? "" : pattern.substring(0, Math.max(slash, 1)));
        boolean dots = pattern.startsWith(".") || pattern.contains("/.");
        // as in shells, ** also stands for no folder at all
        List<PathMatcher> matchers = List.of(matcher(pattern), matcher(pattern.replace("**/", "")));
        List<Path> matches = new ArrayList<>();
        if (!Files.isDirectory(root)) {
            return matches;
        }
        Files.walkFileTree(root, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
                if (folder.equals(root)) {
                    return FileVisitResult.CONTINUE;
                }
                if (hidden(folder)) {
                    return FileVisitResult.SKIP_SUBTREE;
                }
                return add(folder) ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                if (!hidden(file)) {
                    add(file);
                }
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException e) {
                add(file);
                return FileVisitResult.CONTINUE;
            }

            private boolean hidden(Path path) {
                return !dots && String.valueOf(path.getFileName()).startsWith(".");
            }

            private boolean add(Path path) {
                return matchers.stream().anyMatch(m -> m.matches(path)) && matches.add(path);
            }
        });
        matches.sort(DesignFiles.BY_NAME);
        return matches;
    }

    private static PathMatcher matcher(String pattern) {
        return Path.of("").getFileSystem().getPathMatcher("glob:" + pattern);
    }
}
