package org.leat.cli;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.leat.check.Report;
import org.leat.check.Rulebook;
import org.leat.choice.Overview;
import org.leat.file.Reading;
import org.leat.page.PageIndex;
import org.leat.page.PageWriter;
import org.leat.report.ReportWriter;

/** A folder of pages: one for each design, named after its file, and {@code index.html}. */
final class PageFolder implements ReportWriter {

    /** Begins a file that takes its name when all is written. */
    @FunctionalInterface
    interface Opener {
        Writer open(Path file) throws IOException;
    }

    private static final int LONGEST = 100;

    private final Path folder;
    private final Rulebook rulebook;
    private final Opener opener;
    private final String common;
    private final PageIndex index;
    private final Set<String> taken = new HashSet<>(Set.of("index"));

    /**
     * Makes the folder where there is none.
     *
     * @param names of all designs: what they have in common is left out of the pages' names
     */
    PageFolder(Path folder, Rulebook rulebook, List<String> names, Opener opener) throws IOException {
        this.folder = folder;
        this.rulebook = rulebook;
        this.opener = opener;
        this.common = common(names);
        this.index = new PageIndex(rulebook);
        Files.createDirectories(folder);
    }

    @Override
    public void add(Report report) throws IOException {
        String name = name(report.file());
        try (Writer to = opener.open(folder.resolve(name))) {
            new PageWriter(rulebook, to).add(report);
        }
        index.add(report, name);
    }

    @Override
    public void add(Report report, Reading reading) throws IOException {
        String name = name(report.file());
        try (Writer to = opener.open(folder.resolve(name))) {
            new PageWriter(rulebook, to).add(report, reading);
        }
        index.add(report, name);
    }

    @Override
    public void add(Report report, Reading reading, Overview overview) throws IOException {
        String name = name(report.file());
        try (Writer to = opener.open(folder.resolve(name))) {
            new PageWriter(rulebook, to).add(report, reading, overview);
        }
        index.add(report, name);
    }

    @Override
    public void broken(String file, String cause) throws IOException {
        String name = name(file);
        try (Writer to = opener.open(folder.resolve(name))) {
            new PageWriter(rulebook, to).broken(file, cause);
        }
        index.broken(file, name);
    }

    @Override
    public void end() throws IOException {
        try (Writer to = opener.open(folder.resolve("index.html"))) {
            to.append(index.written());
        }
    }

    /** {@return a name that every file system takes and no other page has} */
    private String name(String file) {
        String own = file.startsWith(common) ? file.substring(common.length()) : file;
        int dot = own.lastIndexOf('.');
        String plain = (dot > 0 ? own.substring(0, dot) : own)
                .replaceAll("[^A-Za-z0-9._-]+", "-")
                .replaceAll("^[.-]+", "");
        String base = plain.isEmpty() ? "design" : plain.substring(0, Math.min(LONGEST, plain.length()));
        String name = base;
        for (int n = 2; !taken.add(name.toLowerCase(Locale.ROOT)); n++) {
            name = base + "-" + n;
        }
        return name + ".html";
    }

    /** {@return the folders that all names begin with, as they are written} */
    private static String common(List<String> names) {
        String shared = names.isEmpty() ? "" : names.get(0);
        for (String name : names) {
            int same = 0;
            while (same < Math.min(shared.length(), name.length()) && shared.charAt(same) == name.charAt(same)) {
                same++;
            }
            shared = shared.substring(0, same);
        }
        return shared.substring(0, Math.max(shared.lastIndexOf('/'), shared.lastIndexOf('\\')) + 1);
    }
}
