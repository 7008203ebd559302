package org.leat.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.leat.check.Report;
import org.leat.check.Rulebook;
import org.leat.choice.Overview;
import org.leat.file.Reading;
import org.leat.report.ReportWriter;
import org.leat.sure.Sureness;

/** Several outputs of one run: the one on standard output, and files, which take their names when they are whole. */
final class Outputs implements ReportWriter, AutoCloseable {

    /** Makes the writer of a format. */
    @FunctionalInterface
    interface Maker {
        ReportWriter make(Format format, Appendable to, boolean person) throws IOException;
    }

    private record Unfinished(Path named, Path written, Writer to) {}

    private final List<ReportWriter> writers = new ArrayList<>();
    private final List<Unfinished> files = new ArrayList<>();

    /**
     * Begins every output.
     *
     * @param also what is to be written in which format
     * @throws CannotWriteException if a file cannot be begun
     */
    static Outputs begin(Format format, PrintWriter out, Map<Path, Format> also, Maker maker) throws IOException {
        Outputs outputs = new Outputs();
        try {
            for (Map.Entry<Path, Format> entry : also.entrySet()) {
                Writer to = outputs.file(entry.getKey());
                outputs.writers.add(maker.make(entry.getValue(), to, false));
            }
            outputs.writers.add(maker.make(format, out, true));
            return outputs;
        } catch (IOException | RuntimeException e) {
            outputs.close();
            throw e;
        }
    }

    /** Writes a folder of pages too, which takes its names when all is whole. */
    void folder(Path folder, Rulebook rulebook, List<String> names) throws CannotWriteException {
        try {
            writers.add(0, new PageFolder(folder, rulebook, names, this::file));
        } catch (IOException e) {
            throw new CannotWriteException(folder, e, false);
        }
    }

    private Writer file(Path named) throws CannotWriteException {
        try {
            Path folder = Replacing.target(named).toAbsolutePath().getParent();
            Path written = Files.createTempFile(folder, ".leat-", ".part");
            Writer to = new Naming(named, Files.newBufferedWriter(written, StandardCharsets.UTF_8));
            files.add(new Unfinished(named, written, to));
            return to;
        } catch (IOException | UnsupportedOperationException e) {
            throw new CannotWriteException(named, e, false);
        }
    }

    /** A file that says its name when it cannot be written. */
    private static final class Naming extends Writer {

        private final Path named;
        private final Writer to;

        Naming(Path named, Writer to) {
            this.named = named;
            this.to = to;
        }

        @Override
        public void write(char[] text, int from, int length) throws IOException {
            try {
                to.write(text, from, length);
            } catch (IOException e) {
                throw new CannotWriteException(named, e, true);
            }
        }

        @Override
        public void flush() throws IOException {
            try {
                to.flush();
            } catch (IOException e) {
                throw new CannotWriteException(named, e, true);
            }
        }

        @Override
        public void close() throws IOException {
            try {
                to.close();
            } catch (IOException e) {
                throw new CannotWriteException(named, e, true);
            }
        }
    }

    @Override
    public void add(Report report) throws IOException {
        for (ReportWriter writer : writers) {
            writer.add(report);
        }
    }

    @Override
    public void add(Report report, Reading reading) throws IOException {
        for (ReportWriter writer : writers) {
            writer.add(report, reading);
        }
    }

    @Override
    public void add(Report report, Reading reading, Overview overview) throws IOException {
        for (ReportWriter writer : writers) {
            writer.add(report, reading, overview);
        }
    }

    @Override
    public void add(Report report, Reading reading, Overview overview, Sureness sureness) throws IOException {
        for (ReportWriter writer : writers) {
            writer.add(report, reading, overview, sureness);
        }
    }

    @Override
    public void broken(String file, String cause) throws IOException {
        for (ReportWriter writer : writers) {
            writer.broken(file, cause);
        }
    }

    @Override
    public void end() throws IOException {
        for (ReportWriter writer : writers) {
            writer.end();
        }
        while (!files.isEmpty()) {
            Unfinished file = files.get(0);
            file.to().close();
            try {
                Replacing.file(file.written(), file.named());
            } catch (IOException e) {
                throw new CannotWriteException(file.named(), e, true);
            }
            files.remove(0);
        }
    }

    /** Takes away what was not finished. */
    @Override
    public void close() throws IOException {
        for (Unfinished file : files) {
            try {
                file.to().close();
            } catch (IOException e) {
                // what is still held back cannot be written either: it goes with the file
            }
            Files.deleteIfExists(file.written());
        }
    }

    /** A file that the call asks for cannot be written. */
    static final class CannotWriteException extends IOException {

        private static final long serialVersionUID = 1;

        private final boolean begun;

        CannotWriteException(Path named, Exception cause, boolean begun) {
            super(named + " cannot be written: " + why(cause), cause);
            this.begun = begun;
        }

        /** {@return whether it was begun, and only then failed: a full disk} */
        boolean begun() {
            return begun;
        }

        private static String why(Exception e) {
            boolean plain = e.getClass() == IOException.class && e.getMessage() != null;
            return plain ? String.valueOf(e.getMessage()) : CheckCommand.cause(e);
        }
    }
}
